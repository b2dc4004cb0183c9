package pegbed.reliability;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;

/** An open file behind a {@link FaultyDisk}. */
final class FaultyChannel extends FileChannel {
    private final FaultyDisk disk;
    private final Path path;
    private final FileChannel real;

    FaultyChannel(FaultyDisk disk, Path path, FileChannel real) {
        this.disk = disk;
        this.path = path;
        this.real = real;
    }

    @Override
    public int read(ByteBuffer into) throws IOException {
        disk.before(FaultyDisk.Step.READ);
        return real.read(into);
    }

    @Override
    public long read(ByteBuffer[] into, int offset, int length) throws IOException {
        disk.before(FaultyDisk.Step.READ);
        return real.read(into, offset, length);
    }

    @Override
    public int read(ByteBuffer into, long at) throws IOException {
        disk.before(FaultyDisk.Step.READ);
        return real.read(into, at);
    }

    /** Writes as much as there is room for; where there is none, throws. */
    @Override
    public int write(ByteBuffer from) throws IOException {
        disk.touched(path);
        int room = disk.room(from.remaining());
        ByteBuffer part = from.duplicate();
        part.limit(part.position() + room);
        int written = real.write(part);
        from.position(from.position() + written);
        return written;
    }

    @Override
    public long write(ByteBuffer[] from, int offset, int length) throws IOException {
        throw new UnsupportedOperationException("One buffer at a time.");
    }

    @Override
    public int write(ByteBuffer from, long at) throws IOException {
        throw new UnsupportedOperationException("In order only.");
    }

    @Override
    public long position() throws IOException {
        return real.position();
    }

    @Override
    public FileChannel position(long at) throws IOException {
        real.position(at);
        return this;
    }

    @Override
    public long size() throws IOException {
        return real.size();
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
        if (size < real.size()) {
            disk.before(FaultyDisk.Step.TRUNCATE);
            disk.touched(path);
        }
        real.truncate(size);
        return this;
    }

    @Override
    public void force(boolean metaData) throws IOException {
        disk.before(FaultyDisk.Step.FORCE);
        disk.forced(path);
    }

    @Override
    public long transferTo(long at, long count, WritableByteChannel target) {
        throw new UnsupportedOperationException("Not used.");
    }

    @Override
    public long transferFrom(ReadableByteChannel source, long at, long count) {
        throw new UnsupportedOperationException("Not used.");
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long at, long size) {
        throw new UnsupportedOperationException("Not used.");
    }

    @Override
    public FileLock lock(long at, long size, boolean shared) throws IOException {
        return real.lock(at, size, shared);
    }

    @Override
    public FileLock tryLock(long at, long size, boolean shared) throws IOException {
        return real.tryLock(at, size, shared);
    }

    @Override
    protected void implCloseChannel() throws IOException {
        real.close();
    }
}

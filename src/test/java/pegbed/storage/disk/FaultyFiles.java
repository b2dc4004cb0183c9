package pegbed.storage.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The real disk, but the n-th thing done to it goes wrong. Remembers what was asked. */
public final class FaultyFiles implements FileOps {
    /** How a step goes wrong. */
    public enum Fault {
        /** The disk refuses with these words. */
        REFUSED,
        /** Half of the bytes are written, then the disk is full. */
        FULL,
        /** The program may not do this. */
        FORBIDDEN,
        /** A read gives other bytes than were written. */
        GARBLED
    }

    public final List<String> steps = new ArrayList<>();
    private final int failing;
    private final Fault fault;

    /** @param failing which step goes wrong, 0 for the first; past the last for none */
    public FaultyFiles(int failing, Fault fault) {
        this.failing = failing;
        this.fault = fault;
    }

    private boolean failsNow(String step) throws IOException {
        steps.add(step);
        if (steps.size() - 1 != failing) {
            return false;
        }
        switch (fault) {
            case REFUSED -> throw new IOException("the disk said no");
            case FORBIDDEN -> throw new SecurityException("forbidden");
            case FULL -> {
                if (!step.startsWith("write")) {
                    throw new IOException("No space left on device");
                }
            }
            case GARBLED -> {}
        }
        return true;
    }

    @Override
    public Path real(Path path) throws IOException {
        failsNow("real");
        return DISK.real(path);
    }

    @Override
    public boolean exists(Path path) {
        return DISK.exists(path);
    }

    @Override
    public boolean isFolder(Path path) {
        return DISK.isFolder(path);
    }

    @Override
    public boolean mayWrite(Path path) {
        return DISK.mayWrite(path);
    }

    @Override
    public byte[] read(Path path) throws IOException {
        boolean garbled = failsNow("read");
        byte[] bytes = DISK.read(path);
        return garbled ? Arrays.copyOf(bytes, bytes.length / 2) : bytes;
    }

    @Override
    public void write(Path path, byte[] bytes, Path like) throws IOException {
        if (failsNow("write")) {
            Files.write(path, Arrays.copyOf(bytes, bytes.length / 2));
            if (fault == Fault.FULL) {
                throw new IOException("No space left on device");
            }
            return;
        }
        DISK.write(path, bytes, like);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        failsNow("rename");
        DISK.rename(from, to);
    }

    @Override
    public void nameNew(Path from, Path to) throws IOException {
        failsNow("nameNew");
        DISK.nameNew(from, to);
    }

    @Override
    public void delete(Path path) throws IOException {
        failsNow("delete");
        DISK.delete(path);
    }

    @Override
    public void createFolder(Path path) throws IOException {
        failsNow("createFolder");
        DISK.createFolder(path);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        failsNow("list");
        return DISK.list(folder);
    }

    @Override
    public Closeable lock(Path path) throws IOException {
        return DISK.lock(path);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        failsNow("forceFolder");
        DISK.forceFolder(folder);
    }
}

package pegbed.reliability;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.stream.StreamSupport;

/** Does on the machine's file system what a {@link FaultyDisk} lets pass. */
final class FaultyProvider extends FileSystemProvider {
    private final FaultyDisk disk;
    private final FaultyFileSystem system;

    FaultyProvider(FaultyDisk disk, FaultyFileSystem system) {
        this.disk = disk;
        this.system = system;
    }

    private static Path real(Path path) {
        return FaultyPath.real(path);
    }

    private static FileSystemProvider realProvider(Path path) {
        return real(path).getFileSystem().provider();
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        boolean writes = options.contains(StandardOpenOption.WRITE) || options.contains(StandardOpenOption.APPEND);
        boolean made = writes && !Files.exists(real(path));
        if (!Files.isDirectory(real(path))) {
            disk.before(writes ? FaultyDisk.Step.OPEN : FaultyDisk.Step.READ);
        }
        FileChannel channel = FileChannel.open(real(path), options, attributes);
        if (made) {
            disk.made(real(path));
        }
        return disk.opened(real(path), channel, writes && options.contains(StandardOpenOption.TRUNCATE_EXISTING));
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        return newFileChannel(path, options, attributes);
    }

    @Override
    @SuppressWarnings("StreamResourceLeak") // It is closed with the stream that wraps it.
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        disk.before(FaultyDisk.Step.READ);
        DirectoryStream<Path> stream = Files.newDirectoryStream(real(folder));
        return new DirectoryStream<>() {
            @Override
            public Iterator<Path> iterator() {
                return StreamSupport.stream(stream.spliterator(), false)
                        .map(path -> (Path) new FaultyPath(system, path))
                        .iterator();
            }

            @Override
            public void close() throws IOException {
                stream.close();
            }
        };
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        if (Files.isDirectory(real(folder))) {
            realProvider(folder).createDirectory(real(folder), attributes);
        }
        disk.before(FaultyDisk.Step.OPEN);
        realProvider(folder).createDirectory(real(folder), attributes);
    }

    @Override
    public void delete(Path path) throws IOException {
        disk.before(FaultyDisk.Step.DELETE);
        disk.deleting(real(path));
        Files.delete(real(path));
    }

    @Override
    public void move(Path from, Path to, CopyOption... options) throws IOException {
        disk.before(FaultyDisk.Step.RENAME);
        disk.renaming(real(from), real(to));
        Files.move(real(from), real(to), options);
    }

    @Override
    public void copy(Path from, Path to, CopyOption... options) {
        throw new UnsupportedOperationException("Nothing is copied.");
    }

    @Override
    public boolean isSameFile(Path a, Path b) throws IOException {
        return Files.isSameFile(real(a), real(b));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return Files.isHidden(real(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return Files.getFileStore(real(path));
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        realProvider(path).checkAccess(real(path), modes);
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... options) {
        return Files.getFileAttributeView(real(path), type, options);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        return Files.readAttributes(real(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options) throws IOException {
        return Files.readAttributes(real(path), attributes, options);
    }

    @Override
    public void setAttribute(Path path, String attribute, Object value, LinkOption... options) throws IOException {
        Files.setAttribute(real(path), attribute, value, options);
    }

    @Override
    public String getScheme() {
        return "faulty";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> settings) {
        throw new UnsupportedOperationException("There is one already.");
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        return system;
    }

    @Override
    public Path getPath(URI uri) {
        return new FaultyPath(system, Path.of(uri));
    }
}

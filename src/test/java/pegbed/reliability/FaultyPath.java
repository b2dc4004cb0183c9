package pegbed.reliability;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;

/** A path of this machine, all of whose file work goes through a {@link FaultyDisk}. */
final class FaultyPath implements Path {
    private final FaultyFileSystem system;
    private final Path real;

    FaultyPath(FaultyFileSystem system, Path real) {
        this.system = system;
        this.real = real;
    }

    /** The path on the machine's own file system. */
    static Path real(Path path) {
        return path instanceof FaultyPath faulty ? faulty.real : path;
    }

    private Path wrap(Path path) {
        return path == null ? null : new FaultyPath(system, path);
    }

    @Override
    public FileSystem getFileSystem() {
        return system;
    }

    @Override
    public boolean isAbsolute() {
        return real.isAbsolute();
    }

    @Override
    public Path getRoot() {
        return wrap(real.getRoot());
    }

    @Override
    public Path getFileName() {
        return wrap(real.getFileName());
    }

    @Override
    public Path getParent() {
        return wrap(real.getParent());
    }

    @Override
    public int getNameCount() {
        return real.getNameCount();
    }

    @Override
    public Path getName(int index) {
        return wrap(real.getName(index));
    }

    @Override
    public Path subpath(int begin, int end) {
        return wrap(real.subpath(begin, end));
    }

    @Override
    public boolean startsWith(Path other) {
        return real.startsWith(real(other));
    }

    @Override
    public boolean endsWith(Path other) {
        return real.endsWith(real(other));
    }

    @Override
    public Path normalize() {
        return wrap(real.normalize());
    }

    @Override
    public Path resolve(Path other) {
        return wrap(real.resolve(real(other)));
    }

    @Override
    public Path relativize(Path other) {
        return wrap(real.relativize(real(other)));
    }

    @Override
    public URI toUri() {
        return real.toUri();
    }

    @Override
    public Path toAbsolutePath() {
        return wrap(real.toAbsolutePath());
    }

    @Override
    public Path toRealPath(LinkOption... options) throws IOException {
        return wrap(real.toRealPath(options));
    }

    @Override
    public WatchKey register(WatchService watcher, WatchEvent.Kind<?>[] events, WatchEvent.Modifier... modifiers) {
        throw new UnsupportedOperationException("Nothing is watched here.");
    }

    @Override
    public int compareTo(Path other) {
        return real.compareTo(real(other));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FaultyPath path && path.system == system && path.real.equals(real);
    }

    @Override
    public int hashCode() {
        return real.hashCode();
    }

    @Override
    public String toString() {
        return real.toString();
    }
}

package pegbed.storage.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The disk of this machine. */
final class DiskFiles implements FileOps {
    /** A peg of a million soundings has some 100 MB. */
    private static final long LARGEST_BYTES = 512L << 20;

    @Override
    public Path real(Path path) throws IOException {
        if (Files.exists(path) || Files.isSymbolicLink(path)) {
            try {
                return path.toRealPath();
            } catch (NoSuchFileException e) {
                throw new FileSystemException(
                        path.toString(),
                        null,
                        "it is a link to a file that is not there; remove it, or give another name");
            }
        }
        return path.toAbsolutePath().normalize();
    }

    @Override
    public boolean exists(Path path) {
        return Files.exists(path);
    }

    @Override
    public boolean isFolder(Path path) {
        return Files.isDirectory(path);
    }

    @Override
    public boolean mayWrite(Path path) {
        return Files.isWritable(path);
    }

    @Override
    public byte[] read(Path path) throws IOException {
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw new FileSystemException(path.toString(), null, "it is not a plain file");
        }
        if (Files.size(path) > LARGEST_BYTES) {
            throw new FileSystemException(
                    path.toString(), null, "it has more than " + (LARGEST_BYTES >> 20) + " megabytes");
        }
        return Files.readAllBytes(path);
    }

    @Override
    public void write(Path path, byte[] bytes, Path like) throws IOException {
        Set<StandardOpenOption> fresh = EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try (FileChannel channel = FileChannel.open(path, fresh, FileModes.of(like))) {
            FileModes.copy(like, path);
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void nameNew(Path from, Path to) throws IOException {
        try {
            Files.createLink(to, from);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (IOException | UnsupportedOperationException noLinksHere) {
            if (Files.exists(to)) {
                throw new FileAlreadyExistsException(to.toString());
            }
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
            return;
        }
        try {
            Files.deleteIfExists(from);
        } catch (IOException e) {
            // The file has its name; the other one is swept by the next save.
        }
    }

    @Override
    public void delete(Path path) throws IOException {
        Files.deleteIfExists(path);
    }

    @Override
    public void createFolder(Path path) throws IOException {
        Files.createDirectories(path);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.toList();
        }
    }

    @Override
    public Closeable lock(Path path) throws IOException {
        return SaveLock.take(path);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }
}

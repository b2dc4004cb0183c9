package pegbed.storage.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The few things that saving does to a disk, one by one, so that a test can make any of them fail. */
public interface FileOps {
    /** The disk of this machine. */
    FileOps DISK = new DiskFiles();

    /** The path behind any links where the file exists, else the absolute path. */
    Path real(Path path) throws IOException;

    /** Whether there is a file or folder of this name. */
    boolean exists(Path path);

    /** Whether this is a folder. */
    boolean isFolder(Path path);

    /** Whether this program may change the file or folder. */
    boolean mayWrite(Path path);

    /** All bytes of a file. */
    byte[] read(Path path) throws IOException;

    /**
     * Makes a new file of these bytes and returns once they are on the disk.
     *
     * @param like the file whose permissions, owner and group it gets; where there is none, the usual ones
     */
    void write(Path path, byte[] bytes, Path like) throws IOException;

    /** Gives a file another name in one step, in place of any file of that name. */
    void rename(Path from, Path to) throws IOException;

    /**
     * Gives a file a name that nobody has yet, in one step. On a disk without links that step is two: a look, and the
     * rename.
     *
     * @throws java.nio.file.FileAlreadyExistsException if there is a file of that name; the first keeps its name
     */
    void nameNew(Path from, Path to) throws IOException;

    /** Removes a file; does nothing if there is none. */
    void delete(Path path) throws IOException;

    /** Makes a folder; does nothing if there is one. */
    void createFolder(Path path) throws IOException;

    /** The files in a folder; none if there is no folder. */
    List<Path> list(Path folder) throws IOException;

    /**
     * Waits until nobody else, in this program or another, holds the lock of this name, and takes it until it is
     * closed. On a disk that has no locks only this program is kept out.
     *
     * @throws IOException if somebody holds it for long
     */
    Closeable lock(Path path) throws IOException;

    /** Returns once the names in a folder are on the disk, where the system can do that. */
    void forceFolder(Path folder) throws IOException;
}

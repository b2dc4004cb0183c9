package pegbed.storage.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.Opened;
import pegbed.storage.peg.PegReader;
import pegbed.storage.peg.PegWriter;

/** Peg files on the disk. The format is described in {@code docs/peg-file.md}. */
public final class PegFile {
    /** How the name of a peg file ends. */
    public static final String ENDING = ".peg.json";

    /** The bytes, the text and what was read of it. */
    private static final int TIMES_IN_MEMORY = 8;

    private PegFile() {}

    /**
     * Reads a peg file. A damaged one is recovered as far as it goes, and stays as it is.
     *
     * @throws InputException if there is no such file, it can't be read, or it is not a peg file
     */
    public static Opened read(Path path) throws InputException {
        return read(path, FileOps.DISK);
    }

    public static Opened read(Path path, FileOps files) throws InputException {
        String name = AtomicFileWriter.name(path);
        if (path.toString().isBlank()) {
            throw new InputException("The name of the peg file is empty; give one, such as peg9.peg.json.");
        }
        if (files.isFolder(path)) {
            throw new InputException(name + " is a folder; give the name of a peg file in it, such as peg9.peg.json.");
        }
        try {
            return Memory.reading(path, TIMES_IN_MEMORY, () -> PegReader.read(name, files.read(path)));
        } catch (NoSuchFileException e) {
            throw new InputException("There is no file " + path + ".", e);
        } catch (IOException | SecurityException e) {
            throw new InputException(name + " could not be read: " + AtomicFileWriter.reasonOfReading(e) + ".", e);
        }
    }

    /**
     * Saves a peg, all or nothing, as {@link AtomicFileWriter} tells.
     *
     * @param path the file; its folder must exist
     * @param peg what to save
     * @param expected the fingerprint of the file as it was loaded or last saved, so that another's changes are not
     *     written over; empty to write over whatever is there
     * @return the fingerprint for the next save
     * @throws InputException if it could not be saved; the file is then as it was
     */
    public static Fingerprint save(Path path, Peg peg, Optional<Fingerprint> expected) throws InputException {
        return save(path, peg, expected, FileOps.DISK);
    }

    /**
     * Makes a new peg file. Of several programs that make one of a name at the same moment, one does.
     *
     * @return the fingerprint for the next save
     * @throws InputException if there is one of that name that is not empty, or it could not be made
     */
    public static Fingerprint create(Path path, Peg peg) throws InputException {
        return new AtomicFileWriter(FileOps.DISK).create(path, bytes(path, peg));
    }

    /**
     * Keeps everybody else from saving a peg file until this is closed, as {@link AtomicFileWriter#lock} tells.
     *
     * @throws InputException if another program holds it for longer than five seconds, others hold it one after the
     *     other for longer than a minute, or there is no such file
     */
    public static Closeable lock(Path path) throws InputException {
        return new AtomicFileWriter(FileOps.DISK).lock(path);
    }

    /** As {@link #save(Path, Peg, Optional)}, on another disk. */
    public static Fingerprint save(Path path, Peg peg, Optional<Fingerprint> expected, FileOps files)
            throws InputException {
        return new AtomicFileWriter(files).save(path, bytes(path, peg), expected);
    }

    /** What a file of this peg holds, which was looked at whether it can be read again. */
    private static byte[] bytes(Path path, Peg peg) throws InputException {
        String name = AtomicFileWriter.name(path);
        byte[] bytes;
        try {
            bytes = PegWriter.bytes(peg);
        } catch (IllegalArgumentException e) {
            throw new InputException(name + " could not be saved: " + e.getMessage(), e);
        }
        if (PegReader.read(name, bytes) instanceof Opened.Recovered bad) {
            throw new InputException(name + " was not saved, as it could not be read again: " + bad.why());
        }
        return bytes;
    }

    /** The earlier versions of a peg file, the latest first; {@link #read} reads them like any other. */
    public static List<Path> earlier(Path path) throws InputException {
        return new AtomicFileWriter(FileOps.DISK).earlier(path);
    }
}

package pegbed.storage.shelf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pegbed.model.InputException;
import pegbed.model.PegName;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.FileOps;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.Opened;

/**
 * What a person does with the files of the shelf. Each first looks whether the file still holds what the shelf shows;
 * if another program or a syncing folder has changed it since, nothing is done and that is said. No file is ever
 * written over, and none is destroyed: what is deleted lies in a folder {@value #DELETED_FOLDER} beside it.
 */
public final class ShelfFiles {
    /** Folder for deleted pegs, in the folder that they were in. */
    public static final String DELETED_FOLDER = "deleted";

    private ShelfFiles() {}

    /**
     * Gives a peg another venue, water and number; its file keeps its name.
     *
     * @throws InputException if the file was changed by another, is damaged, or can't be saved
     */
    public static void rename(ShelfPeg peg, PegName name) throws InputException {
        rename(peg, name, FileOps.DISK);
    }

    static void rename(ShelfPeg peg, PegName name, FileOps files) throws InputException {
        Opened opened = PegFile.read(peg.file(), files);
        refuseIfChanged(peg, opened.fingerprint());
        if (opened instanceof Opened.Recovered damaged) {
            throw new InputException(AtomicFileWriter.name(peg.file()) + " is damaged at " + damaged.where()
                    + " and was not renamed; open it first to see what could be recovered.");
        }
        PegFile.save(peg.file(), opened.peg().withName(name), Optional.of(peg.fingerprint()), files);
    }

    /**
     * Copies a peg file beside itself, under a free name.
     *
     * @return the copy
     * @throws InputException if the file was changed by another or can't be copied
     */
    public static Path duplicate(ShelfPeg peg) throws InputException {
        return duplicate(peg, FileOps.DISK);
    }

    static Path duplicate(ShelfPeg peg, FileOps files) throws InputException {
        byte[] bytes = unchanged(peg);
        Path copy = free(peg.file().resolveSibling(stem(peg.file()) + "-copy" + PegFile.ENDING));
        new AtomicFileWriter(files).create(copy, bytes);
        return copy;
    }

    /**
     * Moves a peg file and its earlier versions to another folder, under its own name or, where that is taken, the next
     * free one. They are copied, forced to the disk and read back before the first original is removed, so that they
     * may go to another disk, and all of them go or none.
     *
     * @param folder made if there is none
     * @return where it is now
     * @throws InputException if the file was changed by another or can't be moved
     */
    public static Path move(ShelfPeg peg, Path folder) throws InputException {
        return move(peg, folder, FileOps.DISK);
    }

    static Path move(ShelfPeg peg, Path folder, FileOps files) throws InputException {
        unchanged(peg);
        List<Path> earlier = PegFile.earlier(peg.file());
        try {
            Files.createDirectories(folder);
            Path target = free(folder.resolve(AtomicFileWriter.name(peg.file())));
            MovedFiles moved = new MovedFiles(files);
            try {
                for (Path version : earlier) {
                    String number = AtomicFileWriter.name(version)
                            .substring(AtomicFileWriter.name(peg.file()).length());
                    Path versions = Files.createDirectories(folder.resolve(AtomicFileWriter.EARLIER_FOLDER));
                    moved.copy(version, versions.resolve(AtomicFileWriter.name(target) + number));
                }
                moved.copy(peg.file(), target);
                unchanged(peg);
            } catch (IOException | InputException | RuntimeException e) {
                moved.takeBack();
                throw e;
            }
            try {
                moved.removeOriginals();
            } catch (IOException | SecurityException e) {
                moved.takeBack();
                throw e;
            }
            return target;
        } catch (IOException | SecurityException e) {
            throw new InputException(
                    AtomicFileWriter.name(peg.file()) + " could not be moved: " + AtomicFileWriter.reason(e) + ".", e);
        }
    }

    /**
     * Puts a peg file and its earlier versions into the folder {@value #DELETED_FOLDER} beside it.
     *
     * @return where it is now; moved back by hand it is on the shelf again
     * @throws InputException if the file was changed by another or can't be moved
     */
    public static Path delete(ShelfPeg peg) throws InputException {
        return delete(peg, FileOps.DISK);
    }

    static Path delete(ShelfPeg peg, FileOps files) throws InputException {
        return move(peg, peg.file().resolveSibling(DELETED_FOLDER), files);
    }

    private static byte[] unchanged(ShelfPeg peg) throws InputException {
        try {
            byte[] bytes = FileOps.DISK.read(peg.file());
            refuseIfChanged(peg, Fingerprint.of(bytes));
            return bytes;
        } catch (IOException | SecurityException e) {
            throw new InputException(
                    AtomicFileWriter.name(peg.file()) + " could not be read: " + AtomicFileWriter.reasonOfReading(e)
                            + ".",
                    e);
        }
    }

    private static void refuseIfChanged(ShelfPeg peg, Fingerprint now) throws InputException {
        if (!now.equals(peg.fingerprint())) {
            throw new InputException(
                    AtomicFileWriter.name(peg.file())
                            + " was changed by somebody else since the shelf was looked at, and was left as it is; look again.");
        }
    }

    private static String stem(Path file) {
        String name = AtomicFileWriter.name(file);
        return name.substring(0, name.length() - PegFile.ENDING.length());
    }

    /** The path itself, or the first of -2, -3 and so on that no file has. */
    private static Path free(Path wanted) {
        Path path = wanted;
        for (int number = 2; Files.exists(path); number++) {
            path = wanted.resolveSibling(stem(wanted) + "-" + number + PegFile.ENDING);
        }
        return path;
    }
}

package pegbed.storage.shelf;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import pegbed.model.InputException;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.FileOps;

/** Files on their way to another folder: all copies are sure to be on the disk before the first original is removed. */
final class MovedFiles {
    private final FileOps files;
    private final Map<Path, Path> copies = new LinkedHashMap<>();

    MovedFiles(FileOps files) {
        this.files = files;
    }

    /** Copies a file to a name that nobody has, and returns once the copy is on the disk and reads back the same. */
    void copy(Path original, Path copy) throws IOException {
        if (files.exists(copy)) {
            throw new FileSystemException(copy.toString(), null, copy + " is there already");
        }
        byte[] bytes = files.read(original);
        copies.put(original, copy);
        try {
            files.write(copy, bytes, original);
        } catch (FileAlreadyExistsException e) {
            copies.remove(original);
            throw e;
        }
        Files.setLastModifiedTime(copy, Files.getLastModifiedTime(original));
        if (!Arrays.equals(files.read(copy), bytes)) {
            throw new FileSystemException(copy.toString(), null, "the copy reads back differently");
        }
    }

    /** Removes the copies; the originals are as they were. */
    void takeBack() {
        for (Path copy : copies.values()) {
            try {
                files.delete(copy);
            } catch (IOException | SecurityException e) {
                // The original is there, and what went wrong before this is what the person must hear.
            }
        }
    }

    /**
     * Removes the originals once the names of the copies are on the disk too.
     *
     * @throws InputException if one can't be removed; the sentence says what lies where
     */
    void removeOriginals() throws InputException {
        Set<Path> folders = new LinkedHashSet<>();
        copies.values().forEach(copy -> folders.add(copy.toAbsolutePath().getParent()));
        for (Path folder : folders) {
            try {
                files.forceFolder(folder);
            } catch (IOException | UnsupportedOperationException | SecurityException e) {
                // Some systems can't force a folder; the bytes of the copies are on the disk all the same.
            }
        }
        for (Map.Entry<Path, Path> each : copies.entrySet()) {
            try {
                files.delete(each.getKey());
            } catch (IOException | SecurityException e) {
                throw new InputException(
                        "All was copied to " + each.getValue().toAbsolutePath().getParent() + ", but " + each.getKey()
                                + " could not be removed: " + AtomicFileWriter.reason(e) + ".",
                        e);
            }
        }
    }
}

package pegbed.storage.shelf;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
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

    /**
     * Copies a file to a name that nobody has, and returns once the copy is on the disk and reads back the same. It is
     * given its name when it is whole, so that a power cut leaves no part of a file under that name.
     */
    void copy(Path original, Path copy) throws IOException {
        if (files.exists(copy)) {
            throw new FileSystemException(copy.toString(), null, copy + " is there already");
        }
        byte[] bytes = files.read(original);
        Path fresh = copy.resolveSibling(AtomicFileWriter.temporaryName(copy));
        boolean whole = false;
        try {
            files.write(fresh, bytes, original);
            Files.setLastModifiedTime(fresh, Files.getLastModifiedTime(original));
            // The original is read once more, as the first reading of it may have been the wrong one.
            if (!Arrays.equals(files.read(original), bytes) || !Arrays.equals(files.read(fresh), bytes)) {
                throw new FileSystemException(copy.toString(), null, "the copy reads back differently");
            }
            files.nameNew(fresh, copy);
            whole = true;
        } finally {
            if (!whole) {
                deleteQuietly(fresh);
            }
        }
        copies.put(original, copy);
    }

    private void deleteQuietly(Path path) {
        try {
            files.delete(path);
        } catch (IOException | SecurityException e) {
            // The original is there, and what went wrong before this is what the person must hear.
        }
    }

    /** Removes the copies; the originals are as they were. */
    void takeBack() {
        copies.values().forEach(this::deleteQuietly);
    }

    /**
     * Removes the originals once the names of the copies are on the disk too.
     *
     * @throws IOException if the first, the peg itself, can't be removed; nothing has been removed then
     * @throws InputException if a later one can't be removed; the sentence says what lies where
     */
    void removeOriginals() throws IOException, InputException {
        Set<Path> folders = new LinkedHashSet<>();
        copies.values().forEach(copy -> folders.add(copy.toAbsolutePath().getParent()));
        for (Path folder : folders) {
            try {
                files.forceFolder(folder);
            } catch (IOException | UnsupportedOperationException | SecurityException e) {
                // Some systems can't force a folder; the bytes of the copies are on the disk all the same.
            }
        }
        // The peg itself, which was copied last, goes first: until it has gone everything can be taken back.
        List<Map.Entry<Path, Path>> each = new ArrayList<>(copies.entrySet());
        Collections.reverse(each);
        for (int i = 0; i < each.size(); i++) {
            Path original = each.get(i).getKey();
            try {
                files.delete(original);
            } catch (IOException | SecurityException e) {
                if (i == 0) {
                    throw e;
                }
                throw new InputException(
                        AtomicFileWriter.name(each.get(0).getKey()) + " is now in "
                                + each.get(0).getValue().toAbsolutePath().getParent()
                                + " with its earlier versions, but " + original
                                + " could not be removed here: " + AtomicFileWriter.reason(e) + ".",
                        e);
            }
        }
    }
}

package pegbed.storage.disk;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pegbed.model.InputException;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.PegReader;

/**
 * Writes a file so that at every moment, power cut or not, its name leads to the whole old or the whole new content.
 *
 * <p>The bytes go to a new file {@code .NAME.<random>.tmp} in the same folder, are forced to the disk, read back and
 * compared; what is there now is kept as {@code .pegbed-earlier/NAME.<n>}, n rising; then the new file takes the name
 * in one step. The latest {@value #KEPT} earlier versions stay. Programs that save the same file do so one after the
 * other. When anything fails before that last step, the new file and the copy are removed and the old file stays as it
 * was; after it, nothing can fail but the removal of versions past the tenth, and the next save makes that good.
 */
public final class AtomicFileWriter {
    /** How many earlier versions of a file are kept. */
    public static final int KEPT = 10;

    /** Folder of the earlier versions, beside the file. */
    public static final String EARLIER_FOLDER = PegReader.EARLIER_FOLDER;

    private static final Fingerprint NOTHING = Fingerprint.of(new byte[0]);

    private final FileOps files;

    public AtomicFileWriter(FileOps files) {
        this.files = files;
    }

    /**
     * Saves bytes under a name. Bytes that are there already are not written again.
     *
     * @param path the file; its folder must exist
     * @param bytes what it shall hold
     * @param expected what the file held when it was loaded: if it now holds something else, another has changed it and
     *     nothing is written. Empty to write over whatever is there.
     * @return the fingerprint of the file as it now is
     * @throws InputException if it could not be saved; the file is then as it was
     */
    public Fingerprint save(Path path, byte[] bytes, Optional<Fingerprint> expected) throws InputException {
        String name = name(path);
        try {
            Path target = files.real(path);
            Path folder = target.getParent();
            if (files.isFolder(target) || folder == null) {
                throw new InputException(name + " is a folder; give the name of a file in it, such as peg9.peg.json.");
            }
            if (!files.isFolder(folder)) {
                throw new InputException(
                        "There is no folder " + folder + "; make it first or save " + name + " elsewhere.");
            }
            Optional<byte[]> before = contents(target);
            refuseIfChanged(name, before, expected);
            if (before.isPresent() && Arrays.equals(before.get(), bytes)) {
                return Fingerprint.of(bytes);
            }
            if (before.isPresent() && !files.mayWrite(target)) {
                throw new AccessDeniedException(target.toString());
            }
            if (before.isPresent()) {
                Closeable alone = files.lock(lockFile(target));
                try {
                    sweep(target);
                    Optional<byte[]> now = contents(target);
                    refuseIfChanged(name, now, expected);
                    replace(name, target, now, bytes);
                } finally {
                    release(alone);
                }
            } else {
                replace(name, target, before, bytes);
            }
            tidy(target);
            return Fingerprint.of(bytes);
        } catch (IOException | UncheckedIOException | UnsupportedOperationException | SecurityException e) {
            throw new InputException(name + " could not be saved: " + reason(e) + ".", e);
        }
    }

    /**
     * Makes a file that is not there yet, or is empty. Of several programs that make one at the same moment, one does.
     *
     * @return the fingerprint of the file as it now is
     * @throws InputException if it is there, or could not be made; what is there is then as it was
     */
    public Fingerprint create(Path path, byte[] bytes) throws InputException {
        return save(path, bytes, Optional.of(NOTHING));
    }

    /**
     * Keeps everybody else from saving a file until this is closed, so that what was read of it is still so when it is
     * saved. The thread that holds it may save the file.
     *
     * @throws InputException if another program holds it for longer than five seconds, others hold it one after the
     *     other for longer than a minute, or there is no such file
     */
    public Closeable lock(Path path) throws InputException {
        try {
            Path target = files.real(path);
            if (!files.exists(target)) {
                throw new InputException("There is no file " + path + ".");
            }
            return files.lock(lockFile(target));
        } catch (IOException | UncheckedIOException | SecurityException e) {
            throw new InputException(name(path) + " could not be changed: " + reason(e) + ".", e);
        }
    }

    private static void release(Closeable lock) {
        try {
            lock.close();
        } catch (IOException e) {
            // What was saved is saved, and what was not has its own sentence; the lock ends with this program.
        }
    }

    private static Path lockFile(Path target) {
        return target.resolveSibling(EARLIER_FOLDER).resolve(name(target) + ".lock");
    }

    /** The earlier versions of a file, the latest first. */
    public List<Path> earlier(Path path) throws InputException {
        try {
            return versions(files.real(path));
        } catch (IOException | UncheckedIOException | SecurityException e) {
            throw new InputException(
                    "The earlier versions of " + name(path) + " can't be listed: " + reason(e) + ".", e);
        }
    }

    private void replace(String name, Path target, Optional<byte[]> before, byte[] bytes)
            throws IOException, InputException {
        Path fresh = target.resolveSibling(temporaryName(target));
        Optional<Path> kept = Optional.empty();
        boolean done = false;
        try {
            writeAndCompare(fresh, bytes, target);
            if (before.isPresent()) {
                kept = Optional.of(nextVersion(target));
                keep(kept.get(), before.get(), target);
            }
            refuseIfChanged(name, contents(target), before.map(Fingerprint::of));
            if (before.isEmpty()) {
                files.nameNew(fresh, target);
            } else {
                files.rename(fresh, target);
            }
            done = true;
        } finally {
            if (!done) {
                deleteQuietly(fresh);
                kept.ifPresent(this::deleteQuietly);
            }
        }
    }

    private void keep(Path version, byte[] bytes, Path target) throws IOException {
        Path folder = version.getParent();
        files.createFolder(folder);
        Path fresh = folder.resolve(temporaryName(version));
        boolean done = false;
        try {
            writeAndCompare(fresh, bytes, target);
            files.rename(fresh, version);
            done = true;
        } finally {
            if (!done) {
                deleteQuietly(fresh);
            }
        }
    }

    private void writeAndCompare(Path fresh, byte[] bytes, Path like) throws IOException {
        files.write(fresh, bytes, like);
        if (!Arrays.equals(files.read(fresh), bytes)) {
            throw new FileSystemException(fresh.toString(), null, "what was written reads back differently");
        }
    }

    /** Removes what programs left that were killed while they saved this file; nobody else is saving it now. */
    private void sweep(Path target) {
        Pattern left = Pattern.compile("\\." + Pattern.quote(name(target)) + "(\\.\\d{1,15})?\\.[0-9a-f-]{36}\\.tmp");
        for (Path folder : List.of(target.getParent(), target.resolveSibling(EARLIER_FOLDER))) {
            try {
                files.list(folder).stream()
                        .filter(path -> left.matcher(name(path)).matches())
                        .forEach(this::deleteQuietly);
            } catch (IOException | UncheckedIOException | SecurityException e) {
                // What was left is in nobody's way but takes room; the next save tries again.
            }
        }
    }

    /**
     * Makes the new name last and drops versions past the tenth. The file itself is saved: nothing here undoes that.
     */
    private void tidy(Path target) {
        try {
            files.forceFolder(target.getParent());
        } catch (IOException | UnsupportedOperationException | SecurityException e) {
            // Some systems can't force a folder; the bytes of the file are on the disk all the same.
        }
        try {
            versions(target).stream().skip(KEPT).forEach(this::deleteQuietly);
        } catch (IOException | UncheckedIOException | SecurityException e) {
            // One version too many does no harm; the next save tries again.
        }
    }

    private void deleteQuietly(Path path) {
        try {
            files.delete(path);
        } catch (IOException | SecurityException e) {
            // It is in nobody's way, and what went wrong before it is what the person must hear.
        }
    }

    private Optional<byte[]> contents(Path target) throws IOException {
        return files.exists(target) ? Optional.of(files.read(target)) : Optional.empty();
    }

    private static void refuseIfChanged(String name, Optional<byte[]> now, Optional<Fingerprint> expected)
            throws InputException {
        if (now.isPresent()
                && expected.isPresent()
                && !Fingerprint.of(now.get()).equals(expected.get())) {
            if (expected.get().equals(NOTHING)) {
                throw new InputException(name + " exists already and was not written over; give another name.");
            }
            throw new InputException(
                    name + " was changed by somebody else since it was opened, and was not written over;"
                            + " save under another name, or open it again.");
        }
    }

    /** A new name in its folder for what will be a file, by which the next save of it sweeps what a killed one left. */
    public static String temporaryName(Path path) {
        return "." + name(path) + "." + UUID.randomUUID() + ".tmp";
    }

    private Path nextVersion(Path target) throws IOException {
        List<Path> versions = versions(target);
        long next = versions.isEmpty() ? 1 : number(target, versions.get(0)).orElseThrow() + 1;
        return target.resolveSibling(EARLIER_FOLDER).resolve(name(target) + "." + next);
    }

    private List<Path> versions(Path target) throws IOException {
        return files.list(target.resolveSibling(EARLIER_FOLDER)).stream()
                .filter(path -> number(target, path).isPresent())
                .sorted(Comparator.comparing((Path path) -> number(target, path).orElseThrow())
                        .reversed())
                .toList();
    }

    private static Optional<Long> number(Path target, Path version) {
        Matcher matcher =
                Pattern.compile(Pattern.quote(name(target)) + "\\.(\\d{1,15})").matcher(name(version));
        return matcher.matches() ? Optional.of(Long.valueOf(matcher.group(1))) : Optional.empty();
    }

    /** The last name of a path; the whole path where it has none. */
    public static String name(Path path) {
        return path.getFileName() == null ? path.toString() : path.getFileName().toString();
    }

    /** Why a file could not be read, in words that end a sentence. */
    public static String reasonOfReading(Exception e) {
        return e instanceof AccessDeniedException
                ? "you are not allowed to read it; ask who owns it, or give another"
                : reason(e);
    }

    /** Why the disk refused, in words that end a sentence. */
    public static String reason(Exception e) {
        String words = e.getMessage() == null ? "the disk did not answer" : e.getMessage();
        String lower = words.toLowerCase(Locale.ROOT);
        if (lower.contains("no space") || lower.contains("not enough space") || lower.contains("quota")) {
            return "the disk is full; make room or save it elsewhere";
        }
        if (e instanceof AccessDeniedException || lower.contains("read-only file system")) {
            return "its folder or the file may not be changed; save it in a folder of your own";
        }
        if (e instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (e instanceof FileAlreadyExistsException) {
            return "somebody else made a file of that name at the same moment; give another name";
        }
        if (lower.contains("symbolic link")) {
            return "its links go round in a circle and lead to no file; remove one of them, or give another name";
        }
        if (e instanceof FileSystemException fault && fault.getReason() != null) {
            return fault.getReason();
        }
        return words;
    }
}

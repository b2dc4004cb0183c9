package pegbed.storage.disk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.PegReader;

/**
 * What was edited since a peg was last saved, so that power lost at any moment loses nothing.
 *
 * <p>Every edit appends the whole peg, as {@link JournalRecords} tells, and forces it to the disk. Reading takes the
 * last record that is whole: a record that was cut off is one that was never confirmed. While a journal is open it is
 * locked, by which a second window on the same peg is noticed. A write that failed spoils no later one. Belongs to one
 * thread.
 */
public final class Journal implements AutoCloseable {
    /** How the names of journals begin that belong to pegs without a file. */
    public static final String UNNAMED = "unsaved-";

    private static final String ENDING = ".journal";

    /**
     * The journals that this program has open. A second look at a lock that the program holds itself would let go of
     * it: POSIX frees a program's locks on a file when it closes any of its handles of it.
     */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    /** Longer than this, the journal is begun again with its last record alone. */
    private static final long LONGEST_BYTES = 4_000_000;

    private final Path path;
    private final Path lockPath;
    private final FileChannel lockFile;
    private FileChannel channel;

    /** Whether something stands at the end that is no record and could not be taken back. */
    private boolean torn;

    /**
     * One state of a peg.
     *
     * @param peg the peg
     * @param base fingerprint of the file that it was edited from; empty where there was none
     */
    public record Entry(Peg peg, Optional<Fingerprint> base) {}

    private Journal(Path path, Path lockPath, FileChannel lockFile) throws IOException {
        this.path = path;
        this.lockPath = lockPath;
        this.lockFile = lockFile;
        channel = appending(path);
        boolean ready = false;
        try {
            // What was cut off is in nobody's way, but takes room.
            int whole = JournalRecords.last(FileOps.DISK.read(path))
                    .map(JournalRecords.Kept::end)
                    .orElse(0);
            channel.truncate(whole);
            forceName(path.getParent());
            ready = true;
        } finally {
            if (!ready) {
                channel.close();
            }
        }
    }

    /**
     * Opens a journal and locks it; makes it if there is none.
     *
     * @param folder where journals are kept; made if there is none
     * @param name of the journal, a plain file name without ending
     * @return empty if another window or program has it open
     * @throws InputException if the folder can't be written
     */
    public static Optional<Journal> open(Path folder, String name) throws InputException {
        Path path = folder.resolve(name + ENDING).toAbsolutePath();
        if (!HELD.add(path)) {
            return Optional.empty();
        }
        Optional<Journal> journal = Optional.empty();
        try {
            Files.createDirectories(folder);
            journal = locked(path, folder.resolve(name + ".lock"));
            return journal;
        } catch (IOException | SecurityException e) {
            throw trouble(e);
        } finally {
            if (journal.isEmpty()) {
                HELD.remove(path);
            }
        }
    }

    private static Optional<Journal> locked(Path path, Path lockPath) throws IOException {
        FileChannel lockFile = FileChannel.open(lockPath, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        boolean held = false;
        try {
            held = lockFile.tryLock() != null;
            return held ? Optional.of(new Journal(path, lockPath, lockFile)) : Optional.empty();
        } catch (IOException | SecurityException e) {
            held = false;
            throw e;
        } finally {
            if (!held) {
                lockFile.close();
            }
        }
    }

    private static FileChannel appending(Path path) throws IOException {
        return FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    /** Makes the journal's name last as its bytes do. */
    private static void forceName(Path folder) {
        try {
            FileOps.DISK.forceFolder(folder);
        } catch (IOException | UnsupportedOperationException | SecurityException e) {
            // Some systems can't force a folder; they keep names in order by themselves.
        }
    }

    /** Whether there is a journal of this name. */
    public static boolean exists(Path folder, String name) {
        return Files.exists(folder.resolve(name + ENDING));
    }

    /** The names of the journals in a folder, without ending. */
    public static List<String> names(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (var files = Files.list(folder)) {
            return files.map(file -> AtomicFileWriter.name(file))
                    .filter(name -> name.endsWith(ENDING))
                    .map(name -> name.substring(0, name.length() - ENDING.length()))
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            return List.of();
        }
    }

    /** The last state that was kept; empty if none was. */
    public Optional<Entry> last() throws InputException {
        try {
            Optional<JournalRecords.Kept> kept = JournalRecords.last(FileOps.DISK.read(path));
            return kept.isPresent()
                    ? Optional.of(new Entry(
                            PegReader.read("the journal", kept.get().body()).peg(),
                            kept.get().base()))
                    : Optional.empty();
        } catch (IOException | SecurityException e) {
            throw trouble(e);
        }
    }

    /**
     * Keeps a state: once this returns, it is on the disk.
     *
     * @throws InputException if it could not be kept
     */
    public void append(Entry entry) throws InputException {
        byte[] record = JournalRecords.record(entry);
        try {
            if (!channel.isOpen()) {
                channel = appending(path);
            }
            if (torn || (channel.size() + record.length > LONGEST_BYTES && channel.size() > 0)) {
                beginAgain(record);
            } else {
                write(record);
            }
        } catch (IOException | SecurityException e) {
            throw trouble(e);
        }
    }

    private void beginAgain(byte[] record) throws IOException {
        Path fresh = path.resolveSibling(AtomicFileWriter.name(path) + ".tmp");
        Files.deleteIfExists(fresh);
        FileOps.DISK.write(fresh, record, fresh);
        channel.close();
        try {
            Files.move(fresh, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            torn = false;
            forceName(path.getParent());
        } finally {
            channel = appending(path);
        }
    }

    /** Writes all of it and forces it; a record that could be written only in part is taken back. */
    private void write(byte[] record) throws IOException {
        long before = channel.size();
        torn = true;
        try {
            ByteBuffer rest = ByteBuffer.wrap(record);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
            torn = false;
        } finally {
            if (torn) {
                takeBack(before);
            }
        }
    }

    private void takeBack(long before) {
        try {
            channel.truncate(before);
            torn = false;
        } catch (IOException e) {
            // The next record begins the journal again; what went wrong first is what the person must hear.
        }
    }

    /** Forgets everything: the peg is saved, or its edits were given up. */
    public void clear() throws InputException {
        try {
            if (!channel.isOpen()) {
                channel = appending(path);
            }
            channel.truncate(0);
            torn = false;
            channel.force(true);
        } catch (IOException | SecurityException e) {
            throw trouble(e);
        }
    }

    /**
     * Puts what is kept under another name beside the journal and begins it anew, as nobody here can read it.
     *
     * @return where it is now
     */
    public Path setAside() throws InputException {
        try {
            int number = 1;
            while (Files.exists(aside(number))) {
                number++;
            }
            channel.close();
            try {
                Files.move(path, aside(number), StandardCopyOption.ATOMIC_MOVE);
            } finally {
                channel = appending(path);
            }
            forceName(path.getParent());
            return aside(number);
        } catch (IOException | SecurityException e) {
            throw trouble(e);
        }
    }

    private Path aside(int number) {
        return path.resolveSibling(AtomicFileWriter.name(path) + ".unread" + number);
    }

    /** Lets go of the journal; one that holds nothing leaves no file behind, but for the lock of a peg with a file. */
    @Override
    public void close() throws InputException {
        try (FileChannel unlockedAtLast = lockFile) {
            boolean empty = channel.isOpen() && channel.size() == 0;
            channel.close();
            if (empty) {
                Files.deleteIfExists(path);
            }
            if (empty && AtomicFileWriter.name(path).startsWith(UNNAMED)) {
                Files.deleteIfExists(lockPath);
            }
        } catch (IOException | SecurityException e) {
            throw trouble(e);
        } finally {
            HELD.remove(path);
        }
    }

    private static InputException trouble(Exception e) {
        return new InputException(
                "Edits can't be kept safe between saves: " + AtomicFileWriter.reason(e) + ". Save often meanwhile.", e);
    }
}

package pegbed.storage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pegbed.model.InputException;
import pegbed.model.Peg;

/**
 * What was edited since a peg was last saved, so that power lost at any moment loses nothing.
 *
 * <p>Every edit appends the whole peg and forces it to the disk. A record is one line, {@code LENGTH SHA256 BASE}, and
 * that many bytes of peg file; BASE is the fingerprint of the file that the edits began from, or {@code -}. Reading
 * takes the last record that is whole: a record that was cut off is one that was never confirmed. While a journal is
 * open it is locked, by which a second window on the same peg is noticed. Belongs to one thread.
 */
public final class Journal implements AutoCloseable {
    private static final String ENDING = ".journal";

    /** Longer than this, the journal is begun again with its last record alone. */
    private static final long LONGEST_BYTES = 4_000_000;

    private static final int LONGEST_HEADER = 200;

    private final Path path;
    private final FileChannel lockFile;
    private final FileLock lock;
    private FileChannel channel;

    /**
     * One state of a peg.
     *
     * @param peg the peg
     * @param base fingerprint of the file that it was edited from; empty where there was none
     */
    public record Entry(Peg peg, Optional<Fingerprint> base) {}

    private Journal(Path path, FileChannel lockFile, FileLock lock, FileChannel channel) {
        this.path = path;
        this.lockFile = lockFile;
        this.lock = lock;
        this.channel = channel;
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
        Path path = folder.resolve(name + ENDING);
        try {
            Files.createDirectories(folder);
            FileChannel lockFile = FileChannel.open(
                    folder.resolve(name + ".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = tryLock(lockFile);
            if (lock == null) {
                lockFile.close();
                return Optional.empty();
            }
            FileChannel channel = appending(path);
            // What was cut off would hide all that is written after it.
            channel.truncate(scan(Files.readAllBytes(path)).wholeBytes());
            return Optional.of(new Journal(path, lockFile, lock, channel));
        } catch (IOException | SecurityException e) {
            throw trouble(e);
        }
    }

    private static FileLock tryLock(FileChannel file) throws IOException {
        try {
            return file.tryLock();
        } catch (OverlappingFileLockException heldByThisProgram) {
            return null;
        }
    }

    private static FileChannel appending(Path path) throws IOException {
        return FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    /** The names of the journals in a folder, without ending. */
    public static List<String> names(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (var files = Files.list(folder)) {
            return files.map(file -> SafeSave.name(file))
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
            Optional<Kept> kept = scan(Files.readAllBytes(path)).last();
            return kept.isPresent()
                    ? Optional.of(new Entry(
                            PegReader.read("the journal", kept.get().body()).peg(),
                            kept.get().base()))
                    : Optional.empty();
        } catch (IOException | SecurityException e) {
            throw trouble(e);
        }
    }

    /** A whole record. */
    private record Kept(byte[] body, Optional<Fingerprint> base) {}

    /**
     * What a journal holds.
     *
     * @param last its last whole record
     * @param wholeBytes length of the records up to and with that one
     */
    private record Scan(Optional<Kept> last, int wholeBytes) {}

    private static Scan scan(byte[] bytes) {
        Optional<Kept> last = Optional.empty();
        int at = 0;
        while (at < bytes.length) {
            int end = at;
            while (end < bytes.length && end - at < LONGEST_HEADER && bytes[end] != '\n') {
                end++;
            }
            String[] header = new String(bytes, at, end - at, StandardCharsets.US_ASCII).split(" ", -1);
            if (header.length != 3 || !header[0].matches("\\d{1,9}")) {
                break;
            }
            long stop = end + 1L + Integer.parseInt(header[0]);
            if (stop > bytes.length) {
                break;
            }
            byte[] body = Arrays.copyOfRange(bytes, end + 1, (int) stop);
            if (!Fingerprint.of(body).sha256().equals(header[1])) {
                break;
            }
            last = Optional.of(
                    new Kept(body, "-".equals(header[2]) ? Optional.empty() : Optional.of(new Fingerprint(header[2]))));
            at = (int) stop;
        }
        return new Scan(last, at);
    }

    /**
     * Keeps a state: once this returns, it is on the disk.
     *
     * @throws InputException if it could not be kept
     */
    public void append(Entry entry) throws InputException {
        byte[] record = record(entry);
        try {
            if (channel.size() + record.length > LONGEST_BYTES && channel.size() > 0) {
                beginAgain(record);
            } else {
                write(channel, record);
            }
        } catch (IOException | SecurityException e) {
            throw trouble(e);
        }
    }

    private void beginAgain(byte[] record) throws IOException {
        Path fresh = path.resolveSibling(SafeSave.name(path) + ".tmp");
        try (FileChannel file = FileChannel.open(
                fresh, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            write(file, record);
        }
        channel.close();
        try {
            Files.move(fresh, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            channel = appending(path);
        }
    }

    private static byte[] record(Entry entry) {
        byte[] body = PegWriter.bytes(entry.peg());
        String header = body.length + " " + Fingerprint.of(body).sha256() + " "
                + entry.base().map(Fingerprint::sha256).orElse("-") + "\n";
        byte[] head = header.getBytes(StandardCharsets.US_ASCII);
        byte[] record = Arrays.copyOf(head, head.length + body.length);
        System.arraycopy(body, 0, record, head.length, body.length);
        return record;
    }

    /** Writes all of it and forces it; a record that could be written only in part is taken back. */
    private static void write(FileChannel file, byte[] record) throws IOException {
        long before = file.size();
        boolean whole = false;
        try {
            ByteBuffer rest = ByteBuffer.wrap(record);
            while (rest.hasRemaining()) {
                file.write(rest);
            }
            file.force(true);
            whole = true;
        } finally {
            if (!whole) {
                file.truncate(before);
            }
        }
    }

    /** Forgets everything: the peg is saved, or its edits were given up. */
    public void clear() throws InputException {
        try {
            channel.truncate(0);
            channel.force(true);
        } catch (IOException | SecurityException e) {
            throw trouble(e);
        }
    }

    /** Lets go of the journal; one that holds nothing leaves no file behind. */
    @Override
    public void close() throws InputException {
        try {
            boolean empty = channel.size() == 0;
            channel.close();
            if (empty) {
                Files.deleteIfExists(path);
            }
            lock.release();
            lockFile.close();
        } catch (IOException | SecurityException e) {
            throw trouble(e);
        }
    }

    private static InputException trouble(Exception e) {
        return new InputException(
                "Edits can't be kept safe between saves: " + SafeSave.reason(e) + ". Save often meanwhile.", e);
    }
}

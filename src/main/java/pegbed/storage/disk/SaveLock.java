package pegbed.storage.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.locks.ReentrantLock;

/**
 * One at a time: threads of this program by a lock of its own, other programs by a lock on a file. Reentrant: the
 * thread that holds it may take it again.
 */
final class SaveLock implements Closeable {
    /** A save takes some hundredths of a second; who holds the lock for longer than this hangs. */
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    /** How long to wait behind others who all go on, on a busy machine. */
    private static final Duration LONGEST = Duration.ofMinutes(1);

    /** What each who takes the lock writes into its file, so that those who wait see that it goes on. */
    private static final byte[] TURN = {'\n'};

    private static final int PAUSE_MILLISECONDS = 5;

    private static final ReentrantLock THREADS = new ReentrantLock();

    /** How often the thread that has {@link #THREADS} has taken each lock; only that thread may look. */
    private static final Map<Path, Integer> HELD = new HashMap<>();

    private final Path path;
    private final FileChannel file;

    private SaveLock(Path path, FileChannel file) {
        this.path = path;
        this.file = file;
        HELD.merge(path, 1, Integer::sum);
    }

    /** Takes the lock, waiting for it; on a disk without locks, only the one of this program. */
    static SaveLock take(Path path) throws IOException {
        THREADS.lock();
        FileChannel file = null;
        boolean taken = false;
        try {
            file = HELD.containsKey(path) ? null : opened(path);
            if (file != null && !locked(path, file)) {
                throw new FileSystemException(path.toString(), null, "another program is changing it; try again");
            }
            taken = true;
            return new SaveLock(path, file);
        } finally {
            if (!taken) {
                new SaveLock(path, file).close();
            }
        }
    }

    /** The file; null where none can be made, as then nothing can be saved there either. */
    private static FileChannel opened(Path path) {
        try {
            Files.createDirectories(path.getParent());
            return FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (IOException | SecurityException e) {
            return null;
        }
    }

    /** Waits behind others for as long as the lock goes from one to the next within {@link #PATIENCE}. */
    private static boolean locked(Path path, FileChannel file) {
        try {
            long begun = System.nanoTime();
            long turnBegun = begun;
            FileTime turn = Files.getLastModifiedTime(path);
            while (file.tryLock() == null) {
                long now = System.nanoTime();
                FileTime latest = Files.getLastModifiedTime(path);
                if (!latest.equals(turn)) {
                    turn = latest;
                    turnBegun = now;
                }
                if (now - turnBegun > PATIENCE.toNanos() || now - begun > LONGEST.toNanos()) {
                    return false;
                }
                Thread.sleep(PAUSE_MILLISECONDS);
            }
        } catch (IOException noLocksHere) {
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
        tellTurn(file);
        return true;
    }

    private static void tellTurn(FileChannel file) {
        try {
            file.write(ByteBuffer.wrap(TURN));
        } catch (IOException e) {
            // On a full disk those who wait don't see it; what can't be saved has its own sentence.
        }
    }

    @Override
    public void close() throws IOException {
        try {
            if (file != null) {
                file.close();
            }
        } finally {
            HELD.computeIfPresent(path, (held, times) -> times == 1 ? null : times - 1);
            THREADS.unlock();
        }
    }
}

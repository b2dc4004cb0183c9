package pegbed.storage.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.locks.ReentrantLock;

/** One at a time: threads of this program by a lock of its own, other programs by a lock on a file. */
final class SaveLock implements Closeable {
    /** A save takes some hundredths of a second; who holds the lock for longer than this hangs. */
    private static final int PATIENCE_MILLISECONDS = 10_000;

    private static final int PAUSE_MILLISECONDS = 5;

    private static final ReentrantLock THREADS = new ReentrantLock();

    private final FileChannel file;

    private SaveLock(FileChannel file) {
        this.file = file;
    }

    /** Takes the lock, waiting for it; on a disk without locks, only the one of this program. */
    static SaveLock take(Path path) throws IOException {
        THREADS.lock();
        FileChannel file = null;
        boolean taken = false;
        try {
            file = opened(path);
            if (file != null && !locked(file)) {
                throw new FileSystemException(path.toString(), null, "another program is saving it; try again");
            }
            taken = true;
            return new SaveLock(file);
        } finally {
            if (!taken) {
                new SaveLock(file).close();
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

    private static boolean locked(FileChannel file) {
        try {
            for (int waited = 0; file.tryLock() == null; waited += PAUSE_MILLISECONDS) {
                if (waited > PATIENCE_MILLISECONDS) {
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
        return true;
    }

    @Override
    public void close() throws IOException {
        try {
            if (file != null) {
                file.close();
            }
        } finally {
            THREADS.unlock();
        }
    }
}

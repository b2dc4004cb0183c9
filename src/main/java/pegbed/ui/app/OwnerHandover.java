package pegbed.ui.app;

import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * The owner's work, done by a thread of its own until another owner takes over. So the session can begin while the
 * toolkit still starts: nothing is ever done by both, nothing is lost, and the order stays.
 */
final class OwnerHandover implements Executor {
    private final ThreadPoolExecutor first;

    /** @param second does the work once it is taken over */
    OwnerHandover(Executor second) {
        first = new ThreadPoolExecutor(
                1,
                1,
                0,
                TimeUnit.SECONDS,
                new LinkedBlockingQueue<>(),
                work -> {
                    Thread thread = new Thread(work, "pegbed-first-owner");
                    thread.setDaemon(true);
                    return thread;
                },
                (work, pool) -> second.execute(work));
    }

    @Override
    public void execute(Runnable work) {
        first.execute(work);
    }

    /** Work of the first owner's that brings something. */
    <T> Future<T> bring(Callable<T> work) {
        return first.submit(work);
    }

    /**
     * For the thread of the second owner: returns when the first has done all that it was given before. All that comes
     * later is the second's.
     */
    void takeOver() throws InterruptedException {
        first.shutdown();
        while (!first.awaitTermination(1, TimeUnit.MINUTES)) {
            // The first owner is at work still.
        }
    }
}

package pegbed.ui.controls;

import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;

/**
 * Something that is done on the toolkit's thread again and again. An animation would do that too, but keeps the toolkit
 * drawing sixty times a second while it runs. Belongs to the toolkit's thread.
 */
public final class PeriodicTask {
    private static final ScheduledExecutorService CLOCK = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "pegbed-clock");
        thread.setDaemon(true);
        return thread;
    });

    private final long everyMilliseconds;
    private final Runnable work;
    private Future<?> running;

    public PeriodicTask(long everyMilliseconds, Runnable work) {
        this.everyMilliseconds = everyMilliseconds;
        this.work = work;
    }

    /** Begins; does nothing if it runs. It keeps all that it does alive until it is stopped. */
    public void start() {
        if (running == null) {
            running = CLOCK.scheduleWithFixedDelay(
                    () -> Platform.runLater(this::tick), everyMilliseconds, everyMilliseconds, TimeUnit.MILLISECONDS);
        }
    }

    public void stop() {
        if (running != null) {
            running.cancel(false);
            running = null;
        }
    }

    private void tick() {
        // It may have been stopped since it was asked for.
        if (running != null) {
            work.run();
        }
    }
}

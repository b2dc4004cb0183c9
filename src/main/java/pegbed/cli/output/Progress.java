package pegbed.cli.output;

import static java.util.concurrent.TimeUnit.NANOSECONDS;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import pegbed.model.Monitor;

/**
 * Shows on standard error how far work is that takes longer than two seconds, where that is a terminal; else it is
 * silent. After these two seconds it shows what the work is, though the work has not told how far it is since.
 */
public final class Progress {
    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

    /** Shorter work than this says nothing. */
    private static final long QUIET_NANOSECONDS = 2_000_000_000L;

    private final PrintWriter err;
    private final boolean isTerminal;
    private final long quietNanoseconds;
    private final long begun = System.nanoTime();
    private String work = "";
    private int percent;
    private int shown = -1;
    private boolean isEnded;

    public Progress(PrintWriter err) {
        this(err, isTerminal(), QUIET_NANOSECONDS);
    }

    /**
     * @param err where it is shown
     * @param isTerminal whether anything is shown at all
     * @param quietNanoseconds shorter work says nothing; 0 or more
     */
    public Progress(PrintWriter err, boolean isTerminal, long quietNanoseconds) {
        this.err = err;
        this.isTerminal = isTerminal;
        this.quietNanoseconds = quietNanoseconds;
    }

    /** There is a console, and where the system shows what standard error is, it is a device and no file or pipe. */
    @SuppressWarnings("SystemConsoleNull") // From Java 22 on there is always one; the device decides then.
    private static boolean isTerminal() {
        if (System.console() == null) {
            return false;
        }
        try {
            return !Files.exists(STANDARD_ERROR)
                    || (STANDARD_ERROR.toRealPath().startsWith("/dev")
                            && !STANDARD_ERROR.toRealPath().endsWith("null"));
        } catch (IOException | SecurityException e) {
            return false;
        }
    }

    /** A monitor of one piece of work, which nobody cancels. */
    public Monitor of(String work) {
        begin(work);
        return new Monitor() {
            @Override
            public void progress(double share) {
                show(work, (int) (100 * share));
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        };
    }

    private synchronized void begin(String work) {
        boolean isFirst = this.work.isEmpty();
        this.work = work;
        percent = 0;
        shown = -1;
        if (isTerminal && isFirst && quietNanoseconds > 0) {
            Thread reminder = new Thread(this::showAfterQuiet, "progress");
            reminder.setDaemon(true);
            reminder.start();
        }
    }

    private void showAfterQuiet() {
        try {
            NANOSECONDS.sleep(quietNanoseconds);
        } catch (InterruptedException e) {
            return;
        }
        synchronized (this) {
            show(work, percent);
        }
    }

    private synchronized void show(String work, int percent) {
        this.percent = percent;
        if (isTerminal && !isEnded && percent > shown && System.nanoTime() - begun > quietNanoseconds) {
            shown = percent;
            err.print("\r" + work + ": " + percent + " % ");
            err.flush();
        }
    }

    /** Clears the line; nothing is shown after that. */
    public synchronized void end() {
        isEnded = true;
        if (isTerminal && shown >= 0) {
            err.print("\r" + " ".repeat(40) + "\r");
            err.flush();
        }
    }
}

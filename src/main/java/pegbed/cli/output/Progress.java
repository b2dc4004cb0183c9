package pegbed.cli.output;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import pegbed.model.Monitor;

/**
 * Shows on standard error how far work is that takes longer than two seconds, where that is a terminal; else it is
 * silent.
 */
public final class Progress {
    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

    /** Shorter work than this says nothing. */
    private static final long QUIET_NANOSECONDS = 2_000_000_000L;

    private final PrintWriter err;
    private final boolean isTerminal;
    private final long quietNanoseconds;
    private final long begun = System.nanoTime();
    private int shown = -1;

    public Progress(PrintWriter err) {
        this(err, isTerminal(), QUIET_NANOSECONDS);
    }

    public Progress(PrintWriter err, boolean isTerminal) {
        this(err, isTerminal, 0);
    }

    private Progress(PrintWriter err, boolean isTerminal, long quietNanoseconds) {
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
        shown = -1;
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

    private synchronized void show(String work, int percent) {
        if (isTerminal && percent > shown && System.nanoTime() - begun > quietNanoseconds) {
            shown = percent;
            err.print("\r" + work + ": " + percent + " % ");
            err.flush();
        }
    }

    /** Clears the line. */
    public synchronized void end() {
        if (isTerminal && shown >= 0) {
            err.print("\r" + " ".repeat(40) + "\r");
            err.flush();
        }
    }
}

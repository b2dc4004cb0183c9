package pegbed;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import pegbed.cli.ArgumentEncoding;
import pegbed.cli.ClassPreloading;
import pegbed.cli.Cli;
import pegbed.cli.output.StandardOutput;
import pegbed.model.InputException;
import pegbed.storage.disk.Folders;
import pegbed.storage.disk.ProgramLog;
import pegbed.ui.app.Window;

/** Where the program starts. */
public final class Pegbed {
    private Pegbed() {}

    /** Set to true, it makes the program say when its first picture was there ({@code docs/speed.md}). */
    private static final String TELL = "pegbed.tell-start";

    public static void main(String[] args) {
        Thread.setDefaultUncaughtExceptionHandler(new Uncaught());
        Optional<String> lost = ArgumentEncoding.refusal(args, System.getProperty("sun.jnu.encoding", ""));
        if (lost.isPresent()) {
            System.err.println(lost.get());
            System.exit(Cli.BAD_INPUT);
        }
        System.exit(Window.isMeant(args) ? window(args) : command(args));
    }

    private static int command(String... args) {
        // Pictures are drawn in memory; a DISPLAY that leads to no server is nothing to a command.
        System.setProperty("java.awt.headless", "true");
        ClassPreloading.begin(args);
        return Cli.run(args, new StandardOutput(), System.err);
    }

    private static int window(String... files) {
        try {
            Window.open(Pegbed::tellStart, files);
            return 0;
        } catch (InputException e) {
            System.err.println(e.getMessage());
            return 2;
        } catch (RuntimeException | Error e) {
            System.err.println(report("The window could not begin", e));
            return 2;
        }
    }

    private static String report(String what, Throwable error) {
        return new ProgramLog(Folders.own()).report(what, error);
    }

    /** Errors that nobody caught, on whatever thread; the window takes another, which shows them. */
    private static final class Uncaught implements Thread.UncaughtExceptionHandler {
        @Override
        public void uncaughtException(Thread thread, Throwable error) {
            System.err.println(report("Something did not work as it should", error));
        }
    }

    private static void tellStart() {
        if (Boolean.getBoolean(TELL)) {
            ProcessHandle.current()
                    .info()
                    .startInstant()
                    .ifPresent(start -> System.err.println("First picture after "
                            + Duration.between(start, Instant.now()).toMillis() + " ms"));
        }
    }
}

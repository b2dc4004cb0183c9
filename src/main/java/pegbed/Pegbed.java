package pegbed;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import pegbed.cli.Cli;
import pegbed.model.InputException;
import pegbed.storage.PegFile;
import pegbed.ui.Window;

/** Where the program starts. */
public final class Pegbed {
    private Pegbed() {}

    /** Set to true, it makes the program say when its first picture was there (docs/speed.md). */
    private static final String TELL = "pegbed.tell-start";

    public static void main(String[] args) {
        if (args.length > 0) {
            loadAhead(args);
        }
        System.exit(args.length == 0 ? window() : Cli.run(args, System.out, System.err));
    }

    /** Reads the peg once for nothing while the command is understood: what reads pegs is loaded then, on another core. */
    private static void loadAhead(String[] args) {
        Arrays.stream(args)
                .filter(word -> word.endsWith(PegFile.ENDING))
                .findFirst()
                .ifPresent(file -> {
                    Thread reading = new Thread(() -> read(file), "pegbed-ahead");
                    reading.setDaemon(true);
                    reading.start();
                });
    }

    private static void read(String file) {
        try {
            PegFile.read(Path.of(file));
        } catch (InputException | RuntimeException toldWhenItIsReadInEarnest) {
            // The command says what is wrong with it.
        }
    }

    private static int window() {
        try {
            Window.open(Pegbed::tellStart);
            return 0;
        } catch (InputException e) {
            System.err.println(e.getMessage());
            return 2;
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

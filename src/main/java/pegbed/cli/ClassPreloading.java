package pegbed.cli;

import java.nio.file.Path;
import java.util.Arrays;
import pegbed.model.InputException;
import pegbed.storage.disk.PegFile;

/**
 * A command's peg is read once for nothing while the command is understood: what reads pegs is loaded then, on another
 * core ({@code docs/decisions/0004-a-quick-window.md}).
 */
public final class ClassPreloading {
    private ClassPreloading() {}

    /** Begins, and does not wait. */
    public static void begin(String... args) {
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
        } catch (InputException | RuntimeException reportedWhenItIsReadInEarnest) {
            // The command says what is wrong with it.
        }
    }
}

package pegbed.launcher;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import pegbed.cli.Cli;
import pegbed.ui.app.Window;

/** Does what people do at the start of most sessions, so that Java can write down which classes that loads. */
final class TrainingRun {
    private static final long AFTER_FIRST_PICTURE_MS = 2500;

    private TrainingRun() {}

    /**
     * Trains.
     *
     * @param args the file of a sample peg with others of its water beside it, an empty folder
     */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[1]);
        Path sample = Path.of(args[0]);
        try (DirectoryStream<Path> files = Files.newDirectoryStream(sample.resolveSibling(""), "*.peg.json")) {
            for (Path file : files) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        String peg = folder.resolve(sample.getFileName()).toString();
        for (List<String> command : List.of(
                List.of("--help"),
                List.of("lines", peg),
                List.of("lines", peg, "--json"),
                List.of("next", peg),
                List.of("check", peg),
                List.of("add", peg, "8 0 4'"),
                List.of("map", peg, "--out", folder.resolve("map.png").toString()),
                List.of("card", peg, "--out", folder.resolve("card.pdf").toString()))) {
            Cli.run(command.toArray(String[]::new), quiet(), quiet(), folder.resolve("own"));
        }
        Window.open(TrainingRun::endSoon, peg);
        System.exit(0);
    }

    private static PrintStream quiet() {
        return new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    }

    private static void endSoon() {
        Thread end = new Thread(() -> {
            try {
                Thread.sleep(AFTER_FIRST_PICTURE_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            System.exit(0);
        });
        end.setDaemon(true);
        end.start();
    }
}

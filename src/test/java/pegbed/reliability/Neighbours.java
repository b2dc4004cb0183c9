package pegbed.reliability;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import pegbed.cli.Cli;

/**
 * A shelf of one honest peg among hostile files: {@code shelf} lists the peg, and {@code next} answers it, whatever
 * lies beside it.
 */
final class Neighbours {
    private static final String SAMPLE = "tansy-cut-9.peg.json";
    private static final int BESIDE = 3;

    private final Path folder;
    private final Path honest;

    private Neighbours(Path folder) throws IOException {
        this.folder = folder;
        honest = Files.copy(Path.of("sample-pegs", SAMPLE), folder.resolve(SAMPLE));
    }

    /**
     * What came of it.
     *
     * @param shelves how many shelves were asked, of three hostile files each
     * @param told in how many of them a file was left out with a sentence
     */
    record Result(int shelves, int told) {}

    /**
     * Asks shelves.
     *
     * @param folder an empty one to run in
     * @throws AssertionError at the first whose honest peg is not listed or not answered
     */
    static Result run(Path folder, int shelves, long seed) throws IOException {
        Neighbours neighbours = new Neighbours(folder);
        Mutator mutator = new Mutator(Input.PEG.corpus(), 1_000_000);
        int told = 0;
        for (int i = 0; i < shelves; i++) {
            told += neighbours.isTold(mutator, seed + (long) i * BESIDE) ? 1 : 0;
        }
        return new Result(shelves, told);
    }

    private boolean isTold(Mutator mutator, long seed) throws IOException {
        for (int k = 0; k < BESIDE; k++) {
            Files.write(folder.resolve("beside-" + k + ".peg.json"), mutator.make(seed + k));
        }
        String shelf = answer(seed, "shelf", folder.toString());
        if (!shelf.contains(SAMPLE)) {
            throw new AssertionError("seed " + seed + ": the honest peg is not listed: " + shelf);
        }
        String next = answer(seed, "next", honest.toString());
        return shelf.contains("damaged") || next.contains("passed over");
    }

    /** Both streams of a command that must be done. */
    private String answer(long seed, String... words) {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(said, false, StandardCharsets.UTF_8);
        int status = Cli.run(words, stream, stream, folder.resolveSibling("own"));
        stream.flush();
        if (status != 0) {
            throw new AssertionError("seed " + seed + ": " + List.of(words) + " ended with " + status + ": " + said);
        }
        return said.toString(StandardCharsets.UTF_8);
    }
}

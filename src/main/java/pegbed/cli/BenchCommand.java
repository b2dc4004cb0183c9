package pegbed.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import pegbed.bench.quality.GuidedBench;
import pegbed.bench.quality.QualityBench;
import pegbed.bench.visits.VisitsBench;
import pegbed.bench.waters.WatersBench;
import pegbed.cli.output.Output;
import pegbed.model.InputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code pegbed bench}: how good the answers are. */
@Command(
        name = "bench",
        mixinStandardHelpOptions = true,
        description = "Measures the answers against known bottoms.",
        subcommands = {BenchCommand.Quality.class, BenchCommand.Visits.class, BenchCommand.Waters.class})
final class BenchCommand implements Callable<Integer> {
    private static final int MAX_WATERS = 1000;

    @Override
    public Integer call() throws InputException {
        throw new InputException("Say what to measure: pegbed bench quality --practice FOLDER.");
    }

    /** {@code pegbed bench quality}. */
    @Command(
            name = "quality",
            mixinStandardHelpOptions = true,
            description = "Prints a table over a folder of practice pegs, the plain interpolators beside the model.")
    static final class Quality implements Callable<Integer> {
        @Option(
                names = "--practice",
                required = true,
                paramLabel = "FOLDER",
                description = "One folder a peg with banks.csv, readings, truth.txt and about.json.")
        private Path practice;

        @Option(
                names = "--guided",
                description = "Guided readings against fans instead of the methods; takes several minutes.")
        private boolean guided;

        @Mixin
        private Output output;

        @Override
        public Integer call() throws InputException, IOException {
            output.out().print(guided ? GuidedBench.table(practice) : QualityBench.table(practice));
            return 0;
        }
    }

    /** {@code pegbed bench visits}. */
    @Command(
            name = "visits",
            mixinStandardHelpOptions = true,
            description = "Prints how well simulated second visits find the level, the map and changes of the bottom.")
    static final class Visits implements Callable<Integer> {
        @Option(
                names = "--practice",
                required = true,
                paramLabel = "FOLDER",
                description = "One folder a peg with banks.csv, readings, truth.txt and about.json.")
        private Path practice;

        @Mixin
        private Output output;

        @Override
        public Integer call() throws InputException, IOException {
            output.out().print(VisitsBench.table(practice));
            return 0;
        }
    }

    /** {@code pegbed bench waters}. */
    @Command(
            name = "waters",
            mixinStandardHelpOptions = true,
            description = "Prints what mapped pegs of the same water teach a new one, on invented waters.")
    static final class Waters implements Callable<Integer> {
        @Option(
                names = "--first",
                paramLabel = "NUMBER",
                defaultValue = "1001",
                description =
                        "Number of the first water, ${DEFAULT-VALUE} if not given; the same number makes the same.")
        private long first;

        @Option(
                names = "--waters",
                paramLabel = "N",
                defaultValue = "60",
                description = "How many waters, 2 or more, ${DEFAULT-VALUE} if not given.")
        private int waters;

        @Option(
                names = "--guided",
                description = "Ten readings where the program says instead of fans; takes several minutes.")
        private boolean guided;

        @Mixin
        private Output output;

        @Override
        public Integer call() throws InputException {
            if (waters < 2 || waters > MAX_WATERS) {
                throw new InputException("--waters is how many waters to invent, between 2 and " + MAX_WATERS
                        + ", such as 60; not " + waters + ".");
            }
            output.out().print(WatersBench.table(first, waters, guided));
            return 0;
        }
    }
}

package pegbed.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import pegbed.bench.day.DayBench;
import pegbed.bench.quality.BenchReport;
import pegbed.bench.quality.GrossErrorBench;
import pegbed.bench.quality.GuidedBench;
import pegbed.bench.quality.QualityBench;
import pegbed.bench.visits.VisitsBench;
import pegbed.bench.waters.WatersBench;
import pegbed.cli.output.Output;
import pegbed.model.InputException;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code pegbed bench}: how good the answers are. */
@Command(
        name = "bench",
        mixinStandardHelpOptions = true,
        description = "Measures the answers against known bottoms.",
        subcommands = {
            BenchCommand.Quality.class,
            BenchCommand.Visits.class,
            BenchCommand.Waters.class,
            BenchCommand.OfDay.class
        })
final class BenchCommand implements Callable<Integer> {
    private static final int MAX_WATERS = 1000;
    private static final int MAX_DAYS = 10_000;

    @Override
    public Integer call() throws InputException {
        throw new InputException("Say what to measure: pegbed bench quality --practice FOLDER.");
    }

    /** {@code pegbed bench quality}. */
    @Command(
            name = "quality",
            mixinStandardHelpOptions = true,
            description =
                    "Prints tables over folders of practice pegs: the model beside general methods, with how true its doubt, odds and words are.")
    static final class Quality implements Callable<Integer> {
        @Option(
                names = "--practice",
                required = true,
                split = ",",
                paramLabel = "FOLDER",
                description =
                        "One folder a peg with banks.csv, readings, truth.txt and about.json; several folders one after the other, or with commas.")
        private List<Path> practice;

        @Option(
                names = "--readings",
                split = ",",
                paramLabel = "TABLE",
                description =
                        "Tables of readings to measure, by their names without .csv; fan15,stagger20,fan30 if not given.")
        private List<String> readings = QualityBench.READINGS;

        @Option(names = "--per-peg", description = "Also a table of every peg by itself.")
        private boolean perPeg;

        @ArgGroup
        private Instead instead = new Instead();

        @Mixin
        private Output output;

        /** What is measured instead of the methods. */
        static final class Instead {
            @Option(
                    names = "--guided",
                    description =
                            "Guided readings against fans instead of the methods; takes several minutes a folder.")
            private boolean guided;

            @Option(
                    names = "--gross",
                    description = "What one grossly wrong reading in each peg's fan30 does, instead of the methods.")
            private boolean gross;
        }

        @Override
        public Integer call() throws InputException, IOException {
            BenchReport report = instead.guided
                    ? GuidedBench.report(practice)
                    : instead.gross
                            ? GrossErrorBench.report(practice)
                            : QualityBench.report(practice, readings, perPeg);
            if (output.json()) {
                output.print(report.json());
            } else {
                output.out().print(report.markdown());
            }
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
        private static final int MOST_FIRST = 999_999_999;

        @Option(
                names = "--first",
                paramLabel = "NUMBER",
                defaultValue = "1001",
                description =
                        "Number of the first water, ${DEFAULT-VALUE} if not given; the same number makes the same.")
        private WholeNumber first;

        @Option(
                names = "--waters",
                paramLabel = "N",
                defaultValue = "60",
                description = "How many waters, 2 or more, ${DEFAULT-VALUE} if not given.")
        private WholeNumber waters;

        @Option(
                names = "--guided",
                description = "Ten readings where the program says instead of fans; takes several minutes.")
        private boolean guided;

        @Mixin
        private Output output;

        @Override
        public Integer call() throws InputException {
            int from = first.within("--first", 0, MOST_FIRST);
            int count = waters.within("--waters", 2, MAX_WATERS);
            output.out().print(WatersBench.table(from, count, guided));
            return 0;
        }
    }

    /** {@code pegbed bench day}. */
    @Command(
            name = "day",
            mixinStandardHelpOptions = true,
            description = "Prints what following a day's odds gives, on made days of fishing.")
    static final class OfDay implements Callable<Integer> {
        @Option(
                names = "--first",
                paramLabel = "NUMBER",
                defaultValue = "1001",
                description = "Number of the first day, ${DEFAULT-VALUE} if not given; the same number makes the same.")
        private long first;

        @Option(
                names = "--days",
                paramLabel = "N",
                defaultValue = "200",
                description = "How many days of each world, 2 or more, ${DEFAULT-VALUE} if not given.")
        private int days;

        @Mixin
        private Output output;

        @Override
        public Integer call() throws InputException {
            if (days < 2 || days > MAX_DAYS) {
                throw new InputException("--days is how many days to make, between 2 and " + MAX_DAYS
                        + ", such as 200; not " + days + ".");
            }
            output.out().print(DayBench.table(first, days));
            return 0;
        }
    }
}

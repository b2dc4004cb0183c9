package pegbed.bench.quality;

import static pegbed.bench.quality.BenchTable.column;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import pegbed.bench.practice.GrossError;
import pegbed.bench.practice.PracticePeg;
import pegbed.findings.PegMap;
import pegbed.guidance.Guidance;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.posterior.ReadingCheck;

/**
 * What one grossly wrong reading does: in each peg's fan of thirty one reading is made wrong, {@value #DRAWS} times
 * with other chance.
 */
public final class GrossErrorBench {
    private static final String READINGS = "fan30";
    private static final int DRAWS = 3;

    /** A suggestion this near to a reading asks for the same place again, metres. */
    private static final double SAME_PLACE_METRES = 0.5;

    private static final List<BenchTable.Column> COLUMNS = List.of(
            column("case", "case"),
            column("maps", "maps"),
            column("reported", "gross errors reported"),
            column("false_calls_per_peg", "false calls a peg"),
            column("true_calls_per_peg", "other wrong readings reported, a peg"),
            column("depth_rmse_m", "depth RMSE, m"),
            column("coverage_90", "90 % coverage"),
            column("log_score", "log score, −ln(1/m)"),
            column("deepest_regret_m", "deepest regret, m"),
            column("next_asks_again", "next asks for the place again"));

    private GrossErrorBench() {}

    /**
     * One map.
     *
     * @param score how good it is
     * @param reported whether the reading that was made wrong is called suspicious
     * @param falseCalls other readings that are called so, and are not wrong
     * @param trueCalls other readings that are called so, and are wrong by as much as a gross error
     * @param askedAgain whether the next reading asked for is at its place
     */
    record Case(Score score, boolean reported, long falseCalls, long trueCalls, boolean askedAgain) {
        static Case of(PracticePeg practice, Peg peg, int wrong) throws InputException {
            PegMap map = PegMap.of(peg, Monitor.NONE);
            List<Integer> called = map.suspicious().stream()
                    .map(ReadingCheck::sounding)
                    .filter(i -> i != wrong)
                    .toList();
            long grosslyWrong = called.stream()
                    .map(peg.readings()::get)
                    .filter(reading -> GrossError.isGross(practice, reading))
                    .count();
            boolean reported = map.suspicious().stream().anyMatch(check -> check.sounding() == wrong);
            boolean again = wrong >= 0
                    && isSame(Guidance.next(map).place(), peg.readings().get(wrong));
            return new Case(
                    Score.of(new ModelBottom(map), practice),
                    reported,
                    called.size() - grosslyWrong,
                    grosslyWrong,
                    again);
        }

        private static boolean isSame(Place asked, Reading wrong) {
            return Math.hypot(
                            asked.xMetres() - wrong.place().xMetres(),
                            asked.yMetres() - wrong.place().yMetres())
                    <= SAME_PLACE_METRES;
        }
    }

    /**
     * The table of each folder.
     *
     * @throws InputException if a folder has no peg that can be used
     */
    public static BenchReport report(List<Path> practice) throws IOException, InputException {
        BenchReport report = new BenchReport();
        for (PracticeFolder folder : PracticeFolder.all(practice)) {
            report.addLeftOut(folder.refused());
            BenchTable table = new BenchTable(
                    "gross_errors",
                    folder.name(),
                    "One reading wrong by 0.3 to 1.5 m, " + folder.name() + ", " + READINGS,
                    COLUMNS);
            List<Case> without = new ArrayList<>();
            List<Case> with = new ArrayList<>();
            for (int p = 0; p < folder.pegs().size(); p++) {
                PracticePeg practicePeg = folder.pegs().get(p);
                Optional<Peg> peg = folder.with(practicePeg, READINGS);
                if (peg.isEmpty()) {
                    report.addLeftOut(List.of(folder.without(practicePeg, READINGS)));
                    continue;
                }
                without.add(Case.of(practicePeg, peg.get(), -1));
                for (int draw = 0; draw < DRAWS; draw++) {
                    GrossError error = GrossError.in(practicePeg, peg.get(), new Random(1000L * p + draw));
                    with.add(Case.of(practicePeg, error.peg(), error.reading()));
                }
            }
            if (without.isEmpty()) {
                throw new InputException("No peg of " + folder.path() + " has a table " + READINGS + ".csv.");
            }
            table.row(row("as read", without, false));
            table.row(row("with a gross error", with, true));
            report.add(table);
        }
        return report;
    }

    private static List<Cell> row(String name, List<Case> cases, boolean gross) {
        List<Score> scores = cases.stream().map(Case::score).toList();
        Cell none = Cell.number(Double.NaN, 0);
        return List.of(
                Cell.words(name),
                Cell.count(cases.size()),
                gross ? Cell.share(cases.stream().filter(Case::reported).count(), cases.size()) : none,
                Cell.number(mean(cases, Case::falseCalls), 2),
                Cell.number(mean(cases, Case::trueCalls), 2),
                Cell.number(Score.mean(scores, Score::rmseMetres), 3),
                Cell.number(Score.meanDoubt(scores, Doubt::coverage90), 3),
                Cell.number(Score.meanDoubt(scores, Doubt::logScore), 3),
                Cell.number(Score.mean(scores, Score::deepestRegretMetres), 3),
                gross ? Cell.share(cases.stream().filter(Case::askedAgain).count(), cases.size()) : none);
    }

    private static double mean(List<Case> cases, ToDoubleFunction<Case> figure) {
        return cases.stream().mapToDouble(figure).average().orElse(Double.NaN);
    }
}

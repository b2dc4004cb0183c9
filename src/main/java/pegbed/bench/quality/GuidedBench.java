package pegbed.bench.quality;

import static pegbed.bench.quality.BenchTable.column;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pegbed.bench.practice.Fan;
import pegbed.bench.practice.GuidedRun;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.SimulatedPlumbing;
import pegbed.findings.Confidence;
import pegbed.geometry.PegWater;
import pegbed.guidance.GuidanceWeights;
import pegbed.guidance.StopRule;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;

/**
 * Guided readings against fans on simulated pegs: every plan is plumbed with three sets of errors a peg, the same sets
 * every time.
 */
public final class GuidedBench {
    static final List<Integer> COUNTS = List.of(15, 20, 25, 30, 38, 45);
    private static final int DRAWS = 3;

    /** How many more readings are taken once the guidance says stop. */
    private static final int MORE = 10;

    private static final List<BenchTable.Column> PLANS = List.of(
            column("plan", "plan"),
            column("readings", "readings"),
            column("deepest_regret_m", "deepest regret, m"),
            column("depth_rmse_m", "depth RMSE, m"),
            column("coverage_90", "90 % coverage"),
            column("flats_right", "flats right, share"),
            column("flats_strictly_right", "flats strictly right, share"),
            column("flats_sure_right", "sure right"),
            column("flats_likely_right", "likely right"));

    private static final List<BenchTable.Column> STOPS = List.of(
            column("when", "when"),
            column("readings", "readings, mean"),
            column("deepest_regret_m", "deepest regret, m"),
            column("depth_rmse_m", "depth RMSE, m"),
            column("flats_right", "flats right, share"),
            column("flats_strictly_right", "flats strictly right, share"));

    private final List<PracticePeg> pegs;
    private final int draws;

    GuidedBench(List<PracticePeg> pegs, int draws) {
        this.pegs = pegs;
        this.draws = draws;
    }

    /**
     * The tables of some folders of practice pegs.
     *
     * @throws InputException if a folder has no peg that can be used
     */
    public static BenchReport report(List<Path> practice) throws IOException, InputException {
        BenchReport report = new BenchReport();
        for (PracticeFolder folder : PracticeFolder.all(practice)) {
            report.addLeftOut(folder.refused());
            new GuidedBench(folder.pegs(), DRAWS).add(report, folder.name(), COUNTS);
        }
        return report;
    }

    private void add(BenchReport report, String folder, List<Integer> counts) throws InputException {
        BenchTable plans = new BenchTable("plans", folder, "Guided readings against fans, " + folder, PLANS);
        for (boolean staggered : new boolean[] {false, true}) {
            for (int count : counts) {
                plans.row(row(staggered ? "staggered fan" : "fan", count, fan(count, staggered)));
            }
        }
        List<List<GuidedRun>> runs = runs(counts.get(counts.size() - 1), GuidanceWeights.USUAL);
        for (int count : counts) {
            plans.row(row("guided", count, guided(runs, count)));
        }
        report.add(plans);
        report.add(stops(folder, runs));
    }

    private long seed(int peg, int draw) {
        return 1000L * peg + draw;
    }

    private static Score score(Peg plumbed, PracticePeg peg) throws InputException {
        return Score.of(new ModelBottom(plumbed), peg);
    }

    /** Scores of a fan, by peg and draw. */
    List<List<Score>> fan(int count, boolean staggered) throws InputException {
        List<List<Score>> byPeg = new ArrayList<>();
        for (int p = 0; p < pegs.size(); p++) {
            PracticePeg peg = pegs.get(p);
            List<Place> places = Fan.of(PegWater.of(peg.empty()), count, staggered);
            List<Score> scores = new ArrayList<>();
            for (int draw = 0; draw < draws; draw++) {
                SimulatedPlumbing plumbing = new SimulatedPlumbing(peg, seed(p, draw));
                scores.add(score(peg.with(places.stream().map(plumbing::read).toList()), peg));
            }
            byPeg.add(scores);
        }
        return byPeg;
    }

    /** Guided runs, by peg and draw. */
    List<List<GuidedRun>> runs(int readings, GuidanceWeights blend) throws InputException {
        List<List<GuidedRun>> runs = new ArrayList<>();
        for (int p = 0; p < pegs.size(); p++) {
            List<GuidedRun> ofPeg = new ArrayList<>();
            for (int draw = 0; draw < draws; draw++) {
                ofPeg.add(GuidedRun.of(pegs.get(p), seed(p, draw), readings, blend));
            }
            runs.add(ofPeg);
        }
        return runs;
    }

    /** Scores of guided runs after so many readings, by peg and draw. */
    List<List<Score>> guided(List<List<GuidedRun>> runs, int count) throws InputException {
        List<List<Score>> byPeg = new ArrayList<>();
        for (int p = 0; p < pegs.size(); p++) {
            List<Score> scores = new ArrayList<>();
            for (GuidedRun run : runs.get(p)) {
                scores.add(score(run.pegs().get(count), pegs.get(p)));
            }
            byPeg.add(scores);
        }
        return byPeg;
    }

    static List<Cell> row(String plan, int count, List<List<Score>> byPeg) {
        List<Outcome> words = byPeg.stream()
                .flatMap(List::stream)
                .flatMap(score -> score.words().stream())
                .toList();
        return List.of(
                Cell.words(plan),
                Cell.count(count),
                Cell.figure(Figure.of(byPeg, Score::deepestRegretMetres)),
                Cell.figure(Figure.of(byPeg, Score::rmseMetres)),
                Cell.figure(Figure.of(byPeg, Score::coverage90)),
                Cell.figure(Figure.ofOutcomes(byPeg, Outcome::right)),
                Cell.figure(Figure.ofOutcomes(byPeg, Outcome::strict)),
                Cell.kept(words, Confidence.SURE, Outcome::right),
                Cell.kept(words, Confidence.LIKELY, Outcome::right));
    }

    /** What was known when the guidance said stop, and after ten readings more. */
    private BenchTable stops(String folder, List<List<GuidedRun>> runs) throws InputException {
        List<List<Score>> then = new ArrayList<>();
        List<List<Score>> later = new ArrayList<>();
        int all = 0;
        int stopped = 0;
        int readings = 0;
        for (int p = 0; p < pegs.size(); p++) {
            List<Score> ofPeg = new ArrayList<>();
            List<Score> ofPegLater = new ArrayList<>();
            for (GuidedRun run : runs.get(p)) {
                all++;
                int last = run.pegs().size() - 1;
                if (run.stopped().isPresent() && run.stopped().getAsInt() + MORE <= last) {
                    int at = run.stopped().getAsInt();
                    stopped++;
                    readings += at;
                    ofPeg.add(score(run.pegs().get(at), pegs.get(p)));
                    ofPegLater.add(score(run.pegs().get(at + MORE), pegs.get(p)));
                }
            }
            if (!ofPeg.isEmpty()) {
                then.add(ofPeg);
                later.add(ofPegLater);
            }
        }
        BenchTable table = new BenchTable(
                "stops",
                folder,
                String.format(
                        Locale.ROOT,
                        "At the stop, %s: below a gain of %.2f, said in %d of %d runs with %d readings left to take",
                        folder,
                        StopRule.MIN_GAIN,
                        stopped,
                        all,
                        MORE),
                STOPS);
        if (stopped > 0) {
            double mean = (double) readings / stopped;
            table.row(stopRow("at the stop", mean, then));
            table.row(stopRow("ten readings later", mean + MORE, later));
        }
        return table;
    }

    private static List<Cell> stopRow(String when, double readings, List<List<Score>> byPeg) {
        return List.of(
                Cell.words(when),
                Cell.number(readings, 1),
                Cell.figure(Figure.of(byPeg, Score::deepestRegretMetres)),
                Cell.figure(Figure.of(byPeg, Score::rmseMetres)),
                Cell.figure(Figure.ofOutcomes(byPeg, Outcome::right)),
                Cell.figure(Figure.ofOutcomes(byPeg, Outcome::strict)));
    }
}

package pegbed.bench.quality;

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

    private final List<PracticePeg> pegs;
    private final int draws;

    GuidedBench(List<PracticePeg> pegs, int draws) {
        this.pegs = pegs;
        this.draws = draws;
    }

    /** The tables in Markdown. */
    public static String table(Path practice) throws IOException, InputException {
        return new GuidedBench(PracticePeg.all(practice), DRAWS).table(COUNTS);
    }

    private String table(List<Integer> counts) throws InputException {
        StringBuilder table = new StringBuilder("""
                | plan | readings | deepest regret m | depth RMSE m | flats right | strictly right | sure right | likely right |
                |---|---|---|---|---|---|---|---|
                """);
        for (boolean staggered : new boolean[] {false, true}) {
            for (int count : counts) {
                table.append(row(staggered ? "staggered fan" : "fan", count, fan(count, staggered)));
            }
        }
        List<List<GuidedRun>> runs = runs(counts.get(counts.size() - 1), GuidanceWeights.USUAL);
        for (int count : counts) {
            table.append(row("guided", count, guided(runs, count)));
        }
        return table.append(stops(runs)).toString();
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

    static String row(String plan, int count, List<List<Score>> byPeg) {
        List<Score.Outcome> words = byPeg.stream()
                .flatMap(List::stream)
                .flatMap(score -> score.words().stream())
                .toList();
        return String.format(
                Locale.ROOT,
                "| %s | %d | %s | %s | %s | %s | %s | %s |%n",
                plan,
                count,
                Figure.of(byPeg, Score::deepestRegretMetres),
                Figure.of(byPeg, Score::rmseMetres),
                Figure.ofOutcomes(byPeg, Score.Outcome::right),
                Figure.ofOutcomes(byPeg, Score.Outcome::strict),
                kept(words, Confidence.SURE),
                kept(words, Confidence.LIKELY));
    }

    private static String kept(List<Score.Outcome> words, Confidence confidence) {
        List<Score.Outcome> said =
                words.stream().filter(o -> o.confidence() == confidence).toList();
        return said.stream().filter(Score.Outcome::right).count() + "/" + said.size();
    }

    /** What was known when the guidance said stop, and after ten readings more. */
    private String stops(List<List<GuidedRun>> runs) throws InputException {
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
        StringBuilder words = new StringBuilder(String.format(
                Locale.ROOT,
                "%nThe guidance says stop below a gain of %.2f. It said so in %d of %d runs with %d readings left to take",
                StopRule.MIN_GAIN,
                stopped,
                all,
                MORE));
        if (then.size() < 2) {
            return words.append(".\n").toString();
        }
        return words.append(String.format(
                        Locale.ROOT, ", after %.1f readings on average.%n%n", (double) readings / stopped))
                .append("""
                | when | deepest regret m | depth RMSE m | flats right | strictly right |
                |---|---|---|---|---|
                """)
                .append(stopRow("at the stop", then))
                .append(stopRow("ten readings later", later))
                .toString();
    }

    private static String stopRow(String when, List<List<Score>> byPeg) {
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %s | %s |%n",
                when,
                Figure.of(byPeg, Score::deepestRegretMetres),
                Figure.of(byPeg, Score::rmseMetres),
                Figure.ofOutcomes(byPeg, Score.Outcome::right),
                Figure.ofOutcomes(byPeg, Score.Outcome::strict));
    }
}

package pegbed.bench.quality;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pegbed.bench.practice.PracticePeg;
import pegbed.findings.Confidence;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.surface.plain.LinearInterpolator;
import pegbed.surface.plain.NaturalNeighbourInterpolator;

/** The quality table: every method on every practice peg, for each of its tables of readings. */
public final class QualityBench {
    private static final List<String> READINGS = List.of("fan15.csv", "stagger20.csv", "fan30.csv");

    private static final String HEADER = """
            | readings | method | depth RMSE m | slope RMSE | 90 % coverage | answered | deepest regret m | flats right | strictly right | sure right | likely right |
            |---|---|---|---|---|---|---|---|---|---|---|
            """;

    private QualityBench() {}

    /** A way to see the bottom through readings. */
    private interface Method {
        SurveyedBottom survey(Peg peg) throws InputException;
    }

    private record Named(String name, Method method) {}

    private static final List<Named> METHODS = List.of(
            new Named("Pegbed", ModelBottom::new),
            new Named("triangulation", peg -> new InterpolatedBottom(peg, LinearInterpolator::new)),
            new Named("natural neighbours", peg -> new InterpolatedBottom(peg, NaturalNeighbourInterpolator::new)));

    /** The table in Markdown. */
    public static String table(Path practice) throws IOException, InputException {
        List<PracticePeg> pegs = PracticePeg.all(practice);
        StringBuilder table = new StringBuilder(HEADER);
        StringBuilder single = new StringBuilder(
                "\n| readings | peg | depth RMSE m | slope RMSE | 90 % coverage | deepest regret m |\n|---|---|---|---|---|---|\n");
        for (String readings : READINGS) {
            for (Named method : METHODS) {
                List<Score> scores = new ArrayList<>();
                for (PracticePeg peg : pegs) {
                    Path file = practice.resolve(peg.name()).resolve(readings);
                    if (!Files.exists(file)) {
                        throw new InputException("There is no " + file + ".");
                    }
                    Score score = Score.of(method.method().survey(peg.with(file)), peg);
                    scores.add(score);
                    if (method.name().equals("Pegbed")) {
                        single.append(String.format(
                                Locale.ROOT,
                                "| %s | %s | %.3f | %.3f | %.2f | %.3f |%n",
                                readings,
                                peg.name(),
                                score.rmseMetres(),
                                score.slopeRmse(),
                                score.coverage(),
                                score.deepestRegretMetres()));
                    }
                }
                table.append(row(readings, method.name(), scores));
            }
        }
        return table.append(single).toString();
    }

    private static String row(String readings, String method, List<Score> scores) {
        List<Score.Outcome> flats =
                scores.stream().flatMap(score -> score.flats().stream()).toList();
        List<Score.Outcome> words =
                scores.stream().flatMap(score -> score.words().stream()).toList();
        return String.format(
                Locale.ROOT,
                "| %s | %s | %.4f | %.3f | %s | %.3f | %.3f | %s | %s | %s | %s |%n",
                readings,
                method,
                Score.mean(scores, Score::rmseMetres),
                Score.mean(scores, Score::slopeRmse),
                Double.isNaN(scores.get(0).coverage())
                        ? "–"
                        : String.format(Locale.ROOT, "%.3f", Score.mean(scores, Score::coverage)),
                Score.mean(scores, Score::answered),
                Score.mean(scores, Score::deepestRegretMetres),
                share(flats.stream().filter(Score.Outcome::right).count(), flats.size()),
                share(flats.stream().filter(Score.Outcome::strict).count(), flats.size()),
                kept(words, Confidence.SURE),
                kept(words, Confidence.LIKELY));
    }

    private static String kept(List<Score.Outcome> words, Confidence confidence) {
        List<Score.Outcome> said =
                words.stream().filter(o -> o.confidence() == confidence).toList();
        return said.isEmpty()
                ? "none said"
                : share(said.stream().filter(Score.Outcome::right).count(), said.size());
    }

    private static String share(long part, int whole) {
        return String.format(Locale.ROOT, "%d/%d = %.2f", part, whole, (double) part / whole);
    }
}

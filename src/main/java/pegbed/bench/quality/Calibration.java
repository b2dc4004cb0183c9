package pegbed.bench.quality;

import static pegbed.bench.quality.BenchTable.column;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbed.findings.Confidence;

/**
 * Whether odds and words are true: of the spots that were named with odds in a bin, how many were as they were named.
 * What the odds are of is ±5 cm and 0.20; a person is served by ±10 cm and 0.30.
 */
final class Calibration {
    private static final double[] BOUNDS = {0, 0.2, 0.5, 0.8, 0.9, 1};

    private static final List<BenchTable.Column> BINS = List.of(
            column("named", "named"),
            column("p_from", "P from"),
            column("p_to", "P to"),
            column("count", "count"),
            column("mean_p", "mean P"),
            column("share_strict", "share within 5 cm and 0.20"),
            column("share_right", "share within 10 cm and 0.30"));

    private static final List<BenchTable.Column> WORDS = List.of(
            column("named", "named"),
            column("sure_right", "sure right"),
            column("likely_right", "likely right"),
            column("sure_strictly_right", "sure strictly right"),
            column("likely_strictly_right", "likely strictly right"));

    private Calibration() {}

    /** Everything that the scores' methods named, by what it was named for. */
    static Map<String, List<Outcome>> named(List<Score> scores) {
        Map<String, List<Outcome>> named = new LinkedHashMap<>();
        named.put(
                "flats at the target",
                scores.stream().flatMap(s -> s.words().stream()).toList());
        named.put("lines", lines(scores));
        for (SurveyedBottom.Kind kind : SurveyedBottom.Kind.values()) {
            named.put(
                    kind.words(),
                    scores.stream()
                            .flatMap(s -> s.lines().getOrDefault(kind, List.of()).stream())
                            .toList());
        }
        return named;
    }

    /** Outcomes of all lines, each once, flat at the depth for which it was named. */
    static List<Outcome> lines(List<Score> scores) {
        return scores.stream()
                .flatMap(s -> s.lines().entrySet().stream())
                .filter(e -> e.getKey() != SurveyedBottom.Kind.TRACK_SLOPE)
                .flatMap(e -> e.getValue().stream())
                .toList();
    }

    static BenchTable bins(String folder, List<Score> scores) {
        BenchTable table =
                new BenchTable("calibration", folder, "Odds of named spots, " + folder + ", all tables", BINS);
        named(scores).forEach((name, outcomes) -> {
            for (int bin = 0; bin + 1 < BOUNDS.length; bin++) {
                List<Outcome> within = new ArrayList<>();
                for (Outcome outcome : outcomes) {
                    if (outcome.probability().isPresent()
                            && bin(outcome.probability().getAsDouble()) == bin) {
                        within.add(outcome);
                    }
                }
                double mean = within.stream()
                        .mapToDouble(o -> o.probability().getAsDouble())
                        .average()
                        .orElse(Double.NaN);
                table.row(List.of(
                        Cell.words(name),
                        Cell.number(BOUNDS[bin], 1),
                        Cell.number(BOUNDS[bin + 1], 1),
                        Cell.count(within.size()),
                        Cell.number(mean, 2),
                        Cell.number(share(within, true), 2),
                        Cell.number(share(within, false), 2)));
            }
        });
        return table;
    }

    /** The bin of odds: from its lower bound on, the last one's upper bound included. */
    static int bin(double probability) {
        int bin = 0;
        while (bin + 2 < BOUNDS.length && probability >= BOUNDS[bin + 1]) {
            bin++;
        }
        return bin;
    }

    private static double share(List<Outcome> outcomes, boolean strict) {
        return outcomes.stream()
                .mapToInt(o -> (strict ? o.strict() : o.right()) ? 1 : 0)
                .average()
                .orElse(Double.NaN);
    }

    static BenchTable words(String folder, List<Score> scores) {
        BenchTable table = new BenchTable(
                "words",
                folder,
                "Words of named spots, " + folder
                        + ", all tables; right within 10 cm and 0.30, strictly within 5 cm and 0.20",
                WORDS);
        named(scores)
                .forEach((name, outcomes) -> table.row(List.of(
                        Cell.words(name),
                        Cell.kept(outcomes, Confidence.SURE, Outcome::right),
                        Cell.kept(outcomes, Confidence.LIKELY, Outcome::right),
                        Cell.kept(outcomes, Confidence.SURE, Outcome::strict),
                        Cell.kept(outcomes, Confidence.LIKELY, Outcome::strict))));
        return table;
    }
}

package pegbed.guidance;

import java.util.List;
import java.util.Locale;
import pegbed.notation.Wording;

/**
 * What check readings said of the map.
 *
 * @param verdict in short
 * @param offsetMetres what the verdict rests on: by how much the distances are too long, or by how much it reads too deep,
 *     metres; 0 where neither
 * @param sentence the same, plainly
 */
public record CheckAnswer(Verdict verdict, double offsetMetres, String sentence) {
    /** What was found. */
    public enum Verdict {
        AGREES,
        DISTANCES_WRONG,
        LEVEL_WRONG,
        ROUGHER
    }

    /** Beyond this sum of squares, a reading, chance is no explanation (5 % of normal deviates lie beyond 1.96). */
    private static final double CHANCE = 1.96 * 1.96;

    /** Standard deviations of a wrong distance and a wrong level before they are looked for, metres (our choice). */
    private static final double DISTANCE_SD = 0.4;

    private static final double LEVEL_SD = 0.12;

    /**
     * One check reading.
     *
     * @param metres depth read less depth expected
     * @param sdMetres standard deviation to be expected of that, above 0
     * @param outward change of depth per metre outward there
     */
    record Difference(double metres, double sdMetres, double outward) {}

    static CheckAnswer of(Wording wording, List<Difference> differences) {
        double misfit = misfit(differences, 0, 0);
        double worst = differences.stream()
                .mapToDouble(d -> Math.abs(d.metres() / d.sdMetres()))
                .max()
                .orElse(0);
        if (worst * worst <= CHANCE) {
            return new CheckAnswer(
                    Verdict.AGREES, 0, "The check readings agree with the map: " + said(wording, differences));
        }
        // A distance said too long by b reads f(r − b), shallower by b times the outward fall; a high water reads
        // deeper.
        double distance = fitted(differences, true);
        double level = fitted(differences, false);
        double byDistance = misfit(differences, distance, 0) + square(distance / DISTANCE_SD);
        double byLevel = misfit(differences, 0, level) + square(level / LEVEL_SD);
        if (Math.min(byDistance, byLevel) > misfit / 2) {
            return new CheckAnswer(
                    Verdict.ROUGHER,
                    0,
                    "The check readings do not agree with the map: " + said(wording, differences)
                            + " Trust it less between the readings, and plumb what you mean to fish.");
        }
        if (byDistance <= byLevel) {
            return new CheckAnswer(
                    Verdict.DISTANCES_WRONG,
                    distance,
                    String.format(
                            Locale.ROOT,
                            "The check readings fit only if distances are told about %.1f m too %s: check which joint is which.",
                            Math.abs(distance),
                            distance > 0 ? "long" : "short"));
        }
        return new CheckAnswer(
                Verdict.LEVEL_WRONG,
                level,
                String.format(
                        Locale.ROOT,
                        "The check readings are about %s %s than the others: the water has %s, or the float has slipped."
                                + " Plumb a known spot again.",
                        wording.depthToHalfInch(Math.abs(level)),
                        level > 0 ? "deeper" : "shallower",
                        level > 0 ? "risen" : "fallen"));
    }

    /** The likeliest wrong distance or wrong level, by least squares with its prior. */
    private static double fitted(List<Difference> differences, boolean distance) {
        double sd = distance ? DISTANCE_SD : LEVEL_SD;
        double precision = 1 / (sd * sd);
        double pull = 0;
        for (Difference d : differences) {
            double effect = distance ? -d.outward() : 1;
            precision += effect * effect / (d.sdMetres() * d.sdMetres());
            pull += effect * d.metres() / (d.sdMetres() * d.sdMetres());
        }
        return pull / precision;
    }

    private static double misfit(List<Difference> differences, double distance, double level) {
        double sum = 0;
        for (Difference d : differences) {
            sum += square((d.metres() + distance * d.outward() - level) / d.sdMetres());
        }
        return sum;
    }

    private static double square(double value) {
        return value * value;
    }

    private static String said(Wording wording, List<Difference> differences) {
        StringBuilder words = new StringBuilder("they are ");
        for (int i = 0; i < differences.size(); i++) {
            Difference d = differences.get(i);
            words.append(i == 0 ? "" : i == differences.size() - 1 ? " and " : ", ")
                    .append(wording.depthToHalfInch(Math.abs(d.metres())))
                    .append(d.metres() >= 0 ? " deeper" : " shallower");
        }
        double most =
                differences.stream().mapToDouble(Difference::sdMetres).max().orElse(0);
        return words.append(", where up to ")
                .append(wording.depthToHalfInch(2 * most))
                .append(" was to be expected.")
                .toString();
    }
}

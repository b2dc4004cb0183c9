package pegbed.guidance;

import java.util.List;

/**
 * What check readings show of the map.
 *
 * @param verdict in short
 * @param offsetMetres what the verdict rests on: by how much the distances are too long, or by how much it reads too
 *     deep, metres; 0 where neither
 * @param differences the check readings, in the order in which they were taken
 */
public record CheckAnswer(Verdict verdict, double offsetMetres, List<Difference> differences) {
    /** What was found. */
    public enum Verdict {
        /** The differences are such as chance makes. */
        AGREES,
        /** The distances of the other readings are too long or too short. */
        DISTANCES_WRONG,
        /** The check readings are all deeper or all shallower than the map. */
        LEVEL_WRONG,
        /** Neither explains them: the bottom is rougher than the map shows. */
        ROUGHER
    }

    public CheckAnswer {
        differences = List.copyOf(differences);
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
    public record Difference(double metres, double sdMetres, double outward) {}

    static CheckAnswer of(List<Difference> differences) {
        double misfit = misfit(differences, 0, 0);
        double worst = differences.stream()
                .mapToDouble(d -> Math.abs(d.metres() / d.sdMetres()))
                .max()
                .orElse(0);
        if (worst * worst <= CHANCE) {
            return new CheckAnswer(Verdict.AGREES, 0, differences);
        }
        // Distances too long by b read f(r − b), shallower by b times the outward fall; a high water reads deeper.
        double distance = fitted(differences, true);
        double level = fitted(differences, false);
        double byDistance = misfit(differences, distance, 0) + square(distance / DISTANCE_SD);
        double byLevel = misfit(differences, 0, level) + square(level / LEVEL_SD);
        if (Math.min(byDistance, byLevel) > misfit / 2) {
            return new CheckAnswer(Verdict.ROUGHER, 0, differences);
        }
        return byDistance <= byLevel
                ? new CheckAnswer(Verdict.DISTANCES_WRONG, distance, differences)
                : new CheckAnswer(Verdict.LEVEL_WRONG, level, differences);
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
}

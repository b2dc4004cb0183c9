package pegbed.notation;

/**
 * How well each way of saying a place is known: one standard deviation each.
 *
 * @param sdMarkDegrees direction by a mark, with or without an offset, degrees, 0 to 45
 * @param sdAngleDegrees direction in degrees, degrees, 0 to 45
 * @param sdClockDegrees direction as a clock time, degrees, 0 to 45
 * @param sdJointMetres distance by a joint of the pole, with or without an offset, metres, 0 to 5
 * @param sdPlainMetres distance in metres or feet, metres, 0 to 5
 */
public record Precisions(
        double sdMarkDegrees,
        double sdAngleDegrees,
        double sdClockDegrees,
        double sdJointMetres,
        double sdPlainMetres) {
    /** Mark 1.5°, degrees 3°, clock 5°; joint 0.10 m, plain distance 0.15 m (common practice). */
    public static final Precisions USUAL = new Precisions(1.5, 3, 5, 0.10, 0.15);

    public Precisions {
        within(sdMarkDegrees, 45, "a mark in degrees");
        within(sdAngleDegrees, 45, "a direction in degrees");
        within(sdClockDegrees, 45, "a clock time in degrees");
        within(sdJointMetres, 5, "a joint in metres");
        within(sdPlainMetres, 5, "a plain distance in metres");
    }

    private static void within(double value, double max, String name) {
        if (!(value >= 0 && value <= max)) {
            throw new IllegalArgumentException(
                    "The standard deviation of " + name + " must be between 0 and " + max + ", not " + value + ".");
        }
    }
}

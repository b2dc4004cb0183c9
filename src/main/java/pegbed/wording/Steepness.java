package pegbed.wording;

import pegbed.model.Decimals;

/** Steepness in words. Slopes are rise over run, 0 or more. */
public final class Steepness {
    /** Ground less steep than this is called level: 1 in 50. */
    static final double LEVEL = 0.02;

    private Steepness() {}

    /** "1 in N" for a rise over run; "level" below 1 in 50. */
    public static String oneIn(double slope) {
        if (slope < LEVEL) {
            return "level";
        }
        double n = 1 / slope;
        return "1 in " + Decimals.text(n, n >= 3 ? 0 : 1);
    }

    /** Degrees from level. */
    public static double degrees(double slope) {
        return Math.toDegrees(Math.atan(slope));
    }

    /** "drops 1 ft in N ft", the same in the words of the bank. */
    public static String drops(double slope) {
        if (slope < LEVEL) {
            return "no drop to speak of";
        }
        double n = 1 / slope;
        return "drops 1 ft in " + Decimals.text(n, n >= 3 ? 0 : 1) + " ft";
    }
}

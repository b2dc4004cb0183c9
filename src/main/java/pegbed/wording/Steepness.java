package pegbed.wording;

import java.util.Locale;

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
        return n >= 3 ? String.format(Locale.ROOT, "1 in %.0f", n) : String.format(Locale.ROOT, "1 in %.1f", n);
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
        return n >= 3
                ? String.format(Locale.ROOT, "drops 1 ft in %.0f ft", n)
                : String.format(Locale.ROOT, "drops 1 ft in %.1f ft", n);
    }
}

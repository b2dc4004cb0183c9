package pegbed.surface.gaussian;

/** Matérn correlations (Rasmussen & Williams 2006, Gaussian Processes for Machine Learning, eq. 4.17). */
public final class Matern {
    public static final double ROOT3 = Math.sqrt(3);
    public static final double ROOT5 = Math.sqrt(5);

    private Matern() {}

    /** ν = 3/2: (1 + √3 r) e^(−√3 r), r = distance over length scale, 0 or more. */
    public static double threeHalves(double r) {
        double s = ROOT3 * r;
        return (1 + s) * Math.exp(-s);
    }

    /**
     * ν = 3/2 of many distances, and its derivative with respect to the logarithm of the length scale, 3 r² e^(−√3 r).
     *
     * @param correlation filled
     * @param byLogScale filled
     */
    public static void threeHalves(double[] distances, double length, double[] correlation, double[] byLogScale) {
        double[] s = scaled(distances, ROOT3 / length, correlation);
        for (int i = 0; i < s.length; i++) {
            byLogScale[i] = s[i] * s[i] * correlation[i];
            correlation[i] *= 1 + s[i];
        }
    }

    /** ν = 5/2: (1 + √5 r + 5r²/3) e^(−√5 r). */
    public static double fiveHalves(double r) {
        double s = ROOT5 * r;
        return (1 + s + s * s / 3) * Math.exp(-s);
    }

    /** Product of two ν = 5/2 correlations with one exponential. */
    public static double fiveHalvesProduct(double r, double q) {
        double s = ROOT5 * r;
        double w = ROOT5 * q;
        return (1 + s + s * s / 3) * (1 + w + w * w / 3) * Math.exp(-s - w);
    }

    /**
     * ν = 5/2 of many distances, and its derivative with respect to the logarithm of the length scale, 5r²/3 (1 + √5 r)
     * e^(−√5 r).
     *
     * @param correlation filled
     * @param byLogScale filled
     */
    public static void fiveHalves(double[] distances, double length, double[] correlation, double[] byLogScale) {
        double[] s = scaled(distances, ROOT5 / length, correlation);
        for (int i = 0; i < s.length; i++) {
            double square = s[i] * s[i] * (1.0 / 3);
            byLogScale[i] = square * (1 + s[i]) * correlation[i];
            correlation[i] *= 1 + s[i] + square;
        }
    }

    /** The distances times a factor; fills e to the minus of each. */
    private static double[] scaled(double[] distances, double factor, double[] exponential) {
        double[] s = new double[distances.length];
        for (int i = 0; i < s.length; i++) {
            s[i] = distances[i] * factor;
            exponential[i] = s[i];
        }
        Exponential.ofNegative(exponential, 0, s.length);
        return s;
    }
}

package pegbed.surface;

/** Matérn correlations (Rasmussen & Williams 2006, Gaussian Processes for Machine Learning, eq. 4.17). */
final class Matern {
    private static final double ROOT3 = Math.sqrt(3);
    private static final double ROOT5 = Math.sqrt(5);

    private Matern() {}

    /** ν = 3/2: (1 + √3 r) e^(−√3 r), r = distance over length scale, 0 or more. */
    static double threeHalves(double r) {
        double s = ROOT3 * r;
        return (1 + s) * Math.exp(-s);
    }

    /** Derivative of {@link #threeHalves} with respect to the logarithm of the length scale: 3 r² e^(−√3 r). */
    static double threeHalvesByLogScale(double r) {
        return 3 * r * r * Math.exp(-ROOT3 * r);
    }

    /** ν = 5/2: (1 + √5 r + 5r²/3) e^(−√5 r). */
    static double fiveHalves(double r) {
        double s = ROOT5 * r;
        return (1 + s + s * s / 3) * Math.exp(-s);
    }

    /** Product of two ν = 5/2 correlations with one exponential. */
    static double fiveHalvesProduct(double r, double q) {
        double s = ROOT5 * r;
        double w = ROOT5 * q;
        return (1 + s + s * s / 3) * (1 + w + w * w / 3) * Math.exp(-s - w);
    }

    /** Derivative of {@link #fiveHalves} with respect to the logarithm of the length scale: 5r²/3 (1 + √5 r) e^(−√5 r). */
    static double fiveHalvesByLogScale(double r) {
        double s = ROOT5 * r;
        return s * s / 3 * (1 + s) * Math.exp(-s);
    }
}

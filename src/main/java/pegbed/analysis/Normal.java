package pegbed.analysis;

/** The standard normal distribution. */
final class Normal {
    private static final double ROOT = 1 / Math.sqrt(2 * Math.PI);

    private Normal() {}

    /** Φ(z), to 7.5e-8 (Abramowitz & Stegun 1964, Handbook of Mathematical Functions, 26.2.17). */
    static double cumulative(double z) {
        double a = Math.abs(z);
        if (a > 8) {
            return z > 0 ? 1 : 0;
        }
        double t = 1 / (1 + 0.2316419 * a);
        double tail = ROOT
                * Math.exp(-a * a / 2)
                * t
                * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return z > 0 ? 1 - tail : tail;
    }
}

package pegbed.findings;

/** The standard normal distribution. */
public final class StandardNormal {
    private static final double ROOT = 1 / Math.sqrt(2 * Math.PI);

    private StandardNormal() {}

    /** Φ(z), to 7.5e-8 (Abramowitz & Stegun 1964, Handbook of Mathematical Functions, 26.2.17). */
    public static double cumulative(double z) {
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

    private static final int STEPS_PER_UNIT = 128;
    private static final double[] TABLE = new double[2 * 6 * STEPS_PER_UNIT + 2];

    static {
        for (int i = 0; i < TABLE.length; i++) {
            TABLE[i] = cumulative((double) i / STEPS_PER_UNIT - 6);
        }
    }

    /** Φ(z) by a table, to 2e-6: for sums of very many. */
    public static double quick(double z) {
        double place = (z + 6) * STEPS_PER_UNIT;
        if (!(place > 0)) {
            return 0;
        }
        int i = (int) place;
        if (i >= TABLE.length - 1) {
            return 1;
        }
        return TABLE[i] + (place - i) * (TABLE[i + 1] - TABLE[i]);
    }

    /**
     * Probability that a normal value of mean m and standard deviation 1 lies within a band about 0, as {@link #quick}.
     */
    public static double within(double band, double m) {
        return quick(band - m) - quick(-band - m);
    }
}

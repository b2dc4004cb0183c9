package pegbed.day;

/**
 * A rate whose logarithm has a normal distribution.
 *
 * @param log mean of the logarithm
 * @param variance of the logarithm, above 0
 */
record LogNormal(double log, double variance) {
    /** The quadrature need not lie at the very peak. */
    private static final double CLOSE = 1e-3;

    private static final int MOST_STEPS = 100;

    LogNormal {
        if (!(Double.isFinite(log) && variance > 0 && variance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "A logarithm's mean is finite and its variance above 0, not " + log + " and " + variance + ".");
        }
    }

    double mean() {
        return Math.exp(log + variance / 2);
    }

    /** The squared coefficient of variation of a rate whose logarithm has a variance. */
    static double squaredVariation(double variance) {
        return Math.expm1(variance);
    }

    /** The variance of the logarithm of a rate with a squared coefficient of variation. */
    static double variance(double squaredVariation) {
        return Math.log1p(squaredVariation);
    }

    /** The gamma distribution of the same mean and variance. */
    GammaDistribution gamma() {
        return GammaDistribution.ofMean(mean(), squaredVariation(variance));
    }

    /**
     * What a count makes of it.
     *
     * @param after the logarithm given the count, by its mean and variance
     * @param logProbability ln of the probability of the count, but for a term that depends on the count alone
     */
    record Learned(LogNormal after, double logProbability) {}

    /**
     * This rate after a Poisson count: by Gauss–Hermite quadrature about the likeliest value (Liu & Pierce 1994,
     * Biometrika 81:624–629).
     *
     * @param exposure in which the count came, in the unit of the rate, above 0
     * @param count 0 or more
     */
    Learned learning(double exposure, int count) {
        double mode = mode(exposure, count);
        double spread = 1 / Math.sqrt(1 / variance + exposure * Math.exp(mode));
        double peak = logDensity(mode, exposure, count);
        double sum = 0;
        double first = 0;
        double second = 0;
        for (int g = 0; g < GaussHermite.SIZE; g++) {
            double z = GaussHermite.node(g);
            double density = logDensity(mode + spread * z, exposure, count) - peak + z * z / 2;
            double weight = GaussHermite.weight(g) * Math.exp(density);
            sum += weight;
            first += weight * z;
            second += weight * z * z;
        }
        double mean = first / sum;
        LogNormal after = new LogNormal(mode + spread * mean, spread * spread * (second / sum - mean * mean));
        return new Learned(after, peak + Math.log(sum * spread / Math.sqrt(variance)));
    }

    private double logDensity(double at, double exposure, int count) {
        double off = at - log;
        return -off * off / (2 * variance) - exposure * Math.exp(at) + count * (at + Math.log(exposure));
    }

    /** Newton's method, a step of at most 1, on a density whose logarithm is concave. */
    private double mode(double exposure, int count) {
        double at = log;
        for (int step = 0; step < MOST_STEPS; step++) {
            double expected = exposure * Math.exp(at);
            double move = (count - expected - (at - log) / variance) / (expected + 1 / variance);
            move = Math.max(-1, Math.min(1, move));
            at += move;
            if (Math.abs(move) < CLOSE) {
                break;
            }
        }
        return at;
    }
}

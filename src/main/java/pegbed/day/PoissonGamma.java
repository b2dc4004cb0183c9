package pegbed.day;

/** The number of fish where their expected number has a gamma distribution: negative binomial. */
final class PoissonGamma {
    /** Terms of less weight than this are left out. */
    private static final double LEAST = 1e-10;

    private static final int MOST_FISH = 100_000;

    private PoissonGamma() {}

    /** ln of the probability of a count in an exposure (Gelman et al. 2013, section 2.6). */
    static double logProbability(GammaDistribution rate, double exposure, int count) {
        double total = rate.rate() + exposure;
        double log = rate.shape() * Math.log(rate.rate() / total);
        for (int k = 0; k < count; k++) {
            log += Math.log((rate.shape() + k) * exposure / (total * (k + 1)));
        }
        return log;
    }

    /**
     * The probability that one count is more than another, an equal number counting half.
     *
     * @param one of the expected number of fish
     * @param other likewise, independent of it
     */
    static double more(GammaDistribution one, GammaDistribution other) {
        double probability = 0;
        double below = 0;
        double left = 1;
        double oneLog = logProbability(one, 1, 0);
        double otherLog = logProbability(other, 1, 0);
        for (int k = 0; k < MOST_FISH && left > LEAST; k++) {
            double oneTerm = Math.exp(oneLog);
            double otherTerm = Math.exp(otherLog);
            probability += oneTerm * (below + 0.5 * otherTerm);
            below += otherTerm;
            left -= oneTerm;
            oneLog += Math.log((one.shape() + k) / ((one.rate() + 1) * (k + 1)));
            otherLog += Math.log((other.shape() + k) / ((other.rate() + 1) * (k + 1)));
        }
        return Math.min(1, probability);
    }
}

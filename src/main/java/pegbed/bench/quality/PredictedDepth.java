package pegbed.bench.quality;

import pegbed.findings.StandardNormal;

/**
 * What a method expects of the depth at one place: a mixture of normal distributions, of one in the simplest case. The
 * only place where a forecast is turned into figures of merit.
 */
public final class PredictedDepth {
    private static final double LOG_ROOT_2_PI = 0.5 * Math.log(2 * Math.PI);

    private final double[] weights;
    private final double[] means;
    private final double[] sds;

    /**
     * A mixture.
     *
     * @param weights of the components, 0 or more, summing to 1
     * @param means of the components, metres
     * @param sds standard deviations of the components, metres, more than 0
     */
    public PredictedDepth(double[] weights, double[] means, double[] sds) {
        if (weights.length == 0 || means.length != weights.length || sds.length != weights.length) {
            throw new IllegalArgumentException("Each component needs a weight, a mean and a standard deviation.");
        }
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            if (!(weights[i] >= 0) || !(sds[i] > 0) || !Double.isFinite(means[i])) {
                throw new IllegalArgumentException("A component can't have weight " + weights[i] + ", mean " + means[i]
                        + " m and standard deviation " + sds[i] + " m.");
            }
            sum += weights[i];
        }
        if (Math.abs(sum - 1) > 1e-9) {
            throw new IllegalArgumentException("The weights sum to " + sum + ", not to 1.");
        }
        this.weights = weights.clone();
        this.means = means.clone();
        this.sds = sds.clone();
    }

    /** A normal distribution. */
    public static PredictedDepth normal(double meanMetres, double sdMetres) {
        return new PredictedDepth(new double[] {1}, new double[] {meanMetres}, new double[] {sdMetres});
    }

    /** Probability of a depth no greater than this. */
    public double cumulative(double depthMetres) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * StandardNormal.cumulative((depthMetres - means[i]) / sds[i]);
        }
        return sum;
    }

    /** Whether a depth lies in the central interval of a probability, between its two equal tails. */
    public boolean covers(double probability, double depthMetres) {
        return Math.abs(cumulative(depthMetres) - 0.5) <= probability / 2;
    }

    /** Minus the natural logarithm of the density at a depth, per metre; the smaller the better. */
    public double logScore(double depthMetres) {
        double[] logs = new double[weights.length];
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < logs.length; i++) {
            double z = (depthMetres - means[i]) / sds[i];
            logs[i] = Math.log(weights[i]) - z * z / 2 - Math.log(sds[i]) - LOG_ROOT_2_PI;
            most = Math.max(most, logs[i]);
        }
        double sum = 0;
        for (double log : logs) {
            sum += Math.exp(log - most);
        }
        return -most - Math.log(sum);
    }

    /**
     * The continuous ranked probability score at a depth, metres; the smaller the better. In closed form: Gneiting &
     * Raftery 2007, Strictly proper scoring rules, J. Am. Statist. Assoc. 102, for a normal distribution, and Grimit,
     * Gneiting, Berrocal & Johnson 2006, Q. J. R. Meteorol. Soc. 132, for a mixture.
     */
    public double crpsMetres(double depthMetres) {
        double score = 0;
        for (int i = 0; i < weights.length; i++) {
            score += weights[i] * meanDistance(depthMetres - means[i], sds[i]);
            for (int j = 0; j < weights.length; j++) {
                double apart = meanDistance(means[i] - means[j], Math.hypot(sds[i], sds[j]));
                score -= weights[i] * weights[j] * apart / 2;
            }
        }
        return score;
    }

    /** E|Z| of a normal Z. */
    private static double meanDistance(double mean, double sd) {
        double z = mean / sd;
        return 2 * sd * Math.exp(-z * z / 2 - LOG_ROOT_2_PI) + mean * (2 * StandardNormal.cumulative(z) - 1);
    }
}

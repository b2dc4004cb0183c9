package pegbed.day;

/**
 * A gamma distribution, as the posterior of a Poisson rate has it (Gelman et al. 2013, Bayesian Data Analysis, 3rd ed.,
 * section 2.6).
 *
 * @param shape as many events as it stands for, above 0
 * @param rate the exposure in which they came, above 0: the mean is shape/rate
 */
public record GammaDistribution(double shape, double rate) {
    private static final int MOST_STEPS = 200;
    private static final double CLOSE = 1e-12;

    public GammaDistribution {
        if (!(shape > 0 && shape < Double.POSITIVE_INFINITY && rate > 0 && rate < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "Shape and rate of a gamma distribution must be above 0, not " + shape + " and " + rate + ".");
        }
    }

    /** The distribution with a mean and a squared coefficient of variation. */
    static GammaDistribution ofMean(double mean, double squaredVariation) {
        return new GammaDistribution(1 / squaredVariation, 1 / (squaredVariation * mean));
    }

    /** Shape over rate. */
    public double mean() {
        return shape / rate;
    }

    /** Variance over squared mean: 1/shape. */
    double squaredVariation() {
        return 1 / shape;
    }

    /** This distribution of something so many times as large. */
    GammaDistribution times(double factor) {
        return new GammaDistribution(shape, rate / factor);
    }

    /** One of the same mean. */
    GammaDistribution withVariation(double squaredVariation) {
        return ofMean(mean(), squaredVariation);
    }

    /** The distribution of a product of two independent gamma variables, by its mean and variance. */
    GammaDistribution timesIndependent(GammaDistribution other) {
        double own = squaredVariation();
        double others = other.squaredVariation();
        return ofMean(mean() * other.mean(), own + others + own * others);
    }

    /**
     * This distribution of a mean rate after a count whose own rate differs from it by a gamma factor of mean 1: the
     * count and its exposure weigh k/(k + expected count), as in the score of a negative binomial, so that however much
     * is counted it never tells more than k events would.
     *
     * @param count events, 0 or more
     * @param exposure in which they came, 0 or more
     * @param about what the mean rate is about
     * @param k shape of the factor
     */
    GammaDistribution learning(double count, double exposure, double about, double k) {
        double weight = k / (k + about * exposure);
        return new GammaDistribution(shape + weight * count, rate + weight * exposure);
    }

    /** Probability of being at most a value. */
    public double cumulative(double value) {
        return IncompleteGamma.lower(shape, rate * value);
    }

    /**
     * The value below which a variable of this distribution lies with a probability: Newton's method on the logarithm
     * of the value within a bracket, begun at Wilson & Hilferty's approximation (Abramowitz & Stegun 1964, 26.4.17), or
     * at the first term of the series (DLMF 8.7.1) where that is near 0.
     *
     * @param probability above 0 and below 1
     */
    public double quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("A probability lies between 0 and 1, not at " + probability + ".");
        }
        double first = Math.log(probability) + IncompleteGamma.logGamma(shape + 1);
        double cube = 1 - 1 / (9 * shape) + normalQuantile(probability) / (3 * Math.sqrt(shape));
        double log = cube > 0.3 ? Math.log(shape) + 3 * Math.log(cube) : first / shape;
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MOST_STEPS; step++) {
            double x = Math.exp(log);
            double error = IncompleteGamma.lower(shape, x) - probability;
            if (error > 0) {
                high = log;
            } else {
                low = log;
            }
            double slope = Math.exp(shape * log - x - IncompleteGamma.logGamma(shape));
            double next = log - error / slope;
            if (!(next > low && next < high)) {
                next = Double.isInfinite(low) ? high - 1 : Double.isInfinite(high) ? low + 1 : (low + high) / 2;
            }
            if (Math.abs(next - log) < CLOSE) {
                return Math.exp(next) / rate;
            }
            log = next;
        }
        return Math.exp(log) / rate;
    }

    /** To 4.5e-4 (Abramowitz & Stegun 1964, 26.2.23): where a search begins. */
    private static double normalQuantile(double p) {
        double t = Math.sqrt(-2 * Math.log(Math.min(p, 1 - p)));
        double z =
                t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
        return p < 0.5 ? -z : z;
    }
}

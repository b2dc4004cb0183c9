package pegbed.day;

import java.util.List;

/**
 * A gamma distribution of which it is not certain which.
 *
 * @param weights probability of each part; they add up to 1
 * @param parts the distributions, as many as weights
 */
record GammaMixture(double[] weights, List<GammaDistribution> parts) {
    private static final int MOST_STEPS = 60;
    private static final double CLOSE = 1e-7;

    double mean() {
        double mean = 0;
        for (int i = 0; i < weights.length; i++) {
            mean += weights[i] * parts.get(i).mean();
        }
        return mean;
    }

    double cumulative(double value) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] > 0) {
                sum += weights[i] * parts.get(i).cumulative(value);
            }
        }
        return sum;
    }

    /** The value below which it lies with a probability, to 1e-7 relative: by bisection of the logarithm. */
    double quantile(double probability) {
        double high = Math.log(mean());
        double low = high - 1;
        while (cumulative(Math.exp(high)) < probability) {
            high++;
        }
        while (cumulative(Math.exp(low)) > probability) {
            low -= 1 + Math.abs(low);
        }
        for (int step = 0; step < MOST_STEPS && high - low > CLOSE; step++) {
            double middle = (low + high) / 2;
            if (cumulative(Math.exp(middle)) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.exp((low + high) / 2);
    }

    /** The gamma distribution of the same mean and variance. */
    GammaDistribution matched() {
        double mean = mean();
        double square = 0;
        for (int i = 0; i < weights.length; i++) {
            GammaDistribution part = parts.get(i);
            square += weights[i] * part.mean() * part.mean() * (1 + part.squaredVariation());
        }
        return GammaDistribution.ofMean(mean, square / (mean * mean) - 1);
    }
}

package pegbed.day;

/**
 * A figure with its doubt.
 *
 * @param mean expected
 * @param low one time in twenty it is less
 * @param high one time in twenty it is more
 */
public record Estimate(double mean, double low, double high) {
    private static final double TAIL = 0.05;

    static Estimate of(GammaMixture mixture) {
        return new Estimate(mixture.mean(), mixture.quantile(TAIL), mixture.quantile(1 - TAIL));
    }

    static Estimate of(GammaDistribution gamma) {
        return new Estimate(gamma.mean(), gamma.quantile(TAIL), gamma.quantile(1 - TAIL));
    }
}

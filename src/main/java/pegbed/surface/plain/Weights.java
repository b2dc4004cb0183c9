package pegbed.surface.plain;

import java.util.Arrays;
import java.util.List;

/**
 * How much each site counts at one place: some site numbers with a weight each, summing to 1; empty outside the hull.
 */
public final class Weights {
    static final Weights NONE = new Weights(new int[0], new double[0]);

    private final int[] sites;
    private final double[] weights;

    /** Takes the arrays over and scales the weights to sum to 1. */
    Weights(int[] sites, double[] weights) {
        double sum = Arrays.stream(weights).sum();
        for (int k = 0; k < weights.length; k++) {
            weights[k] /= sum;
        }
        this.sites = sites;
        this.weights = weights;
    }

    static Weights one(int site) {
        return new Weights(new int[] {site}, new double[] {1});
    }

    /** Between two sites: {@code share} 0 is all the first, 1 all the second. */
    static Weights between(int first, int second, double share) {
        double s = Math.min(1, Math.max(0, share));
        return new Weights(new int[] {first, second}, new double[] {1 - s, s});
    }

    /** Number of sites that count; 0 outside the hull. */
    public int count() {
        return sites.length;
    }

    /** The number of the k-th site that counts, a place in the interpolator's list of sites. */
    public int site(int k) {
        return sites[k];
    }

    /** The weight of the k-th site that counts. */
    public double weight(int k) {
        return weights[k];
    }

    /** The weight of a site by its number; 0 where it does not count. */
    public double of(int site) {
        double sum = 0;
        for (int k = 0; k < sites.length; k++) {
            sum += sites[k] == site ? weights[k] : 0;
        }
        return sum;
    }

    /** The weighted mean depth in metres, NaN where no site counts. */
    double depth(List<Site> all) {
        if (sites.length == 0) {
            return Double.NaN;
        }
        double depth = 0;
        for (int k = 0; k < sites.length; k++) {
            depth += weights[k] * all.get(sites[k]).depthMetres();
        }
        return depth;
    }
}

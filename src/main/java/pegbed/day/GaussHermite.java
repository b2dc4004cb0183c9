package pegbed.day;

/**
 * Gauss–Hermite quadrature of seven points for the mean over a standard normal variable (Abramowitz & Stegun 1964,
 * table 25.10, its abscissas times √2 and its weights over √π).
 */
final class GaussHermite {
    static final int SIZE = 7;

    private static final double[] NODES = {
        -3.750439717725742,
        -2.366759410734541,
        -1.154405394739968,
        0,
        1.154405394739968,
        2.366759410734541,
        3.750439717725742
    };
    private static final double[] WEIGHTS = {
        5.48268855972218e-4,
        3.075712396758652e-2,
        0.2401231786050127,
        0.4571428571428571,
        0.2401231786050127,
        3.075712396758652e-2,
        5.48268855972218e-4
    };

    private GaussHermite() {}

    /** Standard deviations from the mean. */
    static double node(int i) {
        return NODES[i];
    }

    /** They add up to 1. */
    static double weight(int i) {
        return WEIGHTS[i];
    }
}

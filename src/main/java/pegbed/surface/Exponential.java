package pegbed.surface;

/**
 * e^−x of many numbers at once, written so that a processor does several side by side: e^−x = (e^(−x/1024))^1024, the inner
 * one by its Taylor polynomial, the outer one by ten squarings (scaling and squaring: Moler & Van Loan 2003, Nineteen
 * dubious ways to compute the exponential of a matrix, method 3).
 */
final class Exponential {
    /** Numbers above this are taken as this: e^−60 is 9e-27. */
    private static final double MOST = 60;

    private static final double SHARE = -1.0 / 1024;

    private Exponential() {}

    /**
     * From x to e^−x, in place.
     *
     * @param x 0 or more each; the relative error of the result is below 1e-9 up to 60
     * @param from the first
     * @param to after the last
     */
    static void ofNegative(double[] x, int from, int to) {
        for (int i = from; i < to; i++) {
            double y = Math.min(x[i], MOST) * SHARE;
            double e = 1 + y * (1 + y * (1.0 / 2 + y * (1.0 / 6 + y * (1.0 / 24 + y * (1.0 / 120 + y * (1.0 / 720))))));
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            x[i] = e;
        }
    }
}

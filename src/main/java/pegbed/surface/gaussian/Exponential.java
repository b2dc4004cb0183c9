package pegbed.surface.gaussian;

/**
 * e^−x of many numbers at once, written so that a processor does several side by side: e^−x = 1 / (e^(x/256))^256, the
 * inner one by its Taylor polynomial, the outer one by eight squarings (scaling and squaring: Moler & Van Loan 2003,
 * Nineteen dubious ways to compute the exponential of a matrix, method 3). The polynomial grows without end, so that
 * what is far too large comes to 0 by itself.
 */
public final class Exponential {
    private static final double SHARE = 1.0 / 256;

    private Exponential() {}

    /**
     * From x to e^−x, in place.
     *
     * @param x 0 or more each; the error of the result is below 1e-12
     * @param from the first
     * @param to after the last
     */
    public static void ofNegative(double[] x, int from, int to) {
        for (int i = from; i < to; i++) {
            double y = x[i] * SHARE;
            double e = 1 + y * (1 + y * (1.0 / 2 + y * (1.0 / 6 + y * (1.0 / 24 + y * (1.0 / 120)))));
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            e *= e;
            x[i] = 1 / e;
        }
    }
}

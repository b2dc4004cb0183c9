package pegbed.samples;

import java.util.function.DoubleUnaryOperator;

/**
 * A bottom that nobody has ever plumbed: invented, to make the sample pegs from. Depth below the level of the first
 * visit, metres.
 *
 * @param near y of the near bank by x
 * @param far y of the far bank by x; beyond reach everywhere on a pond
 * @param nearLedge depth of the ledge under the near bank by x
 * @param nearWidth width of that ledge
 * @param farLedge depth of the ledge under the far bank
 * @param farWidth width of that ledge
 * @param track depth of the track by x
 * @param slopes horizontal run of the near and of the far slope
 */
record InventedBottom(
        DoubleUnaryOperator near,
        DoubleUnaryOperator far,
        DoubleUnaryOperator nearLedge,
        double nearWidth,
        double farLedge,
        double farWidth,
        DoubleUnaryOperator track,
        double[] slopes) {
    double depth(double x, double y) {
        double fromNear = y - near.applyAsDouble(x);
        double fromFar = far.applyAsDouble(x) - y;
        double deep = track.applyAsDouble(x);
        double one = side(fromNear, nearLedge.applyAsDouble(x), nearWidth, deep, slopes[0]);
        double other = side(fromFar, farLedge, farWidth, deep, slopes[1]);
        return Math.max(0.02, Math.min(one, other));
    }

    /** Quick at the edge, level on the ledge, a smooth slope, then the track. */
    private static double side(double d, double ledge, double width, double deep, double run) {
        if (d <= 0) {
            return 0;
        }
        double onLedge = 0.2 + (ledge - 0.2) * (1 - Math.exp(-d / 0.25));
        double t = Math.max(0, Math.min(1, (d - width) / run));
        return onLedge + (deep - onLedge) * t * t * (3 - 2 * t);
    }
}

package pegbed.samples;

import java.util.function.DoubleUnaryOperator;

/**
 * A bottom that nobody has ever plumbed: invented, to make the sample pegs from. Depth below the level of the first
 * visit, metres.
 *
 * @param near y of the near bank by x
 * @param far y of the far bank by x; beyond reach everywhere on a pond
 * @param nearShelf depth of the shelf under the near bank by x
 * @param nearWidth width of that shelf
 * @param farShelf depth of the shelf under the far bank
 * @param farWidth width of that shelf
 * @param track depth of the track by x
 * @param slopes horizontal run of the near and of the far slope
 */
record InventedBottom(
        DoubleUnaryOperator near,
        DoubleUnaryOperator far,
        DoubleUnaryOperator nearShelf,
        double nearWidth,
        double farShelf,
        double farWidth,
        DoubleUnaryOperator track,
        double[] slopes) {
    double depth(double x, double y) {
        double fromNear = y - near.applyAsDouble(x);
        double fromFar = far.applyAsDouble(x) - y;
        double deep = track.applyAsDouble(x);
        double one = side(fromNear, nearShelf.applyAsDouble(x), nearWidth, deep, slopes[0]);
        double other = side(fromFar, farShelf, farWidth, deep, slopes[1]);
        return Math.max(0.02, Math.min(one, other));
    }

    /** Quick at the edge, level on the shelf, a smooth slope, then the track. */
    private static double side(double d, double shelf, double width, double deep, double run) {
        if (d <= 0) {
            return 0;
        }
        double onShelf = 0.2 + (shelf - 0.2) * (1 - Math.exp(-d / 0.25));
        double t = Math.max(0, Math.min(1, (d - width) / run));
        return onShelf + (deep - onShelf) * t * t * (3 - 2 * t);
    }
}

package pegbed.surface.plain;

import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;

/**
 * Depth between readings by a fixed rule. Implementations are immutable and may be used by several threads at once.
 *
 * <p>Every implementation passes through its readings, reproduces a plane, and does not depend on the order of the
 * readings.
 */
public interface Interpolator {
    /**
     * The depth at a place.
     *
     * @param xMetres x, metres
     * @param yMetres y, metres
     * @return depth in metres, or NaN outside the convex hull of the readings. The hull of readings in one line is that
     *     line, of one reading that spot, of none nothing.
     */
    double depthAt(double xMetres, double yMetres);

    /** The depth at every node of a grid, NaN outside the convex hull of the readings. */
    default Field over(GridFrame frame) {
        double[] depths = new double[frame.size()];
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                depths[frame.index(column, row)] = depthAt(frame.x(column), frame.y(row));
            }
        }
        return new Field(frame, depths);
    }
}

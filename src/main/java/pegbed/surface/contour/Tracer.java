package pegbed.surface.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateXY;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;

/**
 * Runs through the cells of a grid with a rim of nodes without value round it, and joins the pieces of a contour. One
 * tracer serves one thread, level after level.
 *
 * <p>The corners of a cell count 1, 2, 4, 8 from the near left one counter-clockwise; side k runs on from corner k:
 *
 * <pre>
 *     8 --- 2 --- 4
 *     |           |
 *     3           1
 *     |           |
 *     1 --- 0 --- 2
 * </pre>
 *
 * A crossing is known by its side: twice the number of the side's first node, plus 1 if it runs outwards.
 */
final class Tracer {
    private static final int NONE = -1;

    /** So many cells of a row are passed over at once where a level lies above or below them all. */
    private static final int STRETCH = 16;

    /** From which side to which side the contour runs, corners above at its right; two pieces in a saddle. */
    private static final int[][] PIECES = {
        {}, {3, 0}, {0, 1}, {3, 1},
        {1, 2}, {3, 0, 1, 2}, {0, 2}, {3, 2},
        {2, 3}, {2, 0}, {0, 1, 2, 3}, {2, 1},
        {1, 3}, {1, 0}, {0, 3}, {}
    };

    /** The same in a saddle whose corners above hang together. */
    private static final int[] JOINED_5 = {1, 0, 3, 2};

    private static final int[] JOINED_10 = {0, 3, 2, 1};

    private final GridFrame frame;
    private final int columns;
    private final int rows;
    private final double[] values;
    /** Stretches of a row, and the least and the greatest value at the corners of each. */
    private final int stretches;

    private final double[] least;
    private final double[] most;
    private final boolean throughUnknown;
    private final int[] next;
    private final boolean[] entered;
    private int[] begun = new int[1024];
    private int begunCount;

    /**
     * @param field the values
     * @param throughUnknown whether a node without value counts as below, so that every contour closes; else its cells
     *     are passed over
     */
    Tracer(Field field, boolean throughUnknown) {
        frame = field.frame();
        columns = frame.columns() + 2;
        rows = frame.rows() + 2;
        values = new double[columns * rows];
        Arrays.fill(values, Double.NaN);
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                values[(row + 1) * columns + column + 1] = field.at(column, row);
            }
        }
        stretches = (columns - 1 + STRETCH - 1) / STRETCH;
        least = new double[stretches * (rows - 1)];
        most = new double[least.length];
        bound();
        this.throughUnknown = throughUnknown;
        next = new int[2 * values.length];
        Arrays.fill(next, NONE);
        entered = new boolean[next.length];
    }

    /** The contour's lines and rings, a ring with its first point again at its end. */
    List<Coordinate[]> trace(double level) {
        begunCount = 0;
        for (int stretch = 0; stretch < least.length; stretch++) {
            if (least[stretch] < level && level <= most[stretch]) {
                pieces(stretch, level);
            }
        }
        List<Coordinate[]> lines = new ArrayList<>();
        for (int k = 0; k < begunCount; k++) {
            if (!entered[begun[k]]) {
                lines.add(follow(begun[k], level));
            }
        }
        for (int k = 0; k < begunCount; k++) {
            if (next[begun[k]] != NONE) {
                lines.add(follow(begun[k], level));
            }
        }
        return lines;
    }

    /** The pieces in the cells of a stretch. */
    private void pieces(int stretch, double level) {
        int row = stretch / stretches;
        int first = stretch % stretches * STRETCH;
        int end = Math.min(first + STRETCH, columns - 1);
        int node = row * columns + first;
        int code = bits(node, level);
        for (int column = first; column < end; column++, node++) {
            int right = bits(node + 1, level);
            // The right corners of a cell are the left ones of the next.
            int cell = code | ((right & 1) << 1) | ((right & 8) >> 1);
            if (cell != 0 && cell != 15) {
                piece(node, cell, level);
            }
            code = right;
        }
    }

    /** Notes between which values the nodes of each stretch of cells lie; a node without value counts as below all. */
    private void bound() {
        double[] low = new double[stretches * rows];
        double[] high = new double[low.length];
        for (int stretch = 0; stretch < low.length; stretch++) {
            boundRow(stretch, low, high);
        }
        for (int stretch = 0; stretch < least.length; stretch++) {
            least[stretch] = Math.min(low[stretch], low[stretch + stretches]);
            most[stretch] = Math.max(high[stretch], high[stretch + stretches]);
        }
    }

    /** The same for the nodes of one row alone. */
    private void boundRow(int stretch, double[] low, double[] high) {
        int first = stretch / stretches * columns + stretch % stretches * STRETCH;
        int last = first + Math.min(STRETCH, columns - 1 - stretch % stretches * STRETCH);
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        boolean unknown = false;
        for (int node = first; node <= last; node++) {
            double here = values[node];
            lowest = here < lowest ? here : lowest;
            highest = here > highest ? here : highest;
            unknown |= Double.isNaN(here);
        }
        low[stretch] = unknown ? Double.NEGATIVE_INFINITY : lowest;
        high[stretch] = highest;
    }

    /** 1 if a node is above, and 8 if the node behind it is. */
    private int bits(int node, double level) {
        return (values[node] >= level ? 1 : 0) | (values[node + columns] >= level ? 8 : 0);
    }

    private void piece(int node, int cell, double level) {
        double a = values[node] - level;
        double b = values[node + 1] - level;
        double c = values[node + columns + 1] - level;
        double d = values[node + columns] - level;
        if (!throughUnknown && Double.isNaN(a + b + c + d)) {
            return;
        }
        int[] sides = PIECES[cell];
        if (sides.length == 4 && (a * c - b * d) / (a + c - b - d) >= 0) {
            sides = cell == 5 ? JOINED_5 : JOINED_10;
        }
        for (int k = 0; k < sides.length; k += 2) {
            int from = crossing(node, sides[k]);
            int to = crossing(node, sides[k + 1]);
            next[from] = to;
            entered[to] = true;
            if (begunCount == begun.length) {
                begun = Arrays.copyOf(begun, 2 * begunCount);
            }
            begun[begunCount++] = from;
        }
    }

    private int crossing(int node, int side) {
        return switch (side) {
            case 0 -> 2 * node;
            case 1 -> 2 * (node + 1) + 1;
            case 2 -> 2 * (node + columns);
            default -> 2 * node + 1;
        };
    }

    /** Follows a line to its end or a ring round, and wipes its track. */
    private Coordinate[] follow(int start, double level) {
        Coordinate[] points = new Coordinate[64];
        int count = 0;
        int at = start;
        do {
            if (count + 1 == points.length) {
                points = Arrays.copyOf(points, 2 * points.length);
            }
            points[count++] = point(at, level);
            int onward = next[at];
            next[at] = NONE;
            entered[at] = false;
            at = onward;
        } while (at != NONE && at != start);
        if (at == start) {
            points[count++] = points[0];
        }
        return Arrays.copyOf(points, count);
    }

    private Coordinate point(int crossing, double level) {
        int node = crossing >> 1;
        boolean outwards = (crossing & 1) == 1;
        double first = values[node];
        double second = values[outwards ? node + columns : node + 1];
        double along = first >= level
                ? Tolerance.crossing(first, second, level)
                : 1 - Tolerance.crossing(second, first, level);
        double column = node % columns - 1;
        double row = node / columns - 1;
        return new CoordinateXY(
                frame.xMinMetres() + (outwards ? column : column + along) * frame.cellMetres(),
                frame.yMinMetres() + (outwards ? row + along : row) * frame.cellMetres());
    }
}

package pegbed.surface;

import java.util.Arrays;
import pegbed.surface.grid.GridFrame;

/**
 * The nodes of a grid that are computed, as places in arrays ("slots") row by row: the water and some cells about it.
 */
public final class GridNodes {
    /** So many cells about the water belong to it: a disc's two and one more for slopes. */
    private static final int ABOUT = 3;

    final GridFrame frame;
    final boolean[] water;
    /** Node of each slot. */
    final int[] node;

    /** Column of each slot. */
    private final int[] column;

    private final int[] slot;

    GridNodes(GridFrame frame, boolean[] water) {
        this.frame = frame;
        this.water = water;
        boolean[] wanted = grown(frame, water, ABOUT);
        slot = new int[frame.size()];
        int count = 0;
        for (int i = 0; i < slot.length; i++) {
            slot[i] = wanted[i] ? count++ : -1;
        }
        node = new int[count];
        column = new int[count];
        for (int i = 0; i < slot.length; i++) {
            if (slot[i] >= 0) {
                node[slot[i]] = i;
                column[slot[i]] = i % frame.columns();
            }
        }
    }

    /** A value that is not known yet for every node of the frame. */
    double[] unknown() {
        double[] values = new double[frame.size()];
        Arrays.fill(values, Double.NaN);
        return values;
    }

    int count() {
        return node.length;
    }

    /** Slot of the node so many columns and rows from a water node of the frame, within a disc of it. */
    public int slot(int node, int columns, int rows) {
        return slot[node + columns + rows * frame.columns()];
    }

    /** Slot of the node so many columns and rows from that of a slot; -1 if it is not computed. */
    int neighbour(int slot, int columns, int rows) {
        int column = this.column[slot] + columns;
        int at = node[slot] + columns + rows * frame.columns();
        boolean within = column >= 0 && column < frame.columns() && at >= 0 && at < this.slot.length;
        return within ? this.slot[at] : -1;
    }

    /** Coordinates of the slots' nodes: x, then y, metres. */
    double[][] coordinates() {
        double[][] at = new double[2][node.length];
        for (int i = 0; i < node.length; i++) {
            at[0][i] = frame.x(column[i]);
            at[1][i] = frame.y(node[i] / frame.columns());
        }
        return at;
    }

    /** Values by slot as values by node of the frame; NaN where none is computed. */
    double[] byNode(double[] values) {
        double[] nodes = unknown();
        for (int i = 0; i < values.length; i++) {
            nodes[node[i]] = values[i];
        }
        return nodes;
    }

    /** Central difference of values by slot, one-sided where a neighbour is missing, per metre. */
    double difference(double[] values, int i, int columns, int rows) {
        int before = neighbour(i, -columns, -rows);
        int after = neighbour(i, columns, rows);
        if (before < 0 && after < 0) {
            return 0;
        }
        double run = (before >= 0 && after >= 0 ? 2 : 1) * frame.cellMetres();
        return (values[after >= 0 ? after : i] - values[before >= 0 ? before : i]) / run;
    }

    /** The mask grown by a number of cells in all eight directions. */
    private static boolean[] grown(GridFrame frame, boolean[] mask, int cells) {
        boolean[] wide = new boolean[mask.length];
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                if (mask[frame.index(column, row)]) {
                    int left = Math.max(0, column - cells);
                    int right = Math.min(frame.columns() - 1, column + cells);
                    for (int r = Math.max(0, row - cells); r <= Math.min(frame.rows() - 1, row + cells); r++) {
                        Arrays.fill(wide, frame.index(left, r), frame.index(right, r) + 1, true);
                    }
                }
            }
        }
        return wide;
    }
}

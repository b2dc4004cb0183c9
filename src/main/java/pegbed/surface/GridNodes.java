package pegbed.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The nodes of a grid that are computed, as places in arrays ("slots") row by row: the water and some cells about it.
 * Runs of water nodes lie in the arrays in one piece, and so do the nodes of their discs, so that a disc's weights can be
 * applied to a whole run at once.
 */
final class GridNodes {
    /** So many cells about the water belong to it: a disc's two and one more for slopes. */
    private static final int ABOUT = 3;

    final GridFrame frame;
    final boolean[] water;
    /** Node of each slot. */
    final int[] node;

    final List<Run> runs = new ArrayList<>();
    private final int[] slot;

    /**
     * Water nodes side by side.
     *
     * @param node the first
     * @param length how many
     * @param members slots of the nodes of the first one's disc, in the order of {@link Disc#DX}; those of the next one's
     *     are one further, and so on
     */
    record Run(int node, int length, int[] members) {}

    GridNodes(GridFrame frame, boolean[] water) {
        this.frame = frame;
        this.water = water;
        boolean[] wanted = BottomGrid.grown(frame, water, ABOUT);
        slot = new int[frame.size()];
        int count = 0;
        for (int i = 0; i < slot.length; i++) {
            slot[i] = wanted[i] ? count++ : -1;
        }
        node = new int[count];
        for (int i = 0; i < slot.length; i++) {
            if (slot[i] >= 0) {
                node[slot[i]] = i;
            }
        }
        for (int row = 0; row < frame.rows(); row++) {
            int start = 0;
            while (start < frame.columns()) {
                int end = start;
                while (end < frame.columns()
                        && water[frame.index(end, row)]
                        && (end == start || follows(frame.index(end, row)))) {
                    end++;
                }
                if (end > start) {
                    runs.add(new Run(frame.index(start, row), end - start, members(frame.index(start, row))));
                }
                start = Math.max(end, start + 1);
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

    /** Slot of the node so many columns and rows from that of a slot; -1 if it is not computed. */
    int neighbour(int slot, int columns, int rows) {
        int column = node[slot] % frame.columns() + columns;
        int at = node[slot] + columns + rows * frame.columns();
        boolean within = column >= 0 && column < frame.columns() && at >= 0 && at < this.slot.length;
        return within ? this.slot[at] : -1;
    }

    /** Coordinates of the slots' nodes: x, then y, metres. */
    double[][] coordinates() {
        double[][] at = new double[2][node.length];
        for (int i = 0; i < node.length; i++) {
            at[0][i] = frame.x(node[i] % frame.columns());
            at[1][i] = frame.y(node[i] / frame.columns());
        }
        return at;
    }

    private int[] members(int first) {
        int[] members = new int[Disc.NODES];
        for (int m = 0; m < Disc.NODES; m++) {
            members[m] = slot[first + Disc.DX[m] + Disc.DY[m] * frame.columns()];
        }
        return members;
    }

    /** Whether the disc of a node has its slots right after those of the node before. */
    private boolean follows(int at) {
        for (int m = 0; m < Disc.NODES; m++) {
            int member = at + Disc.DX[m] + Disc.DY[m] * frame.columns();
            if (slot[member] != slot[member - 1] + 1) {
                return false;
            }
        }
        return true;
    }
}

package pegbed.surface.grid;

/**
 * One number per node of a grid, immutable. NaN is the documented "no value here".
 *
 * <p>The array is handed over at construction and never copied; who made it must not change it afterwards.
 */
public final class Field {
    private final GridFrame frame;
    private final double[] values;

    /**
     * @param frame where the nodes lie
     * @param values one per node, row by row; owned by the field from here on
     */
    public Field(GridFrame frame, double[] values) {
        if (values.length != frame.size()) {
            throw new IllegalArgumentException(
                    "A field needs " + frame.size() + " values, one per node, not " + values.length + ".");
        }
        this.frame = frame;
        this.values = values;
    }

    public GridFrame frame() {
        return frame;
    }

    /** The value at a node; NaN where there is none. */
    public double at(int column, int row) {
        return values[frame.index(column, row)];
    }

    /** The value at a node by its place in row-by-row order; NaN where there is none. */
    public double at(int index) {
        return values[index];
    }

    /** Bilinear value at a place; NaN outside the frame or where one of the four nodes has none. */
    public double sample(double xMetres, double yMetres) {
        double column = (xMetres - frame.xMinMetres()) / frame.cellMetres();
        double row = (yMetres - frame.yMinMetres()) / frame.cellMetres();
        if (!(column >= 0 && row >= 0 && column <= frame.columns() - 1 && row <= frame.rows() - 1)) {
            return Double.NaN;
        }
        int c = Math.min((int) column, frame.columns() - 2);
        int r = Math.min((int) row, frame.rows() - 2);
        double p = column - c;
        double q = row - r;
        return (1 - q) * ((1 - p) * at(c, r) + p * at(c + 1, r)) + q * ((1 - p) * at(c, r + 1) + p * at(c + 1, r + 1));
    }
}

package pegbed.surface.grid;

/**
 * Where the nodes of a regular grid lie: node (column, row) at x = xMin + column·cell, y = yMin + row·cell. Rows run
 * away from the angler.
 *
 * @param xMinMetres x of column 0, metres
 * @param yMinMetres y of row 0, metres
 * @param cellMetres distance between neighbouring nodes, metres, above 0
 * @param columns number of columns, 2 or more
 * @param rows number of rows, 2 or more
 */
public record GridFrame(double xMinMetres, double yMinMetres, double cellMetres, int columns, int rows) {
    public GridFrame {
        if (!(cellMetres > 0) || columns < 2 || rows < 2) {
            throw new IllegalArgumentException("A grid needs a cell above 0 and two columns and rows at least, not "
                    + cellMetres + " m, " + columns + " by " + rows + ".");
        }
    }

    /** The smallest frame on whole multiples of the cell that covers a rectangle. */
    public static GridFrame covering(double xMin, double yMin, double xMax, double yMax, double cellMetres) {
        double x0 = Math.floor(xMin / cellMetres) * cellMetres;
        double y0 = Math.floor(yMin / cellMetres) * cellMetres;
        int columns = Math.max(2, (int) Math.ceil((xMax - x0) / cellMetres - 1e-9) + 1);
        int rows = Math.max(2, (int) Math.ceil((yMax - y0) / cellMetres - 1e-9) + 1);
        return new GridFrame(x0, y0, cellMetres, columns, rows);
    }

    /** x of a column, metres. */
    public double x(int column) {
        return xMinMetres + column * cellMetres;
    }

    /** y of a row, metres. */
    public double y(int row) {
        return yMinMetres + row * cellMetres;
    }

    /** Number of nodes. */
    public int size() {
        return columns * rows;
    }

    /** Place of a node in arrays: row by row. */
    public int index(int column, int row) {
        return row * columns + column;
    }
}

package pegbed.surface.grid;

import java.util.Arrays;

/** Finer grids from coarse ones. */
public final class CubicUpsampling {
    private CubicUpsampling() {}

    /**
     * A smooth finer field through the nodes of a coarse one, by Catmull-Rom curves along the rows and then along the
     * columns.
     *
     * <p>A fine node has a value where the corners of its coarse cell that bear on it have one: four inside a cell, two
     * on its side, one at a node. The nodes outside these that the curve also asks for are extrapolated where they are
     * missing, beyond the rim of the grid or without a value: in a straight line through the two nodes next to them,
     * the mean over the directions of the grid in which there are two, or else over the diagonals. So a plane comes
     * back exactly everywhere, and a quadratic surface exactly where no node was missing.
     *
     * <p>Catmull, E. & Rom, R. (1974), "A class of local interpolating splines", in Barnhill & Riesenfeld (eds.),
     * Computer Aided Geometric Design, Academic Press, 317–326.
     *
     * @param coarse the coarse field; not changed
     * @param factor fine cells in a coarse one, along each side; 1 or more
     * @return the field on (columns − 1)·factor + 1 by (rows − 1)·factor + 1 nodes over the same rectangle
     */
    public static Field catmullRom(Field coarse, int factor) {
        if (factor < 1) {
            throw new IllegalArgumentException("A finer grid needs a factor of 1 or more, not " + factor + ".");
        }
        GridFrame from = coarse.frame();
        GridFrame to = new GridFrame(
                from.xMinMetres(),
                from.yMinMetres(),
                from.cellMetres() / factor,
                (from.columns() - 1) * factor + 1,
                (from.rows() - 1) * factor + 1);
        double[][] shares = shares(factor);
        double[] extended = extended(coarse);
        double[][] wide = new double[from.rows() + 2][to.columns()];
        for (int row = 0; row < wide.length; row++) {
            alongRow(extended, row * (from.columns() + 2), shares, wide[row]);
        }
        double[] fine = new double[to.size()];
        double[] between = new double[to.columns()];
        for (int r = 0; r < to.rows(); r++) {
            int row = r / factor;
            double[] share = shares[r % factor];
            if (share != null) {
                weighted(share, wide[row], wide[row + 1], wide[row + 2], wide[row + 3], between);
            }
            System.arraycopy(share == null ? wide[row + 1] : between, 0, fine, to.index(0, r), between.length);
        }
        blankUnknown(coarse, to, factor, fine);
        return new Field(to, fine);
    }

    /** One row of the extended field, which begins at a place, made as fine as it is to be. */
    private static void alongRow(double[] extended, int from, double[][] shares, double[] fine) {
        for (int c = 0, at = from; c < fine.length; at++) {
            fine[c++] = extended[at + 1];
            for (int step = 1; step < shares.length && c < fine.length; step++) {
                double[] share = shares[step];
                fine[c++] = share[0] * extended[at]
                        + share[1] * extended[at + 1]
                        + share[2] * extended[at + 2]
                        + share[3] * extended[at + 3];
            }
        }
    }

    private static void weighted(double[] share, double[] a, double[] b, double[] c, double[] d, double[] sum) {
        double wa = share[0];
        double wb = share[1];
        double wc = share[2];
        double wd = share[3];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = wa * a[i] + wb * b[i] + wc * c[i] + wd * d[i];
        }
    }

    /** The weights of the four nodes round each fine step between the middle two; null at the node itself. */
    private static double[][] shares(int factor) {
        double[][] shares = new double[factor][];
        for (int step = 1; step < factor; step++) {
            double t = (double) step / factor;
            shares[step] = new double[] {
                t * (-1 + t * (2 - t)) / 2,
                (2 + t * t * (-5 + 3 * t)) / 2,
                t * (1 + t * (4 - 3 * t)) / 2,
                t * t * (-1 + t) / 2
            };
        }
        return shares;
    }

    /** The values with a rim of one node more, and with straight-line values where neighbours allow. */
    private static double[] extended(Field coarse) {
        GridFrame frame = coarse.frame();
        int columns = frame.columns() + 2;
        int rows = frame.rows() + 2;
        double[] given = new double[columns * rows];
        Arrays.fill(given, Double.NaN);
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                given[(row + 1) * columns + column + 1] = coarse.at(column, row);
            }
        }
        double[] extended = given.clone();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int node = row * columns + column;
                if (Double.isNaN(given[node])) {
                    double straight = extrapolated(given, columns, rows, column, row, false);
                    extended[node] =
                            Double.isNaN(straight) ? extrapolated(given, columns, rows, column, row, true) : straight;
                }
            }
        }
        return extended;
    }

    private static double extrapolated(double[] given, int columns, int rows, int column, int row, boolean diagonal) {
        double sum = 0;
        int count = 0;
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                int c = column + 2 * dx;
                int r = row + 2 * dy;
                if (Math.abs(dx) + Math.abs(dy) == (diagonal ? 2 : 1) && c >= 0 && r >= 0 && c < columns && r < rows) {
                    double value = 2 * given[(row + dy) * columns + column + dx] - given[r * columns + c];
                    if (!Double.isNaN(value)) {
                        sum += value;
                        count++;
                    }
                }
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /** Takes the fine values away whose coarse corners have none. */
    private static void blankUnknown(Field coarse, GridFrame to, int factor, double[] fine) {
        for (int row = 0; row < coarse.frame().rows(); row++) {
            for (int column = 0; column < coarse.frame().columns(); column++) {
                if (Double.isNaN(coarse.at(column, row))) {
                    int left = Math.max(0, (column - 1) * factor + 1);
                    int right = Math.min(to.columns(), (column + 1) * factor);
                    for (int r = Math.max(0, (row - 1) * factor + 1);
                            r < Math.min(to.rows(), (row + 1) * factor);
                            r++) {
                        Arrays.fill(fine, to.index(left, r), to.index(right - 1, r) + 1, Double.NaN);
                    }
                }
            }
        }
    }
}

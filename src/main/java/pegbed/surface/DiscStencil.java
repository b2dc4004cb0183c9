package pegbed.surface;

/**
 * The three disc functionals of {@link Disc} for all nodes of a run at once: {@link Disc#weight} written out, so that each
 * value is read once and the loops run side by side on a processor.
 */
final class DiscStencil {
    private static final double MEAN = 1.0 / Disc.NODES;
    private static final double SLOPE = Disc.CELL_METRES / 0.875;

    /** D, gx and gy of the nodes of the run that was looked at last. */
    final double[] depth;

    final double[] slopeX;
    final double[] slopeY;

    /** @param longest length of the longest run */
    DiscStencil(int longest) {
        depth = new double[longest];
        slopeX = new double[longest];
        slopeY = new double[longest];
    }

    /**
     * Looks at a run.
     *
     * @param v values by slot
     */
    void look(double[] v, GridNodes.Run run) {
        int[] at = run.members();
        sides(v, at[0], at[1], at[2], at[3], at[4], run.length());
        ends(v, at[5], at[6], at[7], at[8], run.length());
        corners(v, at[9], at[10], at[11], at[12], run.length());
    }

    /** The middle row, left and right. */
    private void sides(double[] v, int middle, int left, int right, int farLeft, int farRight, int length) {
        for (int i = 0; i < length; i++) {
            double l = v[left + i];
            double r = v[right + i];
            double ll = v[farLeft + i];
            double rr = v[farRight + i];
            depth[i] = v[middle + i] + l + r + ll + rr;
            slopeX[i] = r - l + 2 * (rr - ll);
        }
    }

    /** The middle column, near and far. */
    private void ends(double[] v, int near, int far, int nearest, int farthest, int length) {
        for (int i = 0; i < length; i++) {
            double n = v[near + i];
            double f = v[far + i];
            double nn = v[nearest + i];
            double ff = v[farthest + i];
            depth[i] += n + f + nn + ff;
            slopeY[i] = f - n + 2 * (ff - nn);
        }
    }

    /** The corners between, which end the sums. */
    private void corners(double[] v, int nearLeft, int farLeft, int nearRight, int farRight, int length) {
        for (int i = 0; i < length; i++) {
            double nl = v[nearLeft + i];
            double fl = v[farLeft + i];
            double nr = v[nearRight + i];
            double fr = v[farRight + i];
            depth[i] = (depth[i] + nl + fl + nr + fr) * MEAN;
            slopeX[i] = (slopeX[i] + nr + fr - nl - fl) * SLOPE;
            slopeY[i] = (slopeY[i] + fl + fr - nl - nr) * SLOPE;
        }
    }

    /** Takes the products of the three from C_DD, C_DX, C_DY, C_XX, C_XY, C_YY, places 3 to 8 of arrays by node. */
    void takeProducts(double[][] disc, GridNodes.Run run) {
        subtract(depth, disc[3], disc[4], disc[5], run);
        int first = run.node();
        double[] xx = disc[6];
        double[] xy = disc[7];
        double[] yy = disc[8];
        for (int i = 0; i < run.length(); i++) {
            double x = slopeX[i];
            double y = slopeY[i];
            xx[first + i] -= x * x;
            xy[first + i] -= x * y;
            yy[first + i] -= y * y;
        }
    }

    /**
     * Moves discs by one row more: D, gx and gy by its values times β, their covariances less its products.
     *
     * @param discs nine figures a disc, side by side
     * @param from where the run's first disc is
     * @param parts how many figures a disc has
     */
    void move(double[] discs, int from, int parts, double beta, int length) {
        for (int i = 0; i < length; i++) {
            int at = from + parts * i;
            double d = depth[i];
            double x = slopeX[i];
            double y = slopeY[i];
            discs[at] += beta * d;
            discs[at + 1] += beta * x;
            discs[at + 2] += beta * y;
            discs[at + 3] -= d * d;
            discs[at + 4] -= d * x;
            discs[at + 5] -= d * y;
            discs[at + 6] -= x * x;
            discs[at + 7] -= x * y;
            discs[at + 8] -= y * y;
        }
    }

    private void subtract(double[] d, double[] dd, double[] dx, double[] dy, GridNodes.Run run) {
        int first = run.node();
        for (int i = 0; i < run.length(); i++) {
            dd[first + i] -= d[i] * d[i];
            dx[first + i] -= d[i] * slopeX[i];
            dy[first + i] -= d[i] * slopeY[i];
        }
    }
}

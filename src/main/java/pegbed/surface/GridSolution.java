package pegbed.surface;

import pegbed.surface.prior.PlaceCoordinates;

/**
 * What was solved for to fill a {@link BottomGrid}. It is kept so that a bottom with one more reading costs one more row
 * ({@link IncrementalUpdate}). Not changed after it is made.
 *
 * @param nodes where values are
 * @param places those nodes in all coordinates
 * @param whitened L⁻¹k of each slot, one after the other
 * @param mean expected depth by slot, metres
 * @param variance of the bottom alone by slot, square metres
 */
record GridSolution(GridNodes nodes, PlaceCoordinates places, double[] whitened, double[] mean, double[] variance) {
    /** How many observations it was solved for. */
    int observations() {
        return whitened.length / mean.length;
    }

    /** The expected depth by node of the frame, metres; NaN where none is computed. */
    double[] depth() {
        double[] depth = nodes.unknown();
        for (int i = 0; i < mean.length; i++) {
            depth[nodes.node[i]] = mean[i];
        }
        return depth;
    }

    /** Standard deviation by node of the depth that a rig laid there would find, metres; NaN where none is computed. */
    double[] sd() {
        double[] sd = nodes.unknown();
        for (int i = 0; i < mean.length; i++) {
            double laying = FittedBottom.layingVariance(slope(i, 1, 0), slope(i, 0, 1));
            sd[nodes.node[i]] = Math.sqrt(Math.max(0, variance[i]) + laying);
        }
        return sd;
    }

    /** Central difference of the mean, one-sided where a neighbour is missing. */
    private double slope(int i, int columns, int rows) {
        int before = nodes.neighbour(i, -columns, -rows);
        int after = nodes.neighbour(i, columns, rows);
        if (before < 0 && after < 0) {
            return 0;
        }
        double run = (before >= 0 && after >= 0 ? 2 : 1) * nodes.frame.cellMetres();
        return (mean[after >= 0 ? after : i] - mean[before >= 0 ? before : i]) / run;
    }
}

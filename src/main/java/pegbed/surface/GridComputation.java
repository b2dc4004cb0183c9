package pegbed.surface;

import java.util.Arrays;
import pegbed.model.Monitor;

/**
 * Fills a {@link BottomGrid}: one row of covariances and one triangular solve a node, then the disc functionals from
 * their neighbours.
 */
final class GridComputation {
    private final FittedBottom bottom;
    private final GridFrame frame;
    private final boolean[] water;
    private final Places places;
    /** Node to its place in the computed ones, or -1. */
    private final int[] slot;

    private final int[] node;
    private final int n;
    /** L⁻¹k of every computed node, node by node. */
    private final double[][] whitened;

    private final double[] mean;
    private final double[] variance;

    GridComputation(FittedBottom bottom, GridFrame frame, boolean[] water) {
        this.bottom = bottom;
        this.frame = frame;
        this.water = water;
        boolean[] wanted = BottomGrid.grown(frame, water, 3);
        slot = new int[frame.size()];
        int count = 0;
        for (int i = 0; i < slot.length; i++) {
            slot[i] = wanted[i] ? count++ : -1;
        }
        node = new int[count];
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < slot.length; i++) {
            if (slot[i] >= 0) {
                node[slot[i]] = i;
                x[slot[i]] = frame.x(i % frame.columns());
                y[slot[i]] = frame.y(i / frame.columns());
            }
        }
        places = bottom.places(x, y);
        n = bottom.observations().count;
        whitened = new double[count][n];
        mean = new double[count];
        variance = new double[count];
    }

    BottomGrid run(Monitor monitor) {
        BottomCovariance k = bottom.covariance();
        Conditioned conditioned = bottom.conditioned();
        for (int i = 0; i < node.length; i++) {
            if (i % 512 == 0) {
                monitor.check();
                monitor.progress(0.6 * i / node.length);
            }
            double[] row = whitened[i];
            bottom.covariances(places, i, row);
            mean[i] = bottom.tub().depth(places.t[i]) + conditioned.mean(row);
            conditioned.whiten(row);
            variance[i] = conditioned.covariance(k.between(places, i, places, i), row, row, 1, 1);
        }
        double[][] disc = discs(monitor);
        double[] depth = filled();
        double[] sd = filled();
        for (int i = 0; i < node.length; i++) {
            depth[node[i]] = mean[i];
            double gx = slope(i, 1);
            double gy = slope(i, frame.columns());
            sd[node[i]] = Math.sqrt(Math.max(0, variance[i]) + FittedBottom.layingVariance(gx, gy));
        }
        monitor.progress(1);
        return BottomGrid.made(frame, water, depth, sd, disc);
    }

    private double[] filled() {
        double[] values = new double[frame.size()];
        Arrays.fill(values, Double.NaN);
        return values;
    }

    /** Central difference of the mean, one-sided where a neighbour is missing. */
    private double slope(int i, int stride) {
        int before = neighbour(i, -stride);
        int after = neighbour(i, stride);
        if (before < 0 && after < 0) {
            return 0;
        }
        double run = (before >= 0 && after >= 0 ? 2 : 1) * frame.cellMetres();
        return (mean[after >= 0 ? after : i] - mean[before >= 0 ? before : i]) / run;
    }

    private int neighbour(int i, int offset) {
        int at = node[i] + offset;
        return at < 0 || at >= slot.length ? -1 : slot[at];
    }

    private double[][] discs(Monitor monitor) {
        double[][] disc = new double[9][];
        Arrays.setAll(disc, f -> filled());
        DiscPrior prior = new DiscPrior(bottom.covariance());
        int[] members = new int[Disc.NODES];
        double[][] functional = new double[3][n];
        Conditioned conditioned = bottom.conditioned();
        for (int i = 0; i < node.length; i++) {
            if (i % 512 == 0) {
                monitor.check();
                monitor.progress(0.6 + 0.4 * i / node.length);
            }
            if (!water[node[i]]) {
                continue;
            }
            double d = 0;
            double gx = 0;
            double gy = 0;
            for (double[] f : functional) {
                Arrays.fill(f, 0);
            }
            for (int m = 0; m < Disc.NODES; m++) {
                int member = slot[node[i] + Disc.DX[m] + Disc.DY[m] * frame.columns()];
                members[m] = member;
                d += Disc.weight(0, m) * mean[member];
                gx += Disc.weight(1, m) * mean[member];
                gy += Disc.weight(2, m) * mean[member];
                accumulate(functional, whitened[member], m);
            }
            double[] c = prior.of(places, members);
            int at = node[i];
            disc[0][at] = d;
            disc[1][at] = gx;
            disc[2][at] = gy;
            disc[3][at] = conditioned.covariance(c[0], functional[0], functional[0], 1, 1);
            disc[4][at] = conditioned.covariance(c[1], functional[0], functional[1], 1, 0);
            disc[5][at] = conditioned.covariance(c[2], functional[0], functional[2], 1, 0);
            disc[6][at] = conditioned.covariance(c[3], functional[1], functional[1], 0, 0);
            disc[7][at] = conditioned.covariance(c[4], functional[1], functional[2], 0, 0);
            disc[8][at] = conditioned.covariance(c[5], functional[2], functional[2], 0, 0);
        }
        return disc;
    }

    private static void accumulate(double[][] functional, double[] row, int m) {
        double[] d = functional[0];
        double[] x = functional[1];
        double[] y = functional[2];
        double wx = Disc.weight(1, m);
        double wy = Disc.weight(2, m);
        for (int j = 0; j < row.length; j++) {
            d[j] += row[j] * (1.0 / Disc.NODES);
            x[j] += row[j] * wx;
            y[j] += row[j] * wy;
        }
    }
}

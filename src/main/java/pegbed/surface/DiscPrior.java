package pegbed.surface;

import java.util.ArrayList;
import java.util.List;

/**
 * Covariance of the three disc functionals before any observation, Σ w_i w_j k(x_i, x_j) over the 13 nodes, for all discs
 * of a grid. Pairs of nodes that lie the same way apart are computed once for all discs; what is local and the factor along
 * the water are the same for all of them but for their roughness. For waters with a bank.
 */
final class DiscPrior {
    /** The pairs of functionals: DD, Dx, Dy, xx, xy, yy. */
    private static final int[][] PAIRS = {{0, 0}, {0, 1}, {0, 2}, {1, 1}, {1, 2}, {2, 2}};

    private final BottomCovariance k;
    private final Places places;
    private final GridNodes nodes;
    private final List<Lag> lags = new ArrayList<>();
    /** What other pegs have told, feature by slot. */
    private final double[][] features;

    /** All pairs of a disc's nodes that lie so many columns and rows apart. */
    private final class Lag {
        private final int columns;
        private final int rows;
        /** Covariance of the profile and of what is local of each slot with the one that lies so apart from it. */
        private final double[] covariance;
        /** The nodes of a disc that the pairs begin at, and what each counts in the six. */
        private final List<Integer> starts = new ArrayList<>();

        private final List<double[]> weights = new ArrayList<>();

        Lag(int columns, int rows) {
            this.columns = columns;
            this.rows = rows;
            covariance = new double[nodes.count()];
            double alike = k.local2 * Matern.threeHalves(Math.hypot(columns, rows) * Disc.CELL_METRES / k.local);
            double along = k.profile2 * Matern.fiveHalves(Math.abs(columns) * Disc.CELL_METRES / k.along);
            double perAcross = Matern.ROOT5 / k.across;
            double[] scaled = new double[covariance.length];
            double[] rough = new double[covariance.length];
            for (int a = 0; a < covariance.length; a++) {
                int b = nodes.neighbour(a, columns, rows);
                // A slot without such a neighbour is never asked for.
                scaled[a] = b < 0 ? 0 : Math.abs(places.v[a] - places.v[b]) * perAcross;
                rough[a] = b < 0 ? 0 : places.roughness[a] * places.roughness[b];
                covariance[a] = scaled[a];
            }
            Exponential.ofNegative(covariance, 0, covariance.length);
            for (int a = 0; a < covariance.length; a++) {
                double profile = along * (1 + scaled[a] + scaled[a] * scaled[a] / 3) * covariance[a];
                covariance[a] = rough[a] * (profile + alike);
            }
        }
    }

    DiscPrior(BottomCovariance k, GridNodes nodes, Places places) {
        this.k = k;
        this.nodes = nodes;
        this.places = places;
        features = places.features();
        for (int i = 0; i < Disc.NODES; i++) {
            for (int j = 0; j < Disc.NODES; j++) {
                int columns = Disc.DX[j] - Disc.DX[i];
                int rows = Disc.DY[j] - Disc.DY[i];
                if (rows > 0 || (rows == 0 && columns >= 0)) {
                    add(i, j, columns, rows);
                }
            }
        }
    }

    private void add(int i, int j, int columns, int rows) {
        double[] weight = new double[PAIRS.length];
        for (int pair = 0; pair < PAIRS.length; pair++) {
            int f = PAIRS[pair][0];
            int g = PAIRS[pair][1];
            weight[pair] = Disc.weight(f, i) * Disc.weight(g, j);
            if (i != j) {
                weight[pair] += Disc.weight(f, j) * Disc.weight(g, i);
            }
        }
        Lag lag = lags.stream()
                .filter(known -> known.columns == columns && known.rows == rows)
                .findFirst()
                .orElseGet(() -> {
                    Lag fresh = new Lag(columns, rows);
                    lags.add(fresh);
                    return fresh;
                });
        lag.starts.add(i);
        lag.weights.add(weight);
    }

    /** Writes C_DD, C_DX, C_DY, C_XX, C_XY, C_YY of the discs of a run to places 3 to 8 of the arrays by node. */
    void into(GridNodes.Run run, double[][] disc) {
        DiscStencil track = new DiscStencil(run.length());
        track.look(places.t, run);
        double[][] shares = {track.depth, track.slopeX, track.slopeY};
        List<DiscStencil> told = told(run);
        for (int pair = 0; pair < PAIRS.length; pair++) {
            double[] c = disc[3 + pair];
            double[] a = shares[PAIRS[pair][0]];
            double[] b = shares[PAIRS[pair][1]];
            double same = pair == 0 ? k.level2 : 0;
            for (int i = 0; i < run.length(); i++) {
                c[run.node() + i] = same + k.track2 * a[i] * b[i];
            }
            for (DiscStencil feature : told) {
                double[] left = side(feature, PAIRS[pair][0]);
                double[] right = side(feature, PAIRS[pair][1]);
                for (int i = 0; i < run.length(); i++) {
                    c[run.node() + i] += left[i] * right[i];
                }
            }
            for (Lag lag : lags) {
                for (int start = 0; start < lag.starts.size(); start++) {
                    double weight = lag.weights.get(start)[pair];
                    if (weight != 0) {
                        int from = run.members()[lag.starts.get(start)];
                        addMultiple(weight, lag.covariance, from, c, run.node(), run.length());
                    }
                }
            }
        }
    }

    /** The discs of what other pegs have told, feature by feature. */
    private List<DiscStencil> told(GridNodes.Run run) {
        List<DiscStencil> told = new ArrayList<>();
        for (double[] feature : features) {
            DiscStencil stencil = new DiscStencil(run.length());
            stencil.look(feature, run);
            told.add(stencil);
        }
        return told;
    }

    private static double[] side(DiscStencil stencil, int functional) {
        return functional == 0 ? stencil.depth : functional == 1 ? stencil.slopeX : stencil.slopeY;
    }

    /** out += weight · values, on parts of both. */
    private static void addMultiple(double weight, double[] values, int from, double[] out, int to, int length) {
        for (int i = 0; i < length; i++) {
            out[to + i] += weight * values[from + i];
        }
    }
}

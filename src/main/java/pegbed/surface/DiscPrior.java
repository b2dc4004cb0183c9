package pegbed.surface;

import java.util.ArrayList;
import java.util.List;
import pegbed.surface.gaussian.Exponential;
import pegbed.surface.gaussian.Matern;
import pegbed.surface.posterior.Disc;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.PlaceCoordinates;

/**
 * Covariance of the three disc functionals before any observation, Σ w_i w_j k(x_i, x_j) over the 13 nodes, for the
 * discs of a grid. Pairs of nodes that lie the same way apart are computed once for all discs; what depends on the
 * distance alone and the factor along the water are the same for all of them. For waters with a bank.
 */
final class DiscPrior {
    /** The pairs of functionals: DD, Dx, Dy, xx, xy, yy. */
    private static final int[][] PAIRS = {{0, 0}, {0, 1}, {0, 2}, {1, 1}, {1, 2}, {2, 2}};

    private final BottomCovariance k;
    private final PlaceCoordinates places;
    private final GridNodes nodes;
    private final List<Lag> lags = new ArrayList<>();
    private final List<Term> terms = new ArrayList<>();

    /**
     * One pair of a disc's nodes.
     *
     * @param covariance of all pairs that lie the same way apart, by slot of the first
     * @param first of the disc's nodes
     * @param weights what the pair counts in the six
     */
    private record Term(double[] covariance, int first, double[] weights) {}

    /** All pairs of nodes that lie so many columns and rows apart. */
    private final class Lag {
        private final int columns;
        private final int rows;
        /** Covariance of the profile and of what is local of each slot with the one that lies so apart from it. */
        private final double[] covariance;

        Lag(int columns, int rows) {
            this.columns = columns;
            this.rows = rows;
            covariance = new double[nodes.count()];
            double distance = Math.hypot(columns, rows) * Disc.CELL_METRES;
            double alike = (k.local2 > 0 ? k.local2 * Matern.threeHalves(distance / k.local) : 0)
                    + (k.isotropic2 > 0 ? k.isotropic2 * Matern.fiveHalves(distance / k.isotropic) : 0);
            if (k.profile2 == 0) {
                java.util.Arrays.fill(covariance, alike);
                return;
            }
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
                covariance[a] = rough[a] * profile + alike;
            }
        }
    }

    DiscPrior(BottomCovariance k, GridNodes nodes, PlaceCoordinates places) {
        this.k = k;
        this.nodes = nodes;
        this.places = places;
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
        terms.add(new Term(lag.covariance, i, weight));
    }

    /** C_DD, C_DX, C_DY, C_XX, C_XY, C_YY of the disc that a stencil is at, which looks at other values for it. */
    double[] of(DiscStencil disc) {
        double[] covariances = new double[PAIRS.length];
        covariances[0] = k.level2;
        for (double[] feature : places.features) {
            disc.look(feature);
            disc.addProducts(1, covariances);
        }
        for (Term term : terms) {
            double alike = term.covariance[disc.slot(term.first)];
            double[] weights = term.weights;
            for (int pair = 0; pair < weights.length; pair++) {
                covariances[pair] += weights[pair] * alike;
            }
        }
        return covariances;
    }
}

package pegbed.surface;

import java.util.Arrays;
import java.util.List;

/**
 * What planned readings would tell before they are taken: by how much a planned reading that comes out one standard
 * deviation deeper than expected would move what is expected elsewhere, cov(f, f_c)/√(var f_c + τ²), with τ² the noise of
 * the planned reading (its depth, and its place on the slope there). The variance of f would fall by the square of that.
 *
 * <p>Immutable and thread-safe.
 */
public final class Lookahead {
    private final FittedBottom bottom;
    private final Places planned;
    /** L⁻¹k of every planned reading. */
    private final double[][] whitened;

    private final double[] spread;

    private Lookahead(FittedBottom bottom, Places planned, double[][] whitened, double[] spread) {
        this.bottom = bottom;
        this.planned = planned;
        this.whitened = whitened;
        this.spread = spread;
    }

    /**
     * The view from a fitted bottom on readings that might be taken next, each by itself.
     *
     * @param planned their depths are not looked at
     */
    public static Lookahead of(FittedBottom bottom, List<Sounding> planned) {
        double[] x = planned.stream().mapToDouble(Sounding::xMetres).toArray();
        double[] y = planned.stream().mapToDouble(Sounding::yMetres).toArray();
        Places places = bottom.places(x, y);
        double[][] rows = rows(bottom, places);
        double[] spread = new double[x.length];
        for (int c = 0; c < x.length; c++) {
            double variance = bottom.conditioned()
                    .covariance(bottom.covariance().between(places, c, places, c), rows[c], rows[c], 1, 1);
            spread[c] = Math.sqrt(Math.max(variance, 0) + bottom.readingVariance(planned.get(c)));
        }
        return new Lookahead(bottom, places, rows, spread);
    }

    private static double[][] rows(FittedBottom bottom, Places places) {
        double[][] rows = new double[places.count][bottom.observations().count];
        for (int i = 0; i < places.count; i++) {
            bottom.covariances(places, i, rows[i]);
            bottom.conditioned().whiten(rows[i]);
        }
        return rows;
    }

    /** The view on some of the planned readings, in the order given. */
    public Lookahead only(int[] readings) {
        double[] x = new double[readings.length];
        double[] y = new double[readings.length];
        double[][] rows = new double[readings.length][];
        double[] some = new double[readings.length];
        for (int i = 0; i < readings.length; i++) {
            x[i] = planned.x[readings[i]];
            y[i] = planned.y[readings[i]];
            rows[i] = whitened[readings[i]];
            some[i] = spread[readings[i]];
        }
        return new Lookahead(bottom, bottom.places(x, y), rows, some);
    }

    /** Number of planned readings. */
    public int size() {
        return planned.count;
    }

    /** Standard deviation of what a planned reading would say, about the depth expected there, metres. */
    public double spreadMetres(int reading) {
        return spread[reading];
    }

    /** Moves of the expected depth at places, metres: place by planned reading. */
    public double[][] depths(double[] xMetres, double[] yMetres) {
        Places places = bottom.places(xMetres, yMetres);
        double[][] rows = rows(bottom, places);
        double[][] moves = new double[places.count][planned.count];
        for (int i = 0; i < places.count; i++) {
            for (int c = 0; c < planned.count; c++) {
                double prior = bottom.covariance().between(places, i, planned, c);
                moves[i][c] = bottom.conditioned().covariance(prior, rows[i], whitened[c], 1, 1) / spread[c];
            }
        }
        return moves;
    }

    /**
     * Moves of the disc quantities at nodes of a grid of {@link Disc#CELL_METRES}: node by quantity (mean depth, then
     * slope to the right, then slope straight out) by planned reading.
     */
    public double[][][] discs(GridFrame frame, int[] nodes) {
        int[] slot = new int[frame.size()];
        Arrays.fill(slot, -1);
        int[] members = new int[nodes.length * Disc.NODES];
        int count = 0;
        for (int node : nodes) {
            for (int m = 0; m < Disc.NODES; m++) {
                int at = node + Disc.DX[m] + Disc.DY[m] * frame.columns();
                if (slot[at] < 0) {
                    members[count] = at;
                    slot[at] = count++;
                }
            }
        }
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = frame.x(members[i] % frame.columns());
            y[i] = frame.y(members[i] / frame.columns());
        }
        double[][] depths = depths(x, y);
        double[][][] moves = new double[nodes.length][3][planned.count];
        for (int k = 0; k < nodes.length; k++) {
            for (int m = 0; m < Disc.NODES; m++) {
                double[] member = depths[slot[nodes[k] + Disc.DX[m] + Disc.DY[m] * frame.columns()]];
                for (int f = 0; f < 3; f++) {
                    double weight = Disc.weight(f, m);
                    for (int c = 0; c < planned.count && weight != 0; c++) {
                        moves[k][f][c] += weight * member[c];
                    }
                }
            }
        }
        return moves;
    }
}

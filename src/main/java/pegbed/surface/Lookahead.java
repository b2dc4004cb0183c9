package pegbed.surface;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.survey.Sounding;

/**
 * What planned readings would tell before they are taken: by how much a planned reading that comes out one standard
 * deviation deeper than expected would move what is expected elsewhere, cov(f, f_c)/√(var f_c + τ²), with τ² the noise of
 * the planned reading (its depth, and its place on the slope there). The variance of f would fall by the square of that.
 *
 * <p>Immutable and thread-safe.
 */
public final class Lookahead {
    private final FittedBottom bottom;
    private final PlaceCoordinates planned;
    /** L⁻¹k of the planned readings, observation by reading; then of the one that was taken, if there is one. */
    private final double[][] whitened;

    private final double[] spread;

    private Lookahead(FittedBottom bottom, PlaceCoordinates planned, double[][] whitened, double[] spread) {
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
        PlaceCoordinates places = bottom.places(x, y);
        double[][] whitened = whitened(bottom, places);
        double[] spread = new double[x.length];
        for (int c = 0; c < x.length; c++) {
            spread[c] = bottom.covariance().between(places, c, places, c);
        }
        bottom.conditioned().takeKnown(spread, whitened, 1);
        double[] noise = bottom.readingVariances(planned);
        for (int c = 0; c < x.length; c++) {
            spread[c] = Math.sqrt(Math.max(spread[c], 0) + noise[c]);
        }
        return new Lookahead(bottom, places, whitened, spread);
    }

    /** L⁻¹k of places, observation by place. */
    private static double[][] whitened(FittedBottom bottom, PlaceCoordinates places) {
        double[][] rows = new double[bottom.observations().count][places.count];
        bottom.covariances(places, rows);
        bottom.conditioned().whiten(rows, 0, places.count);
        return rows;
    }

    /** The view on some of the planned readings, in the order given. */
    public Lookahead only(int[] readings) {
        double[] x = Arrays.stream(readings).mapToDouble(c -> planned.x[c]).toArray();
        double[] y = Arrays.stream(readings).mapToDouble(c -> planned.y[c]).toArray();
        double[][] rows = new double[whitened.length][];
        for (int j = 0; j < rows.length; j++) {
            double[] row = whitened[j];
            rows[j] = Arrays.stream(readings).mapToDouble(c -> row[c]).toArray();
        }
        double[] some = Arrays.stream(readings).mapToDouble(c -> spread[c]).toArray();
        return new Lookahead(bottom, bottom.places(x, y), rows, some);
    }

    /**
     * The view that has one more reading at its end: one that was taken. Its moves are those that it made, for each standard
     * deviation that it came out deeper than the others expected it (Rasmussen & Williams 2006, eq. 5.12, with the
     * hyperparameters as they are now). Before it the expectations were less by the move times the {@linkplain
     * #outcome outcome}, and the variances more by the square of the move.
     *
     * @param sounding its index in the survey
     * @return empty where the bottom was not fitted to that sounding itself, but to many condensed
     */
    public Optional<Lookahead> withTaken(int sounding) {
        return bottom.observation(sounding).stream()
                .mapToObj(observation -> {
                    double[] told = bottom.conditioned().told(observation);
                    double length = Math.sqrt(GaussianProcess.dot(told, told));
                    double[][] rows = new double[whitened.length][];
                    for (int j = 0; j < rows.length; j++) {
                        rows[j] = Arrays.copyOf(whitened[j], size() + 1);
                        // Covariances fall by the product of what is whitened, and there is none to fall from.
                        rows[j][size()] = -told[j] / length;
                    }
                    double[] more = Arrays.copyOf(spread, size() + 1);
                    more[size()] = 1;
                    return new Lookahead(bottom, planned, rows, more);
                })
                .findFirst();
    }

    /** By how many standard deviations a reading that was taken came out deeper than the others expect it. */
    public double outcome(int sounding) {
        int observation = bottom.observation(sounding).orElseThrow();
        double[] told = bottom.conditioned().told(observation);
        return bottom.conditioned().alpha()[observation] / Math.sqrt(GaussianProcess.dot(told, told));
    }

    /** Number of planned readings. */
    public int size() {
        return planned.count;
    }

    /** Standard deviation of what a planned reading would say, about the depth expected there, metres. */
    public double spreadMetres(int reading) {
        return spread[reading];
    }

    /** Moves of the expected depth at places, metres: place by reading. */
    public double[][] depths(double[] xMetres, double[] yMetres) {
        PlaceCoordinates places = bottom.places(xMetres, yMetres);
        double[][] moves = new double[places.count][spread.length];
        for (int i = 0; i < places.count; i++) {
            bottom.covariance().between(planned, places, i, moves[i]);
        }
        bottom.conditioned().takeKnown(moves, whitened(bottom, places), whitened);
        for (double[] row : moves) {
            for (int c = 0; c < row.length; c++) {
                row[c] /= spread[c];
            }
        }
        return moves;
    }

    /**
     * Moves of the disc quantities at nodes of a grid of {@link Disc#CELL_METRES}: node by quantity (mean depth, then
     * slope to the right, then slope straight out) by reading.
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
        double[][][] moves = new double[nodes.length][3][spread.length];
        for (int k = 0; k < nodes.length; k++) {
            for (int m = 0; m < Disc.NODES; m++) {
                double[] member = depths[slot[nodes[k] + Disc.DX[m] + Disc.DY[m] * frame.columns()]];
                for (int f = 0; f < 3; f++) {
                    double weight = Disc.weight(f, m);
                    for (int c = 0; c < member.length && weight != 0; c++) {
                        moves[k][f][c] += weight * member[c];
                    }
                }
            }
        }
        return moves;
    }
}

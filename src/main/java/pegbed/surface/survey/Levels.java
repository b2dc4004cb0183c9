package pegbed.surface.survey;

import java.util.List;
import java.util.OptionalDouble;
import pegbed.model.Visit;

/**
 * What is known of the water's level at each visit before its readings are looked at: offset of each visit's depths
 * against those of the visit that is shown, mean and covariance.
 *
 * <p>Offsets hang on the first visit: each later one is N(0, 0.12²) m, and where the board was measured at two visits
 * their difference is that of the two measures, known to 1 cm whichever two they are.
 *
 * <p>Immutable and thread-safe.
 */
public final class Levels {
    /** Standard deviation of a visit's level against the first, metres (common practice). */
    public static final double SD_METRES = 0.12;

    /** Standard deviation of the difference of two board measures, metres (from memory). */
    public static final double BOARD_SD_METRES = 0.01;

    private final double[] mean;
    private final double[][] covariance;

    private Levels(double[] mean, double[][] covariance) {
        this.mean = mean;
        this.covariance = covariance;
    }

    /** Visits all at one level. */
    public static Levels same(int visits) {
        return new Levels(new double[visits], new double[visits][visits]);
    }

    /**
     * The levels of visits.
     *
     * @param visits in order of time
     * @param shown index of the visit at whose level every depth is given
     */
    public static Levels of(List<Visit> visits, int shown) {
        int n = visits.size();
        int board = 0;
        while (board < n && visits.get(board).boardToWaterMetres().isEmpty()) {
            board++;
        }
        // Offset against the first visit = mean + part shared by all with a board measure + own part.
        double[] mean = new double[n];
        double[] shared = new double[n];
        double[] own = new double[n];
        for (int v = 0; v < n; v++) {
            OptionalDouble measure = visits.get(v).boardToWaterMetres();
            if (measure.isPresent()) {
                mean[v] = visits.get(board).boardToWaterMetres().getAsDouble() - measure.getAsDouble();
                shared[v] = board == 0 ? 0 : SD_METRES;
                own[v] = BOARD_SD_METRES / Math.sqrt(2);
            } else {
                own[v] = v == 0 ? 0 : SD_METRES;
            }
        }
        double[] relative = new double[n];
        double[][] covariance = new double[n][n];
        for (int a = 0; a < n; a++) {
            relative[a] = mean[a] - mean[shown];
            for (int b = 0; b < n; b++) {
                double between = (shared[a] - shared[shown]) * (shared[b] - shared[shown]);
                boolean aMoves = a != shown;
                boolean bMoves = b != shown;
                if (aMoves && bMoves) {
                    between += own[shown] * own[shown] + (a == b ? own[a] * own[a] : 0);
                }
                covariance[a][b] = between;
            }
        }
        return new Levels(relative, covariance);
    }

    /** Number of visits. */
    public int visits() {
        return mean.length;
    }

    /** Mean of a visit's depths less those of the shown visit, metres. */
    public double mean(int visit) {
        return mean[visit];
    }

    /** Covariance of two visits' offsets, square metres. */
    public double covariance(int a, int b) {
        return covariance[a][b];
    }
}

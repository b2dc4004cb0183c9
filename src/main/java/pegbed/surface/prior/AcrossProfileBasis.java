package pegbed.surface.prior;

import java.util.Arrays;
import pegbed.surface.gaussian.Matern;

/**
 * What pegs of one water can share, as a few numbers: a profile across the water by its values at even steps, with
 * Catmull-Rom between them, and at the end how much deeper than the tub's the track is. Between banks the steps are
 * shares of the width, without a far bank metres.
 *
 * @param nodes how many values
 * @param stepMetres distance between them, on the mean width where there are two banks
 * @param banked whether there are two banks
 */
public record AcrossProfileBasis(int nodes, double stepMetres, boolean banked) {
    private static final double STEP_METRES = 0.5;
    private static final double OPEN_METRES = 20;

    /** The steps for two banks so far apart. */
    public static AcrossProfileBasis between(double widthMetres) {
        int steps = (int) Math.max(4, Math.min(80, Math.round(widthMetres / STEP_METRES)));
        return new AcrossProfileBasis(steps + 1, widthMetres / steps, true);
    }

    /** The steps without a far bank. */
    public static AcrossProfileBasis open() {
        return new AcrossProfileBasis((int) (OPEN_METRES / STEP_METRES) + 1, STEP_METRES, false);
    }

    /** Numbers that are shared: the values and the track. */
    public int size() {
        return nodes + 1;
    }

    /**
     * How much each of the numbers counts at a place.
     *
     * @param acrossMetres v there
     * @param widthMetres median width of the peg's water
     * @param share t there
     */
    public double[] weights(double acrossMetres, double widthMetres, double share) {
        double[] weights = new double[size()];
        double at = banked ? acrossMetres / widthMetres * (nodes - 1) : acrossMetres / stepMetres;
        at = Math.max(0, Math.min(nodes - 1.0, at));
        int first = Math.min((int) at, nodes - 2);
        double p = at - first;
        double[] four = {
            p * (-0.5 + p * (1 - 0.5 * p)),
            1 + p * p * (-2.5 + 1.5 * p),
            p * (0.5 + p * (2 - 1.5 * p)),
            p * p * (-0.5 + 0.5 * p)
        };
        for (int i = 0; i < four.length; i++) {
            weights[Math.max(0, Math.min(nodes - 1, first - 1 + i))] += four[i];
        }
        weights[nodes] = share;
        return weights;
    }

    /** The weights of some places, place by number. */
    public double[][] weights(PlaceCoordinates places, int count, double widthMetres) {
        double[][] rows = new double[count][];
        Arrays.setAll(rows, i -> weights(places.v[i], widthMetres, places.t[i]));
        return rows;
    }

    /** The covariance of the numbers before any reading: a profile of this variance and length, and a track. */
    public double[][] prior(double profileVariance, double lengthMetres, double trackVariance) {
        double[][] prior = new double[size()][size()];
        for (int i = 0; i < nodes; i++) {
            for (int j = 0; j < nodes; j++) {
                prior[i][j] = profileVariance * Matern.fiveHalves(Math.abs(i - j) * stepMetres / lengthMetres);
            }
        }
        prior[nodes][nodes] = trackVariance;
        return prior;
    }
}

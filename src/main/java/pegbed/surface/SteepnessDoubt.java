package pegbed.surface;

import java.util.List;
import pegbed.surface.posterior.Gradient;
import pegbed.surface.survey.Sounding;

/**
 * How much more, or less, the bottom and its slope are in doubt on ground of a steepness than the solve says.
 *
 * <p>The solve's roughness follows the tub ({@code Roughness}), not the bottom that the readings showed: of ground that
 * they showed to be level it still knows more than it believes, of slopes less. The factors are nearly those under
 * which the errors of maps of invented bottoms were likeliest, on the careful side (maximum likelihood over some 12,000
 * places, none of them on the practice pegs; {@code docs/visits.md}).
 */
public final class SteepnessDoubt {
    private static final double LEVEL_BOTTOM = 0.75;
    private static final double BOTTOM_PER_SLOPE = 1.2;
    private static final double MOST_BOTTOM = 1.8;
    private static final double LEVEL_SLOPE = 0.3;
    private static final double SLOPE_PER_SLOPE = 2.4;
    private static final double MOST_SLOPE = 1.4;

    private SteepnessDoubt() {}

    /**
     * Factor on the standard deviation of the bottom.
     *
     * @param steepness expected there, rise over run
     */
    public static double bottom(double steepness) {
        return Math.min(MOST_BOTTOM, LEVEL_BOTTOM + BOTTOM_PER_SLOPE * steepness);
    }

    /** Factor on the standard deviation of the bottom's slope. */
    static double slope(double steepness) {
        return Math.min(MOST_SLOPE, LEVEL_SLOPE + SLOPE_PER_SLOPE * steepness);
    }

    /** The slope with its doubt put right. */
    static Gradient of(Gradient g) {
        double factor = slope(Math.hypot(g.dx(), g.dy()));
        return new Gradient(g.dx(), g.dy(), factor * factor * g.varDx(), factor * factor * g.varDy());
    }

    /** Covariance of the bottom at places with calibrated doubt, square metres. */
    public static double[][] covariance(FittedBottom bottom, List<Sounding> places) {
        return ExpectedReadings.of(bottom, visit -> false, visit -> false, places)
                .calibratedBottom();
    }
}

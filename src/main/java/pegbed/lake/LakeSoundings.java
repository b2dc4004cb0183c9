package pegbed.lake;

import java.util.Arrays;
import pegbed.surface.Observations;
import pegbed.surface.prior.StructurePrior;
import pegbed.surface.survey.Scale;

/**
 * The soundings of a whole water as the solver sees them, in canonical order, as parallel arrays in the water's own
 * frame, whose origin is the middle of what was sounded. Not changed after it is made.
 */
final class LakeSoundings {
    final int count;
    final double[] x;
    final double[] y;
    final double[] depth;
    /** Depth variance that η² multiplies, square metres. */
    final double[] variance;

    final double[] varX;
    final double[] varY;
    final double[] covXY;
    /** How much larger the water is than a peg. */
    final Scale scale;
    /** Usual distance between neighbours: the root of the surveyed area that one sounding has to itself, metres. */
    final double spacing;

    /** Where the log they come from lies. */
    final LakeFrame frame;

    /**
     * Puts a condensed log into the water's frame.
     *
     * @param frame the log's frame, extent and depths
     * @param x places in the water's own frame
     */
    LakeSoundings(
            LakeFrame frame,
            double[] x,
            double[] y,
            double[] depth,
            double[] variance,
            double[] varX,
            double[] varY,
            double[] covXY) {
        count = x.length;
        this.x = x;
        this.y = y;
        this.depth = depth;
        this.variance = variance;
        this.varX = varX;
        this.varY = varY;
        this.covXY = covXY;
        scale = frame.scale();
        spacing = frame.spacing(count);
        this.frame = frame;
    }

    /** Variance about the bottom at the place that was meant, square metres. */
    double noise(int i, double eta, double placing) {
        return eta * eta * variance[i] + placing + Observations.JITTER;
    }

    /** What the position noise of one adds before the slopes are known. */
    double firstPlacing(int i) {
        return Observations.firstInputNoise(varX[i], varY[i]);
    }

    /** Some of them as observations in open water. */
    Observations observations(int[] chosen, StructurePrior prior) {
        return new Observations(
                new Observations.OpenWater(
                        chosen.clone(),
                        chosen(x, chosen),
                        chosen(y, chosen),
                        chosen(depth, chosen),
                        chosen(variance, chosen),
                        chosen(varX, chosen),
                        chosen(varY, chosen),
                        chosen(covXY, chosen)),
                prior);
    }

    /** Some of the values of an array. */
    static double[] chosen(double[] values, int[] chosen) {
        return Arrays.stream(chosen).mapToDouble(i -> values[i]).toArray();
    }
}

package pegbed.lake;

import pegbed.surface.FittedBottom;

/**
 * The bottom of a whole water at many places, in the order in which they were asked. The arrays are not copied.
 *
 * @param depthMetres expected depth, metres
 * @param sdMetres its standard deviation as in {@code Prediction}, metres; infinite where no sounding bears an answer
 * @param slopeX change of depth per metre in x
 * @param slopeY change of depth per metre in y
 */
public record LakeDepths(double[] depthMetres, double[] sdMetres, double[] slopeX, double[] slopeY) {
    /** Weighted sums of what several conditionings say. Places must be written by one thread at a time. */
    static final class Sums {
        private final double[] depth;
        private final double[] variance;
        private final double[] slopeX;
        private final double[] slopeY;

        Sums(int count) {
            depth = new double[count];
            variance = new double[count];
            slopeX = new double[count];
            slopeY = new double[count];
        }

        void add(int place, double weight, double mean, double itsVariance, double itsSlopeX, double itsSlopeY) {
            depth[place] += weight * mean;
            variance[place] += weight * itsVariance;
            slopeX[place] += weight * itsSlopeX;
            slopeY[place] += weight * itsSlopeY;
        }

        /** The answers, once the weights of every place add up to 1. */
        LakeDepths depths() {
            double[] sd = new double[depth.length];
            for (int i = 0; i < sd.length; i++) {
                sd[i] = Math.sqrt(Math.max(variance[i], 0) + FittedBottom.placingVariance(slopeX[i], slopeY[i]));
            }
            return new LakeDepths(depth, sd, slopeX, slopeY);
        }
    }
}

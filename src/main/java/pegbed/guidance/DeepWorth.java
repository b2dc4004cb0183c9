package pegbed.guidance;

import pegbed.findings.DeepestSearch;
import pegbed.findings.FlatProbability;
import pegbed.findings.SobolNormals;
import pegbed.surface.posterior.Disc;

/**
 * What a node is worth as the deepest place to name, as {@link DeepestSearch} scores it, in units of
 * {@link Blend#DEPTH_METRES}, and what it would be worth after a planned reading.
 */
final class DeepWorth {
    private static final int DRAWS = 48;

    double now(Disc disc) {
        double[] worth = new double[1];
        after(disc, 0, 0, 0, new double[1], worth);
        return worth[0];
    }

    /** As {@link FlatWorth#after}. */
    void after(Disc disc, double moveD, double moveX, double moveY, double[] z, double[] worth) {
        double l11 = Math.sqrt(Math.max(disc.varX() - moveX * moveX, 1e-12));
        double l21 = (disc.covXY() - moveX * moveY) / l11;
        double l22 = Math.sqrt(Math.max(disc.varY() - moveY * moveY - l21 * l21, 1e-12));
        double limit2 = FlatProbability.USUAL.slopeLimit() * FlatProbability.USUAL.slopeLimit();
        for (int j = 0; j < z.length; j++) {
            double slopeX = disc.slopeX() + moveX * z[j];
            double slopeY = disc.slopeY() + moveY * z[j];
            int steep = 0;
            for (int i = 0; i < DRAWS; i++) {
                double factor = SobolNormals.FACTOR[i];
                double gx = slopeX + factor * (l11 * SobolNormals.FIRST[i]);
                double gy = slopeY + factor * (l21 * SobolNormals.FIRST[i] + l22 * SobolNormals.SECOND[i]);
                if (gx * gx + gy * gy > limit2) {
                    steep++;
                }
            }
            worth[j] = DeepestSearch.score(disc.depthMetres() + moveD * z[j], 1 - (double) steep / DRAWS)
                    / GuidanceWeights.DEPTH_METRES;
        }
    }
}

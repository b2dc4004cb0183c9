package pegbed.guidance;

import pegbed.findings.FlatProbability;
import pegbed.findings.FlatSearch;
import pegbed.findings.SobolNormals;
import pegbed.findings.StandardNormal;
import pegbed.surface.posterior.Disc;

/**
 * What a node is worth as the flat spot to name, as {@link FlatSearch} scores it, and what it would be worth after a
 * planned reading. The same probabilities as {@link FlatProbability} from fewer draws, both bands in one pass.
 */
final class FlatWorth {
    /** How many of the fixed draws are used: those of the first points, with every factor. */
    private static final int DRAWS = 96;

    private static final double FAR = 6;

    /** What the draws are trusted to: a node that falls short by more than this is not looked at by them. */
    private static final double ALLOWANCE = 0.04;

    private final double target;

    FlatWorth(double targetMetres) {
        target = targetMetres;
    }

    double now(Disc disc) {
        double[] worth = new double[1];
        after(disc, 0, 0, 0, new double[1], worth);
        return worth[0];
    }

    /**
     * Worth after a reading that comes out z standard deviations deeper than expected.
     *
     * @param moveD move of the mean depth for z = 1, metres
     * @param moveX move of the slope to the right
     * @param moveY move of the slope straight out
     * @param z the outcomes
     * @param worth filled, one an outcome
     */
    void after(Disc disc, double moveD, double moveX, double moveY, double[] z, double[] worth) {
        double varX = disc.varX() - moveX * moveX;
        double covXY = disc.covXY() - moveX * moveY;
        double varY = disc.varY() - moveY * moveY;
        double l11 = Math.sqrt(Math.max(varX, 1e-12));
        double l21 = covXY / l11;
        double l22 = Math.sqrt(Math.max(varY - l21 * l21, 1e-12));
        double b1 = (disc.covDX() - moveD * moveX) / l11;
        double b2 = (disc.covDY() - moveD * moveY - b1 * l21) / l22;
        double varD = disc.varD() - moveD * moveD;
        double s = Math.sqrt(Math.max(varD - b1 * b1 - b2 * b2, 1e-10));
        double[] gx = new double[DRAWS];
        double[] gy = new double[DRAWS];
        double[] m = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            gx[i] = SobolNormals.FACTOR[i] * (l11 * SobolNormals.FIRST[i]);
            gy[i] = SobolNormals.FACTOR[i] * (l21 * SobolNormals.FIRST[i] + l22 * SobolNormals.SECOND[i]);
            m[i] = (b1 * SobolNormals.FIRST[i] + b2 * SobolNormals.SECOND[i]) / s;
        }
        double reach = FAR * Math.sqrt(Math.max(varD, 0)) + FlatSearch.WIDE.bandMetres();
        for (int j = 0; j < z.length; j++) {
            double depth = disc.depthMetres() + moveD * z[j] - target;
            worth[j] = Math.abs(depth) > reach
                    ? 0
                    : mean(disc.slopeX() + moveX * z[j], disc.slopeY() + moveY * z[j], depth / s, s, gx, gy, m);
        }
    }

    /**
     * More than the worth after such a reading can be: each probability is at most that of its depth alone, and at most
     * that of the slope along the steepest way alone.
     *
     * @param bound filled, one an outcome
     */
    void upperBound(Disc disc, double moveD, double moveX, double moveY, double[] z, double[] bound) {
        double varX = disc.varX() - moveX * moveX;
        double covXY = disc.covXY() - moveX * moveY;
        double varY = disc.varY() - moveY * moveY;
        double perSd = 1 / Math.sqrt(Math.max(disc.varD() - moveD * moveD, 1e-10));
        for (int j = 0; j < z.length; j++) {
            double depth = disc.depthMetres() + moveD * z[j] - target;
            double x = disc.slopeX() + moveX * z[j];
            double y = disc.slopeY() + moveY * z[j];
            double g2 = Math.max(x * x + y * y, 1e-12);
            double g = Math.sqrt(g2);
            double perSlopeSd = 1 / Math.sqrt(Math.max((x * x * varX + 2 * x * y * covXY + y * y * varY) / g2, 1e-12));
            double sum = 0;
            for (double factor : SobolNormals.FACTORS) {
                double deep = perSd / factor;
                double steep = perSlopeSd / factor;
                sum += atMost(FlatSearch.WIDE, depth * deep, g * steep, deep, steep)
                        + atMost(FlatProbability.USUAL, depth * deep, g * steep, deep, steep);
            }
            bound[j] = ALLOWANCE + sum / SobolNormals.FACTORS.length;
        }
    }

    private static double atMost(FlatProbability odds, double depth, double slope, double perSd, double perSlopeSd) {
        return Math.min(
                StandardNormal.within(odds.bandMetres() * perSd, depth),
                StandardNormal.within(odds.slopeLimit() * perSlopeSd, slope));
    }

    /**
     * The mean of both probabilities over the draws.
     *
     * @param depth mean depth about the target, in standard deviations s
     * @param gx what each draw adds to the slope to the right
     * @param gy what each adds to the slope straight out
     * @param m what each adds to the depth, in standard deviations s and its factor
     */
    private static double mean(
            double slopeX, double slopeY, double depth, double s, double[] gx, double[] gy, double[] m) {
        double usual2 = FlatProbability.USUAL.slopeLimit() * FlatProbability.USUAL.slopeLimit();
        double wide2 = FlatSearch.WIDE.slopeLimit() * FlatSearch.WIDE.slopeLimit();
        double usual = FlatProbability.USUAL.bandMetres() / s;
        double wide = FlatSearch.WIDE.bandMetres() / s;
        double sum = 0;
        for (int i = 0; i < DRAWS; i++) {
            double x = slopeX + gx[i];
            double y = slopeY + gy[i];
            double g2 = x * x + y * y;
            if (g2 <= wide2) {
                double perFactor = 1 / SobolNormals.FACTOR[i];
                double at = depth * perFactor + m[i];
                sum += StandardNormal.within(wide * perFactor, at);
                if (g2 <= usual2) {
                    sum += StandardNormal.within(usual * perFactor, at);
                }
            }
        }
        return sum / DRAWS;
    }
}

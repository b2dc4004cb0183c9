package pegbed.analysis;

import pegbed.surface.Disc;

/**
 * What a node is worth as the flat spot to name, as {@link FlatSearch} scores it, and what it would be worth after a
 * planned reading. The same probabilities as {@link FlatOdds} from fewer draws, both bands in one pass.
 */
final class FlatWorth {
    /** How many of the fixed draws are used: a whole prefix of the sequence. */
    private static final int DRAWS = 64;

    private static final double FAR = 4.5;

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
        double reach = FAR * Math.sqrt(Math.max(varD, 0)) + FlatSearch.WIDE.bandMetres();
        double usual2 = FlatOdds.USUAL.slopeLimit() * FlatOdds.USUAL.slopeLimit();
        double wide2 = FlatSearch.WIDE.slopeLimit() * FlatSearch.WIDE.slopeLimit();
        for (int j = 0; j < z.length; j++) {
            double depth = disc.depthMetres() + moveD * z[j] - target;
            worth[j] = 0;
            if (Math.abs(depth) > reach) {
                continue;
            }
            double slopeX = disc.slopeX() + moveX * z[j];
            double slopeY = disc.slopeY() + moveY * z[j];
            double sum = 0;
            for (int i = 0; i < DRAWS; i++) {
                double gx = slopeX + l11 * NormalDraws.FIRST[i];
                double gy = slopeY + l21 * NormalDraws.FIRST[i] + l22 * NormalDraws.SECOND[i];
                double g2 = gx * gx + gy * gy;
                if (g2 <= wide2) {
                    double m = depth + b1 * NormalDraws.FIRST[i] + b2 * NormalDraws.SECOND[i];
                    sum += within(FlatSearch.WIDE.bandMetres(), m, s);
                    if (g2 <= usual2) {
                        sum += within(FlatOdds.USUAL.bandMetres(), m, s);
                    }
                }
            }
            worth[j] = sum / DRAWS;
        }
    }

    private static double within(double band, double m, double s) {
        return Normal.quick((band - m) / s) - Normal.quick((-band - m) / s);
    }
}

package pegbed.bench.quality;

/**
 * How true a method's doubt is, over the nodes of one peg at which it answers.
 *
 * @param coverage50 share of nodes whose true depth lies in the central 50 % interval
 * @param coverage90 in the 90 % interval
 * @param coverage99 in the 99 % interval
 * @param nearBankCoverage90 in the 90 % interval, of the nodes within {@value #NEAR_BANK_METRES} m of land; NaN without
 *     any
 * @param crpsMetres mean continuous ranked probability score, metres
 * @param logScore mean of minus the log density at the true depth, per metre
 */
record Doubt(
        double coverage50,
        double coverage90,
        double coverage99,
        double nearBankCoverage90,
        double crpsMetres,
        double logScore) {
    static final double NEAR_BANK_METRES = 0.75;

    /** Gathers a peg's nodes. */
    static final class Sum {
        private int count;
        private int half;
        private int most;
        private int nearlyAll;
        private int near;
        private int nearMost;
        private double crps;
        private double log;

        void add(PredictedDepth predicted, double depthMetres, boolean nearBank) {
            count++;
            half += predicted.covers(0.5, depthMetres) ? 1 : 0;
            boolean covered = predicted.covers(0.9, depthMetres);
            most += covered ? 1 : 0;
            nearlyAll += predicted.covers(0.99, depthMetres) ? 1 : 0;
            near += nearBank ? 1 : 0;
            nearMost += nearBank && covered ? 1 : 0;
            crps += predicted.crpsMetres(depthMetres);
            log += predicted.logScore(depthMetres);
        }

        int count() {
            return count;
        }

        Doubt mean() {
            return new Doubt(
                    (double) half / count,
                    (double) most / count,
                    (double) nearlyAll / count,
                    (double) nearMost / near,
                    crps / count,
                    log / count);
        }
    }
}

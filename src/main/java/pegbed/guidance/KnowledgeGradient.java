package pegbed.guidance;

/**
 * What one more reading is expected to gain for decisions: E max_k w_k(z) − max_k E w_k(z) over the nodes k of each,
 * with z the reading's outcome (Frazier, Powell & Dayanik 2009, The knowledge-gradient policy for correlated normal
 * beliefs), by five-point Gauss–Hermite quadrature. Both terms come from the same quadrature, so that the gain is never
 * below 0.
 */
final class KnowledgeGradient {
    /** Gauss–Hermite points and weights for the standard normal (Abramowitz & Stegun 1964, table 25.10, rescaled). */
    static final double[] Z = {-2.856970013872806, -1.355626179974266, 0, 1.355626179974266, 2.856970013872806};

    static final double[] WEIGHT = {
        0.011257411327721, 0.222075922005613, 0.533333333333333, 0.222075922005613, 0.011257411327721
    };

    private KnowledgeGradient() {}

    /**
     * The weighted gain for one choice by one reading.
     *
     * @param moves of the disc quantities, by node, quantity and reading
     */
    static double gain(Decision choice, double[][][] moves, int c) {
        return choice.weight() * unweighted(choice, moves, c);
    }

    private static double unweighted(Decision choice, double[][][] moves, int c) {
        double[] best = new double[Z.length];
        java.util.Arrays.fill(best, Double.NEGATIVE_INFINITY);
        double bestMean = Double.NEGATIVE_INFINITY;
        double[] worth = new double[Z.length];
        for (int k = 0; k < moves.length; k++) {
            choice.upperBound(k, moves[k][0][c], moves[k][1][c], moves[k][2][c], Z, worth);
            if (isBelow(worth, best, bestMean)) {
                continue;
            }
            choice.after(k, moves[k][0][c], moves[k][1][c], moves[k][2][c], Z, worth);
            double mean = 0;
            for (int j = 0; j < Z.length; j++) {
                best[j] = Math.max(best[j], worth[j]);
                mean += WEIGHT[j] * worth[j];
            }
            bestMean = Math.max(bestMean, mean);
        }
        double expected = 0;
        for (int j = 0; j < Z.length; j++) {
            expected += WEIGHT[j] * best[j];
        }
        return Math.max(0, expected - bestMean);
    }

    /** Whether worths that are no more than these change neither what is best after any outcome nor the best mean. */
    private static boolean isBelow(double[] bound, double[] best, double bestMean) {
        double mean = 0;
        for (int j = 0; j < Z.length; j++) {
            if (bound[j] > best[j]) {
                return false;
            }
            mean += WEIGHT[j] * bound[j];
        }
        return mean <= bestMean;
    }
}

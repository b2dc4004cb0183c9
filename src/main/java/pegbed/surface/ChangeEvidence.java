package pegbed.surface;

import pegbed.surface.gaussian.GaussianProcess;

/**
 * What later readings say for a change of the bottom, and against: how much likelier they are with it than without.
 *
 * <p>With r the readings less what the earlier ones make expected, Q its covariance, P = Q⁻¹, and a change of N(0, A²)
 * m in the middle that adds φ to the readings: with a = φᵀPr and b = φᵀPφ, log B = A²a²/(2(1+A²b)) − ½ log(1+A²b), and
 * the change given the readings is N(A²a/(1+A²b), A²/(1+A²b)) (Rasmussen & Williams 2006, section 2.7, for one basis
 * function).
 *
 * <p>With and without a change one reading may be off by itself, taken at another place than was meant or where the
 * bottom falls otherwise than the map has it: as likely as not one of the visit's readings is, any of them, by N(0,
 * 0.3²) m. That is one more direction of variance, summed over which reading it is; a single reading that differs then
 * says little, and two that agree say much. Not changed after it is made.
 */
final class ChangeEvidence {
    /** Standard deviation of a change's depth, A, metres (empirical). */
    private static final double AMOUNT_SD_METRES = 0.25;

    /** Odds that one of the readings is off by itself (chosen on invented bottoms). */
    private static final double OFF_ODDS = 1;

    /** Standard deviation of by how much, metres (chosen on invented bottoms). */
    private static final double OFF_SD_METRES = 0.3;

    private final GaussianProcess later;
    /** The diagonal of P. */
    private final double[] precision;
    /** Logarithm of how much likelier the readings are, without a change, for one of them may be off. */
    private final double without;

    /** @param later the readings' differences under their covariance */
    ChangeEvidence(GaussianProcess later) {
        this.later = later;
        precision = later.inverseDiagonal();
        without = off(later.alpha(), precision);
    }

    /**
     * A change that may be.
     *
     * @param logFactor logarithm of how much likelier the readings are with it
     * @param metres what it is expected to be in its middle
     * @param sdMetres standard deviation of that
     */
    record Change(double logFactor, double metres, double sdMetres) {}

    /** @param share of the change that each reading feels */
    Change of(double[] share) {
        double[] pull = later.weights(share);
        double a = GaussianProcess.dot(share, later.alpha());
        double b = GaussianProcess.dot(share, pull);
        double prior = AMOUNT_SD_METRES * AMOUNT_SD_METRES;
        double grown = 1 + prior * b;
        double[] alpha = new double[pull.length];
        double[] left = new double[pull.length];
        for (int i = 0; i < pull.length; i++) {
            alpha[i] = later.alpha()[i] - pull[i] * prior * a / grown;
            left[i] = precision[i] - pull[i] * pull[i] * prior / grown;
        }
        double logFactor = prior * a * a / (2 * grown) - Math.log(grown) / 2 + off(alpha, left) - without;
        return new Change(logFactor, prior * a / grown, Math.sqrt(prior / grown));
    }

    /**
     * Logarithm of 1 + Σ odds/n · B_i, B_i how much likelier it all is with reading i off by itself.
     *
     * @param alpha P times the differences
     * @param precision the diagonal of P
     */
    private static double off(double[] alpha, double[] precision) {
        double most = 0;
        double[] logs = new double[alpha.length];
        for (int i = 0; i < logs.length; i++) {
            double prior = OFF_SD_METRES * OFF_SD_METRES;
            double grown = 1 + prior * precision[i];
            logs[i] = prior * alpha[i] * alpha[i] / (2 * grown) - Math.log(grown) / 2;
            most = Math.max(most, logs[i]);
        }
        double sum = Math.exp(-most);
        for (double log : logs) {
            sum += OFF_ODDS / logs.length * Math.exp(log - most);
        }
        return most + Math.log(sum);
    }
}

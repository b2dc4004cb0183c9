package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pegbed.surface.gaussian.GaussianProcess;

class ChangeEvidenceTest {
    private static final double[][] COVARIANCE = {
        {0.010, 0.004, 0.003, 0.002},
        {0.004, 0.012, 0.002, 0.001},
        {0.003, 0.002, 0.015, 0.005},
        {0.002, 0.001, 0.005, 0.011}
    };
    private static final double AMOUNT = 0.25 * 0.25;
    private static final double OFF = 0.3 * 0.3;

    private static GaussianProcess readings(double[] difference, double[] share, int off) {
        int n = difference.length;
        double[] k = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                k[i * n + j] = COVARIANCE[i][j] + AMOUNT * share[i] * share[j] + (i == j && i == off ? OFF : 0);
            }
        }
        return new GaussianProcess(k, difference, false);
    }

    /** Likelihood of the readings with a change, each reading off by itself with a weight of 1/n beside none. */
    private static double likelihood(double[] difference, double[] share) {
        double sum = Math.exp(readings(difference, share, -1).logMarginalLikelihood());
        for (int i = 0; i < difference.length; i++) {
            sum += Math.exp(readings(difference, share, i).logMarginalLikelihood()) / difference.length;
        }
        return sum;
    }

    @Test
    void theFactorIsTheRatioOfTheLikelihoods() {
        double[] difference = {0.05, -0.1, 0.3, 0.22};
        double[] none = new double[4];
        for (double[] share : new double[][] {{0, 0, 1, 0.8}, {1, 0.2, 0, 0}, {0, 0, 0, 1}, none}) {
            double expected = Math.log(likelihood(difference, share) / likelihood(difference, none));
            ChangeEvidence evidence = new ChangeEvidence(readings(difference, none, -1));
            assertEquals(expected, evidence.of(share).logFactor(), 1e-9);
        }
    }

    /** N(A²a/(1 + A²b), A²/(1 + A²b)): for one reading of variance v, with A² and r: A²r/(v + A²), A²v/(v + A²). */
    @Test
    void theAmountIsThatOfOneReadingByHand() {
        GaussianProcess one = new GaussianProcess(new double[] {0.01}, new double[] {0.2}, false);
        ChangeEvidence.Change change = new ChangeEvidence(one).of(new double[] {1});
        assertEquals(AMOUNT * 0.2 / (0.01 + AMOUNT), change.metres(), 1e-12);
        assertEquals(Math.sqrt(AMOUNT * 0.01 / (0.01 + AMOUNT)), change.sdMetres(), 1e-12);
    }

    @Test
    void twoThatAgreeSayMoreThanOneAlone() {
        double[] none = new double[4];
        double alone = new ChangeEvidence(readings(new double[] {0, 0, 0.3, 0}, none, -1))
                .of(new double[] {0, 0, 1, 0})
                .logFactor();
        double agreeing = new ChangeEvidence(readings(new double[] {0, 0, 0.3, 0.3}, none, -1))
                .of(new double[] {0, 0, 1, 1})
                .logFactor();
        double disagreeing = new ChangeEvidence(readings(new double[] {0, 0, 0.3, -0.3}, none, -1))
                .of(new double[] {0, 0, 1, 1})
                .logFactor();
        assertTrue(agreeing > alone + 1, agreeing + " " + alone);
        assertTrue(agreeing > disagreeing + 1, agreeing + " " + disagreeing);
    }
}

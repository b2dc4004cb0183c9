package pegbed.surface.gaussian;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The five-point case of Rasmussen & Williams (2006), Algorithm 2.1 and eq. 5.12, computed with an independent program:
 * zero mean, s² = 1, l = 0.7, noise variance 0.01.
 */
class GaussianProcessTest {
    private static final double[][] X = {{0, 0}, {1, 0}, {0, 1}, {1, 1}, {.5, .4}};
    private static final double[] Y = {1, 1.5, 1.2, 2, 1.8};
    private static final double LENGTH = 0.7;

    private static double[] matrix(DoubleUnaryOperator correlation) {
        double[] k = new double[25];
        for (int i = 0; i < 5; i++) {
            double[] row = row(correlation, X[i][0], X[i][1]);
            System.arraycopy(row, 0, k, i * 5, 5);
            k[i * 5 + i] += 0.01;
        }
        return k;
    }

    private static double[] row(DoubleUnaryOperator correlation, double x, double y) {
        return Arrays.stream(X)
                .mapToDouble(p -> correlation.applyAsDouble(Math.hypot(p[0] - x, p[1] - y) / LENGTH))
                .toArray();
    }

    private static void check(DoubleUnaryOperator correlation, double mean, double variance, double logLikelihood) {
        GaussianProcess field = new GaussianProcess(matrix(correlation), Y, false);
        double[] k = row(correlation, .25, .75);
        assertEquals(mean, field.mean(k), 5e-11);
        field.whiten(k);
        assertEquals(variance, field.covariance(1, k, k, 1, 1), 5e-11);
        assertEquals(logLikelihood, field.logMarginalLikelihood(), 5e-11);
    }

    @Test
    void agreesForThreeHalves() {
        check(Matern::threeHalves, 1.5602418415, 0.2084366216, -6.8243126373);
    }

    @Test
    void agreesForFiveHalves() {
        check(Matern::fiveHalves, 1.5920146288, 0.1274643824, -6.6225719104);
    }

    @Test
    void leaveOneOutAgreesForFiveHalves() {
        GaussianProcess field = new GaussianProcess(matrix(Matern::fiveHalves), Y, false);
        double[] inverse = field.inverse();
        double sum = 0;
        for (int i = 0; i < 5; i++) {
            double variance = 1 / inverse[i * 5 + i];
            double gap = field.alpha()[i] * variance;
            sum -= (Math.log(2 * Math.PI * variance) + gap * gap / variance) / 2;
        }
        assertEquals(-4.4442392044, sum, 5e-11);
    }

    @Test
    void inverseTimesMatrixIsTheIdentity() {
        double[] k = matrix(Matern::threeHalves);
        double[] inverse = new GaussianProcess(k, Y, false).inverse();
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 5; j++) {
                double sum = 0;
                for (int l = 0; l < 5; l++) {
                    sum += k[i * 5 + l] * inverse[l * 5 + j];
                }
                assertEquals(i == j ? 1 : 0, sum, 1e-11);
            }
        }
    }

    /** With an unknown constant, leaving one out is still α over the diagonal of the same matrix. */
    @Test
    void leaveOneOutWithAnUnknownConstantIsLeavingOneOut() {
        GaussianProcess all = new GaussianProcess(matrix(Matern::fiveHalves), Y, true);
        double[] inverse = all.inverse();
        for (int out = 0; out < 5; out++) {
            double[] k = new double[16];
            double[] y = new double[4];
            double[] cross = new double[4];
            double[] full = matrix(Matern::fiveHalves);
            for (int i = 0, a = 0; i < 5; i++) {
                if (i == out) {
                    continue;
                }
                y[a] = Y[i];
                cross[a] = full[i * 5 + out];
                for (int j = 0, b = 0; j < 5; j++) {
                    if (j != out) {
                        k[a * 4 + b++] = full[i * 5 + j];
                    }
                }
                a++;
            }
            GaussianProcess rest = new GaussianProcess(k, y, true);
            assertEquals(rest.mean(cross), Y[out] - all.alpha()[out] / inverse[out * 5 + out], 1e-10);
            rest.whiten(cross);
            assertEquals(rest.covariance(1.01, cross, cross, 1, 1), 1 / inverse[out * 5 + out], 1e-10);
        }
    }

    @Test
    void withoutObservationsThePriorStays() {
        GaussianProcess nothing = new GaussianProcess(new double[0], new double[0], false);
        assertEquals(0, nothing.mean(new double[0]));
        assertEquals(0.7, nothing.covariance(0.7, new double[0], new double[0], 1, 1));
        assertEquals(0, nothing.logMarginalLikelihood(), 1e-300);
        assertArrayEquals(new double[0], nothing.inverse());
    }

    @Test
    void equalPlacesWithoutNoiseAreStillSolved() {
        GaussianProcess twice = new GaussianProcess(new double[] {1, 1, 1, 1}, new double[] {2, 2}, false);
        assertEquals(2, twice.mean(new double[] {1, 1}), 1e-6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -5})
    void refusesWhatIsNoCovariance(double bad) {
        assertThrows(
                GaussianProcess.NotPositiveDefinite.class,
                () -> new GaussianProcess(new double[] {1, 0, 0, bad}, new double[] {1, 1}, false));
        assertThrows(
                GaussianProcess.NotPositiveDefinite.class,
                () -> new GaussianProcess(new double[] {bad, 0, 0, 1}, new double[] {1, 1}, false));
    }

    @Test
    void changesNeitherMatrixNorValues() {
        double[] k = matrix(Matern::fiveHalves);
        double[] y = Y.clone();
        new GaussianProcess(k, y, true);
        assertArrayEquals(matrix(Matern::fiveHalves), k, 0);
        assertArrayEquals(Y, y, 0);
    }
}

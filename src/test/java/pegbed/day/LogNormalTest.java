package pegbed.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogNormalTest {
    /** Sums over a fine grid of the logarithm: probability of the count without 1/count!, mean and variance. */
    private static double[] onAGrid(LogNormal rate, double exposure, int count) {
        double sum = 0;
        double first = 0;
        double second = 0;
        double step = 1e-3;
        double wide = 12 * Math.sqrt(rate.variance());
        for (double x = rate.log() - wide; x < rate.log() + wide; x += step) {
            double off = x - rate.log();
            double expected = exposure * Math.exp(x);
            double density = Math.exp(-off * off / (2 * rate.variance()) - expected + count * Math.log(expected))
                    / Math.sqrt(2 * Math.PI * rate.variance());
            sum += density * step;
            first += density * step * x;
            second += density * step * x * x;
        }
        double mean = first / sum;
        return new double[] {Math.log(sum), mean, second / sum - mean * mean};
    }

    @ParameterizedTest
    @CsvSource({"2.3, 1.0, 0.0167, 0", "2.3, 1.0, 0.0167, 3", "0, 2.5, 0.5, 0", "0, 2.5, 0.5, 9", "3, 0.1, 1, 4"})
    void aCountIsLearnedAsOnAFineGrid(double log, double variance, double exposure, int count) {
        LogNormal rate = new LogNormal(log, variance);
        LogNormal.Learned learned = rate.learning(exposure, count);
        double[] grid = onAGrid(rate, exposure, count);
        assertEquals(grid[0], learned.logProbability(), 2e-3);
        assertEquals(grid[1], learned.after().log(), 1e-2);
        assertEquals(grid[2], learned.after().variance(), 1e-2 * variance);
    }

    @Test
    void aHundredFishAtOnceAreLearnedFromNearlyNothing() {
        LogNormal after = new LogNormal(-8, 1).learning(1, 100).after();
        assertTrue(after.log() > -1 && after.log() < Math.log(100), after.toString());
        assertTrue(after.variance() > 0 && after.variance() < 0.1, after.toString());
    }

    @Test
    void theGammaHasItsMeanAndVariance() {
        LogNormal rate = new LogNormal(2, 0.3);
        assertEquals(Math.exp(2.15), rate.mean(), 1e-12);
        assertEquals(rate.mean(), rate.gamma().mean(), 1e-12);
        assertEquals(Math.exp(0.3) - 1, rate.gamma().squaredVariation(), 1e-12);
        assertEquals(0.3, LogNormal.variance(LogNormal.squaredVariation(0.3)), 1e-12);
    }

    @Test
    void aVarianceIsAboveNothing() {
        assertThrows(IllegalArgumentException.class, () -> new LogNormal(1, 0));
        assertThrows(IllegalArgumentException.class, () -> new LogNormal(Double.NaN, 1));
    }

    /** Moments of the standard normal distribution: 0, 1, 0, 3, 0, 15. */
    @Test
    void theQuadratureHasTheMomentsOfANormalVariable() {
        double[] moments = {1, 0, 1, 0, 3, 0, 15};
        for (int power = 0; power < moments.length; power++) {
            double sum = 0;
            for (int i = 0; i < GaussHermite.SIZE; i++) {
                sum += GaussHermite.weight(i) * Math.pow(GaussHermite.node(i), power);
            }
            assertEquals(moments[power], sum, 1e-9);
        }
    }
}

package pegbed.bench.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PredictedDepthTest {
    /**
     * Gneiting & Raftery 2007, the score of a normal distribution (there with the other sign): σ[z(2Φ(z) − 1) + 2φ(z) −
     * 1/√π]. With Φ(1) = 0.8413447461 and φ(1) = 0.2419707245 (Abramowitz & Stegun 1964, table 26.1).
     */
    @Test
    void theScoreOfANormalDistributionIsItsClosedForm() {
        PredictedDepth normal = PredictedDepth.normal(1.5, 0.2);

        assertEquals(0.2 * (Math.sqrt(2) - 1) / Math.sqrt(Math.PI), normal.crpsMetres(1.5), 1e-8);
        double atOne = 2 * 0.8413447461 - 1 + 2 * 0.2419707245 - 1 / Math.sqrt(Math.PI);
        assertEquals(0.2 * atOne, normal.crpsMetres(1.7), 1e-7);
        assertEquals(0.2 * atOne, normal.crpsMetres(1.3), 1e-7);
    }

    /** Its definition: the integral of (F(t) − 1(t ≥ y))². */
    @Test
    void theScoreOfAMixtureIsTheIntegral() {
        PredictedDepth mixture = new PredictedDepth(
                new double[] {0.3, 0.5, 0.2}, new double[] {1, 1.4, 1.5}, new double[] {0.1, 0.05, 0.4});
        for (double y : new double[] {0.5, 1.1, 1.45, 2.5}) {
            double sum = 0;
            double step = 1e-4;
            for (double t = -2 + step / 2; t < 5; t += step) {
                double f = mixture.cumulative(t) - (t >= y ? 1 : 0);
                sum += f * f * step;
            }
            assertEquals(sum, mixture.crpsMetres(y), 1e-4);
        }
    }

    @Test
    void theLogScoreIsMinusTheLogDensity() {
        assertEquals(
                Math.log(0.2 * Math.sqrt(2 * Math.PI)) + 2,
                PredictedDepth.normal(1, 0.2).logScore(1.4),
                1e-12);
        PredictedDepth mixture =
                new PredictedDepth(new double[] {0.25, 0.75}, new double[] {1, 2}, new double[] {0.1, 0.5});
        double h = 1e-3;
        double density = (mixture.cumulative(1.2 + h) - mixture.cumulative(1.2 - h)) / (2 * h);
        assertEquals(-Math.log(density), mixture.logScore(1.2), 1e-3);
        assertTrue(Double.isFinite(mixture.logScore(30)), "far out the density does not vanish");
    }

    @Test
    void intervalsHaveEqualTails() {
        PredictedDepth normal = PredictedDepth.normal(0, 1);

        // Normal quantiles (Abramowitz & Stegun 1964, table 26.5).
        assertTrue(normal.covers(0.5, 0.674) && !normal.covers(0.5, 0.675));
        assertTrue(normal.covers(0.9, -1.644) && !normal.covers(0.9, -1.646));
        assertTrue(normal.covers(0.99, 2.575) && !normal.covers(0.99, 2.577));
        PredictedDepth apart = new PredictedDepth(new double[] {0.5, 0.5}, new double[] {-5, 5}, new double[] {1, 1});
        assertTrue(apart.covers(0.9, 0), "between two heaps is within");
        assertFalse(apart.covers(0.9, 6.5));
    }

    @Test
    void aMixtureOfTheSameIsTheSame() {
        PredictedDepth twice =
                new PredictedDepth(new double[] {0.4, 0.6}, new double[] {1, 1}, new double[] {0.2, 0.2});
        PredictedDepth once = PredictedDepth.normal(1, 0.2);

        assertEquals(once.crpsMetres(1.3), twice.crpsMetres(1.3), 1e-9);
        assertEquals(once.logScore(1.3), twice.logScore(1.3), 1e-12);
    }

    @Test
    void whatIsNoDistributionIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> PredictedDepth.normal(1, 0));
        assertThrows(IllegalArgumentException.class, () -> PredictedDepth.normal(Double.NaN, 1));
        assertThrows(
                IllegalArgumentException.class,
                () -> new PredictedDepth(new double[] {0.5, 0.4}, new double[] {1, 1}, new double[] {1, 1}));
    }
}

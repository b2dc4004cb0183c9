package pegbed.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PoissonGammaTest {
    /** Shape 1 and rate 1: geometric, P(n) = 1/2ⁿ⁺¹. */
    @Test
    void anExponentialRateGivesAGeometricCount() {
        GammaDistribution exponential = new GammaDistribution(1, 1);
        for (int n = 0; n < 6; n++) {
            assertEquals(-(n + 1) * Math.log(2), PoissonGamma.logProbability(exponential, 1, n), 1e-12);
        }
    }

    @Test
    void alikeLinesHaveEvenOdds() {
        GammaDistribution gamma = new GammaDistribution(3.3, 0.7);
        assertEquals(0.5, PoissonGamma.more(gamma, gamma), 1e-8);
    }

    /** Two geometric counts, P(n) = 1/2ⁿ⁺¹ and 2/3ⁿ⁺¹, against the double sum. */
    @Test
    void theOddsOfTwoGeometricCounts() {
        double more = 0;
        for (int one = 0; one < 60; one++) {
            for (int other = 0; other < 60; other++) {
                double p = Math.pow(0.5, one + 1) * (2.0 / 3) * Math.pow(1.0 / 3, other);
                more += one > other ? p : one == other ? p / 2 : 0;
            }
        }
        assertEquals(more, PoissonGamma.more(new GammaDistribution(1, 1), new GammaDistribution(1, 2)), 1e-9);
    }

    @Test
    void manyFishDoNotUnderflow() {
        GammaDistribution many = new GammaDistribution(1e6, 500);
        assertEquals(0.5, PoissonGamma.more(many, many), 1e-6);
        assertTrue(PoissonGamma.more(many, new GammaDistribution(1e6, 600)) > 0.999);
    }
}

package pegbed.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.apache.commons.math3.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GammaDistributionTest {
    /**
     * Exact 95 % limits of a Poisson count (Garwood 1936, Biometrika 28:437–442; to four decimals as tabulated by
     * McMaster University, "Confidence intervals for the mean of a Poisson distribution, exact method"), by the
     * relation with the chi-squared distribution (Ulm 1990, American Journal of Epidemiology 131:373–375): the lower
     * limit is the 0.025 quantile of a gamma distribution of shape n, the upper the 0.975 quantile of shape n + 1.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 3.6889",
        "1, 0.0253, 5.5716",
        "2, 0.2422, 7.2247",
        "3, 0.6187, 8.7673",
        "4, 1.0899, 10.2416",
        "5, 1.6235, 11.6683",
        "10, 4.7954, 18.3904"
    })
    void limitsOfPoissonCounts(int count, double lower, double upper) {
        assertEquals(upper, new GammaDistribution(count + 1, 1).quantile(0.975), 6e-5);
        if (count > 0) {
            assertEquals(lower, new GammaDistribution(count, 1).quantile(0.025), 6e-5);
        }
    }

    /** Against Apache Commons Math, which computes it on its own. */
    @Test
    void theIncompleteGammaFunctionIsThatOfALibrary() {
        for (double a : new double[] {0.01, 0.3, 1, 2.5, 10, 77.7, 1500}) {
            assertEquals(Gamma.logGamma(a), IncompleteGamma.logGamma(a), 1e-11 * Math.max(1, Gamma.logGamma(a)));
            for (double share : new double[] {1e-6, 0.01, 0.2, 0.8, 1, 1.3, 3, 20}) {
                double x = a * share;
                assertEquals(Gamma.regularizedGammaP(a, x), IncompleteGamma.lower(a, x), 2e-11, a + " " + x);
            }
        }
    }

    @Test
    void aQuantileIsWhereTheDistributionHasItsProbability() {
        for (double shape : new double[] {0.05, 0.5, 1, 3, 40, 2000}) {
            for (double p : new double[] {0.001, 0.05, 0.5, 0.75, 0.95, 0.999}) {
                GammaDistribution gamma = new GammaDistribution(shape, 3);
                assertEquals(p, gamma.cumulative(gamma.quantile(p)), 1e-9, shape + " " + p);
            }
        }
        assertEquals(Math.log(2) / 3, new GammaDistribution(1, 3).quantile(0.5), 1e-12, "exponential");
    }

    @Test
    void whatIsNoDistributionIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new GammaDistribution(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new GammaDistribution(1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new GammaDistribution(1, 1).quantile(1));
    }

    @Test
    void aMixtureOfTheSameIsTheSame() {
        GammaDistribution gamma = new GammaDistribution(2.5, 4);
        GammaMixture mixture = new GammaMixture(new double[] {0.3, 0.7}, List.of(gamma, gamma));
        assertEquals(gamma.quantile(0.95), mixture.quantile(0.95), 1e-6);
        assertEquals(gamma.quantile(0.05), mixture.quantile(0.05), 1e-6);
        assertEquals(2.5, mixture.matched().shape(), 1e-9);
    }

    @Test
    void aMixtureIsWiderThanItsParts() {
        GammaMixture mixture = new GammaMixture(
                new double[] {0.5, 0.5}, List.of(new GammaDistribution(50, 50), new GammaDistribution(50, 10)));
        assertEquals(3, mixture.mean(), 1e-12);
        assertEquals(0.95, mixture.cumulative(mixture.quantile(0.95)), 1e-6);
        assertEquals(0.05, mixture.cumulative(mixture.quantile(0.05)), 1e-6);
    }

    /** Two exponential variables of mean 1: the product has mean 1 and variance 3. */
    @Test
    void aProductHasTheMeanAndVarianceOfIndependentFactors() {
        GammaDistribution one = new GammaDistribution(1, 1);
        GammaDistribution product = one.timesIndependent(one);
        assertEquals(1, product.mean(), 1e-12);
        assertEquals(3, product.squaredVariation(), 1e-12);
    }
}

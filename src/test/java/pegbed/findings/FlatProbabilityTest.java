package pegbed.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pegbed.surface.posterior.Disc;

class FlatProbabilityTest {
    private static Disc disc(double depth, double gx, double gy, double sdDepth, double sdSlope) {
        return new Disc(depth, gx, gy, sdDepth * sdDepth, 0, 0, sdSlope * sdSlope, 0, sdSlope * sdSlope);
    }

    @Test
    void isCertainWhereEverythingIsKnown() {
        assertEquals(1, FlatProbability.USUAL.flat(disc(0.84, 0.1, 0.1, 1e-4, 1e-4), 0.84), 1e-6);
        assertEquals(0, FlatProbability.USUAL.flat(disc(0.84, 0.1, 0.2, 1e-4, 1e-4), 0.84), 1e-6);
        assertEquals(0, FlatProbability.USUAL.flat(disc(0.90, 0, 0, 1e-4, 1e-4), 0.84), 1e-6);
    }

    /**
     * Depth alone unsure, by a half, one and two times its standard deviation: the mean of 2Φ(z) − 1 at z = 2, 1 and ½,
     * 0.954500, 0.682689 and 0.382925 (any table of the normal distribution).
     */
    @Test
    void isTheNormalShareWhereOnlyDepthIsUnsure() {
        double expected = (0.954500 + 0.682689 + 0.382925) / 3;
        assertEquals(expected, FlatProbability.USUAL.flat(disc(0.84, 0, 0, 0.05, 1e-5), 0.84), 2e-4);
        assertEquals(expected, FlatProbability.USUAL.near(disc(0.84, 0, 0, 0.05, 1e-5), 0.84), 2e-4);
    }

    /** Slope alone unsure, round about level: P(|g| ≤ L) = 1 − exp(−L²/2σ²) (Rayleigh). */
    @Test
    void isTheRayleighShareWhereOnlySlopeIsUnsure() {
        double expected = 0;
        for (double sd : new double[] {0.075, 0.15, 0.3}) {
            expected += (1 - Math.exp(-0.2 * 0.2 / (2 * sd * sd))) / 3;
        }
        assertEquals(expected, FlatProbability.USUAL.gentle(disc(0.84, 0, 0, 1e-4, 0.15)), 0.03);
        assertEquals(expected, FlatProbability.USUAL.flat(disc(0.84, 0, 0, 1e-4, 0.15), 0.84), 0.03);
    }

    @Property(tries = 200)
    void aMirroredDiscHasTheSameOdds(
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double gx,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double gy,
            @ForAll @DoubleRange(min = -0.9, max = 0.9) double rho,
            @ForAll @DoubleRange(min = -0.9, max = 0.9) double rhoD) {
        double sd = 0.1;
        double sg = 0.15;
        Disc one = new Disc(0.8, gx, gy, sd * sd, rhoD * sd * sg, 0, sg * sg, rho * sg * sg, sg * sg * 1.5);
        Disc other = new Disc(0.8, -gx, gy, sd * sd, -rhoD * sd * sg, 0, sg * sg, -rho * sg * sg, sg * sg * 1.5);
        assertEquals(FlatProbability.USUAL.flat(one, 0.84), FlatProbability.USUAL.flat(other, 0.84), 1e-12);
        assertEquals(FlatProbability.USUAL.gentle(one), FlatProbability.USUAL.gentle(other), 1e-12);
    }

    /** Against plain Monte Carlo with a correlated depth and gradient. */
    @Test
    void agreesWithManyRandomDraws() {
        double l11 = 0.12;
        double l21 = 0.05;
        double l22 = 0.10;
        double b1 = 0.03;
        double b2 = -0.02;
        double s = 0.04;
        Disc disc = new Disc(
                0.82,
                0.05,
                -0.08,
                s * s + b1 * b1 + b2 * b2,
                b1 * l11,
                b1 * l21 + b2 * l22,
                l11 * l11,
                l11 * l21,
                l21 * l21 + l22 * l22);
        Random random = new Random(1);
        int draws = 400_000;
        int flat = 0;
        for (int i = 0; i < draws; i++) {
            double factor = Math.pow(2, random.nextInt(3) - 1);
            double z1 = factor * random.nextGaussian();
            double z2 = factor * random.nextGaussian();
            double d = 0.82 + b1 * z1 + b2 * z2 + s * factor * random.nextGaussian();
            double slope = Math.hypot(0.05 + l11 * z1, -0.08 + l21 * z1 + l22 * z2);
            flat += Math.abs(d - 0.84) <= 0.05 && slope <= 0.2 ? 1 : 0;
        }
        assertEquals((double) flat / draws, FlatProbability.USUAL.flat(disc, 0.84), 0.02);
    }

    /** Of a mixture each is the weighted sum of the structures' own, not that of one Gaussian with the same moments. */
    @Test
    void ofAMixtureIsTheWeightedSum() {
        Disc one = disc(0.84, 0.02, 0.05, 0.03, 0.05);
        Disc other = disc(1.3, 0.4, -0.2, 0.08, 0.1);
        Disc mixture = Disc.mixture(List.of(new Disc.Component(0.7, one), new Disc.Component(0.3, other)));
        FlatProbability p = FlatProbability.USUAL;
        for (double target : new double[] {0.84, 0.9, 1.3}) {
            assertEquals(0.7 * p.flat(one, target) + 0.3 * p.flat(other, target), p.flat(mixture, target), 1e-12);
            assertEquals(0.7 * p.near(one, target) + 0.3 * p.near(other, target), p.near(mixture, target), 1e-12);
        }
        assertEquals(0.7 * p.gentle(one) + 0.3 * p.gentle(other), p.gentle(mixture), 1e-12);
        // 2Φ(z) − 1 at z = 10/3, 5/3 and 5/6 of the first, nothing of the second (any table of the normal distribution)
        assertEquals(0.7 * (0.99914 + 0.90442 + 0.59534) / 3, p.near(mixture, 0.84), 1e-3);
        Disc gaussian = new Disc(
                mixture.depthMetres(),
                mixture.slopeX(),
                mixture.slopeY(),
                mixture.varD(),
                mixture.covDX(),
                mixture.covDY(),
                mixture.varX(),
                mixture.covXY(),
                mixture.varY());
        assertTrue(p.near(gaussian, 0.84) < 0.3, "one Gaussian would be spread over both");
    }

    @Test
    void theDrawsAreStandardNormal() {
        double sum = 0;
        double squares = 0;
        double cross = 0;
        int n = SobolNormals.FIRST.length;
        for (int i = 0; i < n; i++) {
            sum += SobolNormals.SECOND[i];
            squares += SobolNormals.FIRST[i] * SobolNormals.FIRST[i] + SobolNormals.SECOND[i] * SobolNormals.SECOND[i];
            cross += SobolNormals.FIRST[i] * SobolNormals.SECOND[i];
        }
        assertEquals(0, sum / n, 0.05);
        assertEquals(2, squares / n, 0.1);
        assertEquals(0, cross / n, 0.05);
        assertTrue(n >= 64 && n <= 400);
    }

    /** Φ(1.96) and Φ(−1) from any table of the normal distribution. */
    @Test
    void cumulativeIsThatOfTheTables() {
        assertEquals(0.9750021, StandardNormal.cumulative(1.96), 1e-6);
        assertEquals(0.1586553, StandardNormal.cumulative(-1), 1e-6);
        assertEquals(0.5, StandardNormal.cumulative(0), 1e-6);
    }
}

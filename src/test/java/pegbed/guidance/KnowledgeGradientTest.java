package pegbed.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pegbed.findings.FlatProbability;
import pegbed.findings.FlatSearch;
import pegbed.findings.StandardNormal;
import pegbed.surface.posterior.Disc;

class KnowledgeGradientTest {
    private static Disc level(double depth) {
        return new Disc(depth, 0, 0, 0.01, 0, 0, 1e-8, 0, 1e-8);
    }

    private static Decision deepest(double... depths) {
        return deepestFollowed(1, depths);
    }

    private static Decision deepestFollowed(double followed, double... depths) {
        int[] nodes = new int[depths.length];
        Disc[] discs = new Disc[depths.length];
        double[] worth = new double[depths.length];
        for (int k = 0; k < depths.length; k++) {
            discs[k] = level(depths[k]);
            worth[k] = new DeepWorth().now(discs[k]);
        }
        return new Decision(Optional.empty(), Double.NaN, 1, followed, nodes, discs, worth);
    }

    private static double gain(Decision choice, double... movesOfDepth) {
        double[][][] moves = new double[movesOfDepth.length][3][1];
        for (int k = 0; k < movesOfDepth.length; k++) {
            moves[k][0][0] = movesOfDepth[k];
        }
        return KnowledgeGradient.gain(choice, moves, 0);
    }

    @Test
    void twoPlacesGainWhatTheFormulaSays() {
        // E max(a + s z, b) − max(a, b) = s·f(−|a − b|/s), f(u) = φ(u) + u Φ(u): Frazier, Powell & Dayanik 2009.
        for (double gap : new double[] {0, 0.05, 0.1}) {
            double s = 0.08;
            double u = -gap / s;
            double phi = Math.exp(-u * u / 2) / Math.sqrt(2 * Math.PI);
            double formula = s * (phi + u * StandardNormal.cumulative(u)) / GuidanceWeights.DEPTH_METRES;

            // Five points see a kink only roughly.
            assertEquals(
                    formula, gain(deepest(1.5, 1.5 - gap), 0, s), 0.2 * s / GuidanceWeights.DEPTH_METRES, "gap " + gap);
        }
    }

    @Test
    void whatMovesAllPlacesAlikeSettlesNothing() {
        assertEquals(0, gain(deepest(1.5, 1.45, 1.4), 0.1, 0.1, 0.1), 1e-12);
    }

    @Test
    void aReadingThatOthersFollowIsTakenToMoveMore() {
        assertEquals(gain(deepest(1.5, 1.4), 0.034, 0.102), gain(deepestFollowed(1.7, 1.5, 1.4), 0.02, 0.06), 1e-12);
        // Settled for one reading, open for two: the second place would need to come out by five deviations deeper.
        assertEquals(0, gain(deepest(1.5, 1.4), 0, 0.02), 1e-12);
        assertTrue(gain(deepestFollowed(2, 1.5, 1.4), 0, 0.02) > 0);
    }

    @Test
    void theGainGrowsWithWhatTheReadingTells() {
        double before = 0;
        for (double move = 0.02; move < 0.2; move += 0.02) {
            double gain = gain(deepest(1.5, 1.46), 0, move);
            assertTrue(gain >= before, "at " + move);
            before = gain;
        }
        assertTrue(before > 0.1);
    }

    @Test
    void gainsAreNeverBelowNothing() {
        Random random = new Random(1);
        for (int i = 0; i < 200; i++) {
            double gain = gain(
                    deepest(1 + random.nextDouble(), 1 + random.nextDouble(), 1 + random.nextDouble()),
                    0.1 * random.nextGaussian(),
                    0.1 * random.nextGaussian(),
                    0.1 * random.nextGaussian());
            assertTrue(gain >= 0);
        }
    }

    @Test
    void flatWorthAgreesWithTheOddsThatAreTold() {
        Random random = new Random(2);
        for (int i = 0; i < 50; i++) {
            Disc disc = new Disc(
                    0.8 + 0.1 * random.nextGaussian(),
                    0.15 * random.nextGaussian(),
                    0.15 * random.nextGaussian(),
                    0.004,
                    0.001 * random.nextGaussian(),
                    0.001 * random.nextGaussian(),
                    0.01,
                    0.002 * random.nextGaussian(),
                    0.012);
            double told = FlatProbability.USUAL.flat(disc, 0.8) + FlatSearch.WIDE.flat(disc, 0.8);

            // Half the draws.
            assertEquals(told, new FlatWorth(0.8).now(disc), 0.1);
        }
    }

    @Test
    void aReadingIsNotExpectedToChangeTheOdds() {
        Disc disc = new Disc(0.83, 0.1, -0.05, 0.006, 0.001, -0.002, 0.01, 0.001, 0.012);
        double[] after = new double[KnowledgeGradient.Z.length];
        new FlatWorth(0.8).after(disc, 0.05, 0.03, -0.04, KnowledgeGradient.Z, after);
        double mean = 0;
        for (int j = 0; j < after.length; j++) {
            mean += KnowledgeGradient.WEIGHT[j] * after[j];
        }

        assertEquals(new FlatWorth(0.8).now(disc), mean, 0.08);
    }

    @Test
    void noWorthIsMoreThanTheMostThatItCanBe() {
        Random random = new Random(3);
        int near = 0;
        for (int i = 0; i < 200; i++) {
            double slopeSd = 0.02 + 0.15 * random.nextDouble();
            double depthSd = 0.01 + 0.1 * random.nextDouble();
            double share = random.nextDouble() - 0.5;
            double x = 0.15 * random.nextGaussian();
            double y = 0.15 * random.nextGaussian();
            double depth = 0.8 + 0.1 * random.nextGaussian();
            double covariance = share * depthSd * slopeSd;
            double s2 = slopeSd * slopeSd;
            Disc disc = new Disc(depth, x, y, depthSd * depthSd, covariance, covariance, s2, 0, s2);
            double[] most = new double[1];
            new FlatWorth(0.8).upperBound(disc, 0, 0, 0, new double[1], most);

            // The probabilities themselves, by plain sampling of the slope and of the depth beside it.
            double worth = 0;
            for (int draw = 0; draw < 4000; draw++) {
                double factor = Math.pow(2, random.nextInt(3) - 1);
                double gx = factor * random.nextGaussian();
                double gy = factor * random.nextGaussian();
                double rest = factor * random.nextGaussian();
                double d = depth + depthSd * (share * (gx + gy) + Math.sqrt(1 - 2 * share * share) * rest);
                double slope = Math.hypot(x + slopeSd * gx, y + slopeSd * gy);
                worth += FlatSearch.WIDE.bandMetres() >= Math.abs(d - 0.8) && slope <= 0.30 ? 1 : 0;
                worth += FlatProbability.USUAL.bandMetres() >= Math.abs(d - 0.8) && slope <= 0.20 ? 1 : 0;
            }
            worth /= 4000;
            assertTrue(worth <= most[0], worth + " of " + most[0]);
            near += most[0] < worth + 0.2 ? 1 : 0;
        }
        assertTrue(near > 50, "a limit that is never near tells nothing: " + near);
    }

    @Test
    void theQuickTableIsTheNormalDistribution() {
        for (double z = -7; z <= 7; z += 0.0137) {
            assertEquals(StandardNormal.cumulative(z), StandardNormal.quick(z), 3e-6, "at " + z);
        }
    }
}

package pegbed.bench.methods;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.gaussian.Matern;
import pegbed.surface.plain.Site;

/** On fields drawn from a known kernel. */
class PlainGaussianProcessTest {
    private static final double SD = 0.4;
    private static final double LENGTH = 3;
    private static final double NOISE = 0.05;
    private static final double MEAN = 1.3;

    /** The first {@code noisy} depths are read with noise, the others are the field itself. */
    private static List<Site> drawn(int noisy, int exact, long seed) {
        Random random = new Random(seed);
        int n = noisy + exact;
        double[] x = random.doubles(n, 0, 16).toArray();
        double[] y = random.doubles(n, 0, 16).toArray();
        double[] k = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                k[i * n + j] = SD * SD * Matern.fiveHalves(Math.hypot(x[i] - x[j], y[i] - y[j]) / LENGTH);
            }
        }
        double[] factor = GaussianProcess.factored(k, n);
        double[] white = random.doubles(n).map(u -> random.nextGaussian()).toArray();
        List<Site> sites = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double depth = MEAN;
            for (int j = 0; j <= i; j++) {
                depth += factor[i * n + j] * white[j];
            }
            sites.add(new Site(x[i], y[i], depth + (i < noisy ? NOISE * random.nextGaussian() : 0)));
        }
        return sites;
    }

    @Test
    void theLikeliestHyperparametersAreThoseItWasDrawnWith() {
        double sd = 0;
        double length = 0;
        double noise = 0;
        int draws = 10;
        for (int seed = 0; seed < draws; seed++) {
            PlainGaussianProcess found = new PlainGaussianProcess(drawn(100, 0, seed));
            sd += Math.log(found.sdMetres()) / draws;
            length += Math.log(found.lengthMetres()) / draws;
            noise += Math.log(found.noiseMetres()) / draws;
            double[] truth = {Math.log(SD), Math.log(LENGTH), Math.log(NOISE)};
            double[] likeliest = {
                Math.log(found.sdMetres()), Math.log(found.lengthMetres()), Math.log(found.noiseMetres())
            };
            assertTrue(
                    found.cost(likeliest, new double[3]) <= found.cost(truth, new double[3]) + 1e-6,
                    "the truth is no likelier");
        }
        assertEquals(Math.log(SD), sd, 0.2);
        assertEquals(Math.log(LENGTH), length, 0.2);
        assertEquals(Math.log(NOISE), noise, 0.2);
    }

    @Test
    void itsDoubtIsTrue() {
        int covered = 0;
        int all = 0;
        for (int seed = 0; seed < 10; seed++) {
            List<Site> sites = drawn(100, 50, 100 + seed);
            PlainGaussianProcess found = new PlainGaussianProcess(sites.subList(0, 100));
            for (Site site : sites.subList(100, 150)) {
                double error = found.depthAt(site.xMetres(), site.yMetres()) - site.depthMetres();
                covered += Math.abs(error) <= 1.645 * found.sdAt(site.xMetres(), site.yMetres()) ? 1 : 0;
                all++;
            }
        }
        assertEquals(0.9, (double) covered / all, 0.05);
    }

    @Test
    void theGradientIsThatOfTheLikelihood() {
        PlainGaussianProcess gp = new PlainGaussianProcess(drawn(40, 0, 7));
        double[] at = {Math.log(0.3), Math.log(2), Math.log(0.08)};
        double[] gradient = new double[3];
        gp.cost(at, gradient);
        for (int i = 0; i < 3; i++) {
            double[] above = at.clone();
            double[] below = at.clone();
            above[i] += 1e-5;
            below[i] -= 1e-5;
            double slope = (gp.cost(above, new double[3]) - gp.cost(below, new double[3])) / 2e-5;
            assertEquals(slope, gradient[i], 1e-4 * (1 + Math.abs(slope)));
        }
    }
}

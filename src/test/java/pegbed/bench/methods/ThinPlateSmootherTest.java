package pegbed.bench.methods;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import pegbed.surface.plain.Site;

class ThinPlateSmootherTest {
    private static List<Site> scattered(int count, long seed, double noise, DoubleBinaryOperator depth) {
        Random random = new Random(seed);
        List<Site> sites = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double x = 20 * random.nextDouble() - 10;
            double y = 15 * random.nextDouble();
            sites.add(new Site(x, y, depth.applyAsDouble(x, y) + noise * random.nextGaussian()));
        }
        return sites;
    }

    @Test
    void aPlaneComesBackExactly() {
        DoubleBinaryOperator plane = (x, y) -> 1.2 + 0.03 * x - 0.07 * y;
        for (double smoothing : new double[] {Double.NaN, 0.01, 100}) {
            List<Site> sites = scattered(30, 1, 0, plane);
            ThinPlateSmoother plate =
                    Double.isNaN(smoothing) ? ThinPlateSmoother.of(sites) : ThinPlateSmoother.of(sites, smoothing);
            for (double x = -20; x <= 20; x += 5) {
                assertEquals(plane.applyAsDouble(x, 7), plate.depthAt(x, 7), 1e-7);
            }
        }
    }

    @Test
    void withoutSmoothingItPassesThroughEverySite() {
        List<Site> sites = scattered(40, 2, 0.5, (x, y) -> Math.sin(x));
        ThinPlateSmoother plate = ThinPlateSmoother.of(sites, 0);

        for (Site site : sites) {
            assertEquals(site.depthMetres(), plate.depthAt(site.xMetres(), site.yMetres()), 1e-7);
        }
        assertEquals(sites.size(), plate.degreesOfFreedom(), 1e-9);
    }

    /**
     * By hand: the corners of a unit square have one contrast q = (1, −1, 1, −1)/2 free of planes, with qᵀKq = φ(√2) =
     * ln 2 / 8π, since φ(1) = 0. With nλ the same, half of the contrast is kept: tr A = 3.5, the residuals are ½, so
     * σ̂² = 4·¼ / ½ = 2, and by symmetry σ̂²·A has 2·3.5/4 on its diagonal.
     */
    @Test
    void aSquareIsSmoothedAsByHand() {
        List<Site> square = List.of(new Site(0, 0, 1), new Site(1, 0, -1), new Site(1, 1, 1), new Site(0, 1, -1));
        ThinPlateSmoother plate = ThinPlateSmoother.of(square, Math.log(2) / (8 * Math.PI));

        assertEquals(3.5, plate.degreesOfFreedom(), 1e-9);
        assertEquals(2, plate.noiseVariance(), 1e-9);
        for (Site site : square) {
            assertEquals(site.depthMetres() / 2, plate.depthAt(site.xMetres(), site.yMetres()), 1e-9);
            assertEquals(Math.sqrt(1.75), plate.sdAt(site.xMetres(), site.yMetres()), 1e-9);
        }
        assertEquals(0, plate.depthAt(0.5, 0.5), 1e-9);
        assertTrue(plate.sdAt(3, 3) > plate.sdAt(1, 1), "less is known away from the sites");
    }

    @Test
    void crossValidationSmoothsNoiseAwayAndKeepsWhatIsThere() {
        int smooth = 0;
        for (int seed = 0; seed < 10; seed++) {
            double onNoise =
                    ThinPlateSmoother.of(scattered(100, seed, 0.1, (x, y) -> 1)).degreesOfFreedom();
            ThinPlateSmoother onWaves =
                    ThinPlateSmoother.of(scattered(100, seed, 0.02, (x, y) -> Math.sin(x / 2) * Math.cos(y / 2)));
            smooth += onNoise < 10 ? 1 : 0;
            assertTrue(onWaves.degreesOfFreedom() > 30, "waves: " + onWaves.degreesOfFreedom());
            assertEquals(Math.sin(1) * Math.cos(3), onWaves.depthAt(2, 6), 0.25);
        }
        // Now and then GCV takes noise for signal (Wahba 1990, section 4.9).
        assertTrue(smooth >= 8, "near a plane on pure noise: " + smooth + " of 10");
    }

    @Test
    void crossValidationFindsTheNoise() {
        double sum = 0;
        for (int seed = 0; seed < 10; seed++) {
            sum += ThinPlateSmoother.of(scattered(150, seed, 0.1, (x, y) -> Math.sin(x / 3) + y / 10))
                    .noiseVariance();
        }
        assertEquals(0.01, sum / 10, 0.002);
    }

    @Test
    void sitesInOneLineOrTooFewMakeNoPlate() {
        List<Site> line = List.of(new Site(0, 0, 1), new Site(1, 1, 1), new Site(2, 2, 1), new Site(3, 3, 2));

        assertThrows(IllegalArgumentException.class, () -> ThinPlateSmoother.of(line));
        assertThrows(IllegalArgumentException.class, () -> ThinPlateSmoother.of(line.subList(0, 3)));
    }
}

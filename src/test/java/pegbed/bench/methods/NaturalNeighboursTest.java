package pegbed.bench.methods;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pegbed.surface.plain.Site;

class NaturalNeighboursTest {
    /** Sibson (1981): a linear function comes back. Tinfour keeps depths as floats. */
    @Test
    void aPlaneComesBack() {
        Random random = new Random(4);
        List<Site> sites = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double x = 10 * random.nextDouble();
            double y = 10 * random.nextDouble();
            sites.add(new Site(x, y, 1 + 0.1 * x - 0.05 * y));
        }
        NaturalNeighbours neighbours = new NaturalNeighbours(sites);
        for (double x = 3; x <= 7; x += 0.7) {
            assertEquals(1 + 0.1 * x - 0.25, neighbours.depthAt(x, 5), 1e-5);
        }
    }

    /** By symmetry the four corners count alike in the middle of a square. */
    @Test
    void theMiddleOfASquareIsTheMean() {
        NaturalNeighbours square = new NaturalNeighbours(
                List.of(new Site(0, 0, 1), new Site(1, 0, 2), new Site(1, 1, 4), new Site(0, 1, 5)));

        assertEquals(3, square.depthAt(0.5, 0.5), 1e-5);
        assertTrue(Double.isNaN(square.depthAt(2, 2)), "outside the hull nothing is known");
        assertTrue(Double.isNaN(square.sdAt(0.5, 0.5)), "it tells no doubt");
    }

    @Test
    void twoSitesMakeNoSurface() {
        assertTrue(Double.isNaN(new NaturalNeighbours(List.of(new Site(0, 0, 1), new Site(1, 0, 1))).depthAt(0.5, 0)));
    }
}

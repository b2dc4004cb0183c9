package pegbed.surface.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tinfour.common.Vertex;
import org.tinfour.interpolation.NaturalNeighborElements;
import org.tinfour.interpolation.NaturalNeighborInterpolator;
import org.tinfour.standard.IncrementalTin;

class NaturalNeighbourInterpolatorTest extends InterpolatorContract {
    @Override
    Interpolator of(List<Site> sites) {
        return new NaturalNeighbourInterpolator(sites);
    }

    /** Exact rationals from Sibson's (1981) definition, computed with an independent program. */
    @Test
    void weighsAnEdgeOfTheUnitGrid() {
        List<Site> grid = new ArrayList<>();
        for (int x = -4; x <= 5; x++) {
            for (int y = -4; y <= 4; y++) {
                grid.add(new Site(x, y, 0));
            }
        }
        NaturalNeighbourInterpolator interpolator = new NaturalNeighbourInterpolator(grid);
        Weights weights = interpolator.weightsAt(0.5, 0);
        assertEquals(4 / 9.0, weight(interpolator, weights, 0, 0), 1e-14);
        assertEquals(4 / 9.0, weight(interpolator, weights, 1, 0), 1e-14);
        for (int x = 0; x <= 1; x++) {
            for (int y = -1; y <= 1; y += 2) {
                assertEquals(1 / 36.0, weight(interpolator, weights, x, y), 1e-14);
            }
        }
    }

    /** Exact rationals from Sibson's (1981) definition, computed with an independent program. */
    @Test
    void weighsTheCornersOfTheUnitSquare() {
        NaturalNeighbourInterpolator square = new NaturalNeighbourInterpolator(
                List.of(new Site(0, 0, 0), new Site(1, 0, 0), new Site(1, 1, 0), new Site(0, 1, 0)));
        Weights weights = square.weightsAt(1 / 3.0, 1 / 5.0);
        assertEquals(8 / 15.0, weight(square, weights, 0, 0), 1e-14);
        assertEquals(4 / 15.0, weight(square, weights, 1, 0), 1e-14);
        assertEquals(1 / 15.0, weight(square, weights, 1, 1), 1e-14);
        assertEquals(2 / 15.0, weight(square, weights, 0, 1), 1e-14);
    }

    /** Exact rationals from Sibson's (1981) definition, computed with an independent program. */
    @Test
    void weighsTheCornersOfATriangle() {
        NaturalNeighbourInterpolator triangle =
                new NaturalNeighbourInterpolator(List.of(new Site(0, 0, 0), new Site(4, 0, 0), new Site(0, 3, 0)));
        Weights weights = triangle.weightsAt(1, 1);
        assertEquals(3, weights.count());
        assertEquals(5 / 12.0, weight(triangle, weights, 0, 0), 1e-14);
        assertEquals(1 / 4.0, weight(triangle, weights, 4, 0), 1e-14);
        assertEquals(1 / 3.0, weight(triangle, weights, 0, 3), 1e-14);
    }

    /** Tinfour 2.1.9 finds the natural neighbours and their weights by its own triangulation; it keeps depths as floats. */
    @Test
    void agreesWithTinfourOnRandomSites() {
        for (int seed = 0; seed < 20; seed++) {
            List<Site> sites = scattered(10 + 20 * seed, seed);
            NaturalNeighbourInterpolator ours = new NaturalNeighbourInterpolator(sites);
            IncrementalTin tin = new IncrementalTin(1);
            for (Site site : sites) {
                tin.add(new Vertex(site.xMetres(), site.yMetres(), site.depthMetres()));
            }
            NaturalNeighborInterpolator theirs = new NaturalNeighborInterpolator(tin);
            Random random = new Random(1000 + seed);
            int compared = 0;
            for (int i = 0; i < 200; i++) {
                double x = random.nextDouble() * 12 - 6;
                double y = random.nextDouble() * 14;
                Weights weights = ours.weightsAt(x, y);
                double depth = theirs.interpolate(x, y, null);
                assertEquals(Double.isNaN(depth), weights.count() == 0, "inside the hull or not");
                if (Double.isNaN(depth)) {
                    continue;
                }
                compared++;
                assertEquals(depth, ours.depthAt(x, y), 1e-6);
                NaturalNeighborElements elements = theirs.getNaturalNeighborElements(x, y);
                Vertex[] neighbours = elements.getNaturalNeighbors();
                for (int k = 0; k < neighbours.length; k++) {
                    double weight = weight(ours, weights, neighbours[k].getX(), neighbours[k].getY());
                    assertEquals(elements.getSibsonCoordinates()[k], weight, 1e-10);
                }
            }
            assertTrue(compared > 80, "places compared: " + compared);
        }
    }

    /** Round a circle every site is a neighbour, and at its centre all count alike. */
    @Test
    void weighsManySitesOnOneCircleAlike() {
        List<Site> ring = new ArrayList<>();
        int count = 360;
        for (int i = 0; i < count; i++) {
            double angle = 2 * Math.PI * i / count;
            ring.add(new Site(3 * Math.cos(angle), 3 * Math.sin(angle), i % 2));
        }
        NaturalNeighbourInterpolator interpolator = new NaturalNeighbourInterpolator(ring);
        Weights weights = interpolator.weightsAt(0, 0);
        for (int site = 0; site < count; site++) {
            assertEquals(1.0 / count, weights.of(site), 1e-9);
        }
        assertEquals(0.5, interpolator.depthAt(0, 0), 1e-9);
    }

    /** The weight of the site at a place; 0 if it does not count. */
    static double weight(TriangulatedInterpolator interpolator, Weights weights, double x, double y) {
        for (int i = 0; i < interpolator.sites().size(); i++) {
            Site site = interpolator.sites().get(i);
            if (site.xMetres() == x && site.yMetres() == y) {
                return weights.of(i);
            }
        }
        throw new AssertionError("No site at " + x + ", " + y + ".");
    }
}

package pegbed.surface.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class LinearInterpolatorTest extends InterpolatorContract {
    @Override
    Interpolator of(List<Site> sites) {
        return new LinearInterpolator(sites);
    }

    /** Barycentric coordinates by hand. */
    @Test
    void weighsTheCornersOfTheTriangle() {
        LinearInterpolator triangle =
                new LinearInterpolator(List.of(new Site(0, 0, 1), new Site(4, 0, 2), new Site(0, 3, 3)));
        Weights weights = triangle.weightsAt(1, 1);
        assertEquals(5 / 12.0, weight(triangle, weights, 0, 0), 1e-15);
        assertEquals(1 / 4.0, weight(triangle, weights, 4, 0), 1e-15);
        assertEquals(1 / 3.0, weight(triangle, weights, 0, 3), 1e-15);
        assertEquals(5 / 12.0 + 2 / 4.0 + 3 / 3.0, triangle.depthAt(1, 1), 1e-15);
    }

    /** The long diagonal of a kite is no edge of its Delaunay triangulation: the depth rides on the short one. */
    @Test
    void joinsTheNearerPair() {
        LinearInterpolator kite = new LinearInterpolator(
                List.of(new Site(-3, 0, 0), new Site(3, 0, 0), new Site(0, 1, 1), new Site(0, -1, 1)));
        assertEquals(1, kite.depthAt(0, 0), 1e-15);
    }

    /** The weight of the site at a place; 0 if it does not count. */
    private static double weight(LinearInterpolator interpolator, Weights weights, double x, double y) {
        for (int i = 0; i < interpolator.sites().size(); i++) {
            Site site = interpolator.sites().get(i);
            if (site.xMetres() == x && site.yMetres() == y) {
                return weights.of(i);
            }
        }
        throw new AssertionError("No site at " + x + ", " + y + ".");
    }
}

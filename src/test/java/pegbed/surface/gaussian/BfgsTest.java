package pegbed.surface.gaussian;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class BfgsTest {
    private static final double FAR = 1e6;

    private static double[] all(int n, double value) {
        double[] values = new double[n];
        Arrays.fill(values, value);
        return values;
    }

    /** Rosenbrock (1960): 100 (y − x²)² + (1 − x)², least at (1, 1). */
    private static double rosenbrock(double[] p, double[] g) {
        double a = p[1] - p[0] * p[0];
        double b = 1 - p[0];
        g[0] = -400 * a * p[0] - 2 * b;
        g[1] = 200 * a;
        return 100 * a * a + b * b;
    }

    @Test
    void findsTheEndOfRosenbrocksValley() {
        double[] start = {-1.2, 1};
        double[] found =
                Bfgs.minimise(BfgsTest::rosenbrock, start, all(2, -FAR), all(2, FAR), all(2, 1e-3), 200, 1e-14);
        assertArrayEquals(new double[] {1, 1}, found, 1e-5);
        assertArrayEquals(new double[] {-1.2, 1}, start, 0);
    }

    /** Within x ≤ 0.5 the valley ends at (0.5, 0.25). */
    @Test
    void stopsAtABoundOfRosenbrocksValley() {
        double[] found = Bfgs.minimise(
                BfgsTest::rosenbrock,
                new double[] {-1.2, 1},
                all(2, -FAR),
                new double[] {0.5, FAR},
                all(2, 1e-3),
                200,
                1e-14);
        assertArrayEquals(new double[] {0.5, 0.25}, found, 1e-5);
    }

    /** (x − 3)² + (y + 1)² + (x − 3)(y + 1) / 2 + z² within [0, 2]³: at x = 2, y = 0, z = 0. */
    private static double quadratic(double[] p, double[] g) {
        double a = p[0] - 3;
        double b = p[1] + 1;
        g[0] = 2 * a + b / 2;
        g[1] = 2 * b + a / 2;
        g[2] = 2 * p[2];
        return a * a + b * b + a * b / 2 + p[2] * p[2];
    }

    @Test
    void findsTheCornerOfABoundedQuadratic() {
        double[] found = Bfgs.minimise(BfgsTest::quadratic, all(3, 1), all(3, 0), all(3, 2), all(3, 0.1), 100, 1e-14);
        assertArrayEquals(new double[] {2, 0, 0}, found, 1e-6);
    }

    @Test
    void findsTheFreeLeastPointOfAQuadratic() {
        double[] found =
                Bfgs.minimise(BfgsTest::quadratic, all(3, 1), all(3, -10), all(3, 10), all(3, 0.1), 100, 1e-16);
        assertArrayEquals(new double[] {3, -1, 0}, found, 1e-6);
    }

    @Test
    void neverLeavesTheBoundsAndNeverGetsWorse() {
        double[] first = {Double.NaN};
        double[] least = {Double.POSITIVE_INFINITY};
        Bfgs.Objective watched = (p, g) -> {
            for (double x : p) {
                assertTrue(x >= 0 && x <= 2);
            }
            double value = quadratic(p, g);
            first[0] = Double.isNaN(first[0]) ? value : first[0];
            least[0] = Math.min(least[0], value);
            return value;
        };
        double[] found = Bfgs.minimise(watched, all(3, 1), all(3, 0), all(3, 2), all(3, 5), 100, 1e-14);
        assertTrue(quadratic(found, new double[3]) <= first[0]);
        assertTrue(quadratic(found, new double[3]) <= least[0] + 1e-12);
    }

    /** A step into where nothing can be computed is cut short. */
    @Test
    void walksRoundWhatCannotBeComputed() {
        Bfgs.Objective f = (p, g) -> {
            g[0] = 2 * (p[0] - 1);
            return p[0] > 1.5 ? Double.POSITIVE_INFINITY : (p[0] - 1) * (p[0] - 1);
        };
        double[] found = Bfgs.minimise(f, all(1, 0), all(1, -FAR), all(1, FAR), all(1, 5), 100, 1e-14);
        assertArrayEquals(new double[] {1}, found, 1e-6);
    }

    @Test
    void staysWhereNothingCanBeComputed() {
        double[] found =
                Bfgs.minimise((p, g) -> Double.POSITIVE_INFINITY, all(2, 1), all(2, 0), all(2, 2), all(2, 1), 10, 1e-9);
        assertArrayEquals(all(2, 1), found, 0);
    }
}

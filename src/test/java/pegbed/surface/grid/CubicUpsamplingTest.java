package pegbed.surface.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class CubicUpsamplingTest {
    private static final GridFrame COARSE = new GridFrame(-1, 2, 0.25, 9, 7);

    @Test
    void coversTheSameRectangle() {
        Field fine = CubicUpsampling.catmullRom(field((x, y) -> x), 5);
        assertEquals(new GridFrame(-1, 2, 0.05, 41, 31), fine.frame());
    }

    @Test
    void keepsTheCoarseNodes() {
        Random random = new Random(1);
        Field coarse = field((x, y) -> random.nextDouble() < 0.2 ? Double.NaN : random.nextDouble());
        Field fine = CubicUpsampling.catmullRom(coarse, 5);
        for (int row = 0; row < COARSE.rows(); row++) {
            for (int column = 0; column < COARSE.columns(); column++) {
                assertEquals(coarse.at(column, row), fine.at(5 * column, 5 * row), 1e-15);
            }
        }
        Field same = CubicUpsampling.catmullRom(coarse, 1);
        for (int node = 0; node < COARSE.size(); node++) {
            assertEquals(coarse.at(node), same.at(node), 1e-15);
        }
    }

    /** By hand from the definition: halfway it is (−p0 + 9 p1 + 9 p2 − p3)/16. */
    @Test
    void halfwayOnARow() {
        GridFrame frame = new GridFrame(0, 0, 1, 4, 2);
        Field coarse = new Field(frame, new double[] {0, 1, 3, 8, 0, 1, 3, 8});
        Field fine = CubicUpsampling.catmullRom(coarse, 2);
        assertEquals((9 * 1 + 9 * 3 - 0 - 8) / 16.0, fine.at(3, 0), 1e-15);
        // At the rim the node beyond lies on the straight line: 2·0 − 1 = −1.
        assertEquals((9 * 0 + 9 * 1 + 1 - 3) / 16.0, fine.at(1, 0), 1e-15);
    }

    @Property(tries = 100)
    void aPlaneComesBackWhereverThereIsAValue(
            @ForAll @DoubleRange(min = -2, max = 2) double across,
            @ForAll @DoubleRange(min = -2, max = 2) double outward,
            @ForAll @IntRange(min = 1, max = 6) int factor,
            @ForAll @IntRange(max = 10_000) int seed) {
        Random random = new Random(seed);
        DoubleBinaryOperator plane = (x, y) -> 1 + across * x + outward * y;
        Field coarse = field((x, y) -> random.nextDouble() < 0.15 ? Double.NaN : plane.applyAsDouble(x, y));
        Field fine = CubicUpsampling.catmullRom(coarse, factor);
        for (int row = 0; row < fine.frame().rows(); row++) {
            for (int column = 0; column < fine.frame().columns(); column++) {
                double expected = bearingCornersKnown(coarse, column, row, factor)
                        ? plane.applyAsDouble(
                                fine.frame().x(column), fine.frame().y(row))
                        : Double.NaN;
                assertEquals(expected, fine.at(column, row), 1e-12);
            }
        }
    }

    private static boolean bearingCornersKnown(Field coarse, int column, int row, int factor) {
        double sum = 0;
        for (int r = row / factor; r <= (row + factor - 1) / factor; r++) {
            for (int c = column / factor; c <= (column + factor - 1) / factor; c++) {
                sum += coarse.at(c, r);
            }
        }
        return !Double.isNaN(sum);
    }

    @Test
    void aQuadraticSurfaceComesBackOneCellWithin() {
        DoubleBinaryOperator bowl = (x, y) -> 1 + 0.3 * x - 0.2 * y + 0.5 * x * x - 0.4 * x * y + 0.7 * y * y;
        Field fine = CubicUpsampling.catmullRom(field(bowl), 5);
        for (int row = 5; row <= 25; row++) {
            for (int column = 5; column <= 35; column++) {
                assertEquals(
                        bowl.applyAsDouble(fine.frame().x(column), fine.frame().y(row)), fine.at(column, row), 1e-12);
            }
        }
    }

    /** A missing node far off changes nothing, and across the coarse lines beside it the surface has no jump. */
    @Test
    void aGapIsLocalAndMakesNoJump() {
        DoubleBinaryOperator wave = (x, y) -> Math.sin(2 * x) * Math.cos(3 * y);
        Field whole = CubicUpsampling.catmullRom(field(wave), 50);
        Field holed = CubicUpsampling.catmullRom(
                field((x, y) -> x == -0.25 && y == 2.75 ? Double.NaN : wave.applyAsDouble(x, y)), 50);
        int worth = 0;
        for (int row = 0; row < holed.frame().rows(); row++) {
            for (int column = 1; column < holed.frame().columns(); column++) {
                double here = holed.at(column, row);
                double before = holed.at(column - 1, row);
                if (!Double.isNaN(here) && !Double.isNaN(before)) {
                    assertEquals(here, before, 0.02, "steps of 5 mm on a slope of 2 at most");
                    worth++;
                }
                if (column > 400 - 50 || column < 50) {
                    assertEquals(whole.at(column, row), here, 1e-15);
                }
            }
        }
        assertTrue(worth > 100_000);
    }

    @Test
    void aFactorBelowOneIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> CubicUpsampling.catmullRom(field((x, y) -> x), 0));
    }

    private static Field field(DoubleBinaryOperator depth) {
        double[] values = new double[COARSE.size()];
        for (int row = 0; row < COARSE.rows(); row++) {
            for (int column = 0; column < COARSE.columns(); column++) {
                values[COARSE.index(column, row)] = depth.applyAsDouble(COARSE.x(column), COARSE.y(row));
            }
        }
        return new Field(COARSE, values);
    }
}

package pegbed.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import pegbed.model.BankPoint;

class BankLineTest {
    private static final double HALF_WIDTH = 20;

    private static List<BankPoint> points(double... xy) {
        List<BankPoint> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(BankPoint.at(xy[i], xy[i + 1]));
        }
        return points;
    }

    private static BankLine line(double... xy) {
        return BankLine.through(points(xy), HALF_WIDTH);
    }

    private static List<BankPoint> sampled(DoubleUnaryOperator height, double step) {
        List<BankPoint> points = new ArrayList<>();
        for (double x = -12; x <= 12; x += step) {
            points.add(BankPoint.at(x, height.applyAsDouble(x)));
        }
        return points;
    }

    // Straight banks: height a + b x; the distance of (x, y) is (y − a − b x)/√(1 + b²).

    @ParameterizedTest
    @CsvSource({"0, 0", "-0.5, 0", "3, 0.5", "-2, -1.25", "11, 0.1"})
    void distanceFromAStraightBankIsExact(double a, double b) {
        for (BankLine line : List.of(
                line(-12, a - 12 * b, 12, a + 12 * b),
                line(12, a + 12 * b, -12, a - 12 * b),
                BankLine.through(sampled(x -> a + b * x, 1.7), HALF_WIDTH))) {
            assertTrue(line.isFunctionOfX());
            for (double x = -18; x <= 18; x += 1.37) {
                for (double y = -5; y <= 15; y += 2.5) {
                    assertEquals((y - a - b * x) / Math.sqrt(1 + b * b), line.beyond(x, y), 1e-9);
                }
                assertEquals(a + b * x, line.heightAt(x), 1e-9);
            }
        }
    }

    @Test
    void aStraightBankIsContinuedStraightBeyondItsPoints() {
        BankLine line = line(-3, 1, 3, 4);
        assertEquals(2.5 + 0.5 * 19, line.heightAt(19), 1e-9);
        assertEquals(2.5 - 0.5 * 40, line.heightAt(-40), 1e-9);
        Coordinate first = line.drawn().get(0);
        Coordinate last = line.drawn().get(line.drawn().size() - 1);
        assertEquals(-HALF_WIDTH, first.x, 1e-9);
        assertEquals(HALF_WIDTH, last.x, 1e-9);
    }

    /** A Gaussian of standard deviation s lays x² higher by s², and leaves its slopes alone. */
    @Test
    void smoothingOfABentBankIsTheGaussians() {
        BankLine line = BankLine.through(sampled(x -> 0.05 * x * x, 0.05), HALF_WIDTH);
        double s2 = BankLine.SMOOTHING_METRES * BankLine.SMOOTHING_METRES;
        for (double x = -8; x <= 8; x += 0.8) {
            assertEquals(0.05 * (x * x + s2), line.heightAt(x), 5e-4);
        }
        // At x = 4 the bank is at 0.05·(16 + 0.25) and its slope is 0.4.
        assertEquals((3 - 0.05 * 16.25) / Math.sqrt(1.16), line.beyond(4, 3), 1e-3);
    }

    @Test
    void smoothingEvensOutOneWrongPoint() {
        List<BankPoint> points = sampled(x -> 0, 1);
        points.set(12, BankPoint.at(0, 0.4));
        double peak = BankLine.through(points, HALF_WIDTH).heightAt(0);
        assertTrue(peak > 0.1 && peak < 0.3, "peak " + peak);
    }

    @Test
    void scatterAlongABankIsNoBend() {
        assertTrue(line(-10, 0, 0, 0, -0.2, 0.1, 10, 0).isFunctionOfX());
        assertFalse(line(-10, 0, 0, 0, -0.5, 0.5, 10, 0).isFunctionOfX());
    }

    @Test
    void aStepKeepsTheOrderOfItsPoints() {
        BankLine down = line(-10, 1, 0, 1, 0, -1, 10, -1);
        BankLine up = line(-10, -1, 0, -1, 0, 1, 10, 1);
        for (double x = -5; x <= 5; x += 0.5) {
            assertEquals(x < -2 ? 1 : x > 2 ? -1 : down.heightAt(x), down.heightAt(x), 1e-9);
            assertEquals(down.heightAt(x), up.heightAt(-x), 1e-12);
        }
        assertEquals(0, down.heightAt(0), 1e-12);
    }

    @Test
    void theSamePointTwiceIsOnePoint() {
        BankLine once = line(-10, 1, 0, 2, 10, 0);
        BankLine twice = line(-10, 1, 0, 2, 0, 2, 10, 0);
        assertEquals(once.drawn(), twice.drawn());
        assertThrows(IllegalArgumentException.class, () -> line(1, 1));
    }

    // A bank that doubles back, water on the left of its points in order:
    //
    //              (1,6)-------- (10,6)
    //                |    land
    //              (1,4)--(3,4)
    //      water            |    land
    //   (-10,0)-----------(3,0)

    private static final double[] HOOK = {-10, 0, 3, 0, 3, 4, 1, 4, 1, 6, 10, 6};

    @ParameterizedTest
    @CsvSource({
        "0, 2, 2", // above the first stretch
        "0, -1.5, -1.5",
        "2, 3, 1", // in the nook
        "2, 5, -1", // on the nose
        "0, 5, 1", // left of the nose
        "5, 7.5, 1.5",
        "5, 5.5, -0.5",
        "4, -1, -1.4142135624", // outside the corner (3, 0)
        "0.5, 3.5, 0.7071067812", // outside the corner (1, 4), in the water
        "3.5, 4.5, -0.7071067812", // outside the corner (3, 4), on land
        "3, 2, 0" // on the bank
    })
    void distanceAndSideOfABankThatDoublesBack(double x, double y, double expected) {
        BankLine line = line(HOOK);
        assertFalse(line.isFunctionOfX());
        assertEquals(expected, line.beyond(x, y), 1e-9);
        List<BankPoint> backwards = points(HOOK);
        Collections.reverse(backwards);
        assertEquals(expected, BankLine.through(backwards, HALF_WIDTH).beyond(x, y), 1e-9);
    }

    /** Everywhere the side is that of the polygon closed over the top, and the distance that to the line. */
    @ParameterizedTest
    @CsvSource({"0", "1", "2"})
    void sidesAreThoseOfThePolygon(int shape) {
        double[] xy = switch (shape) {
            case 0 -> HOOK;
            // A needle of land and a needle of water, with sharp corners.
            case 1 -> new double[] {-10, 0, 4, 0.2, -3, 0.8, 5, 1.6, 4.5, -2, 10, 0};
            default -> new double[] {-10, 1, -2, 1, -4, 4, -4.5, 1.5, -9, 3, 2, 8, 1, 0, 10, 0};
        };
        BankLine line = line(xy);
        List<Coordinate> ring = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            ring.add(new Coordinate(xy[i], xy[i + 1]));
        }
        ring.add(new Coordinate(xy[xy.length - 2], 20));
        ring.add(new Coordinate(xy[0], 20));
        Polygon water = Shapes.polygon(ring);
        assertTrue(water.isValid());
        for (double x = -9.9; x < 9.9; x += 0.31) {
            for (double y = -4; y < 12; y += 0.37) {
                Geometry place = Shapes.FACTORY.createPoint(new Coordinate(x, y));
                double distance = place.distance(line.toGeometry());
                assertEquals(water.covers(place) ? distance : -distance, line.beyond(x, y), 1e-9, "at " + x + ", " + y);
            }
        }
    }
}

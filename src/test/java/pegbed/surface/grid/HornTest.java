package pegbed.surface.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleBinaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class HornTest {
    /** The worked window for Horn (1981) that is reprinted in GIS handbooks, cell 5; their rows run as ours do. */
    @Test
    void theWorkedWindow() {
        Horn horn = new Horn(window(5, 50, 45, 50, 30, 30, 30, 8, 10, 10));
        assertEquals(0.05, horn.acrossSlope().at(1, 1), 1e-12);
        assertEquals(-3.8, horn.outwardSlope().at(1, 1), 1e-12);
        assertEquals(75.2577, horn.steepnessDegrees().at(1, 1), 1e-4);
        assertEquals(Math.sqrt(0.05 * 0.05 + 3.8 * 3.8), horn.steepness().at(1, 1), 1e-12);
        // It deepens towards the angler and a hair to the right: atan2(0.05, −3.8).
        assertEquals(179.2462, horn.downslopeDegrees().at(1, 1), 1e-4);
    }

    /** Reproduced values of Horn's rule, cell 10: a neighbour raised by 10. */
    @Test
    void oneCornerOneSideAndFourSidesRaised() {
        assertEquals(10.025, degrees(window(10, 10, 0, 0, 0, 0, 0, 0, 0, 0)), 5e-4);
        assertEquals(14.036, degrees(window(10, 0, 10, 0, 0, 0, 0, 0, 0, 0)), 5e-4);
        assertEquals(0, degrees(window(10, 0, 10, 0, 10, 0, 10, 0, 10, 0)), 0);
        assertEquals(10.025, degrees(window(10, 10, 0, 0, 0, 99, 0, 0, 0, 0)), 5e-4, "the centre is not used");
    }

    private static double degrees(Field window) {
        return new Horn(window).steepnessDegrees().at(1, 1);
    }

    @Property
    void aPlaneHasItsSlopeEverywhereWithin(
            @ForAll @DoubleRange(min = -2, max = 2) double across,
            @ForAll @DoubleRange(min = -2, max = 2) double outward) {
        Field plane = field(7, 6, 0.25, (x, y) -> 1 + across * x + outward * y);
        Horn horn = new Horn(plane);
        for (int row = 1; row < 5; row++) {
            for (int column = 1; column < 6; column++) {
                assertEquals(across, horn.acrossSlope().at(column, row), 1e-12);
                assertEquals(outward, horn.outwardSlope().at(column, row), 1e-12);
            }
        }
    }

    @Test
    void theDeepLiesWhereTheCompassOfThePegSays() {
        assertEquals(0, downslope((x, y) -> y), 1e-9, "straight out");
        assertEquals(90, downslope((x, y) -> x), 1e-9, "to the right");
        assertEquals(-90, downslope((x, y) -> -x), 1e-9, "to the left");
        assertEquals(180, downslope((x, y) -> -y), 1e-9, "back to the bank");
        assertEquals(
                30, downslope((x, y) -> x * Math.sin(Math.PI / 6) + y * Math.cos(Math.PI / 6)), 1e-9, "one o'clock");
        assertEquals(Double.NaN, downslope((x, y) -> 1), "nowhere");
    }

    private static double downslope(DoubleBinaryOperator depth) {
        return new Horn(field(3, 3, 0.5, depth)).downslopeDegrees().at(1, 1);
    }

    @Test
    void theRimHasNoSlope() {
        Horn horn = new Horn(field(4, 5, 1, (x, y) -> x));
        for (int column = 0; column < 4; column++) {
            for (int row = 0; row < 5; row++) {
                boolean rim = column == 0 || row == 0 || column == 3 || row == 4;
                assertEquals(rim ? Double.NaN : 1, horn.steepness().at(column, row));
            }
        }
    }

    /** Whichever neighbour is missing, even one that a difference passes over; the node itself may be missing. */
    @Test
    void aMissingNeighbourTakesTheSlopeAway() {
        for (int missing = 0; missing < 9; missing++) {
            double[] values = {1, 2, 3, 1, 2, 3, 1, 2, 3};
            values[missing] = Double.NaN;
            Horn horn = new Horn(window(1, values));
            double expected = missing == 4 ? 1 : Double.NaN;
            assertEquals(expected, horn.acrossSlope().at(1, 1));
            assertEquals(expected, horn.steepness().at(1, 1));
            assertEquals(missing == 4 ? 0 : Double.NaN, horn.outwardSlope().at(1, 1));
        }
    }

    private static Field window(double cell, double... values) {
        return new Field(new GridFrame(0, 0, cell, 3, 3), values);
    }

    private static Field field(int columns, int rows, double cell, DoubleBinaryOperator depth) {
        GridFrame frame = new GridFrame(-1, 2, cell, columns, rows);
        double[] values = new double[frame.size()];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                values[frame.index(column, row)] = depth.applyAsDouble(frame.x(column), frame.y(row));
            }
        }
        return new Field(frame, values);
    }
}

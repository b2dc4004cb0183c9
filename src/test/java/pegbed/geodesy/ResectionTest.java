package pegbed.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Position;

class ResectionTest {
    private static final Position SEAT = new Position(52.123456, -1.987654, 312.5);

    private static SightedMark mark(Position seat, String name, Place place, double eastwardMetres)
            throws InputException {
        double[] at = {place.xMetres(), place.yMetres()};
        LocalFrame.of(seat).toEarth(at);
        double metresPerDegree = 111_320 * Math.cos(Math.toRadians(at[1]));
        return new SightedMark(name, place, at[1], at[0] + eastwardMetres / metresPerDegree);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 45, 133.3, 180, 271, 359.9})
    void twoMarksGiveSeatAndBearing(double bearing) throws InputException {
        Position seat = new Position(SEAT.latitudeDegrees(), SEAT.longitudeDegrees(), bearing);
        Resection found = Resection.of(
                List.of(
                        mark(seat, "leaning post", Place.polar(13.5, -20), 0),
                        mark(seat, "white pipe", Place.polar(13.2, 14), 0)),
                OptionalDouble.of(3));
        assertEquals(seat.latitudeDegrees(), found.position().latitudeDegrees(), 1e-8);
        assertEquals(seat.longitudeDegrees(), found.position().longitudeDegrees(), 1e-8);
        assertEquals(0, Math.IEEEremainder(bearing - found.position().bearingDegrees(), 360), 1e-3);
        assertEquals(OptionalDouble.of(3), found.position().accuracyMetres());
        assertEquals(0, found.rmsMetres(), 1e-3);
    }

    /** Two marks 8 m apart of which one is said to be 1 m farther off: half of it is left at each. */
    @Test
    void whatMarksDisagreeByIsTold() throws InputException {
        Position north = new Position(52, -1, 0);
        Resection found = Resection.of(
                List.of(mark(north, "gate", new Place(-4, 12), 0), mark(north, "split ash", new Place(4, 12), 1)),
                OptionalDouble.empty());
        assertEquals(0.5, found.residualMetres().get(0), 0.005);
        assertEquals(0.5, found.residualMetres().get(1), 0.005);
        assertEquals(0.5, found.rmsMetres(), 0.005);
        assertEquals(0, Math.IEEEremainder(found.position().bearingDegrees(), 360), 0.01);
    }

    /** No turn and shift near the one found brings four marks with errors nearer to their positions. */
    @Test
    void theFitIsTheLeastSquaresOne() throws InputException {
        List<SightedMark> marks = new ArrayList<>();
        double[] errors = {0.4, -0.3, 0.2, 0.5};
        for (int i = 0; i < errors.length; i++) {
            marks.add(mark(SEAT, "mark " + i, Place.polar(9 + 2 * i, -40 + 30 * i), errors[i]));
        }
        Resection found = Resection.of(marks, OptionalDouble.empty());
        double least = squares(found.position(), marks);
        assertEquals(marks.size() * found.rmsMetres() * found.rmsMetres(), least, 1e-6);
        for (double step : new double[] {-1e-6, 1e-6}) {
            Position own = found.position();
            assertTrue(least
                    < squares(
                            new Position(own.latitudeDegrees() + step, own.longitudeDegrees(), own.bearingDegrees()),
                            marks));
            assertTrue(least
                    < squares(
                            new Position(own.latitudeDegrees(), own.longitudeDegrees() + step, own.bearingDegrees()),
                            marks));
            assertTrue(least
                    < squares(
                            new Position(
                                    own.latitudeDegrees(), own.longitudeDegrees(), own.bearingDegrees() + 1e6 * step),
                            marks));
        }
    }

    private static double squares(Position seat, List<SightedMark> marks) throws InputException {
        LocalFrame frame = LocalFrame.of(seat);
        return marks.stream()
                .mapToDouble(mark -> Math.pow(
                        frame.place(mark.latitudeDegrees(), mark.longitudeDegrees())
                                .distanceTo(mark.place()),
                        2))
                .sum();
    }

    @Test
    void oneMarkGivesTheBearingOfAKnownSeat() throws InputException {
        Resection found = Resection.bearing(
                SEAT.latitudeDegrees(),
                SEAT.longitudeDegrees(),
                List.of(mark(SEAT, "gate", Place.polar(13, 25), 0)),
                OptionalDouble.empty());
        assertEquals(SEAT.bearingDegrees(), found.position().bearingDegrees(), 1e-3);
        assertEquals(SEAT.latitudeDegrees(), found.position().latitudeDegrees());
    }

    @Test
    void marksThatSayTooLittleAreRefused() throws InputException {
        SightedMark one = mark(SEAT, "gate", Place.polar(13, 25), 0);
        SightedMark near = mark(SEAT, "post", Place.polar(13.5, 25), 0);
        SightedMark swapped = new SightedMark("post", Place.polar(13, -25), -1.98, 52.12);
        assertRefused("needs two marks", () -> Resection.of(List.of(one), OptionalDouble.empty()));
        assertRefused("within 2 m of each other", () -> Resection.of(List.of(one, near), OptionalDouble.empty()));
        assertRefused("km apart", () -> Resection.of(List.of(one, swapped), OptionalDouble.empty()));
        assertRefused(
                "too near a pole",
                () -> Resection.of(
                        List.of(one, new SightedMark("ice", Place.polar(9, 0), 90, 0)), OptionalDouble.empty()));
    }

    private static void assertRefused(String words, org.junit.jupiter.api.function.Executable work) {
        InputException refused = assertThrows(InputException.class, work);
        assertTrue(refused.getMessage().contains(words), refused.getMessage());
    }
}

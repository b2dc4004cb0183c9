package pegbed.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Peg;

/**
 * Shores of any shape. The seat is at (0, 0) and faces larger y; all distances were derived by hand from the drawings.
 */
class ShoreShapesTest {
    /** A bay 4 m deep on the right, 4 m wide at its mouth and 6 m at its back. */
    private static final String BAY = "LINESTRING (-20 0, 2 0, 1 -4, 7 -4, 6 0, 20 0)";

    /** The same as a point of land, 4 m out, broader at its head than at its foot. */
    private static final String POINT = "LINESTRING (-20 0, 2 0, 1 4, 7 4, 6 0, 20 0)";

    /** The shore turns round on the right and back behind the seat, which stands on a tongue of land 6 m wide. */
    private static final String HORSESHOE = "LINESTRING (-20 0, 4 0, 4 -6, -4 -6)";

    /** The seat at the end of a jetty 2 m wide and 5 m long. */
    private static final String JETTY = "LINESTRING (-20 -5, -1 -5, -1 0, 1 0, 1 -5, 20 -5)";

    /** The seat on an island of 8 m by 6 m. */
    private static final String ISLAND = "LINESTRING (-4 0, 4 0, 4 -6, -4 -6, -4 0)";

    /** A pond of 12 m by 8 m, the bank going all round. */
    private static final String POND = "LINESTRING (-6 0, 6 0, 6 8, -6 8, -6 0)";

    private static List<BankPoint> points(String wkt) {
        try {
            return Stream.of(new WKTReader().read(wkt).getCoordinates())
                    .map(c -> BankPoint.at(c.x, c.y))
                    .toList();
        } catch (ParseException e) {
            throw new IllegalArgumentException(wkt, e);
        }
    }

    private static List<BankPoint> mirrored(List<BankPoint> points) {
        return points.stream()
                .map(p -> BankPoint.at(-p.place().xMetres(), p.place().yMetres()))
                .toList();
    }

    private static List<BankPoint> backwards(List<BankPoint> points) {
        List<BankPoint> turned = new ArrayList<>(points);
        Collections.reverse(turned);
        return turned;
    }

    private static Peg peg(List<BankPoint> near, List<BankPoint> far) {
        return Peg.EMPTY.withBanks(new Banks(near, far, List.of()));
    }

    private static String shape(String name) {
        return switch (name) {
            case "bay" -> BAY;
            case "point" -> POINT;
            case "horseshoe" -> HORSESHOE;
            case "jetty" -> JETTY;
            case "island" -> ISLAND;
            default -> POND;
        };
    }

    @ParameterizedTest
    @CsvSource({
        "bay, 4, -2, 2", // off the back of the bay
        "bay, 4, 3, 3.6055512755", // as far from both corners of its mouth: √(2² + 3²)
        "bay, -1, -2, -2", // behind the seat
        "bay, 4, -5, -1", // behind the bay
        "bay, -3, 4, 4",
        "point, 4, 2, -2", // in the middle of the head
        "point, 4, 6, 2",
        "point, 0, 1, 1",
        "point, 4, -1, -2.2360679775", // on the land behind, √(2² + 1²) from the corners of its foot
        "horseshoe, 0, 5, 5",
        "horseshoe, 0, -3, -3", // in the middle of the tongue
        "horseshoe, 6, -3, 2", // to its right
        "horseshoe, 7, 3, 4.2426406871", // off its corner: √(3² + 3²)
        "horseshoe, 0, -8, 2", // behind it
        "horseshoe, -10, -2, -2", // where the bank is only continued
        "jetty, 0, 4, 4",
        "jetty, 2, 2, 2.2360679775", // off its corner: √(1² + 2²)
        "jetty, 3, -2, 2", // beside it
        "jetty, -4, -4, 1", // off the bank
        "jetty, 0, -3, -1", // on it
        "jetty, 3, -6, -1",
        "island, 0, 3, 3",
        "island, 0, -2, -2",
        "island, 6, -3, 2",
        "island, 0, -8, 2", // behind it
        "island, -7, 4, 5", // off its corner: √(3² + 4²)
        "pond, 0, 3, 3",
        "pond, 4, 4, 2",
        "pond, 0, -1, -1",
        "pond, 0, 9, -1"
    })
    void distanceIsPositiveInTheWaterWhicheverWayTheBankIsGiven(String name, double x, double y, double expected)
            throws InputException {
        List<BankPoint> bank = points(shape(name));
        for (List<BankPoint> given : List.of(bank, backwards(bank))) {
            PegWater water = PegWater.of(peg(given, List.of()));
            PegWater other = PegWater.of(peg(mirrored(given), List.of()));
            assertFalse(water.near().isFunctionOfX());
            assertEquals(expected, water.fromNear(x, y), 1e-9);
            assertEquals(expected, other.fromNear(-x, y), 1e-9);
            assertEquals(expected > 0, water.isWater(x, y));
            assertEquals(expected > 0, other.isWater(-x, y));
            assertEquals(expected < 0, water.isLand(x, y));
        }
    }

    @Test
    void aRingIsAPondInsideOrAnIslandOutside() throws InputException {
        double disc = Math.PI * 16 * 16;
        assertEquals(12 * 8, PegWater.of(peg(points(POND), List.of())).water().getArea(), 1e-9);
        assertEquals(
                disc - 8 * 6,
                PegWater.of(peg(points(ISLAND), List.of())).water().getArea(),
                0.001 * disc);
    }

    /** Ends 20 cm apart, as they are when somebody walks round and comes back to where he began. */
    /** A bank of many corners is looked up in another way than one of few. */
    @ParameterizedTest
    @ValueSource(strings = {"bay", "point", "horseshoe", "jetty", "island"})
    void cornersAlongAStraightStretchChangeNoDistance(String name) throws InputException {
        List<BankPoint> few = points(shape(name));
        List<BankPoint> many = new ArrayList<>();
        for (int i = 1; i < few.size(); i++) {
            for (int step = 0; step < 40; step++) {
                many.add(BankPoint.at(
                        few.get(i - 1).place().xMetres() * (1 - step / 40.0)
                                + few.get(i).place().xMetres() * (step / 40.0),
                        few.get(i - 1).place().yMetres() * (1 - step / 40.0)
                                + few.get(i).place().yMetres() * (step / 40.0)));
            }
        }
        many.add(few.get(few.size() - 1));
        PegWater drawn = PegWater.of(peg(few, List.of()));
        PegWater subdivided = PegWater.of(peg(many, List.of()));
        for (double x = -9; x <= 9; x += 1.7) {
            for (double y = -9; y <= 9; y += 1.3) {
                assertEquals(drawn.fromNear(x, y), subdivided.fromNear(x, y), 1e-6);
            }
        }
    }

    @Test
    void aRingNeedNotCloseExactly() throws InputException {
        PegWater water = PegWater.of(peg(points("LINESTRING (-4 0, 4 0, 4 -6, -4 -6, -4 -0.2)"), List.of()));
        assertTrue(water.isWater(0, -8));
        assertTrue(water.isWater(-10, -0.1));
        assertTrue(water.isLand(-3, -1));
    }

    /** The left end comes back towards the water; the bank goes on away from the seat, not across the water ahead. */
    @Test
    void anEndThatTurnsBackGoesOnAwayFromTheSeat() throws InputException {
        PegWater water = PegWater.of(peg(points("LINESTRING (-9 3, -12 0, -12 -4, -9 -4, -6 0, 20 0)"), List.of()));
        for (double x = -8; x <= 8; x += 2) {
            assertTrue(water.isWater(x, 9), "at x " + x);
        }
        assertTrue(water.isLand(-14, 3));
        assertTrue(water.isWater(-10, -2));
    }

    /** A bank runs round the seat's left, the far one bends round a point: one strip of 5 m about the corner. */
    @Test
    void betweenTwoBanksThatTurnTheDistancesAddUp() throws InputException {
        List<BankPoint> near = points("LINESTRING (-20 0, 3 0, 3 -20)");
        List<BankPoint> far = points("LINESTRING (-20 5, 8 5, 8 -20)");
        PegWater water = PegWater.of(peg(near, far));
        for (double[] place : new double[][] {{-6, 2}, {0, 4}, {4, -6}, {7, -3}}) {
            assertEquals(5, water.fromNear(place[0], place[1]) + water.fromFar(place[0], place[1]), 1e-9);
            assertEquals(
                    water.fromNear(place[0], place[1]),
                    water.across(place[0], place[1]) * 5 / water.widthMetres(),
                    1e-9);
        }
        assertEquals(2, water.fromNear(5, -4), 1e-9);
        assertEquals(-2, water.fromNear(1, -4), 1e-9);
        assertEquals(-1, water.fromFar(9, -4), 1e-9);
        assertTrue(water.isLand(9, -4));
        assertTrue(water.isWater(5, -4));
        assertFalse(water.isWater(1, -4));
    }

    /**
     * Distances change by no more than one walks; between banks 5 m apart and more, across by no more than twice that.
     */
    @Test
    void theCoordinatesHaveNoJumps() throws InputException {
        PegWater water = PegWater.of(peg(points(HORSESHOE), points("LINESTRING (-20 9, 3 9, 3 7, 12 7, 12 -20)")));
        double step = 0.05;
        for (double y = -9; y < 9; y += 0.31) {
            for (double x = -9; x < 11; x += step) {
                if (water.isWater(x, y) && water.isWater(x + step, y)) {
                    assertEquals(water.fromNear(x, y), water.fromNear(x + step, y), step + 1e-9);
                    assertEquals(water.fromFar(x, y), water.fromFar(x + step, y), step + 1e-9);
                    assertEquals(water.across(x, y), water.across(x + step, y), 2 * step * water.widthMetres() / 5);
                }
            }
        }
    }

    /** The far bank begins where the near one ends: the end of a water. */
    @Test
    void banksMayMeetWhereOneEnds() throws InputException {
        PegWater water = PegWater.of(peg(
                points("LINESTRING (-20 0, 6 0, 6 4, 8 4, 7.5 5)"),
                points("LINESTRING (-20 9, 4 9, 5 8, 4.5 6, 7.5 5)")));
        assertTrue(water.isWater(3, 4));
        assertTrue(water.isWater(7, 4.5));
        assertFalse(water.isWater(7, 2));
        assertFalse(water.isWater(9, 6));
    }

    // Refusals: the bank, the points by number from 1, and the place

    private static void says(String sentence, Peg peg) {
        assertEquals(
                sentence,
                assertThrows(InputException.class, () -> PegWater.of(peg)).getMessage());
    }

    @Test
    void aBankThatCrossesItselfIsToldByItsStretches() {
        says(
                "The near bank crosses itself at x 2.0 m, y 0.0 m, where the stretch from point 1 to point 2 meets the"
                        + " stretch from point 4 to point 5; give its points in order along the bank.",
                peg(points("LINESTRING (-10 0, 5 0, 5 3, 2 3, 2 -3, 10 -3)"), List.of()));
        says(
                "The far bank crosses itself at x 2.0 m, y 9.0 m, where the stretch from point 1 to point 2 meets the"
                        + " stretch from point 4 to point 5; give its points in order along the bank.",
                peg(points("LINESTRING (-10 0, 10 0)"), points("LINESTRING (-10 9, 5 9, 5 12, 2 12, 2 7, 10 7)")));
    }

    /** Out and back along the same line, from point 2 to point 3 and from there towards point 4. */
    @Test
    void aBankThatRunsBackOverItselfIsToldByItsStretches() {
        String sentence = assertThrows(
                        InputException.class,
                        () -> PegWater.of(peg(points("LINESTRING (-10 0, -2 0, 5 0, 1 0, 9 4)"), List.of())))
                .getMessage();
        assertTrue(sentence.contains("from point 2 to point 3"), sentence);
        assertTrue(sentence.contains("from point 3 to point 4"), sentence);
    }

    @ParameterizedTest
    @ValueSource(strings = {"LINESTRING (-10 9, 10 -9)", "LINESTRING (-10 12, -10 9, 10 -9, 10 12)"})
    void banksThatCrossAreToldByTheirStretches(String far) {
        int first = points(far).size() / 2;
        says(
                "The near and far banks cross near x 0.0 m, y 0.0 m: the near bank on its way from point 2 to point 3,"
                        + " the far bank on its way from point " + first + " to point " + (first + 1)
                        + "; the far bank must lie beyond the near bank all along.",
                peg(points("LINESTRING (-10 0, -5 0, 5 0, 10 0)"), points(far)));
    }

    @Test
    void aFarBankBehindTheSeatIsToldByItsPoint() {
        says(
                "The far bank lies on the angler's side of the near bank, most at its point 2 (x 0.0 m, y -9.0 m); the"
                        + " far bank must lie beyond the near bank.",
                peg(points("LINESTRING (-20 0, 20 0)"), points("LINESTRING (-20 -8, 0 -9, 20 -8)")));
    }

    @Test
    void anIslandIsToldByItsNumber() {
        Banks banks = new Banks(
                points("LINESTRING (-20 0, 20 0)"),
                List.of(),
                List.of(points("LINESTRING (0 4, 2 4, 2 6)"), points("LINESTRING (4 4, 6 6, 6 4, 4 6)")));
        says(
                "Island 2 crosses itself at x 5.0 m, y 5.0 m, where the stretch from point 1 to point 2 meets the stretch"
                        + " from point 3 to point 4; give its points in order around it.",
                Peg.EMPTY.withBanks(banks));
    }

    @Test
    void aNearBankFarFromTheSeatIsToldByItsStretch() {
        says(
                "There is no water within reach between these banks; the near bank must lie at the seat and the far bank"
                        + " beyond it, but the near bank comes nearest to the seat on its way from point 2 to point 3,"
                        + " 30.0 m from it.",
                peg(points("LINESTRING (-20 30, -5 30, 20 30)"), List.of()));
    }

    /** Both ends lie inside spirals: the bank can neither go on nor close. */
    @Test
    void aBankThatWindsRoundItsEndsIsToldByItsEnds() {
        List<BankPoint> spiral = IntStream.rangeClosed(-60, 60)
                .mapToObj(i -> {
                    double turn = Math.max(0, (60 - Math.abs(i)) / 6.0) * Math.PI / 2.5;
                    double radius = 1 + 0.3 * (60 - Math.abs(i)) / 6.0;
                    double side = i < 0 ? -6 : 6;
                    return BankPoint.at(
                            side + (i < 0 ? -1 : 1) * -radius * Math.cos(turn),
                            6 + (i < 0 ? -1 : 1) * radius * Math.sin(turn));
                })
                .toList();
        String sentence = assertThrows(InputException.class, () -> PegWater.of(peg(spiral, List.of())))
                .getMessage();
        assertTrue(sentence.startsWith("The near bank winds round its own end: neither point 1 (x "), sentence);
        assertTrue(sentence.contains("point 121 (x "), sentence);
    }
}

package pegbed.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygonal;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.Limits;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Typed;

class PegWaterTest {
    private static final double[] NEAR = {-20, 0, 20, 0};
    private static final double[] FAR = {-20, 10, 20, 10};
    private static final double[] NONE = {};
    private static final double REACH = 16;

    private static List<BankPoint> points(double... xy) {
        List<BankPoint> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(BankPoint.at(xy[i], xy[i + 1]));
        }
        return points;
    }

    private static Peg peg(double[] near, double[] far, double[]... islands) {
        List<List<BankPoint>> rings = new ArrayList<>();
        for (double[] island : islands) {
            rings.add(points(island));
        }
        return Peg.EMPTY.withBanks(new Banks(points(near), points(far), rings));
    }

    /** A cut from y = 0 to y = 10, its limits at x = −3 and x = 4: 7 m by 10 m, all within 16 m. */
    private static Peg box(double[]... islands) {
        return peg(NEAR, FAR, islands).withLimits(new Limits(OptionalDouble.of(-3), OptionalDouble.of(4)));
    }

    private static String refused(Peg peg) {
        String sentence =
                assertThrows(InputException.class, () -> PegWater.of(peg)).getMessage();
        assertTrue(sentence.endsWith(".") && Character.isUpperCase(sentence.charAt(0)), sentence);
        return sentence;
    }

    private static void says(String part, Peg peg) {
        String sentence = refused(peg);
        assertTrue(sentence.contains(part), sentence);
    }

    // Outlines

    @Test
    void limitsCutTheWater() throws InputException {
        assertEquals(70, PegWater.of(box()).water().getArea(), 1e-9);
    }

    @Test
    void oneLimitCutsOneSide() throws InputException {
        PegWater left =
                PegWater.of(peg(NEAR, FAR).withLimits(new Limits(OptionalDouble.of(-3), OptionalDouble.empty())));
        assertFalse(left.isWater(-3.1, 5));
        assertTrue(left.isWater(-2.9, 5));
        assertTrue(left.isWater(12, 5));
    }

    /** A strip of 10 m in a circle of 16 m: 10·√156 + 256·asin(10/16) m², but for the sides of the drawn circle. */
    @Test
    void reachCutsTheWater() throws InputException {
        double strip = 10 * Math.sqrt(156) + 256 * Math.asin(10 / 16.0);
        assertEquals(strip, PegWater.of(peg(NEAR, FAR)).water().getArea(), 0.001 * strip);
        double half = Math.PI * 25 / 2;
        Peg shortPole = peg(NEAR, FAR).withPole(Pole.USUAL.withReach(5));
        assertEquals(half, PegWater.of(shortPole).water().getArea(), 0.001 * half);
        assertEquals(5, PegWater.of(shortPole).reachMetres());
    }

    @Test
    void aPondIsHalfADisc() throws InputException {
        PegWater pond = PegWater.of(peg(NEAR, NONE));
        assertEquals(Math.PI * 128, pond.water().getArea(), 0.001 * Math.PI * 128);
        assertFalse(pond.hasFarBank());
        assertEquals(Double.POSITIVE_INFINITY, pond.widthMetres());
        assertEquals(Double.POSITIVE_INFINITY, pond.fromFar(0, 5));
        assertEquals(5, pond.across(2, 5), 1e-9);
        assertFalse(pond.isLand(0, 500));
    }

    @Test
    void islandsAreNoWater() throws InputException {
        PegWater water = PegWater.of(box(new double[] {1, 4, 3, 4, 3, 7, 1, 7}, new double[] {-2, 1, -1, 1, -1, 2}));
        assertEquals(70 - 6 - 0.5, water.water().getArea(), 1e-9);
        assertEquals(2, water.islands().size());
        assertFalse(water.isWater(2, 5));
        assertTrue(water.isLand(2, 5));
        assertTrue(water.isWater(0, 5));
        assertFalse(water.isLand(0, 5));
    }

    @Test
    void anIslandWhoseFirstPointIsRepeatedClosesOnce() throws InputException {
        assertEquals(
                70 - 6,
                PegWater.of(box(new double[] {1, 4, 3, 4, 3, 7, 1, 7, 1, 4}))
                        .water()
                        .getArea(),
                1e-9);
    }

    /** Half of it lies behind the near bank: 2 m by 1 m of the water go. */
    @Test
    void anIslandAroundTheSeatIsNoWaterEither() throws InputException {
        PegWater water = PegWater.of(box(new double[] {-1, -1, 1, -1, 1, 1, -1, 1}));
        assertEquals(70 - 2, water.water().getArea(), 1e-9);
        assertTrue(water.isLand(0, 0.5));
        assertFalse(water.isWater(0, 0.5));
        assertTrue(water.isWater(0, 1.5));
    }

    @Test
    void hazardsLieInTheWaterButAreNotFished() throws InputException {
        Hazard snag = new Hazard(Hazard.Kind.SNAG, List.of(new Place(0, 5)), 1, "", Typed.NOTHING, Extras.NONE);
        Hazard lilies = new Hazard(
                Hazard.Kind.LILIES_OR_REEDS,
                List.of(new Place(2, 7), new Place(4, 7), new Place(4, 9), new Place(2, 9)),
                0,
                "",
                Typed.NOTHING,
                Extras.NONE);
        PegWater water = PegWater.of(box().withHazards(List.of(snag, lilies)));
        assertEquals(70, water.water().getArea(), 1e-9);
        // A circle of 64 sides: 32·sin(2π/64).
        assertEquals(70 - 4 - 32 * Math.sin(Math.PI / 32), water.fishable().getArea(), 1e-9);
        assertTrue(water.isWater(0, 5));
    }

    @Test
    void aHazardOutlineThatCrossesItselfKeepsItsWholeHull() {
        Hazard bowTie = new Hazard(
                Hazard.Kind.OTHER,
                List.of(new Place(0, 0), new Place(2, 2), new Place(2, 0), new Place(0, 2)),
                0,
                "",
                Typed.NOTHING,
                Extras.NONE);
        assertEquals(4, PegWater.around(bowTie).getArea(), 1e-9);
    }

    /** A limit at x = 2 that runs along the end of a spur of land, from y = 4 to y = 6, leaves no loose line there. */
    @Test
    void aLimitAlongABankLeavesAreasAlone() throws InputException {
        double[] spur = {-20, 6, 2, 6, 2, 4, -3, 4, -3, 0, 20, 0};
        Peg peg = peg(spur, new double[] {-20, 12, 20, 12})
                .withLimits(new Limits(OptionalDouble.of(-5), OptionalDouble.of(2)));
        PegWater water = PegWater.of(peg);
        assertTrue(water.water() instanceof Polygonal, water.water().toText());
        assertTrue(water.fishable() instanceof Polygonal);
        assertEquals(7 * 6 + 5 * 4, water.water().getArea(), 1e-9);
        assertTrue(water.isWater(0, 2));
        assertTrue(water.isWater(0, 8));
        assertFalse(water.isWater(0, 5));
    }

    @Test
    void theOutlineIsWater() throws InputException {
        PegWater water = PegWater.of(box());
        assertTrue(water.isWater(0, 0));
        assertTrue(water.isWater(-3, 10));
        assertFalse(water.isWater(0, -0.01));
        assertFalse(water.isWater(0, 10.01));
    }

    // Coordinates

    @Test
    void betweenStraightBanksTheCoordinatesAreMetres() throws InputException {
        PegWater water = PegWater.of(peg(NEAR, FAR));
        assertEquals(10, water.widthMetres(), 1e-9);
        assertEquals(3, water.fromNear(2, 3), 1e-9);
        assertEquals(7, water.fromFar(2, 3), 1e-9);
        assertEquals(3, water.across(2, 3), 1e-9);
        assertEquals(2, water.along(2, 3));
        assertEquals(-1, water.fromNear(2, -1), 1e-9);
        assertEquals(-1, water.fromFar(2, 11), 1e-9);
        assertTrue(water.isLand(2, -1));
        assertTrue(water.isLand(2, 11));
    }

    /** A wedge from 12 m on the left to 8 m on the right is 10 m in the median; the middle is at 5 all along. */
    @Test
    void acrossIsStretchedToTheMedianWidth() throws InputException {
        PegWater water = PegWater.of(peg(new double[] {-20, -2, 20, 2}, new double[] {-20, 12, 20, 8}));
        assertEquals(10, water.widthMetres(), 1e-9);
        for (double x = -10; x <= 10; x += 5) {
            assertEquals(5, water.across(x, 5), 1e-9);
            assertEquals(0, water.across(x, 0.1 * x), 1e-9);
            assertEquals(10, water.across(x, 10 - 0.1 * x), 1e-9);
        }
    }

    /** Narrower than 2 m the stretch goes no further: 1 m across a gap of 1 m counts as half the width. */
    @Test
    void aVeryNarrowPlaceIsNotStretchedWithoutEnd() throws InputException {
        PegWater water = PegWater.of(peg(NEAR, new double[] {-20, 1, 20, 1}));
        assertEquals(1, water.widthMetres(), 1e-9);
        assertEquals(0.25, water.across(0, 0.5), 1e-9);
    }

    /** Islands of 1 to 3 by 4 to 6 m, and of 6 to 7 by 4 to 5 m. */
    @Test
    void howFarTheNearestIslandIs() throws InputException {
        PegWater water = PegWater.of(box(new double[] {1, 4, 3, 4, 3, 6, 1, 6}, new double[] {6, 4, 7, 4, 7, 5, 6, 5}));
        assertEquals(1, water.fromIsland(2, 3), 1e-12);
        assertEquals(Math.sqrt(2), water.fromIsland(0, 7), 1e-12);
        assertEquals(0, water.fromIsland(2, 5), 0);
        assertEquals(0, water.fromIsland(3, 5), 1e-12);
        assertEquals(1.2, water.fromIsland(4.2, 4.5), 1e-12);
        assertEquals(1.2, water.fromIsland(4.8, 4.5), 1e-12);
        assertEquals(Double.POSITIVE_INFINITY, PegWater.of(box()).fromIsland(2, 5));
    }

    @Test
    void theOrderAlongABankDoesNotMatter() throws InputException {
        PegWater water = PegWater.of(peg(new double[] {20, 1, 0, 0, -20, 1}, new double[] {20, 9, -20, 11}));
        PegWater other = PegWater.of(peg(new double[] {-20, 1, 0, 0, 20, 1}, new double[] {-20, 11, 20, 9}));
        assertEquals(other.water(), water.water());
    }

    @Test
    void aBankThatDoublesBackBoundsTheWater() throws InputException {
        double[] bay = {-20, 0, 4, 0, 4, 5, 2, 5, 2, 7, 20, 7};
        PegWater water = PegWater.of(peg(bay, new double[] {-20, 12, 20, 12}));
        assertTrue(water.isWater(3, 3));
        assertFalse(water.isWater(3, 6));
        assertTrue(water.isLand(3, 6));
        assertEquals(1, water.fromNear(3, 3), 1e-9);
        assertEquals(12 - 6, water.fromFar(1, 6), 1e-9);
    }

    // Sentences

    @Test
    void aBankNeedsTwoPoints() {
        says("near bank has no points", peg(NONE, FAR));
        says("near bank has only one point", peg(new double[] {0, 0}, FAR));
        says("near bank has only one point", peg(new double[] {0, 0, 0, 0}, FAR));
        says("far bank has only one point", peg(NEAR, new double[] {0, 9}));
    }

    @Test
    void banksMustNotCross() {
        says("cross near x 0.0 m, y 0.0 m", peg(NEAR, new double[] {-10, 5, 10, -5}));
    }

    @Test
    void aBankMustNotCrossItself() {
        says(
                "near bank crosses itself",
                peg(new double[] {-10, 0, 5, 0, 5, 3, 0, 3, 0, -3, 10, -3}, new double[] {-20, 15, 20, 15}));
        says("far bank crosses itself", peg(NEAR, new double[] {-10, 10, 5, 10, 5, 13, 0, 13, 0, 7, 10, 7}));
    }

    @Test
    void theFarBankMustLieBeyondTheNear() {
        says("far bank lies on the angler's side", peg(NEAR, new double[] {-20, -8, 20, -8}));
        // One that doubles back, too.
        says("far bank lies on the angler's side", peg(NEAR, new double[] {-20, -8, 4, -8, 4, -5, 2, -5, 2, -3, 20, -3
        }));
    }

    @Test
    void anIslandNeedsThreePoints() {
        says("Island 1 has only 2 different points", box(new double[] {1, 4, 3, 4}));
        says("Island 1 has only 2 different points", box(new double[] {1, 4, 3, 4, 1, 4}));
        says("Island 1 crosses itself at x 1.0 m, y 5.0 m", box(new double[] {0, 4, 2, 6, 2, 4, 0, 6}));
        says("Island 1", box(new double[] {0, 4, 1, 4, 2, 4}));
    }

    @Test
    void thereMustBeWaterWithinReach() {
        says("no water within reach", peg(new double[] {-20, 30, 20, 30}, NONE));
        says("no water within reach", box(new double[] {-9, -9, 9, -9, 9, 19, -9, 19}));
        says(
                "no water within reach",
                peg(NEAR, FAR).withLimits(new Limits(OptionalDouble.of(20), OptionalDouble.of(30))));
    }

    /** Banks that were given near the seat only, and would meet further along if they went on straight. */
    @Test
    void banksThatWouldMeetBeyondTheirPointsEndTheWaterThere() throws InputException {
        PegWater water = PegWater.of(peg(new double[] {-6, 0, 0, 0, 6, 0}, new double[] {-6, 8, 0, 8, 3, 6, 6, 4}));
        assertTrue(water.isWater(0, 5));
        assertTrue(water.isWater(8, 1));
        assertFalse(water.isWater(14, 1));
        assertFalse(water.isWater(14, -1));
        assertTrue(water.water().isValid());
        assertTrue(water.water().getArea() < REACH * REACH);
    }
}

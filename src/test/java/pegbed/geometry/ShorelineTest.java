package pegbed.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Place;

/** Invented banks. */
class ShorelineTest {
    private static final List<BankPoint> NEAR = points(-9, 0.6, 0, 0.5, 9, 0.7);
    private static final List<BankPoint> FAR = points(-11, 13.2, 0, 13, 11, 13.3);
    private static final List<BankPoint> RING = points(-1, 7, 1, 7, 1, 9, -1, 9);

    private static List<BankPoint> points(double... xy) {
        List<BankPoint> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(BankPoint.at(xy[i], xy[i + 1]));
        }
        return points;
    }

    private static Shoreline nearest(Banks banks, double x, double y) {
        return Shoreline.nearest(banks, new Place(x, y));
    }

    @Test
    void theNearestLineTakesAnEdge() {
        Banks banks = new Banks(NEAR, FAR, List.of(RING));
        assertEquals(Shoreline.NEAR, nearest(banks, 0, 3.5));
        assertEquals(Shoreline.NEAR, nearest(banks, 8, 5));
        assertEquals(Shoreline.FAR, nearest(banks, 8, 8));
        assertEquals(Shoreline.FAR, nearest(banks, 0, 40));
        assertEquals(new Shoreline(Shoreline.Kind.ISLAND, 0), nearest(banks, 0, 6.5));
    }

    @Test
    void theLineBetweenPointsCountsAndNotOnlyThePoints() {
        Banks banks = new Banks(points(-20, 0, 20, 0), points(-20, 13, 0, 7, 20, 13), List.of());
        assertEquals(Shoreline.NEAR, nearest(banks, 0, 3), "7 m of the far point are less than 20 m of the near ones");
    }

    @Test
    void theFirstEdgesGoByHowFarAndWhichWay() {
        for (Banks banks : List.of(Banks.NONE, new Banks(List.of(), List.of(), List.of(RING)))) {
            assertEquals(Shoreline.NEAR, Shoreline.nearest(banks, Place.polar(3.5, 0)));
            assertEquals(Shoreline.NEAR, Shoreline.nearest(banks, Place.polar(3, -80)));
            assertEquals(Shoreline.NEAR, Shoreline.nearest(banks, Place.polar(6.5, -80)));
            assertEquals(Shoreline.FAR, Shoreline.nearest(banks, Place.polar(13, 0)));
            assertEquals(Shoreline.FAR, Shoreline.nearest(banks, Place.polar(14.5, 65)));
        }
    }

    @Test
    void theSecondNearPointMayLieFarFromTheFirst() {
        Banks one = new Banks(points(-6.4, 1.1), List.of(), List.of());
        assertEquals(Shoreline.NEAR, Shoreline.nearest(one, Place.polar(3.5, 0)));
        assertEquals(Shoreline.NEAR, Shoreline.nearest(one, Place.polar(5, 80)));
        assertEquals(Shoreline.FAR, Shoreline.nearest(one, Place.polar(13, 0)));
    }

    @Test
    void aFarBankAloneDoesNotTakeTheEdgeAtTheSeat() {
        Banks banks = new Banks(List.of(), FAR, List.of());
        assertEquals(Shoreline.NEAR, nearest(banks, 0, 0.5));
        assertEquals(Shoreline.FAR, nearest(banks, 2, 12));
    }

    @Test
    void aNamedBankStandsUnlessAnIslandIsNearest() {
        Banks banks = new Banks(NEAR, FAR, List.of(RING));
        assertEquals(Shoreline.FAR, Shoreline.named(banks, new Place(5, 3), Shoreline.FAR));
        assertEquals(
                Shoreline.Kind.ISLAND,
                Shoreline.named(banks, new Place(0, 6.5), Shoreline.FAR).kind());
    }

    /** Every bank with every one of its points taken out gets it back in its place. */
    private static void assertOrderKept(List<BankPoint> bank) {
        for (int i = 0; i < bank.size(); i++) {
            List<BankPoint> without = new ArrayList<>(bank);
            BankPoint point = without.remove(i);
            assertEquals(
                    bank,
                    Shoreline.NEAR
                            .with(new Banks(without, List.of(), List.of()), point)
                            .near(),
                    "point " + i);
        }
    }

    @Test
    void aBayThatDoublesBackKeepsItsOrder() {
        assertOrderKept(NEAR);
        assertOrderKept(points(-8, 0.5, -2, 0.5, 0, 2, -1, 5, 2, 6, 4, 5, 3, 2, 5, 0.5, 9, 0.5));
    }

    @Test
    void anIslandIsClosedBetweenItsLastPointAndItsFirst() {
        Banks banks = new Banks(NEAR, FAR, List.of(RING));
        Banks after = new Shoreline(Shoreline.Kind.ISLAND, 0).with(banks, BankPoint.at(-1.2, 8));
        assertEquals(
                List.of(-1.0, 1.0, 1.0, -1.0, -1.2),
                after.islands().get(0).stream().map(p -> p.place().xMetres()).toList());
        assertEquals(banks.near(), after.near());
    }

    @Test
    void theSecondPointOfABankLiesToItsLeftOrRight() {
        Banks one = new Banks(points(2, 0.5), List.of(), List.of());
        assertEquals(
                -3,
                Shoreline.NEAR
                        .with(one, BankPoint.at(-3, 1))
                        .near()
                        .get(0)
                        .place()
                        .xMetres());
        assertEquals(
                5,
                Shoreline.NEAR
                        .with(one, BankPoint.at(5, 1))
                        .near()
                        .get(1)
                        .place()
                        .xMetres());
    }
}

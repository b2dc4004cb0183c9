package pegbed.surface.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.model.Visit;

class JoinedUpTest {
    private static final Reading LEFT = Reading.of(5, -30, 1.2);
    private static final Reading RIGHT = Reading.of(5, 30, 1.8);

    private static List<BankPoint> bank(double y) {
        return List.of(BankPoint.at(-15, y), BankPoint.at(0, y), BankPoint.at(15, y));
    }

    private static Visit visit(String start, double boardToWaterMetres, Reading... readings) {
        return new Visit(
                Optional.of(OffsetDateTime.parse(start)),
                OptionalDouble.of(boardToWaterMetres),
                List.of(readings),
                "",
                Extras.NONE);
    }

    private static JoinedUp of(Visit... visits) throws InputException {
        Peg peg = Peg.EMPTY
                .withPole(Pole.USUAL.withReach(13))
                .withBanks(new Banks(bank(-0.5), bank(11), List.of()))
                .withVisits(List.of(visits));
        return JoinedUp.of(peg, PegWater.of(peg));
    }

    private static final Visit FIRST = visit("2026-05-12T07:30:00+01:00", 0.30, LEFT, RIGHT);

    @Test
    void theReadingsAreMetAndHalfwayIsTheirMean() throws InputException {
        JoinedUp joined = of(FIRST);
        assertEquals(1.2, at(joined, LEFT.place()), 1e-9);
        assertEquals(1.8, at(joined, RIGHT.place()), 1e-9);
        assertEquals(1.5, joined.depthAt(0, LEFT.place().yMetres()), 1e-9);
    }

    @Test
    void theEdgeIsThatOfTheBanks() throws InputException {
        JoinedUp joined = of(FIRST);
        Coordinate onBank = new Coordinate(6, -0.45);
        assertEquals(0.2, joined.depthAt(onBank.x, onBank.y), 0.06);
        assertTrue(joined.hull().covers(Shapes.FACTORY.createPoint(new Coordinate(0, 5))));
        assertTrue(Double.isNaN(joined.depthAt(0, 40)));
    }

    /** The water has risen 10 cm: the board is nearer to it by so much, and all that was read is so much deeper. */
    @Test
    void anEarlierVisitIsBroughtToTheLatestLevelByTheBoard() throws InputException {
        JoinedUp joined = of(FIRST, visit("2026-06-12T07:30:00+01:00", 0.20, Reading.of(9, 0, 1.0)));
        assertEquals(1.3, at(joined, LEFT.place()), 1e-9);
        assertEquals(1.3, joined.atLatestLevel(0, 1.2), 1e-9);
        assertEquals(1.0, joined.depthAt(0, 9), 1e-9);
    }

    @Test
    void ofTwoVisitsAtOneSpotTheLaterCounts() throws InputException {
        JoinedUp joined = of(FIRST, visit("2026-06-12T07:30:00+01:00", 0.30, Reading.of(5.1, -30, 1.6)));
        assertEquals(1.6, at(joined, Place.polar(5.1, -30)), 1e-9);
        assertEquals(1.6, at(joined, LEFT.place()), 0.05);
    }

    @Test
    void whatWasReadBeforeTheBottomWasDugOutIsLeftOut() throws InputException {
        Visit after = visit("2026-06-12T07:30:00+01:00", 0.30, Reading.of(5, 0, 2.5));
        Visit dugOut = after.withAfresh(true);
        double between =
                of(FIRST, dugOut).depthAt(LEFT.place().xMetres(), LEFT.place().yMetres());
        assertTrue(Math.abs(between - 1.2) > 0.05, "still " + between);
    }

    @Test
    void aDepthGivenAtABankIsKept() throws InputException {
        BankPoint given = new BankPoint(new Place(0, 11), OptionalDouble.of(0.9), Typed.NOTHING, Extras.NONE);
        Peg peg = Peg.EMPTY
                .withPole(Pole.USUAL.withReach(13))
                .withBanks(
                        new Banks(bank(-0.5), List.of(BankPoint.at(-15, 11), given, BankPoint.at(15, 11)), List.of()))
                .withVisits(List.of(FIRST));
        assertEquals(0.9, JoinedUp.of(peg, PegWater.of(peg)).depthAt(0, 11), 1e-6);
    }

    private static double at(JoinedUp joined, Place place) {
        return joined.depthAt(place.xMetres(), place.yMetres());
    }
}

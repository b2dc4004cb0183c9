package pegbed.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import pegbed.geometry.Shapes;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.model.Wishes;

/** On a bottom known by formula: shelves of 0.8 m and a track of 1.7 m between straight banks. */
class FindingsTest {
    private static Peg peg;
    private static PegMap map;
    private static Findings findings;

    @BeforeAll
    static void find() throws InputException {
        peg = Pegs.plumbed(Pegs.straight(), Pegs::ledges);
        map = PegMap.of(peg, Monitor.NONE);
        findings = Findings.of(map, OptionalDouble.empty());
    }

    private static FlatSpot flat(Findings findings, Zone zone) {
        return findings.flats().stream()
                .filter(f -> f.zone() == zone)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theDeepestLiesInTheTrack() {
        Spot spot = findings.deepest().spot();
        assertEquals(1.7, spot.depthMetres(), 0.05);
        assertTrue(spot.place().yMetres() > 2.5 && spot.place().yMetres() < 6.2, () -> spot.toString());
        assertTrue(findings.deepest().area().areaMetres2() > 40);
        assertTrue(
                findings.deepest().area().shape().covers(Shapes.FACTORY.createPoint(Shapes.coordinate(spot.place()))));
    }

    @Test
    void theTargetFollowsHalfTheDeepestUntilItIsSet() {
        assertTrue(findings.targetFollows());
        assertEquals(findings.deepest().spot().depthMetres() / 2, findings.targetMetres(), 1e-12);
        PegMap wished = map.withPeg(peg.withWishes(Wishes.NONE.withTarget(OptionalDouble.of(0.7))));
        Findings set = Findings.of(wished, OptionalDouble.empty());
        assertFalse(set.targetFollows());
        assertEquals(0.7, set.targetMetres());
    }

    @Test
    void flatsLieOnTheShelvesAndInTheirZones() {
        Findings at = Findings.of(map, OptionalDouble.of(0.8));
        for (FlatSpot flat : at.flats()) {
            assertEquals(0.8, flat.spot().depthMetres(), 0.08, () -> flat.toString());
            assertTrue(flat.spot().pFlat() > 0.5, () -> flat.toString());
            FlatSpot.Circle circle = flat.circle().orElseThrow();
            assertTrue(flat.area()
                    .orElseThrow()
                    .shape()
                    .contains(Shapes.FACTORY
                            .createPoint(new Coordinate(circle.xMetres(), circle.yMetres()))
                            .buffer(circle.radiusMetres() - 0.03)));
        }
        assertTrue(flat(at, Zone.ACROSS).spot().place().yMetres() > 7);
        assertTrue(flat(at, Zone.LEFT_MARGIN).spot().place().xMetres() < -1.3);
        assertTrue(flat(at, Zone.RIGHT_MARGIN).spot().place().xMetres() > 1.3);
    }

    @Test
    void whereThereIsNoSuchFlatTheNearestDepthIsTold() {
        FlatSpot across = flat(Findings.of(map, OptionalDouble.of(1.25)), Zone.ACROSS);
        assertEquals(Confidence.NONE, across.confidence());
        double nearest = across.nearestMetres().orElseThrow();
        assertTrue(Math.abs(nearest - 0.8) < 0.15 || Math.abs(nearest - 1.7) < 0.15, () -> "nearest " + nearest);
    }

    @Test
    void zonesKeepTheirBounds() {
        var frame = map.grid().frame();
        for (Zone zone : Zone.values()) {
            for (int i : map.zones().nodes(zone)) {
                double x = frame.x(i % frame.columns());
                double y = frame.y(i / frame.columns());
                double r = Math.hypot(x, y);
                double angle = Math.toDegrees(Math.atan2(Math.abs(x), y));
                assertTrue(map.water().isWater(x, y));
                switch (zone) {
                    case ACROSS -> assertTrue(angle <= 62 && y > 2);
                    case LEFT_MARGIN -> assertTrue(x < -1.3 && y <= 1.6 && r <= 7);
                    case RIGHT_MARGIN -> assertTrue(x > 1.3 && y <= 1.6 && r <= 7);
                    case SHORT -> assertTrue(r <= 5.5 && angle <= 20);
                    case TRACK -> assertTrue(angle <= 62);
                }
            }
        }
    }

    @Test
    void aHazardKeepsItsGroundFree() throws InputException {
        Place spot = findings.deepest().spot().place();
        Hazard snag = new Hazard(Hazard.Kind.SNAG, List.of(spot), 1.5, "", Typed.NOTHING, Extras.NONE);
        PegMap around = PegMap.of(peg.withHazards(List.of(snag)), Monitor.NONE);
        for (Zone zone : Zone.values()) {
            for (int i : around.zones().nodes(zone)) {
                var frame = around.grid().frame();
                double away = spot.distanceTo(new Place(frame.x(i % frame.columns()), frame.y(i / frame.columns())));
                assertTrue(away >= 1.5 + 0.3, () -> zone + " has a node " + away + " m from the snag");
            }
        }
        assertTrue(around.deepest().spot().place().distanceTo(spot) >= 1.8);
    }

    @Test
    void theSteepestSlopeAcrossFacesTheTrack() {
        SteepestSlope across = findings.slopes().stream()
                .filter(s -> s.zone() == Zone.ACROSS)
                .findFirst()
                .orElseThrow();
        assertTrue(across.slope() > 0.35, () -> across.toString());
        assertTrue(Math.abs(Math.abs(across.downhillDegrees()) - 180) < 25, () -> across.toString());
    }

    @Test
    void aSlipOfThePenIsSuspiciousAndSaysWhatItShouldHaveBeen() throws InputException {
        List<Reading> readings = new ArrayList<>(peg.readings());
        int slipped = 24;
        Reading good = readings.get(slipped);
        double wrong = good.depthMetres() > 1.2 ? 0.45 : 2.1;
        readings.set(
                slipped, Reading.of(good.place().distanceMetres(), good.place().angleDegrees(), wrong));
        PegMap other = PegMap.of(peg.withToday(v -> v.withReadings(readings)), Monitor.NONE);
        assertEquals(1, other.suspicious().size());
        assertEquals(slipped, other.suspicious().get(0).sounding());
        assertEquals(good.depthMetres(), other.suspicious().get(0).expectedMetres(), 0.2);
    }

    @Test
    void aProfileFindsLipAndFoot() {
        DepthProfile profile = DepthProfile.towards(map, 0);
        assertTrue(profile.points().size() > 80);
        assertTrue(profile.slopes().size() >= 2);
        DepthProfile.Slope far = profile.slopes().get(profile.slopes().size() - 1);
        DepthProfile.Slope climbing = profile.slopes().stream()
                .filter(s -> s.lip().alongMetres() > s.foot().alongMetres()
                        && s.lip().alongMetres() < 9)
                .findFirst()
                .orElseThrow(() -> new AssertionError(far.toString()));
        assertTrue(climbing.foot().alongMetres() > 5 && climbing.foot().alongMetres() < 6.8);
        assertTrue(climbing.lip().depthMetres() < climbing.foot().depthMetres());
    }

    @Test
    void mirroredReadingsGiveMirroredAnswers() throws InputException {
        Peg lopsided = Pegs.plumbed(Pegs.straight(), (x, y) -> Pegs.ledges(x, y) + 0.02 * x);
        Peg mirrored = lopsided.withToday(visit -> visit.withReadings(visit.readings().stream()
                .map(r -> Reading.of(r.place().distanceMetres(), -r.place().angleDegrees(), r.depthMetres()))
                .toList()));
        PegMap map = PegMap.of(lopsided, Monitor.NONE);
        PegMap mirror = PegMap.of(mirrored, Monitor.NONE);
        Findings one = Findings.of(map, OptionalDouble.of(0.8));
        Findings other = Findings.of(mirror, OptionalDouble.of(0.8));
        assertEquals(
                one.deepest().spot().place().xMetres(),
                -other.deepest().spot().place().xMetres(),
                1e-6);
        FlatSpot left = flat(one, Zone.LEFT_MARGIN);
        FlatSpot right = flat(other, Zone.RIGHT_MARGIN);
        // The middle of a flat is put on a node, which in a mirror may be the next one.
        assertEquals(left.spot().place().xMetres(), -right.spot().place().xMetres(), 0.25 + 1e-6);
        assertEquals(
                left.spot().pFlat(),
                odds(mirror, -left.spot().place().xMetres(), left.spot().place().yMetres()),
                1e-6);
        assertEquals(
                right.spot().pFlat(),
                odds(map, -right.spot().place().xMetres(), right.spot().place().yMetres()),
                1e-6);
        assertEquals(
                left.area().orElseThrow().areaMetres2(),
                right.area().orElseThrow().areaMetres2(),
                1e-6);
    }

    private static double odds(PegMap map, double x, double y) {
        return FlatProbability.USUAL.flat(map.grid().disc(map.nodeAt(x, y)), 0.8);
    }

    @Test
    void readingsInAnyOrderGiveTheSameAnswers() throws InputException {
        List<Reading> shuffled = new ArrayList<>(peg.readings());
        java.util.Collections.shuffle(shuffled, new java.util.Random(3));
        PegMap other = PegMap.of(peg.withToday(v -> v.withReadings(shuffled)), Monitor.NONE);
        assertEquals(map.deepest().spot(), other.deepest().spot());
        assertEquals(
                findings.flats().stream().map(FlatSpot::spot).toList(),
                Findings.of(other, OptionalDouble.empty()).flats().stream()
                        .map(FlatSpot::spot)
                        .toList());
    }

    @Test
    void withoutReadingsThereIsAGuessAndNoCertainty() throws InputException {
        Findings guess = Findings.of(PegMap.of(Pegs.straight(), Monitor.NONE), OptionalDouble.empty());
        assertTrue(guess.deepest().spot().sdMetres() > 0.2);
        assertTrue(guess.flats().stream().allMatch(f -> f.confidence() != Confidence.SURE));
    }

    @Test
    void aPondHasItsZoneAcrossBeyondFiveMetres() throws InputException {
        Peg pond = Peg.EMPTY.withBanks(new Banks(Pegs.line(-1), List.of(), List.of()));
        PegMap open = PegMap.of(pond.withReading(Reading.of(6, 0, 1.4)), Monitor.NONE);
        var frame = open.grid().frame();
        assertTrue(open.zones().nodes(Zone.ACROSS).length > 100);
        for (int i : open.zones().nodes(Zone.ACROSS)) {
            assertTrue(Math.hypot(frame.x(i % frame.columns()), frame.y(i / frame.columns())) > 5);
        }
        assertEquals(0, open.zones().nodes(Zone.TRACK).length);
    }

    @Test
    void aWaterTooNarrowForARigIsRefusedWithASentence() {
        Peg ditch = Peg.EMPTY.withBanks(new Banks(
                List.of(BankPoint.at(-12, 0.2), BankPoint.at(12, 0.2)),
                List.of(BankPoint.at(-12, 0.8), BankPoint.at(12, 0.8)),
                List.of()));
        InputException e = org.junit.jupiter.api.Assertions.assertThrows(
                InputException.class, () -> PegMap.of(ditch, Monitor.NONE));
        assertTrue(e.getMessage().startsWith("No place in this water is wide enough"), e.getMessage());
    }
}

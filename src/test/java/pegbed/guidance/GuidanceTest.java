package pegbed.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.InventedWater;
import pegbed.findings.PegMap;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Limits;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.model.Visit;
import pegbed.model.Wishes;
import pegbed.storage.disk.PegFile;
import pegbed.visits.LevelAnswer;

class GuidanceTest {
    @Test
    void theOpeningGoesStraightOutThenIntoBothMargins() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 7);
        List<Place> places = peg.readings().stream().map(Reading::place).toList();

        // The far bank lies at 11 m and readings keep 0.3 m from it, so that e is 10.5 m; joints lie at 2.6, 4, 5.5
        // m...
        double[] distances = {2, 4, 6, 8, 10.5};
        for (int i = 0; i < distances.length; i++) {
            assertEquals(distances[i], places.get(i).distanceMetres(), 0.3, "reading " + (i + 1));
            assertEquals(0, places.get(i).angleDegrees(), 1e-9);
        }
        assertEquals(-80, places.get(5).angleDegrees(), 1e-9);
        assertEquals(80, places.get(6).angleDegrees(), 1e-9);
        assertEquals(3, places.get(5).distanceMetres(), 0.3);
    }

    /** 46 ft, 14.02 m, said for 4.6 ft. */
    @ParameterizedTest
    @ValueSource(ints = {9, 12, 20})
    void aReadingThatTheOthersContradictIsTakenAgainOnce(int count) throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, count);
        Place place = Place.polar(5.2, 18);
        Peg slipped = peg.withReading(Reading.of(5.2, 18, 14.02));

        NextReading next = Guidance.next(InventedWater.map(slipped));

        assertEquals(NextReading.Purpose.AGAIN, next.purpose());
        assertEquals(0, next.place().distanceTo(place), 1e-9);
        assertFalse(next.stop());

        Peg again = slipped.withReading(InventedWater.read(place, InventedWater::cutDepth));
        assertTrue(Guidance.next(InventedWater.map(again)).purpose() != NextReading.Purpose.AGAIN);
    }

    @Test
    void theOpeningPassesOverWhatThePersonHasReadAlready() throws InputException {
        Peg peg = InventedWater.cut().withReading(Reading.of(2.1, 1, 1.2)).withReading(Reading.of(4.1, -1, 1.6));

        NextReading next = Guidance.next(InventedWater.map(peg));

        assertEquals(NextReading.Purpose.OPENING, next.purpose());
        assertEquals(6, next.place().distanceMetres(), 0.3);
    }

    @Test
    void theOpeningSpeaksOfAFarSideOnlyWhereThereIsOne() throws InputException {
        Peg pond = InventedWater.guided(InventedWater.pond(), InventedWater::pondDepth, 3);
        Peg cut = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 3);

        assertEquals(
                new Reason.OpeningPlace(Reason.OpeningQuestion.FALL_FURTHER_OUT),
                Guidance.next(InventedWater.map(pond)).reason());
        assertEquals(
                new Reason.OpeningPlace(Reason.OpeningQuestion.FAR_SLOPE_START),
                Guidance.next(InventedWater.map(cut)).reason());
    }

    @Test
    void everySuggestionCanBePlumbed() throws InputException {
        canBePlumbed(InventedWater.cut(), InventedWater::cutDepth, 19);
        canBePlumbed(InventedWater.pond(), InventedWater::pondDepth, 17);
        canBePlumbed(InventedWater.crowded(), InventedWater::cutDepth, 22);
    }

    private static void canBePlumbed(Peg peg, DoubleBinaryOperator depth, int count) throws InputException {
        PegWater water = PegWater.of(peg);
        for (Reading reading : InventedWater.guided(peg, depth, count).readings()) {
            Place place = reading.place();
            assertTrue(place.distanceMetres() <= peg.pole().reachMetres() + 1e-9, "beyond reach: " + place);
            assertFalse(water.isLand(place.xMetres(), place.yMetres()), "on land: " + place);
            assertTrue(
                    water.fishable()
                            .covers(Shapes.FACTORY.createPoint(new Coordinate(place.xMetres(), place.yMetres()))),
                    "on a hazard or beyond the limits: " + place);
        }
    }

    @Test
    void noPlaceIsReadMoreThanTwice() throws InputException {
        List<Reading> readings = InventedWater.guided(
                        InventedWater.cut().withLimits(new Limits(OptionalDouble.of(-2), OptionalDouble.of(2))),
                        InventedWater::cutDepth,
                        30)
                .readings();
        for (Reading reading : readings) {
            long same = readings.stream()
                    .filter(other -> other.place().distanceTo(reading.place()) < 0.01)
                    .count();
            assertTrue(same <= 2, same + " readings at " + reading.place());
        }
    }

    @Test
    void whereNoPlaceIsLeftItSaysSo() throws InputException {
        Peg narrow = Peg.EMPTY
                .withPole(new Pole(List.of(1.5)))
                .withBanks(InventedWater.cut().banks())
                .withLimits(new Limits(OptionalDouble.of(-0.9), OptionalDouble.of(0.9)));
        Peg full = narrow;
        for (Candidate candidate : Candidates.of(narrow, PegWater.of(narrow)).all()) {
            for (int i = 0; i < 2; i++) {
                full = full.withReading(Reading.of(candidate.distanceMetres(), candidate.angleDegrees(), 0.8));
            }
        }
        PegMap map = InventedWater.map(full);

        assertTrue(full.readings().size() >= Opening.READINGS);
        assertThrows(InputException.class, () -> Guidance.next(map));
    }

    @ParameterizedTest
    @ValueSource(ints = {9, 15, 16})
    void aMirroredPegGetsMirroredSuggestions(int readings) throws InputException {
        Peg peg = lopsided(readings);

        Place one = Guidance.next(InventedWater.map(peg)).place();
        Place other =
                Guidance.next(InventedWater.map(InventedWater.mirrored(peg))).place();

        assertEquals(-one.xMetres(), other.xMetres(), 1e-6);
        assertEquals(one.yMetres(), other.yMetres(), 1e-6);
    }

    /** Readings to one side more than to the other, the last not straight out. */
    private static Peg lopsided(int count) {
        double[] angles = {0, -35, 20, -60, 45};
        Peg peg = InventedWater.cut();
        for (int i = 0; i < count; i++) {
            int ring = i / angles.length;
            Place place = Place.polar(2 + 1.9 * ring + 0.23 * i, angles[i % angles.length]);
            peg = peg.withReading(InventedWater.read(place, InventedWater::cutDepth));
        }
        return peg;
    }

    @Test
    void theSamePegGetsTheSameAnswer() throws InputException {
        Peg peg = lopsided(15);

        assertEquals(Guidance.next(InventedWater.map(peg)), Guidance.next(InventedWater.map(peg)));
    }

    @Test
    void afterTheSpreadComesTheDeepestAndThenTwoOfThreeForTheDecisionsAndOneForTheMap() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 13);
        List<NextReading.Purpose> purposes = new ArrayList<>();
        for (int i = 13; i < 26; i++) {
            NextReading next = Guidance.next(InventedWater.map(peg));
            purposes.add(next.purpose());
            peg = peg.withReading(InventedWater.read(next.place(), InventedWater::cutDepth));
        }

        assertEquals(NextReading.Purpose.MAP, purposes.get(0), "before 14 readings the map alone counts");
        for (int i = 14; i < 17; i++) {
            assertEquals(NextReading.Purpose.DEEPEST, purposes.get(i - 13), "then the deepest place: " + i);
        }
        for (int i = 18; i < 26; i++) {
            assertEquals(
                    i == 20 || i == 23,
                    purposes.get(i - 13) == NextReading.Purpose.MAP,
                    "then the third of three is for the map: " + i);
        }
    }

    @Test
    void whereHardlyDeeperWaterIsExpectedTheFlatSpotsComeSooner() throws InputException {
        PegMap map = InventedWater.map(InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 15));
        List<Candidate> open = Candidates.of(map.peg(), map.water()).open();
        double least =
                ValueOfInformation.ofDeepest(map, open, GuidanceWeights.USUAL).max();

        assertEquals(
                NextReading.Purpose.DEEPEST,
                Guidance.next(map, withLeast(0.9 * least)).purpose());
        NextReading sooner = Guidance.next(map, withLeast(1.1 * least));
        assertTrue(sooner.gain() > 0, "all decisions count again");
        assertTrue(Double.isNaN(Guidance.next(map, withLeast(0.9 * least)).gain()));
    }

    private static GuidanceWeights withLeast(double minDeepestGain) {
        GuidanceWeights usual = GuidanceWeights.USUAL;
        return new GuidanceWeights(
                usual.spreadUntil(),
                usual.deepestUntil(),
                minDeepestGain,
                usual.followed(),
                usual.mapEvery(),
                usual.deepShare(),
                usual.deepestWeight(),
                usual.ownDepthWeight(),
                usual.tie());
    }

    @Test
    void theSideToWhichTheTrackDeepensIsLookedAtByTwentyReadings() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 20);
        Place named = InventedWater.map(peg).deepest().spot().place();

        assertTrue(named.xMetres() < -6, "named " + named);
        assertTrue(peg.readings().stream().anyMatch(r -> r.place().distanceTo(named) < 1.5), "read near " + named);
    }

    @Test
    void theReasonHasTheGroundAndTheDepthSought() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 14);
        Peg wished = peg.withWishes(Wishes.NONE.withTarget(OptionalDouble.of(0.8)));
        List<Candidate> open = Candidates.of(wished, PegWater.of(wished)).open();
        PegMap map = InventedWater.map(wished);
        ValueOfInformation appraisal = ValueOfInformation.of(map, open, GuidanceWeights.USUAL);

        for (Decision choice : appraisal.choices()) {
            if (choice.zone().isPresent() && choice.targetMetres() == 0.8) {
                assertEquals(
                        new Reason.FlatSpotSought(
                                Reason.FlatQuestion.DEPTH, choice.zone().get(), true, 0.8),
                        Reasons.flat(map, choice, Reason.FlatQuestion.DEPTH));
            }
        }
    }

    @Test
    void aPlanLooksAheadWithoutRepeatingItself() throws InputException {
        List<NextReading> plan = Guidance.plan(InventedWater.map(InventedWater.cut()), 9, Monitor.NONE);

        assertEquals(9, plan.size());
        for (int i = 0; i < plan.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertTrue(plan.get(i).place().distanceTo(plan.get(j).place()) > 0.25, "steps " + j + " and " + i);
            }
        }
    }

    @Test
    void guidedReadingsFindTheDeepestWaterAndTheShelves() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 20);
        PegMap map = InventedWater.map(peg);
        Place deepest = map.deepest().spot().place();
        double most = 0;
        for (double x = -8; x <= 8; x += 0.25) {
            most = Math.max(most, InventedWater.cutDepth(x, 5.25));
        }

        assertTrue(
                most - InventedWater.cutDepth(deepest.xMetres(), deepest.yMetres()) < 0.08,
                "named " + deepest + ", " + InventedWater.cutDepth(deepest.xMetres(), deepest.yMetres()));
        Findings findings = Findings.of(map, OptionalDouble.of(0.8));
        assertEquals(3, findings.flats().size());
        for (FlatSpot flat : findings.flats()) {
            Place place = flat.spot().place();
            assertEquals(
                    0.8,
                    InventedWater.cutDepth(place.xMetres(), place.yMetres()),
                    0.10,
                    flat.zone().words());
        }
    }

    @Test
    void atALaterVisitTheLevelComesFirst() throws InputException {
        Peg nine = PegFile.read(Path.of("sample-pegs", "tansy-cut-9.peg.json")).peg();
        List<Visit> visits = new ArrayList<>(nine.visits());
        visits.add(new Visit(Optional.empty(), OptionalDouble.empty(), List.of(), "", Extras.NONE));
        Peg peg = nine.withVisits(visits);
        for (int taken = 0; taken < LevelAnswer.MAX_CHECKS; taken++) {
            PegMap map = PegMap.of(peg, Monitor.NONE);
            List<LevelAnswer.CheckReading> checks = LevelAnswer.of(map).checks();
            NextReading next = Guidance.next(map);
            assertEquals(!checks.isEmpty(), next.purpose() == NextReading.Purpose.LEVEL, "after " + taken);
            if (!checks.isEmpty()) {
                assertEquals(checks.get(0).place(), next.place());
                assertEquals(
                        new Reason.LevelOfDay(
                                checks.get(0).depthMetres(), checks.get(0).sdAfterMetres()),
                        next.reason());
            }
            assertTrue(taken > 0 || !checks.isEmpty(), "nothing is known of the level before the first");
            Place place = next.place();
            double depth = map.bottom().at(place.xMetres(), place.yMetres()).depthMetres();
            peg = peg.withReading(Reading.of(place.distanceMetres(), place.angleDegrees(), depth));
        }
        assertTrue(Guidance.next(PegMap.of(peg, Monitor.NONE)).purpose() != NextReading.Purpose.LEVEL);
    }
}

package pegbed.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pegbed.findings.InventedWater;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;

class CheckLineTest {
    private static Peg plumbed;
    private static CheckLine offered;

    @BeforeAll
    static void plumb() throws InputException {
        plumbed = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 24);
        offered = CheckLine.offer(InventedWater.map(plumbed)).orElseThrow();
    }

    @Test
    void oneLiesWhereTheBottomFallsAndOneWhereItRises() {
        assertTrue(outward(offered.first()) > 0.05);
        assertTrue(outward(offered.second()) < -0.05);
        assertTrue(offered.first().distanceTo(offered.second()) >= 2);
    }

    private static double outward(Place place) {
        Place further = Place.polar(place.distanceMetres() + 0.2, place.angleDegrees());
        return (InventedWater.cutDepth(further.xMetres(), further.yMetres())
                        - InventedWater.cutDepth(place.xMetres(), place.yMetres()))
                / 0.2;
    }

    @Test
    void theyKeepClearOfTheReadingsBefore() {
        for (Reading reading : plumbed.readings()) {
            assertTrue(reading.place().distanceTo(offered.first()) >= 1);
            assertTrue(reading.place().distanceTo(offered.second()) >= 1);
        }
    }

    @Test
    void theyAreOfferedOnceAndNotBeforeThereIsAPattern() throws InputException {
        Peg few = plumbed.withToday(visit -> visit.withReadings(visit.readings().subList(0, 14)));

        assertEquals(Optional.empty(), CheckLine.offer(InventedWater.map(few)));
        assertEquals(Optional.empty(), CheckLine.offer(InventedWater.map(checked(InventedWater::cutDepth))));
    }

    @Test
    void aPondHasNoGroundThatRisesAndIsCheckedAllTheSame() throws InputException {
        Peg pond = InventedWater.guided(InventedWater.pond(), InventedWater::pondDepth, 16);

        Optional<CheckLine> offer = CheckLine.offer(InventedWater.map(pond));

        assertTrue(offer.isPresent());
        assertTrue(offer.get().first().distanceTo(offer.get().second()) >= 2);
    }

    /** The peg with both check readings taken on some bottom. */
    private static Peg checked(DoubleBinaryOperator depth) {
        Peg peg = plumbed;
        for (Place place : List.of(offered.first(), offered.second())) {
            Reading read = InventedWater.read(place, depth);
            peg = peg.withReading(new Reading(
                    read.typed(),
                    read.place(),
                    read.precision(),
                    read.depthMetres(),
                    read.bottom(),
                    "Check line, by the reeds",
                    read.time(),
                    read.extras()));
        }
        return peg;
    }

    @Test
    void aTrueMapAgrees() throws InputException {
        CheckAnswer answer =
                CheckLine.answer(checked(InventedWater::cutDepth), Monitor.NONE).orElseThrow();

        assertEquals(CheckAnswer.Verdict.AGREES, answer.verdict());
    }

    @Test
    void risenWaterIsFound() throws InputException {
        CheckAnswer answer = CheckLine.answer(checked((x, y) -> InventedWater.cutDepth(x, y) + 0.8), Monitor.NONE)
                .orElseThrow();

        assertEquals(CheckAnswer.Verdict.LEVEL_WRONG, answer.verdict());
        assertTrue(answer.offsetMetres() > 0.1);
    }

    @Test
    void withoutTwoCheckReadingsThereIsNoAnswer() throws InputException {
        assertEquals(Optional.empty(), CheckLine.answer(plumbed, Monitor.NONE));
    }

    @Test
    void wrongDistancesAreDistinguishedFromAWrongLevel() {
        // Distances 0.5 m too long: the reading is shallower by 0.5·slope where the bottom falls outward.
        CheckAnswer answer = CheckAnswer.of(
                List.of(new CheckAnswer.Difference(-0.25, 0.08, 0.5), new CheckAnswer.Difference(0.25, 0.08, -0.5)));

        assertEquals(CheckAnswer.Verdict.DISTANCES_WRONG, answer.verdict());
        assertEquals(0.5, answer.offsetMetres(), 0.1);
    }

    @Test
    void whatNeitherExplainsIsARougherBottom() {
        CheckAnswer answer = CheckAnswer.of(
                List.of(new CheckAnswer.Difference(0.3, 0.05, 0), new CheckAnswer.Difference(-0.3, 0.05, 0)));

        assertEquals(CheckAnswer.Verdict.ROUGHER, answer.verdict());
    }

    @Test
    void aSmallDifferenceIsChance() {
        CheckAnswer answer = CheckAnswer.of(
                List.of(new CheckAnswer.Difference(0.05, 0.08, 0.5), new CheckAnswer.Difference(-0.1, 0.08, -0.5)));

        assertEquals(CheckAnswer.Verdict.AGREES, answer.verdict());
    }
}

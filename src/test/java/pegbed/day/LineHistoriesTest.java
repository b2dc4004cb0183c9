package pegbed.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pegbed.model.DayEvent.Kind;
import pegbed.model.Place;

class LineHistoriesTest {
    private static LineHistory line(LineHistories lines, Place place) {
        return lines.at(place).orElseThrow();
    }

    @Test
    void aSpellLastsUntilAnotherLineIsStarted() {
        LineHistories lines = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .at(10, Kind.FEED, Logs.SECOND)
                .at(20, Kind.FISH, Logs.FIRST)
                .at(40, Kind.START, Logs.SECOND)
                .lines(60);
        assertEquals(40, line(lines, Logs.FIRST).fishedMinutes());
        assertEquals(20, line(lines, Logs.SECOND).fishedMinutes());
        assertTrue(line(lines, Logs.SECOND).fishedNow());
        assertEquals(Logs.SECOND, lines.fished().orElseThrow().place());
        assertEquals(20, line(lines, Logs.FIRST).minutesSinceFished().orElseThrow());
        assertEquals(50, line(lines, Logs.SECOND).minutesSinceFed().orElseThrow());
        assertEquals(40, line(lines, Logs.FIRST).minutesSinceFish().orElseThrow());
        assertTrue(line(lines, Logs.THIRD).minutesSinceFished().isEmpty());
    }

    @Test
    void aStopEndsASpellAndTheSameLineMayBeStartedAgain() {
        LineHistories lines = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .at(30, Kind.STOP, null)
                .at(60, Kind.START, Logs.FIRST)
                .at(65, Kind.START, Logs.FIRST)
                .lines(70);
        assertEquals(
                List.of(30.0, 10.0),
                line(lines, Logs.FIRST).spells().stream().map(Spell::minutes).toList());
    }

    @Test
    void aFishOnALineThatWasNotStartedBeginsItAtTheEventBefore() {
        LineHistories lines = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .at(20, Kind.FISH, Logs.FIRST)
                .at(26, Kind.FISH, Logs.SECOND)
                .lines(30);
        assertEquals(20, line(lines, Logs.FIRST).fishedMinutes());
        assertEquals(10, line(lines, Logs.SECOND).fishedMinutes());
    }

    @Test
    void aFirstFishWithoutAStartBeginsItTenMinutesEarlier() {
        LineHistories lines = Logs.morning().at(30, Kind.FISH, Logs.FIRST).lines(35);
        assertEquals(15, line(lines, Logs.FIRST).fishedMinutes());
    }

    @Test
    void feedAloneIsNoFishing() {
        LineHistories lines = Logs.morning().at(0, Kind.FEED, Logs.FIRST).lines(35);
        assertEquals(0, line(lines, Logs.FIRST).fishedMinutes());
        assertTrue(lines.fished().isEmpty());
    }

    @Test
    void aPlaceWithoutAPlannedLineMakesOneAndANearOneDoesNot() {
        Place far = new Place(10, 10);
        LineHistories lines = Logs.morning()
                .at(0, Kind.START, new Place(0.5, 10))
                .at(10, Kind.START, far)
                .at(20, Kind.FISH, new Place(10.5, 10.5))
                .lines(30);
        assertEquals(4, lines.lines().size());
        assertEquals(OptionalInt.of(1), lines.lines().get(0).number());
        assertEquals(10, lines.lines().get(0).fishedMinutes());
        assertEquals(OptionalInt.empty(), lines.lines().get(3).number());
        assertEquals(1, lines.lines().get(3).fish());
    }

    @Test
    void anotherPlanKeepsWhatWasNoted() {
        Logs log = Logs.morning().at(0, Kind.START, Logs.FIRST).at(10, Kind.FISH, Logs.FIRST);
        Place moved = new Place(0.4, 9.6);
        LineHistories lines = LineHistories.of(log.day(), List.of(Logs.THIRD, moved), log.time(20));
        assertEquals(2, lines.lines().size());
        assertEquals(1, lines.lines().get(1).fish());
        assertEquals(moved, lines.lines().get(1).place());
    }

    @Test
    void aLongSilenceIsABreakFromTheLastEventOn() {
        LineHistories lines = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .at(10, Kind.FISH, Logs.FIRST)
                .at(200, Kind.FISH, Logs.FIRST)
                .lines(205);
        assertEquals(
                List.of(10.0, 15.0),
                line(lines, Logs.FIRST).spells().stream().map(Spell::minutes).toList());
        assertTrue(
                Logs.morning().at(0, Kind.START, Logs.FIRST).lines(500).fished().isEmpty());
    }

    @Test
    void midnightIsAMinuteLikeAnyOther() {
        LineHistories lines = Logs.from("2026-10-24T23:30:00+01:00")
                .at(0, Kind.START, Logs.FIRST)
                .at(50, Kind.FISH, Logs.FIRST)
                .lines(60);
        assertEquals(60, line(lines, Logs.FIRST).fishedMinutes());
    }

    @Test
    void whatIsLaterThanNowDoesNotCountAndNoTimeIsNegative() {
        LineHistories lines = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .at(90, Kind.FISH, Logs.FIRST)
                .at(95, Kind.START, Logs.SECOND)
                .lines(30);
        assertEquals(0, line(lines, Logs.FIRST).fish());
        assertEquals(30, line(lines, Logs.FIRST).fishedMinutes());
        assertFalse(line(lines, Logs.SECOND).fishedNow());
    }

    @Test
    void eventsOfTheSameMinuteKeepTheirOrder() {
        LineHistories lines = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .at(10, Kind.STOP, null)
                .at(10, Kind.START, Logs.SECOND)
                .at(10, Kind.FISH, Logs.SECOND)
                .lines(10);
        assertEquals(10, line(lines, Logs.FIRST).fishedMinutes());
        assertTrue(line(lines, Logs.SECOND).fishedNow());
        assertEquals(0, line(lines, Logs.SECOND).fishedMinutes());
    }

    @Test
    void fishAreCountedAndWeighed() {
        LineHistory line = line(
                Logs.morning()
                        .at(0, Kind.START, Logs.FIRST)
                        .fish(5, Logs.FIRST, 3, 1.2)
                        .fish(7, Logs.FIRST, 1, 0)
                        .at(8, Kind.BITE, Logs.FIRST)
                        .at(9, Kind.LOST, Logs.FIRST)
                        .at(9, Kind.SNAG, Logs.FIRST)
                        .lines(20),
                Logs.FIRST);
        assertEquals(4, line.fish());
        assertEquals(3, line.weighed());
        assertEquals(1.2, line.kilograms());
        assertEquals(List.of(1, 1, 1), List.of(line.bites(), line.lost(), line.snags()));
    }
}

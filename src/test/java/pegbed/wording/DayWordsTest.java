package pegbed.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbed.day.LineHistories;
import pegbed.day.LineOdds;
import pegbed.day.LineRate;
import pegbed.day.RatePrior;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.DayEvent.Kind;
import pegbed.model.Peg;
import pegbed.model.Place;

class DayWordsTest {
    private static final OffsetDateTime START = OffsetDateTime.parse("2026-06-06T10:00:00+01:00");
    private static final List<Place> PLANNED = List.of(new Place(0, 9), new Place(-3, 13));

    private final Peg peg = Peg.EMPTY;
    private final DayWords words = DayWords.of(peg);

    private static LineHistories lines(int now, List<DayEvent> events) {
        return LineHistories.of(
                new Day(Conditions.NONE, events),
                PLANNED,
                START.plusMinutes(now).toInstant());
    }

    private static DayEvent event(int minute, Kind kind, int line) {
        return DayEvent.of(START.plusMinutes(minute), kind, Optional.of(PLANNED.get(line)));
    }

    private static LineHistories goodThenBlank() {
        List<DayEvent> events = new ArrayList<>();
        events.add(event(0, Kind.START, 0));
        for (int minute = 1; minute < 40; minute += 4) {
            events.add(event(minute, Kind.FISH, 0));
        }
        events.add(event(38, Kind.FEED, 0));
        events.add(event(40, Kind.START, 1));
        return lines(65, events);
    }

    private static LineOdds odds(LineHistories lines) {
        return LineOdds.of(lines, RatePrior.VAGUE, 3);
    }

    @Test
    void aBetterLineIsToldWithItsOddsAndWhy() {
        String sentence = words.odds(odds(goodThenBlank())).orElseThrow();
        assertTrue(
                sentence.matches(
                        "Line 1 is expected to give more in the next 30 minutes, the change counted: about \\d in"
                                + " 10 that it does \\(fished 25 min ago, fed 27 min ago\\)\\."),
                sentence);
    }

    @Test
    void nothingIsSaidWhileTooLittleIsKnown() {
        LineHistories lines = lines(5, List.of(event(0, Kind.START, 0)));
        assertEquals(List.of(), words.outlook(odds(lines)));
        assertTrue(words.rate(LineRate.of(lines, RatePrior.VAGUE).get(0)).isEmpty());
        assertTrue(words.weight(LineRate.of(lines, RatePrior.VAGUE).get(0)).isEmpty());
    }

    @Test
    void aRateHasItsInterval() {
        String rate =
                words.rate(LineRate.of(goodThenBlank(), RatePrior.VAGUE).get(0)).orElseThrow();
        assertTrue(rate.matches("\\d+ fish an hour \\([\\d.]+ to \\d+\\)"), rate);
    }

    @Test
    void howLongAgo() {
        LineHistories lines = goodThenBlank();
        assertEquals("fished now, not fed yet", words.since(lines.lines().get(1)));
        assertEquals("line 2", words.line(lines.lines().get(1)));
    }

    @Test
    void itIsNeverAnOrder() {
        for (String sentence : words.outlook(odds(goodThenBlank()))) {
            assertFalse(sentence.matches("(?i).*\\b(should|must|go to|change to|move to|fish line)\\b.*"), sentence);
        }
    }

    @Test
    void earlierVisitsAreCounted() {
        assertTrue(words.visits(0).isEmpty());
        assertEquals("Started from 1 earlier visit.", words.visits(1).orElseThrow());
        assertEquals("Started from 3 earlier visits.", words.visits(3).orElseThrow());
    }
}

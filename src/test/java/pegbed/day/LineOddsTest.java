package pegbed.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pegbed.day.LineOdds.Saying;
import pegbed.model.DayEvent.Kind;

class LineOddsTest {
    private static LineOdds odds(Logs log, int now) {
        return LineOdds.of(log.lines(now), RatePrior.VAGUE, 3);
    }

    private static double odds(LineOdds odds, int number) {
        return odds.others().stream()
                .filter(other -> other.line().number().orElseThrow() == number)
                .findFirst()
                .orElseThrow()
                .odds();
    }

    @Test
    void nothingIsSaidOfAFirstFish() {
        Logs log = Logs.morning().at(0, Kind.START, Logs.FIRST).at(4, Kind.FISH, Logs.FIRST);
        assertEquals(Saying.TOO_LITTLE, odds(log, 12).saying());
        assertTrue(odds(log, 12).named().isEmpty());
    }

    @Test
    void inABreakThereIsNoChoice() {
        Logs log = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .every(4, 1, 40, Logs.FIRST)
                .at(40, Kind.STOP, null);
        assertEquals(Saying.NO_CHOICE, odds(log, 45).saying());
    }

    @Test
    void aLineIsGivenFiveMinutes() {
        Logs log = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .every(3, 1, 40, Logs.FIRST)
                .at(40, Kind.START, Logs.SECOND);
        assertEquals(Saying.JUST_BEGUN, odds(log, 44).saying());
        assertEquals(Saying.BETTER, odds(log, 45).saying());
    }

    @Test
    void aLineThatFishesWellIsLeftAlone() {
        Logs log = Logs.morning()
                .at(0, Kind.START, Logs.SECOND)
                .at(20, Kind.START, Logs.THIRD)
                .at(40, Kind.START, Logs.FIRST)
                .every(2, 41, 80, Logs.FIRST);
        LineOdds odds = odds(log, 80);
        assertEquals(Saying.STAY, odds.saying());
        assertTrue(odds(odds, 2) < 0.25 && odds(odds, 3) < 0.25, odds.others().toString());
    }

    @Test
    void aBlankLineBesideAGoodOneIsBeaten() {
        Logs log = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .every(4, 1, 40, Logs.FIRST)
                .at(40, Kind.START, Logs.SECOND);
        LineOdds odds = odds(log, 65);
        assertEquals(Saying.BETTER, odds.saying());
        assertTrue(odds(odds, 1) > 0.7);
        assertEquals(0, odds.leaveInMinutes().orElseThrow());
        assertTrue(odds.others().get(0).expected() > odds.expectedHere());
    }

    @Test
    void aDearerChangeHasLowerOdds() {
        Logs log = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .every(5, 1, 40, Logs.FIRST)
                .at(40, Kind.START, Logs.SECOND)
                .every(5, 41, 80, Logs.SECOND);
        LineHistories lines = log.lines(80);
        double cheap = odds(LineOdds.of(lines, RatePrior.VAGUE, 0), 1);
        double dear = odds(LineOdds.of(lines, RatePrior.VAGUE, 12), 1);
        assertTrue(dear < cheap - 0.05, dear + " " + cheap);
    }

    @Test
    void feedRaisesTheOdds() {
        Logs log = Logs.morning().at(0, Kind.START, Logs.FIRST).every(6, 1, 60, Logs.FIRST);
        double unfed = odds(odds(log, 60), 2);
        log.at(45, Kind.FEED, Logs.SECOND);
        assertTrue(odds(odds(log, 60), 2) > unfed);
    }

    @Test
    void oddsOfTheBestAddUpToLessThanOne() {
        Logs log = Logs.morning().at(0, Kind.START, Logs.FIRST).every(6, 1, 60, Logs.FIRST);
        double sum = odds(log, 60).others().stream()
                .mapToDouble(LineOdds.Other::best)
                .sum();
        assertTrue(sum > 0.1 && sum < 1, "the rest is the present line's: " + sum);
    }

    @Test
    void aChangeOfLinesTakesSensibleTime() {
        LineHistories lines = Logs.morning().lines(0);
        assertThrows(IllegalArgumentException.class, () -> LineOdds.of(lines, RatePrior.VAGUE, -1));
        assertThrows(IllegalArgumentException.class, () -> LineOdds.of(lines, RatePrior.VAGUE, 31));
    }

    @Test
    void restRestoresALine() {
        LineCondition line = new LineCondition();
        line.pass(90, 1);
        assertEquals(1 - Math.exp(-3), line.fished(), 1e-12);
        line.pass(30, 0);
        assertEquals((1 - Math.exp(-3)) / Math.E, line.fished(), 1e-12);
    }

    @Test
    void feedDrawsMostAfterAQuarterOfAnHour() {
        LineCondition line = new LineCondition();
        line.feed();
        line.pass(5, 0);
        double early = line.fed();
        line.pass(10, 0);
        double most = line.fed();
        line.pass(30, 0);
        assertTrue(early < most && line.fed() < most);
        assertEquals(1 - 1 / Math.E, most, 1e-12);
    }
}

package pegbed.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pegbed.model.DayEvent.Kind;

class LineRateTest {
    private static LineRate rate(Logs log, int now, int line) {
        return LineRate.of(log.lines(now), RatePrior.VAGUE).get(line);
    }

    @Test
    void aSteadyLineHasItsRateWithinTheInterval() {
        Logs log = Logs.morning().at(0, Kind.START, Logs.FIRST).every(5, 3, 180, Logs.FIRST);
        Estimate fish = rate(log, 180, 0).fishAnHour();
        assertEquals(12, fish.mean(), 1.5, "a fish every five minutes");
        assertTrue(fish.low() < 12 && 12 < fish.high());
        assertTrue(rate(log, 180, 0).told());
    }

    @Test
    void moreMinutesMakeItSurer() {
        Logs log = Logs.morning().at(0, Kind.START, Logs.FIRST).every(5, 3, 180, Logs.FIRST);
        Estimate early = rate(log, 15, 0).fishAnHour();
        Estimate late = rate(log, 120, 0).fishAnHour();
        assertTrue(late.high() / late.low() < early.high() / early.low());
    }

    @Test
    void olderMinutesFade() {
        Logs fallen = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .every(3, 1, 60, Logs.FIRST)
                .every(20, 70, 120, Logs.FIRST);
        Logs risen = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .every(20, 10, 60, Logs.FIRST)
                .every(3, 61, 120, Logs.FIRST);
        assertTrue(rate(fallen, 120, 0).fishAnHour().high()
                < rate(risen, 120, 0).fishAnHour().mean());
    }

    @Test
    void aBlankLineIsNotNothing() {
        Logs log = Logs.morning().at(0, Kind.START, Logs.FIRST);
        Estimate fish = rate(log, 60, 0).fishAnHour();
        assertTrue(fish.low() >= 0 && fish.mean() < 3 && fish.high() > fish.mean());
    }

    @Test
    void aLineThatWasHardlyFishedIsNotTold() {
        Logs log = Logs.morning().at(0, Kind.START, Logs.FIRST).at(4, Kind.FISH, Logs.FIRST);
        assertFalse(rate(log, 5, 0).told());
        assertFalse(rate(log, 60, 1).told());
    }

    @Test
    void aRestedLineIsLessSureThanWhenItWasFished() {
        Logs log = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .every(5, 3, 60, Logs.FIRST)
                .at(60, Kind.START, Logs.SECOND)
                .every(5, 63, 180, Logs.SECOND);
        Estimate then = rate(log, 60, 0).fishAnHour();
        Estimate now = rate(log, 180, 0).fishAnHour();
        assertTrue(now.high() - now.low() > then.high() - then.low());
    }

    @Test
    void weightIsThatOfTheFishThatWereWeighed() {
        Logs log = Logs.morning().at(0, Kind.START, Logs.FIRST);
        assertTrue(rate(log, 60, 0).kilogramsAnHour().isEmpty());
        for (int minute = 3; minute < 120; minute += 5) {
            log.fish(minute, Logs.FIRST, 1, 0.4);
        }
        LineRate rate = rate(log, 120, 0);
        Estimate kilograms = rate.kilogramsAnHour().orElseThrow();
        assertEquals(0.4 * rate.fishAnHour().mean(), kilograms.mean(), 1e-6);
        assertTrue(kilograms.low() < kilograms.mean() && kilograms.mean() < kilograms.high());
        double spread = kilograms.high() / kilograms.low();
        assertTrue(spread > rate.fishAnHour().high() / rate.fishAnHour().low(), "the weight adds to the doubt");
    }

    @Test
    void anEmptyDayHasTheVagueRateOnEveryLine() {
        List<LineRate> rates = LineRate.of(Logs.morning().lines(0), RatePrior.VAGUE);
        assertEquals(3, rates.size());
        assertEquals(20, rates.get(0).fishAnHour().mean(), 1e-9);
        assertFalse(rates.get(0).told());
    }

    @Test
    void aFewHoursAreAnsweredLikeADayOfLateEntries() {
        Logs log = Logs.morning().at(0, Kind.START, Logs.FIRST).every(60, 10, 3 * 24 * 60, Logs.FIRST);
        assertEquals(1, rate(log, 3 * 24 * 60, 0).fishAnHour().mean(), 0.5);
    }
}

package pegbed.bench.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class DayBenchTest {
    private static int fish(Angler angler, long first, int days) {
        int sum = 0;
        for (long number = first; number < first + days; number++) {
            sum += Angler.catches(angler, new MadeDay(MadeWater.USUAL, number));
        }
        return sum;
    }

    @Test
    void theSameDayIsTheSame() {
        assertEquals(fish(Angler.everyHalfHour(), 7, 3), fish(Angler.everyHalfHour(), 7, 3));
    }

    @Test
    void knowingIsBetterThanChangingBlindly() {
        assertTrue(fish(Angler.knowing(30), 1, 40) > 1.3 * fish(Angler.everyHalfHour(), 1, 40));
    }

    @Test
    void fishingTakesFishAndFeedDrawsThem() {
        MadeDay day = new MadeDay(MadeWater.USUAL.wander("still", 0, 90), 3);
        day.fish(0);
        double before = day.rate(0);
        for (int minute = 0; minute < 14; minute++) {
            day.pass();
        }
        assertTrue(day.rate(1) > new MadeDay(MadeWater.USUAL.wander("still", 0, 90), 3).rate(1));
        assertTrue(day.caught() == 0 || day.rate(0) < before * Math.exp(0.8));
    }

    @Tag("slow")
    @Test
    void theOddsAreWorthFollowing() {
        int advised = 0;
        for (long number = 1; number <= 20; number++) {
            advised += Angler.catches(Angler.advised(), new MadeDay(MadeWater.USUAL, number));
        }
        assertTrue(advised > 1.1 * fish(Angler.everyHalfHour(), 1, 20));
        assertTrue(advised > 0.7 * fish(Angler.knowing(30), 1, 20));
    }

    @Tag("slow")
    @Test
    void theTableHasARowForEachWorld() {
        String table = DayBench.table(1, 2, List.of(MadeWater.USUAL, MadeWater.USUAL.coming("fish come and go")));
        assertEquals(4, table.lines().takeWhile(line -> !line.isBlank()).count());
        assertTrue(table.contains("fish come and go"));
    }
}

package pegbed.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.Test;

class ParallelTest {
    @Test
    void eachIndexIsServedOnce() {
        AtomicIntegerArray served = new AtomicIntegerArray(1000);
        Parallel.each(1000, served::incrementAndGet);
        for (int i = 0; i < 1000; i++) {
            assertEquals(1, served.get(i));
        }
    }

    @Test
    void resultsComeInTheOrderOfTheItems() {
        assertEquals(List.of(2, 4, 6, 8), Parallel.map(List.of(1, 2, 3, 4), each -> 2 * each));
    }

    @Test
    void bothResultsComeBack() {
        Parallel.Both<String, Integer> both = Parallel.both(() -> "a", () -> 1);
        assertEquals("a", both.first());
        assertEquals(1, both.second());
    }

    @Test
    void whoGivesUpIsHeard() {
        Monitor.Cancelled stop = new Monitor.Cancelled();
        Monitor.Cancelled heard = assertThrows(
                Monitor.Cancelled.class,
                () -> Parallel.both(
                        () -> {
                            throw stop;
                        },
                        () -> 1));
        assertSame(Monitor.Cancelled.class, heard.getClass());
    }
}

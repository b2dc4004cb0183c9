package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class OwnerHandoverTest {
    @Test
    void theFirstOwnerWorksUntilTheSecondTakesOver() throws Exception {
        List<Runnable> second = new ArrayList<>();
        OwnerHandover owner = new OwnerHandover(second::add);
        Thread thread = owner.bring(Thread::currentThread).get(1, TimeUnit.MINUTES);
        assertNotEquals(Thread.currentThread(), thread);
        owner.takeOver();
        List<String> done = new ArrayList<>();
        owner.execute(() -> done.add("later"));
        assertEquals(List.of(), done);
        second.forEach(Runnable::run);
        assertEquals(List.of("later"), done);
    }

    @Test
    void nothingIsLostAndTheOrderStays() throws Exception {
        ConcurrentLinkedQueue<Runnable> second = new ConcurrentLinkedQueue<>();
        OwnerHandover owner = new OwnerHandover(second::add);
        List<Integer> done = new ArrayList<>();
        int count = 5_000;
        Thread giver =
                new Thread(() -> IntStream.range(0, count).forEach(number -> owner.execute(() -> done.add(number))));
        giver.start();
        owner.takeOver();
        giver.join();
        second.forEach(Runnable::run);
        assertEquals(IntStream.range(0, count).boxed().toList(), done);
    }

    @Test
    void workThatFailsStopsNothing() throws Exception {
        OwnerHandover owner = new OwnerHandover(Runnable::run);
        List<String> done = new ArrayList<>();
        Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> {});
        try {
            owner.execute(() -> {
                throw new IllegalStateException("of no matter");
            });
            owner.execute(() -> done.add("after"));
            owner.takeOver();
        } finally {
            Thread.setDefaultUncaughtExceptionHandler(before);
        }
        assertEquals(List.of("after"), done);
    }
}

package pegbed.ui.app;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.TabPane;
import javafx.stage.Stage;
import pegbed.model.Peg;
import pegbed.session.Answer;
import pegbed.session.Pegs;
import pegbed.storage.disk.PegFile;
import pegbed.ui.map.MapPane;

/**
 * How quick the window is, measured in the running scene and printed: {@code mvn -P run test-compile exec:exec
 * -Drun.main=pegbed.ui.app.WindowBench}. Without a display it uses the toolkit's headless screen; with
 * {@code -Dpegbed.real=true} the real one.
 */
public final class WindowBench {
    private static final int ROUNDS = 40;
    private static final int WARM = 15;

    /** Longer than the map waits for answers to hold still. */
    private static final int CALM_MILLISECONDS = 320;

    /** The longest piece of the program's own work on the toolkit's thread, nanoseconds. */
    private static final AtomicLong OWN = new AtomicLong();

    private WindowBench() {}

    public static void main(String[] args) throws Exception {
        Headless.set();
        Platform.startup(() -> {});
        Platform.setImplicitExit(false);
        Path home = Files.createTempDirectory("pegbed-bench");
        WindowFrame[] frame = new WindowFrame[1];
        ExecutorService painter = WindowViewModels.thread("painter");
        ExecutorService plans = WindowViewModels.thread("plans");
        ExecutorService guide = WindowViewModels.thread("guide");
        WindowViewModels desk = on(() -> {
            WindowViewModels made = WindowViewModels.of(
                    home,
                    WindowViewModels.executors(WindowBench::later, painter),
                    painter,
                    plans,
                    WindowViewModels.behind(painter, guide),
                    Clock.systemUTC());
            made.remembered().closeHint();
            frame[0] = PegbedApplication.show(new Stage(), made, new Screenshots.NoFiles(), false);
            made.document().begin(SamplePegFiles.first());
            return made;
        });
        MapPane map = frame[0].main().map();
        until(map::settled);
        long started = ManagementFactory.getRuntimeMXBean().getStartTime();
        print("first picture with the map, from the start of the program", (double)
                (System.currentTimeMillis() - started));

        Peg sixty = Pegs.plumbed(60);
        List<Double> enters = new ArrayList<>();
        List<Double> learnt = new ArrayList<>();
        List<Double> moves = new ArrayList<>();
        AtomicLong longest = new AtomicLong();
        Thread watch = watch(longest);
        for (int i = 0; i < ROUNDS; i++) {
            on(() -> {
                desk.document().begin(sixty);
                return null;
            });
            until(() -> desk.session().peg().equals(sixty)
                    && desk.session().answer() instanceof Answer.Ready
                    && map.settled());
            // What is reckoned aside is done long before a person has typed the next reading.
            rest(painter, plans, guide);
            if (i == WARM) {
                longest.set(0);
                OWN.set(0);
            }
            String line = (3 + i * 0.1) + " " + i + "R 4'" + i % 12;
            Shown reading = new Shown(
                    map,
                    () -> map.shown()
                            .orElseThrow()
                            .map()
                            .peg()
                            .equals(desk.session().peg()));
            on(() -> own(() -> {
                reading.expect();
                desk.box().textProperty().set(line);
                desk.box().enter();
            }));
            double entered = reading.milliseconds();
            until(() -> desk.session().answer() instanceof Answer.Ready && map.settled());
            double learned = reading.sinceExpected();
            rest(painter, plans, guide);
            double target = 0.5 + i * 0.005;
            double targetBefore = map.shown().orElseThrow().targetMetres();
            Shown flats = new Shown(map, () -> map.shown().orElseThrow().targetMetres() != targetBefore);
            on(() -> own(() -> {
                flats.expect();
                desk.target().metresProperty().set(target);
            }));
            double moved = flats.milliseconds();
            if (i >= WARM) {
                enters.add(entered);
                learnt.add(learned);
                moves.add(moved);
            }
        }
        watch.interrupt();
        List<Double> taps = taps(desk, frame[0]);
        print("Enter to the map with the reading, at 60 readings, median", median(enters));
        print("the same until all is learned anew, median", median(learnt));
        print("one move of the target to the drawn flats, median", median(moves));
        print("a tap for a fish to its tick, twelve visits in the file, median", median(taps));
        print("the longest of " + taps.size() + " taps", Collections.max(taps));
        print("longest piece of own work on the toolkit's thread", OWN.get() / 1e6);
        print("longest wait for that thread, the toolkit's own drawing included", longest.get() / 1e6);
        Platform.exit();
        System.exit(0);
    }

    /** Taps for a fish, each until it is ticked, which is when it is in the journal. */
    private static List<Double> taps(WindowViewModels desk, WindowFrame frame) throws Exception {
        Peg fished = PegFile.read(Path.of("sample-pegs/sallow-cut-5.peg.json")).peg();
        on(() -> {
            desk.document().begin(fished);
            ((TabPane) frame.lookup("#tabs")).getSelectionModel().select(2);
            return null;
        });
        List<Double> taps = new ArrayList<>();
        for (int i = 0; i < WARM + ROUNDS; i++) {
            until(() -> desk.session().answer() instanceof Answer.Ready
                    && frame.lookup("#fishing-fish-1") instanceof Button);
            Thread.sleep(CALM_MILLISECONDS);
            CountDownLatch ticked = new CountDownLatch(1);
            long[] from = new long[1];
            long[] to = new long[1];
            ChangeListener<String> tick = (property, before, now) -> {
                if (now.startsWith("✓")) {
                    to[0] = System.nanoTime();
                    ticked.countDown();
                }
            };
            on(() -> {
                desk.fishing().saidProperty().addListener(tick);
                from[0] = System.nanoTime();
                ((Button) frame.lookup("#fishing-fish-1")).fire();
                return null;
            });
            ticked.await();
            on(() -> {
                desk.fishing().saidProperty().removeListener(tick);
                return null;
            });
            if (i >= WARM) {
                taps.add((to[0] - from[0]) / 1e6);
            }
        }
        return taps;
    }

    /**
     * Takes the time until a picture is on the map's canvas, where it is drawn, so that no other question is in its
     * way.
     */
    private static final class Shown {
        private final MapPane map;
        private final BooleanSupplier wanted;
        private final CountDownLatch there = new CountDownLatch(1);
        private long from;
        private volatile long to;

        Shown(MapPane map, BooleanSupplier wanted) {
            this.map = map;
            this.wanted = wanted;
        }

        /** Begins, on the toolkit's thread. */
        void expect() {
            from = System.nanoTime();
            map.onShown(this::look);
        }

        private void look() {
            if (wanted.getAsBoolean()) {
                to = System.nanoTime();
                there.countDown();
            } else {
                map.onShown(this::look);
            }
        }

        double milliseconds() throws InterruptedException {
            there.await();
            return (to - from) / 1e6;
        }

        double sinceExpected() {
            return (System.nanoTime() - from) / 1e6;
        }
    }

    private static void later(Runnable work) {
        Platform.runLater(() -> own(work));
    }

    private static Object own(Runnable work) {
        long from = System.nanoTime();
        work.run();
        return OWN.accumulateAndGet(System.nanoTime() - from, Math::max);
    }

    /** Asks the toolkit's thread again and again how long it lets others wait. */
    private static Thread watch(AtomicLong longest) {
        Thread watch = new Thread(() -> {
            while (!Thread.currentThread().isInterrupted()) {
                long asked = System.nanoTime();
                Platform.runLater(() -> longest.accumulateAndGet(System.nanoTime() - asked, Math::max));
                LockSupport.parkNanos(2_000_000);
            }
        });
        watch.setDaemon(true);
        watch.start();
        return watch;
    }

    private static void rest(ExecutorService painter, ExecutorService plans, ExecutorService guide) throws Exception {
        Thread.sleep(200);
        painter.submit(() -> {}).get();
        plans.submit(() -> {}).get();
        guide.submit(() -> {}).get();
        // Then the map's letters are placed once more about what was found.
        Thread.sleep(CALM_MILLISECONDS);
        painter.submit(() -> {}).get();
    }

    private static double median(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2);
    }

    private static void print(String what, double milliseconds) {
        System.out.printf(Locale.ROOT, "%-62s %8.1f ms%n", what, milliseconds);
    }

    private static void until(Callable<Boolean> condition) throws Exception {
        while (!on(condition)) {
            LockSupport.parkNanos(500_000);
        }
    }

    private static <T> T on(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        return task.get();
    }
}

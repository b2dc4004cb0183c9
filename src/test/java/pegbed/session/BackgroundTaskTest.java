package pegbed.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.RejectedExecutionException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.storage.disk.ProgramLog;

class BackgroundTaskTest {
    @TempDir
    Path folder;

    private final Queue<Runnable> worker = new ArrayDeque<>();
    private final Queue<Runnable> owner = new ArrayDeque<>();
    private final List<String> done = new ArrayList<>();
    private final List<String> failed = new ArrayList<>();
    private final BackgroundTask.Outcome<String> outcome = new BackgroundTask.Outcome<>(done::add, failed::add);
    private ProgramLog log;
    private BackgroundTask task;

    @BeforeEach
    void task() {
        log = new ProgramLog(folder);
        task = new BackgroundTask("It could not be done", worker::add, owner::add, log);
    }

    private static void all(Queue<Runnable> waiting) {
        while (!waiting.isEmpty()) {
            waiting.remove().run();
        }
    }

    @Test
    void theResultReachesTheOwnersThread() {
        task.latest(monitor -> "found", outcome);
        all(worker);
        assertEquals(List.of(), done);
        all(owner);
        assertEquals(List.of("found"), done);
    }

    @Test
    void theNewestRequestWins() {
        List<String> worked = new ArrayList<>();
        for (String name : List.of("a", "b", "c")) {
            task.latest(
                    monitor -> {
                        worked.add(name);
                        return name;
                    },
                    outcome);
            if (name.equals("a")) {
                worker.remove().run();
            }
        }
        all(worker);
        all(owner);
        assertEquals(List.of("a", "c"), worked, "what was overtaken before it began is not done");
        assertEquals(List.of("c"), done, "what was overtaken later is not delivered");
    }

    @Test
    void runningWorkHearsThatItIsNotWantedAndFallsSilent() {
        task.latest(
                monitor -> {
                    task.cancel();
                    monitor.check();
                    return "never";
                },
                outcome);
        all(worker);
        all(owner);
        assertEquals(List.of(), done);
        assertEquals(List.of(), failed);
    }

    @Test
    void allIsDoneThatNothingCancels() {
        task.run(monitor -> "a", outcome);
        task.run(monitor -> "b", outcome);
        task.cancel();
        all(worker);
        all(owner);
        assertEquals(List.of("a", "b"), done);
    }

    @Test
    void whatThePersonCanPutRightIsSaidAsItIs() {
        task.latest(
                monitor -> {
                    throw new InputException("Give a depth.");
                },
                outcome);
        all(worker);
        all(owner);
        assertEquals(List.of("Give a depth."), failed);
        assertTrue(Files.notExists(log.file()));
    }

    @Test
    void anErrorIsLoggedAndSaid() throws IOException {
        task.latest(
                monitor -> {
                    throw new AssertionError("broken");
                },
                outcome);
        all(worker);
        all(owner);
        assertEquals(List.of("It could not be done; what went wrong is in the log " + log.file() + "."), failed);
        String text = Files.readString(log.file());
        assertTrue(text.contains("java.lang.AssertionError: broken"), text);
        assertTrue(text.contains("at pegbed.session.BackgroundTaskTest"), text);
    }

    @Test
    void workThatCallsItselfCancelledWithoutBeingSoIsAnError() {
        task.latest(
                monitor -> {
                    throw new Monitor.Cancelled();
                },
                outcome);
        all(worker);
        all(owner);
        assertEquals(1, failed.size(), "or somebody would wait forever");
    }

    @Test
    void workThatNobodyTakesIsAnError() {
        new BackgroundTask(
                        "It could not be done",
                        work -> {
                            throw new RejectedExecutionException("closed");
                        },
                        owner::add,
                        log)
                .latest(monitor -> "never", outcome);
        assertEquals(1, failed.size());
    }
}

package pegbed.reliability;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.EnumMap;
import java.util.Map;
import pegbed.model.InputException;

/** Feeds hostile texts to what reads them, with a watch over the time that each takes. */
final class Fuzz {
    /**
     * A case that takes longer hangs: two seconds, and one more for each megabyte, of the reader's own time, as a busy
     * machine is no fault; and twenty times that by the clock, as one that waits for ever takes no time of its own.
     */
    private static final long PATIENCE_MILLISECONDS = 2_000;

    private static final int BUSY_MACHINE = 20;

    private static final int WATERS_LEFT_OUT = 10;

    private static final ThreadMXBean TIMES = ManagementFactory.getThreadMXBean();

    private final Map<Input, Mutator> mutators = new EnumMap<>(Input.class);
    private int refused;
    private int taken;
    private long slowestMilliseconds;
    private volatile Case running = new Case("nothing", 0, 0, Long.MAX_VALUE / BUSY_MACHINE);

    /** What is being read, since when by the reader's own time and by the clock, and for how long it may be. */
    private record Case(String what, long ownStart, long clockStart, long patienceNanoseconds) {
        boolean hangs(long own, long clock) {
            return own - ownStart > patienceNanoseconds || clock - clockStart > BUSY_MACHINE * patienceNanoseconds;
        }
    }

    /**
     * What came of it.
     *
     * @param cases how many texts were read
     * @param taken how many of them made sense, in whole or in part
     * @param refused how many were refused with a sentence
     * @param slowestMilliseconds how long the slowest took, of the reader's own time
     */
    record Result(int cases, int taken, int refused, long slowestMilliseconds) {}

    private Fuzz(int longest) throws IOException {
        for (Input input : Input.values()) {
            mutators.put(input, new Mutator(input.corpus(), longest));
        }
    }

    /**
     * Reads hostile texts, in turn for each input.
     *
     * @param longest of the texts, bytes
     * @throws AssertionError at the first text that is answered by anything but a peg or a declared exception, or hangs
     */
    static Result run(int cases, long seed, int longest) throws IOException, InterruptedException {
        Fuzz fuzz = new Fuzz(longest);
        Throwable[] fault = {null};
        Thread reader = new Thread(() -> fuzz.read(cases, seed), "reader of hostile texts");
        reader.setUncaughtExceptionHandler((thread, e) -> fault[0] = e);
        reader.setDaemon(true);
        reader.start();
        while (reader.isAlive()) {
            reader.join(50);
            Case running = fuzz.running;
            long own = TIMES.getThreadCpuTime(reader.getId());
            if (running.hangs(own, System.nanoTime()) && fuzz.running == running && reader.isAlive()) {
                AssertionError hangs = new AssertionError(running.what() + " hangs");
                hangs.setStackTrace(reader.getStackTrace());
                throw hangs;
            }
        }
        if (fault[0] != null) {
            throw new AssertionError(fuzz.running.what(), fault[0]);
        }
        return new Result(cases, fuzz.taken, fuzz.refused, fuzz.slowestMilliseconds);
    }

    private void read(int cases, long seed) {
        Input[] inputs = Input.values();
        for (int i = 0; i < cases; i++) {
            Input input = inputs[i % inputs.length];
            if (input == Input.WATER && i / inputs.length % WATERS_LEFT_OUT > 0) {
                // It takes long and reads nothing that the others don't.
                input = Input.NOTATION;
            }
            byte[] bytes = mutators.get(input).make(seed + i);
            long start = TIMES.getCurrentThreadCpuTime();
            running = new Case(
                    input + ", case " + (seed + i) + ", " + bytes.length + " bytes",
                    start,
                    System.nanoTime(),
                    (PATIENCE_MILLISECONDS + bytes.length / 1_000) * 1_000_000);
            try {
                input.read(bytes);
                taken++;
            } catch (InputException declared) {
                refused++;
                if (declared.getMessage().isBlank() || declared.getMessage().length() > 2_000) {
                    throw new AssertionError("Not one sentence: " + declared.getMessage(), declared);
                }
            }
            slowestMilliseconds = Math.max(slowestMilliseconds, (TIMES.getCurrentThreadCpuTime() - start) / 1_000_000);
        }
    }
}

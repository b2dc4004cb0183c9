package pegbed.reliability;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import pegbed.model.InputException;
import pegbed.session.LongUse;

/**
 * The long runs whose short forms are in the tests: {@code kills}, {@code taps} (kills while a day's log is kept),
 * {@code faults}, {@code races}, {@code writers} (twenty processes), {@code commands} (twenty with a process for each
 * command), {@code full} (on a small disk), {@code fuzz}, {@code neighbours}, {@code words}, {@code large},
 * {@code long}, each with how often and the seed of the first; {@code all} does them all but {@code full}, as often as
 * {@code docs/reliability.md} states. Prints a line for each; ends with an error at the first thing lost.
 */
public final class Nightly {
    private Nightly() {}

    /**
     * Runs one kind of attack.
     *
     * @param args what to run, how often, a seed, and a folder to run in if it shall not be the usual one
     */
    public static void main(String[] args) throws Exception {
        int times = Integer.parseInt(args[1]);
        long seed = Long.parseLong(args[2]);
        Path folder = args.length > 3 ? Path.of(args[3]).resolve("pegbed" + seed) : Files.createTempDirectory("pegbed");
        Files.createDirectories(folder);
        if (args[0].equals("all")) {
            run("kills", folder, 1_000 * times, seed);
            run("taps", folder, 200 * times, seed);
            run("faults", folder, 300 * times, seed);
            run("races", folder, 1_000 * times, seed);
            run("writers", folder, 1_000 * times, seed);
            run("commands", folder, 20 * times, seed);
            run("fuzz", folder, 1_000_000 * times, seed);
            run("neighbours", folder, 1_000 * times, seed);
            run("words", folder, 20_000 * times, seed);
            run("large", folder, times, seed);
            run("long", folder, 100_000 * times, seed);
        } else {
            run(args[0], folder, times, seed);
        }
        delete(folder);
    }

    private static void run(String what, Path within, int times, long seed) throws Exception {
        Path folder = Files.createDirectories(within.resolve(what));
        switch (what) {
            case "kills" -> System.out.println(Kills.run(folder, times, seed, false));
            case "taps" -> System.out.println(Kills.run(folder, times, seed, true));
            case "faults" -> faults(folder, times, seed);
            case "races" -> System.out.println("confirmed by two processes: " + Races.run(folder, times));
            case "writers" -> System.out.println("kept: " + Writers.run(folder, times, 20, false));
            case "commands" -> System.out.println("kept: " + Writers.run(folder, times, 20, true));
            case "full" -> System.out.println(SmallDisk.run(folder, times, seed));
            case "fuzz" -> System.out.println(Fuzz.run(times, seed, 10_000_000));
            case "neighbours" -> System.out.println(Neighbours.run(folder, times, seed));
            case "words" -> System.out.println(CommandLineFuzz.run(folder, times, seed));
            case "large" -> LargeFiles.run(folder).forEach((file, answer) -> System.out.println(file + ": " + answer));
            case "long" -> System.out.println(LongUse.run(folder, times));
            default -> throw new IllegalArgumentException("There is no run " + what + ".");
        }
    }

    private static void faults(Path folder, int times, long seed) throws IOException, InputException {
        for (FaultyDisk.Fault fault : FaultyDisk.Fault.values()) {
            for (boolean powerCut : List.of(false, true)) {
                if (!powerCut || fault.forcesFolders()) {
                    faults(folder, fault, powerCut, times, seed);
                }
            }
        }
    }

    private static void faults(Path folder, FaultyDisk.Fault fault, boolean powerCut, int times, long seed)
            throws IOException, InputException {
        Map<String, Long> sums = new TreeMap<>();
        for (long each = seed; each < seed + times; each++) {
            Path own = Files.createDirectory(folder.resolve("run"));
            try {
                FaultRun run = FaultRun.of(own, fault, powerCut, each % 3 == 0, each);
                sums.merge("failed", (long) run.failed(), Long::sum);
                sums.merge("confirmed", (long) run.confirmed(), Long::sum);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError(fault + ", power cut " + powerCut + ", seed " + each, e);
            }
            delete(own);
        }
        System.out.println(fault + (powerCut ? " and a power cut" : " and a kill") + ": " + times + " lives, " + sums);
    }

    /** Removes a folder with all that is in it. */
    static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}

package pegbed.reliability;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import pegbed.model.InputException;
import pegbed.session.Pegs;
import pegbed.storage.disk.PegFile;

/** Starts {@link EditingLife} again and again on the same pegs and kills it at random moments. */
final class Kills {
    private final Path journals;
    private final Path pegs;
    private final Random random;
    private final boolean fishing;
    private int confirmed;
    private int refused;
    private int withoutAFile;

    /**
     * What came of it.
     *
     * @param kills how many processes were killed
     * @param confirmed how many edits and saves they had confirmed
     * @param refused how many second processes on the same file were refused
     * @param withoutAFile how many lives began with a peg that had no file
     * @param leftovers how many files lie there at the end that are neither peg nor earlier version
     */
    record Result(int kills, int confirmed, int refused, int withoutAFile, int leftovers) {}

    private Kills(Path folder, long seed, boolean fishing) throws IOException {
        this.fishing = fishing;
        journals = folder.resolve("journals");
        pegs = Files.createDirectories(folder.resolve("pegs"));
        random = new Random(seed);
    }

    /**
     * Kills as often.
     *
     * @param fishing whether it is a day's log that is kept, above all
     * @throws AssertionError if something that was confirmed is not there, or anything stops the next start
     */
    static Result run(Path folder, int kills, long seed, boolean fishing)
            throws IOException, InterruptedException, InputException {
        Kills run = new Kills(folder, seed, fishing);
        Path first = run.pegs.resolve("peg0.peg.json");
        PegFile.save(first, Pegs.plumbed(5), Optional.empty());
        WorkRecord record = new WorkRecord(PegFile.read(first).peg(), Optional.of(first));
        for (int kill = 0; kill < kills; kill++) {
            if (record.file().isPresent() && run.random.nextInt(6) == 0) {
                record = new WorkRecord(Pegs.bare(), Optional.empty());
                run.withoutAFile++;
            }
            try {
                record = run.life(record);
            } catch (AssertionError e) {
                throw new AssertionError("Seed " + seed + ", kill " + kill, e);
            }
        }
        return new Result(kills, run.confirmed, run.refused, run.withoutAFile, run.leftovers());
    }

    private WorkRecord life(WorkRecord record) throws IOException, InterruptedException, InputException {
        List<String> words = new ArrayList<>(List.of(
                journals.toString(),
                pegs.toString(),
                record.file().map(Path::toString).orElse("-"),
                Long.toString(random.nextLong())));
        if (fishing) {
            words.add("fishing");
        }
        Process process = Children.start(EditingLife.class, words.toArray(String[]::new));
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            if (random.nextInt(4) == 0) {
                Thread.sleep(random.nextInt(500));
            } else {
                hear(lines.readLine(), record);
                if (record.file().isPresent() && random.nextInt(8) == 0) {
                    aSecondIsRefused(record.file().get());
                }
                Thread.sleep(random.nextInt(80));
            }
            // By its handle, as the process itself would close what it had written too.
            process.toHandle().destroyForcibly();
            if (!process.waitFor(1, TimeUnit.MINUTES)) {
                throw new AssertionError("It can't be killed.");
            }
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                hear(line, record);
            }
        }
        confirmed += record.confirmations();
        Reopening next = Reopening.of(journals, pegs, record);
        return next.file().isPresent() ? new WorkRecord(next.state(), next.file()) : firstAgain();
    }

    /** After a peg without a file, the work goes on with one that has one. */
    private WorkRecord firstAgain() throws InputException {
        Path file = pegs.resolve("again" + withoutAFile + ".peg.json");
        PegFile.save(file, Pegs.plumbed(3), Optional.empty());
        return new WorkRecord(PegFile.read(file).peg(), Optional.of(file));
    }

    private static void hear(String line, WorkRecord record) {
        if (line == null || line.startsWith("R ")) {
            throw new AssertionError("The program ended at once: " + line);
        }
        String words = line.substring(Math.min(2, line.length()));
        switch (line.charAt(0)) {
            case 'T' -> record.tries(words);
            case 'C' -> record.confirms(words);
            case 'M' -> record.moves(Path.of(words));
            case 'D' -> record.moved();
            case 'S' -> record.stayed();
            default -> throw new AssertionError("The program said: " + line);
        }
    }

    /** Another process on the file that the first is working on; which may have gone on to another file by now. */
    private void aSecondIsRefused(Path file) throws IOException, InterruptedException {
        Process second = Children.start(EditingLife.class, journals.toString(), pegs.toString(), file.toString(), "1");
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(second.getInputStream(), StandardCharsets.UTF_8))) {
            String said = lines.readLine();
            if (said != null && said.startsWith("R ")) {
                if (!said.contains("open in another window")) {
                    throw new AssertionError("The second process was told: " + said);
                }
                refused++;
            }
        } finally {
            second.toHandle().destroyForcibly();
            second.waitFor(1, TimeUnit.MINUTES);
        }
    }

    private int leftovers() throws IOException {
        return (int) Stream.concat(Reopening.files(pegs).stream(), Reopening.files(journals).stream())
                .filter(file -> file.toString().endsWith(".tmp"))
                .count();
    }
}

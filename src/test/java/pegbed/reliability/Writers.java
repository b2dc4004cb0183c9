package pegbed.reliability;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pegbed.model.InputException;
import pegbed.model.Reading;
import pegbed.session.Pegs;
import pegbed.storage.disk.PegFile;

/** Processes that give {@code pegbed add} to one peg file at the same moment, again and again. */
final class Writers {
    /** One process that adds when it is told to. */
    private record Writer(Process process, BufferedReader answers) {
        static Writer start() throws IOException {
            Process process = Children.start(AddingCommands.class, List.of("-Xlog:disable"));
            return new Writer(
                    process,
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)));
        }

        void tell(Path peg, String line) throws IOException {
            OutputStream words = process.getOutputStream();
            words.write((peg + "\t" + line + "\n").getBytes(StandardCharsets.UTF_8));
            words.flush();
        }

        void end() throws IOException, InterruptedException {
            process.getOutputStream().close();
            process.waitFor();
        }
    }

    private Writers() {}

    /**
     * Has all writers add one reading each to a new peg, and looks whether all are kept.
     *
     * @param rounds how often
     * @param writers how many at once
     * @param oneProcessEach whether each command has a process of its own, as from a shell; else a process gives one
     *     command in each round
     * @return how many readings were added; all of them are there
     * @throws AssertionError if a command fails, or a reading is not in the file
     */
    static int run(Path folder, int rounds, int writers, boolean oneProcessEach)
            throws IOException, InterruptedException, InputException {
        List<Writer> all = new ArrayList<>();
        try {
            for (int round = 0; round < rounds; round++) {
                if (all.isEmpty()) {
                    start(all, writers);
                }
                round(Files.createDirectories(folder.resolve("round" + round)), all);
                if (oneProcessEach) {
                    end(all);
                }
                if ((round + 1) % 100 == 0) {
                    System.out.println(round + 1 + " times " + writers + " kept");
                }
            }
        } finally {
            end(all);
        }
        return rounds * writers;
    }

    private static void round(Path folder, List<Writer> writers)
            throws IOException, InterruptedException, InputException {
        Path peg = folder.resolve("one.peg.json");
        PegFile.save(peg, Pegs.bare(), Optional.empty());
        for (int i = 0; i < writers.size(); i++) {
            writers.get(i).tell(peg, (5 + i * 0.25) + "m 0 1.5m note" + i);
        }
        for (Writer each : writers) {
            expect("0", each);
        }
        Set<String> there =
                PegFile.read(peg).peg().readings().stream().map(Reading::note).collect(Collectors.toSet());
        Set<String> lost = IntStream.range(0, writers.size())
                .mapToObj(i -> "note" + i)
                .filter(note -> !there.contains(note))
                .collect(Collectors.toSet());
        if (!lost.isEmpty()) {
            throw new AssertionError("Confirmed but not there in " + peg + ": " + lost);
        }
        Nightly.delete(folder);
    }

    private static void start(List<Writer> all, int writers) throws IOException {
        for (int i = 0; i < writers; i++) {
            all.add(Writer.start());
        }
        for (Writer each : all) {
            expect("ready", each);
        }
    }

    private static void expect(String words, Writer writer) throws IOException {
        String said = writer.answers().readLine();
        if (!words.equals(said)) {
            throw new AssertionError("A command answered " + said + ", not " + words + ".");
        }
    }

    private static void end(List<Writer> all) throws IOException, InterruptedException {
        for (Writer each : all) {
            each.end();
        }
        all.clear();
    }
}

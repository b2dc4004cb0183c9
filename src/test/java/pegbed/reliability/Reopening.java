package pegbed.reliability;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import pegbed.model.InputException;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Opened;

/**
 * The next start after a program died: opens what it worked on and compares.
 *
 * @param state the peg that came back, in short
 * @param file where it is; empty where it still has no file
 */
record Reopening(String state, Optional<Path> file) {
    private static final RandomEditor.Listener NOBODY = new RandomEditor.Listener() {
        @Override
        public void tries(String state) {}

        @Override
        public void confirms(String state) {}

        @Override
        public void moves(Path to) {}

        @Override
        public void moved(boolean done) {}
    };

    /**
     * Starts again on a sound disk.
     *
     * @throws AssertionError if something that was confirmed is not there, or anything stops the start
     */
    static Reopening of(Path journals, Path pegs, WorkRecord record) throws IOException, InputException {
        allReadable(pegs);
        List<String> seen = new ArrayList<>();
        for (Optional<Path> file : candidates(record)) {
            Optional<Reopening> found = file.isPresent() ? open(journals, file.get()) : takeUp(journals);
            if (found.isPresent() && record.allows(found.get().state())) {
                return found.get();
            }
            seen.add(file + ": " + found);
        }
        if (record.file().isEmpty() && record.confirmations() == 0) {
            return new Reopening("", Optional.empty());
        }
        throw new AssertionError("Came back: " + seen + "; was: " + record);
    }

    private static List<Optional<Path>> candidates(WorkRecord record) {
        List<Optional<Path>> candidates = new ArrayList<>();
        candidates.add(record.file());
        record.nextFile().filter(Files::exists).ifPresent(next -> candidates.add(Optional.of(next)));
        return candidates;
    }

    private static Optional<Reopening> open(Path journals, Path file) {
        RandomEditor editor = new RandomEditor(journals, new Random(0), false, NOBODY);
        if (!editor.open(file)) {
            throw new AssertionError("Could not be opened again: " + editor.refusals());
        }
        if (!editor.session().file().equals(Optional.of(file))) {
            throw new AssertionError("Came back damaged: " + editor.session().news());
        }
        Reopening found = new Reopening(WorkRecord.hash(editor.session().peg()), Optional.of(file));
        editor.close(false);
        return Optional.of(found);
    }

    /** Takes up a peg without a file and gives it up, so that the next run finds none. */
    private static Optional<Reopening> takeUp(Path journals) {
        RandomEditor editor = new RandomEditor(journals, new Random(0), false, NOBODY);
        if (!editor.takeUp()) {
            return Optional.empty();
        }
        Reopening found = new Reopening(WorkRecord.hash(editor.session().peg()), Optional.empty());
        editor.close(true);
        return Optional.of(found);
    }

    /** Every peg file and every earlier version is whole. */
    private static void allReadable(Path pegs) throws IOException, InputException {
        for (Path file : files(pegs)) {
            String name = file.getFileName().toString();
            if (name.contains(PegFile.ENDING)
                    && !name.endsWith(".tmp")
                    && !name.endsWith(".lock")
                    && !(PegFile.read(file) instanceof Opened.Whole)) {
                throw new AssertionError(file + " is damaged.");
            }
        }
    }

    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }
}

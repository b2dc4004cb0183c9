package pegbed.session;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbed.model.InputException;
import pegbed.model.Reading;
import pegbed.storage.disk.PegFile;

/** A season's edits on one session: what grows with them? */
public final class LongUse {
    /** No answers are wanted here. */
    private static final Recomputation.Fitting NONE = (peg, monitor) -> {
        throw new InputException("No bottom is wanted here.");
    };

    private LongUse() {}

    /**
     * What came of it.
     *
     * @param edits how many edits, undone and redone ones among them
     * @param heapAtTenthBytes the heap in use after a tenth of them, when what nobody needs is thrown away
     * @param heapAtEndBytes the same after all
     * @param longestJournalBytes the largest that the journal was seen
     */
    public record Result(int edits, long heapAtTenthBytes, long heapAtEndBytes, long longestJournalBytes) {}

    /** Adds, notes, undoes, redoes and deletes; never saves, so that the journal bears it all. */
    public static Result run(Path folder, int edits) throws IOException, InputException {
        Path file = Files.createDirectories(folder).resolve("nine.peg.json");
        PegFile.save(file, Pegs.plumbed(20), Optional.empty());
        Instant[] now = {Instant.parse("2026-06-13T06:00:00Z")};
        Session session = new Session(
                folder.resolve("journals"), Session.Executors.AT_ONCE, () -> now[0] = now[0].plusSeconds(3), NONE);
        session.open(file, sentence -> {
            throw new AssertionError(sentence);
        });
        long heapAtTenth = 0;
        long longest = 0;
        for (int done = 1; session.revision() < edits; done++) {
            step(session, done);
            if (!session.kept()) {
                throw new AssertionError(session.trouble());
            }
            if (session.revision() == edits / 10) {
                heapAtTenth = heap();
            }
            if (done % 50 == 0) {
                longest = Math.max(longest, bytes(folder.resolve("journals")));
            }
        }
        long heapAtEnd = heap();
        session.close(true, () -> {});
        return new Result(edits, heapAtTenth, heapAtEnd, longest);
    }

    private static void step(Session session, int done) throws InputException {
        switch (done % 10) {
            case 0, 1, 2 -> session.edit(ReadingEdits.add(Reading.of(2 + done % 97 * 0.1, done % 90 - 45, 1)));
            case 3 -> session.edit(ReadingEdits.note(new ReadingAt(0, done % 20), "note " + done));
            case 4, 5 -> session.undo();
            case 6 -> session.redo();
            default -> {
                if (session.peg().readings().size() > 20) {
                    session.edit(ReadingEdits.delete(new ReadingAt(0, 0)));
                } else {
                    session.edit(ReadingEdits.note(new ReadingAt(0, 0), "again " + done));
                }
            }
        }
    }

    private static long heap() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }

    private static long bytes(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            long sum = 0;
            for (Path file : List.copyOf(files.toList())) {
                sum += Files.size(file);
            }
            return sum;
        }
    }
}

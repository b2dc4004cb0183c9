package pegbed.session;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import pegbed.model.Peg;

/** What can be undone and redone. */
final class History {
    /** How many edits can be undone. */
    static final int DEPTH = 100;

    /** Steps of one burst follow each other within this time. */
    static final Duration BURST = Duration.ofMillis(1500);

    private final Deque<Entry> done = new ArrayDeque<>();
    private final Deque<Entry> undone = new ArrayDeque<>();
    private String burst = "";
    private Instant last = Instant.MIN;

    /**
     * One edit in the history.
     *
     * @param label what it did
     * @param other the peg on the other side of it: before it if it is done, after it if it is undone
     */
    private record Entry(String label, Peg other) {}

    /** An edit was made. */
    void made(Edit edit, Peg before, Instant now) {
        boolean goesOn = !edit.burst().isEmpty()
                && edit.burst().equals(burst)
                && undone.isEmpty()
                && !done.isEmpty()
                && !now.isBefore(last)
                && now.isBefore(last.plus(BURST));
        burst = edit.burst();
        last = now;
        undone.clear();
        if (goesOn) {
            return;
        }
        done.push(new Entry(edit.label(), before));
        if (done.size() > DEPTH) {
            done.removeLast();
        }
    }

    /** Ends a burst, so that the next step begins another. */
    void endBurst() {
        burst = "";
    }

    /** Steps back; empty if there is nothing to undo. */
    Optional<Peg> back(Peg current) {
        return move(done, undone, current);
    }

    /** Steps forward again; empty if there is nothing to redo. */
    Optional<Peg> forward(Peg current) {
        return move(undone, done, current);
    }

    private Optional<Peg> move(Deque<Entry> from, Deque<Entry> to, Peg current) {
        endBurst();
        if (from.isEmpty()) {
            return Optional.empty();
        }
        Entry entry = from.pop();
        to.push(new Entry(entry.label(), current));
        return Optional.of(entry.other());
    }

    Optional<String> undoLabel() {
        return Optional.ofNullable(done.peek()).map(Entry::label);
    }

    Optional<String> redoLabel() {
        return Optional.ofNullable(undone.peek()).map(Entry::label);
    }
}

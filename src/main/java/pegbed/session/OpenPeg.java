package pegbed.session;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;
import pegbed.model.InputException;
import pegbed.model.Peg;

/** The open document: the current peg, what can be undone, and what was last saved. Belongs to one thread. */
public final class OpenPeg {
    private final Supplier<Instant> clock;
    private final History history = new History();
    private Peg peg;
    private Optional<Peg> saved;
    private long revision;

    /**
     * @param peg the peg as it was opened
     * @param saved what its file holds; empty where there is no file yet
     * @param clock shows whether the steps of a burst follow each other
     */
    public OpenPeg(Peg peg, Optional<Peg> saved, Supplier<Instant> clock) {
        this.peg = peg;
        this.saved = saved;
        this.clock = clock;
    }

    public Peg peg() {
        return peg;
    }

    /** Rises with every change of the peg, undoing and redoing too. */
    public long revision() {
        return revision;
    }

    /**
     * Makes an edit. One that changes nothing leaves no trace.
     *
     * @return whether the peg changed
     * @throws InputException if the edit can't be made; nothing has changed then
     */
    public boolean apply(Edit edit) throws InputException {
        Peg after;
        try {
            after = edit.change().apply(peg);
        } catch (IllegalArgumentException e) {
            throw new InputException(e.getMessage(), e);
        }
        if (after.equals(peg)) {
            return false;
        }
        history.made(edit, peg, clock.get());
        moveTo(after);
        return true;
    }

    /** The drag or the typing is over: the next step is undone on its own. */
    public void endBurst() {
        history.endBurst();
    }

    /** Undoes the last edit; false if there is none. */
    public boolean undo() {
        Optional<Peg> before = history.back(peg);
        before.ifPresent(this::moveTo);
        return before.isPresent();
    }

    /** Makes the edit again that was last undone; false if there is none. */
    public boolean redo() {
        Optional<Peg> after = history.forward(peg);
        after.ifPresent(this::moveTo);
        return after.isPresent();
    }

    private void moveTo(Peg other) {
        peg = other;
        revision++;
    }

    /** What Undo would undo. */
    public Optional<String> undoLabel() {
        return history.undoLabel();
    }

    /** What Redo would make again. */
    public Optional<String> redoLabel() {
        return history.redoLabel();
    }

    /** Remembers what the file now holds. */
    public void saved(Peg held) {
        saved = Optional.of(held);
        history.endBurst();
    }

    /** Whether the peg differs from what its file holds. A peg of which nothing is known has nothing to lose. */
    public boolean unsaved() {
        return !peg.equals(saved.orElse(Peg.EMPTY));
    }
}

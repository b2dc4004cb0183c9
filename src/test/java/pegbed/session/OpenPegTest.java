package pegbed.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;

class OpenPegTest {
    private Instant now = Instant.parse("2026-06-13T06:00:00Z");
    private final Peg start = Pegs.bare();
    private final OpenPeg open = new OpenPeg(start, Optional.of(start), () -> now);

    @Test
    void undoTakesBackTheLastEditAndRedoMakesItAgain() throws InputException {
        open.apply(ReadingEdits.add(Reading.of(5, 0, 1)));
        open.apply(ReadingEdits.add(Reading.of(6, 0, 1.2)));
        assertEquals(Optional.of("Add reading"), open.undoLabel());
        assertTrue(open.undo());
        assertEquals(1, open.peg().readings().size());
        assertTrue(open.redo());
        assertEquals(1.2, open.peg().readings().get(1).depthMetres());
        assertFalse(open.redo());
    }

    @Test
    void aNewEditForgetsWhatWasUndone() throws InputException {
        open.apply(ReadingEdits.add(Reading.of(5, 0, 1)));
        open.undo();
        open.apply(ReadingEdits.add(Reading.of(7, 0, 1)));
        assertEquals(Optional.empty(), open.redoLabel());
        assertFalse(open.redo());
    }

    @Test
    void aHundredEditsCanBeUndoneAndNoMore() throws InputException {
        for (int i = 0; i < 130; i++) {
            open.apply(ReadingEdits.add(Reading.of(2 + i * 0.05, 0, 1)));
        }
        int undone = 0;
        while (open.undo()) {
            undone++;
        }
        assertEquals(100, undone);
        assertEquals(30, open.peg().readings().size());
    }

    @Test
    void theStepsOfADragAreUndoneAsOne() throws InputException {
        for (int i = 0; i < 20; i++) {
            open.apply(PlaceEdits.moveMark(0, new Place(-3 + i * 0.1, 13)));
            now = now.plusMillis(40);
        }
        open.undo();
        assertEquals(start, open.peg());
        assertEquals(Optional.empty(), open.undoLabel());
    }

    @Test
    void twoDragsAreUndoneOneByOne() throws InputException {
        open.apply(PlaceEdits.moveMark(0, new Place(-2, 13)));
        open.endBurst();
        open.apply(PlaceEdits.moveMark(0, new Place(-1, 13)));
        open.undo();
        assertEquals(-2, open.peg().marks().get(0).place().xMetres());
    }

    @Test
    void aPauseEndsABurst() throws InputException {
        open.apply(ReadingEdits.target(OptionalDouble.of(0.7)));
        now = now.plusSeconds(5);
        open.apply(ReadingEdits.target(OptionalDouble.of(0.8)));
        open.undo();
        assertEquals(OptionalDouble.of(0.7), open.peg().wishes().targetMetres());
    }

    @Test
    void aClockThatWentBackEndsABurst() throws InputException {
        open.apply(ReadingEdits.target(OptionalDouble.of(0.7)));
        now = now.minusSeconds(3600);
        open.apply(ReadingEdits.target(OptionalDouble.of(0.8)));
        open.undo();
        assertEquals(OptionalDouble.of(0.7), open.peg().wishes().targetMetres());
    }

    @Test
    void dragsOfTwoThingsDoNotMerge() throws InputException {
        open.apply(PlaceEdits.moveMark(0, new Place(-2, 13)));
        open.apply(PlaceEdits.moveMark(1, new Place(5, 13)));
        open.undo();
        assertEquals(-2, open.peg().marks().get(0).place().xMetres());
        assertEquals(4, open.peg().marks().get(1).place().xMetres());
    }

    @Test
    void aStepAfterUndoDoesNotMergeIntoWhatWasUndone() throws InputException {
        open.apply(ReadingEdits.target(OptionalDouble.of(0.7)));
        open.undo();
        open.apply(ReadingEdits.target(OptionalDouble.of(0.9)));
        open.undo();
        assertEquals(OptionalDouble.empty(), open.peg().wishes().targetMetres());
    }

    @Test
    void bringingInATableIsOneEdit() throws InputException {
        open.apply(ReadingEdits.bringIn(List.of(Reading.of(5, 0, 1), Reading.of(6, 0, 1), Reading.of(7, 0, 1))));
        assertEquals(Optional.of("Bring in 3 readings"), open.undoLabel());
        open.undo();
        assertEquals(start, open.peg());
    }

    @Test
    void undoingBackToWhatWasSavedLeavesNothingToSave() throws InputException {
        assertFalse(open.unsaved());
        open.apply(ReadingEdits.add(Reading.of(5, 0, 1)));
        assertTrue(open.unsaved());
        open.saved(open.peg());
        assertFalse(open.unsaved());
        open.undo();
        assertTrue(open.unsaved());
        open.redo();
        assertFalse(open.unsaved());
    }

    @Test
    void anEditThatChangesNothingLeavesNoTrace() throws InputException {
        assertFalse(open.apply(PlaceEdits.pole(start.pole())));
        assertEquals(Optional.empty(), open.undoLabel());
        assertEquals(0, open.revision());
    }

    @Test
    void anEditThatIsRefusedChangesNothing() {
        InputException refused = assertThrows(
                InputException.class, () -> open.apply(PlaceEdits.addMark("White Pipe", new Place(1, 13))));
        assertEquals("Two marks have the same name; give each its own.", refused.getMessage());
        assertEquals(start, open.peg());
    }

    @Test
    void aPegOfWhichNothingIsKnownHasNothingToLose() {
        assertFalse(new OpenPeg(Peg.EMPTY, Optional.empty(), () -> now).unsaved());
    }
}

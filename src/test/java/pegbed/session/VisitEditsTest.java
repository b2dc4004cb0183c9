package pegbed.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Peg;

class VisitEditsTest {
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-09-12T06:30:00Z");

    private static OpenPeg open(Peg peg) {
        return new OpenPeg(peg, Optional.empty(), () -> Instant.EPOCH);
    }

    @Test
    void aVisitIsBegunAndUndoneAsOne() throws InputException {
        Peg before = VisitedPegs.nine();
        OpenPeg open = open(before);
        assertTrue(open.apply(VisitEdits.begin(before, NOW)));
        assertEquals(3, open.peg().visits().size());
        assertEquals(Optional.of(NOW), open.peg().today().start());
        assertEquals(Optional.of("Begin visit"), open.undoLabel());
        open.undo();
        assertEquals(before, open.peg());
    }

    @Test
    void anEmptyVisitIsTodaysAlready() throws InputException {
        Peg begun = VisitEdits.begin(VisitedPegs.nine(), NOW).change().apply(VisitedPegs.nine());
        String why = assertThrows(InputException.class, () -> VisitEdits.begin(begun, NOW))
                .getMessage();
        assertTrue(why.startsWith("The latest visit has nothing in it yet"), why);
        assertThrows(InputException.class, () -> VisitEdits.begin(Pegs.bare(), NOW));
        assertEquals(Optional.empty(), VisitEdits.whyNot(Pegs.plumbed(1), NOW));
    }

    @Test
    void noVisitBeginsBeforeTheLast() throws InputException {
        Peg peg = VisitedPegs.nine();
        OffsetDateTime before = peg.today().start().orElseThrow().minusDays(1);
        assertTrue(VisitEdits.whyNot(peg, before).orElseThrow().contains("look at this machine's clock"));
    }

    @Test
    void boardAndDiggingBelongToToday() throws InputException {
        Peg peg = VisitedPegs.nine();
        Peg measured = VisitEdits.board(OptionalDouble.of(0.38)).change().apply(peg);
        assertEquals(OptionalDouble.of(0.38), measured.today().boardToWaterMetres());
        assertEquals(peg.visits().get(0), measured.visits().get(0));
        Peg dug = VisitEdits.dugOut(true).change().apply(peg);
        assertTrue(dug.today().afresh());
        assertFalse(VisitEdits.dugOut(false).change().apply(dug).today().afresh());
    }
}

package pegbed.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbed.model.BankPoint;
import pegbed.model.Bottom;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Typed;

class EditsTest {
    private static Peg after(Peg peg, Edit edit) {
        return edit.change().apply(peg);
    }

    @Test
    void aReadingOfAnEarlierVisitIsChangedWhereItStands() {
        Peg twice = after(Pegs.visitTwice(Pegs.plumbed(5)), ReadingEdits.add(Reading.of(4, 10, 0.9)));
        ReadingAt third = ReadingAt.ofFlat(twice, 2);
        assertEquals(new ReadingAt(0, 2), third);
        assertEquals(new ReadingAt(1, 0), ReadingAt.ofFlat(twice, 5));
        Peg changed = after(twice, ReadingEdits.change(third, Reading.of(9, 1, 1.1)));
        assertEquals(1.1, changed.visits().get(0).readings().get(2).depthMetres());
        assertEquals(twice.today(), changed.today());
    }

    @Test
    void changingAReadingKeepsItsTimeAndWhatALaterVersionWrote() {
        Reading old = new Reading(
                Typed.NOTHING,
                new Place(0, 5),
                Precision.PLAIN,
                1,
                Bottom.UNKNOWN,
                "",
                Optional.of(OffsetDateTime.parse("2026-06-13T06:05:00+01:00")),
                new Extras(java.util.Map.of("plummet_g", "30")));
        Peg peg = Pegs.bare().withReading(old);
        Reading now = after(peg, ReadingEdits.change(new ReadingAt(0, 0), Reading.of(6, 0, 1.2)))
                .readings()
                .get(0);
        assertEquals(old.time(), now.time());
        assertEquals(old.extras(), now.extras());
        assertEquals(1.2, now.depthMetres());
    }

    @Test
    void bottomAndNoteChangeAlone() {
        Peg peg = Pegs.plumbed(3);
        ReadingAt at = new ReadingAt(0, 1);
        Reading before = at.in(peg);
        Reading after = at.in(after(after(peg, ReadingEdits.bottom(at, Bottom.SILT)), ReadingEdits.note(at, "soft")));
        assertEquals(Bottom.SILT, after.bottom());
        assertEquals("soft", after.note());
        assertEquals(before.depthMetres(), after.depthMetres());
        assertEquals(2, after(peg, ReadingEdits.delete(at)).readings().size());
    }

    @Test
    void aBankPointFindsItsPlaceFromLeftToRight() {
        Peg peg = after(Pegs.bare(), PlaceEdits.addBankPoint(PlaceEdits.Bank.FAR, BankPoint.at(5, 13.1)));
        assertEquals(
                List.of(-11.0, 0.0, 5.0, 11.0),
                peg.banks().far().stream().map(p -> p.place().xMetres()).toList());
    }

    @Test
    void aHazardMovesWithItsWholeOutline() {
        Hazard reeds = new Hazard(
                Hazard.Kind.LILIES_OR_REEDS,
                List.of(new Place(0, 2), new Place(1, 2), new Place(1, 3)),
                0.5,
                "",
                Typed.NOTHING,
                Extras.NONE);
        Peg moved = after(after(Pegs.bare(), PlaceEdits.addHazard(reeds)), PlaceEdits.moveHazard(0, new Place(2, 4)));
        assertEquals(
                List.of(new Place(2, 4), new Place(3, 4), new Place(3, 5)),
                moved.hazards().get(0).outline());
    }
}

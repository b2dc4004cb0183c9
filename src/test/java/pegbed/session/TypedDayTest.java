package pegbed.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbed.model.DayEvent;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.DayNotation;

class TypedDayTest {
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-05-02T12:00:00+01:00");
    private static final List<Place> PLANNED = List.of(new Place(0, 4), new Place(-3, 10));

    private static Peg with(Peg peg, OffsetDateTime now, String... typed) throws InputException {
        Peg changed = peg;
        for (String line : typed) {
            changed = DayEdits.add(event(changed, Optional.empty(), now, line))
                    .change()
                    .apply(changed);
        }
        return changed;
    }

    private static DayEvent event(Peg peg, Optional<Integer> visit, OffsetDateTime now, String line)
            throws InputException {
        return new TypedDay(peg, visit, PLANNED, now).event(DayNotation.of(peg).parse(line));
    }

    private static String refused(Peg peg, String line) {
        return assertThrows(InputException.class, () -> event(peg, Optional.empty(), NOON, line))
                .getMessage();
    }

    @Test
    void aLineIsKnownByItsPlace() throws InputException {
        DayEvent event = event(Peg.EMPTY, Optional.empty(), NOON, "11:40 line 2 fish");
        assertEquals(Optional.of(PLANNED.get(1)), event.line());
        assertEquals(OffsetDateTime.parse("2026-05-02T11:40:00+01:00"), event.time());
    }

    @Test
    void withoutALineItIsTheOneFishedThen() throws InputException {
        Peg peg = with(Peg.EMPTY, NOON, "10:00 line 1 start", "10:30 line 2 fish", "10:40 line 1 feed pellets");
        assertEquals(
                PLANNED.get(0),
                event(peg, Optional.empty(), NOON, "10:15 bite").line().orElseThrow());
        assertEquals(
                PLANNED.get(1),
                event(peg, Optional.empty(), NOON, "10:50 bite").line().orElseThrow());
        Peg stopped = with(peg, NOON, "11:00 stop");
        assertTrue(refused(stopped, "11:10 bite").contains("No line is being fished then"));
    }

    @Test
    void aTimeThatIsNotYetIsRefused() {
        assertTrue(refused(Peg.EMPTY, "12:30 line 1 fish").contains("12:30 is later than now"));
    }

    @Test
    void aLineThatIsNotPlannedIsRefused() {
        assertTrue(refused(Peg.EMPTY, "line 3 fish").contains("the plan has lines 1 to 2"));
    }

    @Test
    void whatIsNotedOnAnotherDayBeginsAVisit() throws InputException {
        Peg first = with(Peg.EMPTY, NOON, "11:00 line 1 start", "11:30 fish");
        assertEquals(1, first.visits().size());
        assertEquals(2, first.today().day().events().size());
        Peg second = with(first, NOON.plusDays(7), "11:45 line 2 start");
        assertEquals(2, second.visits().size());
        assertEquals(
                Optional.of(OffsetDateTime.parse("2026-05-09T11:45:00+01:00")),
                second.today().start());
        assertEquals(2, second.visits().get(0).day().events().size());
    }

    @Test
    void aNightsFishingIsOneVisit() throws InputException {
        OffsetDateTime late = OffsetDateTime.parse("2026-05-02T23:30:00+01:00");
        Peg peg = with(Peg.EMPTY, late, "23:00 line 1 start");
        OffsetDateTime early = OffsetDateTime.parse("2026-05-03T00:30:00+01:00");
        DayEvent before = event(peg, Optional.empty(), early, "23:50 fish");
        assertEquals(OffsetDateTime.parse("2026-05-02T23:50:00+01:00"), before.time());
        assertEquals(1, with(peg, early, "00:10 fish").visits().size());
    }

    @Test
    void anEarlierVisitIsNotedLater() throws InputException {
        Peg peg = with(with(Peg.EMPTY, NOON, "11:00 line 1 start"), NOON.plusDays(7), "11:45 line 2 start");
        DayEvent late = event(peg, Optional.of(0), NOON.plusDays(8), "14:20 fish");
        assertEquals(OffsetDateTime.parse("2026-05-02T14:20:00+01:00"), late.time());
        assertEquals(PLANNED.get(0), late.line().orElseThrow());
        Peg noted = DayEdits.bringIn(0, List.of(late)).change().apply(peg);
        assertEquals(2, noted.visits().get(0).day().events().size());
    }

    @Test
    void anEventIsMendedAndTakenOut() throws InputException {
        Peg peg = with(Peg.EMPTY, NOON, "11:00 line 1 start", "11:30 fish");
        DayEvent two = event(peg, Optional.empty(), NOON, "11:35 line 1 fish 2");
        Peg mended = DayEdits.change(0, 1, two).change().apply(peg);
        assertEquals(2, mended.today().day().events().get(1).count());
        assertEquals(
                1,
                DayEdits.delete(0, 0)
                        .change()
                        .apply(mended)
                        .today()
                        .day()
                        .events()
                        .size());
    }
}

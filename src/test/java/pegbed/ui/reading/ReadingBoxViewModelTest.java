package pegbed.ui.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.session.Pegs;
import pegbed.session.Session;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;

class ReadingBoxViewModelTest {
    @TempDir
    private Path folder;

    private WindowViewModels desk;
    private ReadingBoxViewModel box;

    @BeforeEach
    void open() {
        desk = Desks.atOnce(folder, Pegs.bare());
        box = desk.box();
    }

    private void type(String line) {
        box.textProperty().set(line);
    }

    @Test
    void enterAddsTheReadingAndEmptiesTheBox() {
        type("11 20L 4'6 silt soft there");
        assertTrue(box.enter());
        Reading reading = desk.session().peg().readings().get(0);
        assertEquals(4.5 * 0.3048, reading.depthMetres(), 1e-9);
        assertEquals("soft there", reading.note());
        assertEquals(Optional.of(OffsetDateTime.parse("2026-06-13T06:05:00Z")), reading.time());
        assertEquals("", box.textProperty().get());
        assertTrue(box.addedProperty().get());
        assertTrue(box.keptProperty().get());
        assertEquals(
                "11.0 m (s6 + 1.0), 20° left (11:20), 4 ft 6 in (1.37 m), silt, note: soft there",
                box.echoProperty().get());
    }

    @Test
    void aFirstVisitIsDatedAtItsFirstReading() throws InputException {
        Optional<OffsetDateTime> first = Optional.of(OffsetDateTime.parse("2026-06-13T06:05:00Z"));
        type("11 20L 4'6");
        box.enter();
        assertEquals(first, desk.session().peg().today().start());
        desk.document().undo();
        assertEquals(Optional.empty(), desk.session().peg().today().start());
        // An old visit of unknown day stays so.
        desk.document().begin(Pegs.plumbed(4));
        type("11 20L 4'6");
        box.enter();
        assertEquals(5, desk.session().peg().readings().size());
        assertEquals(Optional.empty(), desk.session().peg().today().start());
    }

    @Test
    void theEchoFollowsWhatIsTyped() {
        type("s6 @leaning");
        assertEquals("", box.echoProperty().get());
        type("s6 @leaning 5'6");
        assertTrue(
                box.echoProperty().get().contains("at leaning post"),
                box.echoProperty().get());
        assertFalse(box.addedProperty().get());
    }

    @Test
    void aLineThatCanNotBeReadStaysInTheBoxWithItsSentence() {
        type("eleven 20L 4'6");
        assertFalse(box.enter());
        assertEquals("eleven 20L 4'6", box.textProperty().get());
        assertEquals(
                "\"eleven\" is not a distance; type metres like 11, feet like 36ft, or sections like s6+0.5.",
                box.errorProperty().get());
        assertEquals(0, desk.session().peg().readings().size());
        type("11 20L 4'6");
        assertEquals("", box.errorProperty().get());
    }

    @Test
    void aReadingBeyondReachIsRefusedAndStays() {
        type("18 0 4'6");
        assertFalse(box.enter());
        assertEquals("18 0 4'6", box.textProperty().get());
        assertTrue(
                box.errorProperty().get().contains("beyond the reach of your pole"),
                box.errorProperty().get());
    }

    @Test
    void aReadingOnDryGroundIsKeptAndSaid() {
        desk.document().begin(Pegs.plumbed(4));
        type("14.5 0 1ft");
        assertTrue(box.enter());
        assertTrue(
                box.echoProperty().get().endsWith("It lies on dry ground as the banks are drawn."),
                box.echoProperty().get());
    }

    @Test
    void whatWasAddedIsNoLongerSaidOnceItIsUndone() {
        type("11 20L 4'6");
        box.enter();
        desk.document().undo();
        assertFalse(box.addedProperty().get());
        assertEquals("", box.echoProperty().get());
    }

    @Test
    void whatWasAddedToAnotherPegIsNotSaid() {
        type("11 20L 4'6");
        box.enter();
        desk.document().begin(Pegs.plumbed(4));
        assertFalse(box.addedProperty().get());
        assertEquals("", box.echoProperty().get());
        type("11 20L 4");
        assertFalse(box.echoProperty().get().isEmpty());
        desk.document().undo();
        assertFalse(box.echoProperty().get().isEmpty());
    }

    @Test
    void aReadingThatTheRestContradictsIsQuestionedAtOnce() {
        desk.document().begin(Pegs.plumbed(12));
        type("11 20L 4");
        box.enter();
        assertEquals("", box.questionProperty().get());
        type("s4 5R 22");
        box.enter();
        assertTrue(
                box.questionProperty()
                        .get()
                        .matches(
                                "That is 1[5-9] ft( \\d+ in)? deeper than the other readings expect there, give or take"
                                        + " .*\\. Plumb it again; Ctrl\\+Z takes it back\\."),
                box.questionProperty().get());
        desk.document().undo();
        assertEquals("", box.questionProperty().get());
    }

    @Test
    void theQuestionDoesNotWaitUntilAllIsWorkedOutAnew() {
        List<Runnable> later = new ArrayList<>();
        WindowViewModels quick = WindowViewModels.of(
                folder.resolve("quick"),
                new Session.Executors(Runnable::run, Runnable::run, later::add, Runnable::run),
                Runnable::run,
                Runnable::run,
                Runnable::run,
                Desks.CLOCK);
        quick.document().begin(Pegs.plumbed(12));
        quick.box().textProperty().set("s4 5R 22");
        quick.box().enter();
        assertEquals(1, later.size());
        assertTrue(
                quick.box().questionProperty().get().contains("deeper than the other readings expect"),
                quick.box().questionProperty().get());
    }

    @Test
    void pastedRowsAreLinesAndOneEdit() {
        type("11 20L 4");
        assertTrue(box.enterRows("11\t20L\t4'6\r\ns6\t@post\t5'6\tsilt\tsoft there\n\nedge\t13.1\t20R\n"));
        assertEquals(2, desk.session().peg().readings().size());
        assertEquals(4, desk.session().peg().banks().far().size());
        assertEquals(
                Optional.of(OffsetDateTime.parse("2026-06-13T06:05:00Z")),
                desk.session().peg().readings().get(1).time());
        assertTrue(box.addedProperty().get());
        assertEquals("3 pasted lines", box.echoProperty().get());
        desk.document().undo();
        assertEquals(Pegs.bare(), desk.session().peg());
    }

    @Test
    void aPastedRowThatCanNotBeReadIsNamedAndNothingIsAdded() {
        assertTrue(box.enterRows("11 20L 4'6\n11 20L\n12 0 4"));
        assertEquals(Pegs.bare(), desk.session().peg());
        assertEquals(
                "None of the 3 pasted lines was added. Line 2: The depth is missing after \"11 20L\"; type a line like"
                        + " 11 20L 4'6.",
                box.errorProperty().get());
        assertTrue(box.enterRows("11 20L 4'6\n18 0 4"));
        assertTrue(
                box.errorProperty().get().contains("Line 2: section 10"),
                box.errorProperty().get());
        assertFalse(box.enterRows("11\t20L\t4'6\n"));
    }

    @Test
    void anEdgeGoesToTheBankItIsNearest() {
        type("edge 13.1 20R 1ft");
        assertTrue(box.enter());
        assertEquals(4, desk.session().peg().banks().far().size());
        assertTrue(
                box.echoProperty().get().endsWith("added to the far bank"),
                box.echoProperty().get());
    }

    @Test
    void aSnagBecomesAHazard() {
        type("snag 9 20R 1 old stake");
        assertTrue(box.enter());
        assertEquals(Hazard.Kind.SNAG, desk.session().peg().hazards().get(0).kind());
    }

    @Test
    void whatIsNotYetOnTheDiskIsNotSaidToBeAdded() {
        List<Runnable> disk = new ArrayList<>();
        WindowViewModels slow = WindowViewModels.of(
                folder.resolve("slow"),
                new Session.Executors(Runnable::run, Runnable::run, disk::add),
                Runnable::run,
                Runnable::run,
                Runnable::run,
                Desks.CLOCK);
        slow.box().textProperty().set("5 0 4'");
        assertTrue(slow.box().enter());
        assertFalse(slow.box().keptProperty().get());
        disk.forEach(Runnable::run);
        assertTrue(slow.box().keptProperty().get());
    }

    @Test
    void anEmptyBoxAddsNothing() {
        type("   ");
        assertFalse(box.enter());
        assertEquals("", box.errorProperty().get());
        assertEquals(0, desk.session().peg().readings().size());
    }

    @Test
    void enterAloneTakesUpTheNextPlace() {
        Place next = desk.guide().nextProperty().get().orElseThrow().place();
        assertFalse(box.enter());
        type(box.textProperty().get() + "4'");
        assertTrue(box.enter());
        Place taken = desk.session().peg().readings().get(0).place();
        assertEquals(0, taken.distanceTo(next), 0.05);
    }

    @Test
    void upRecallsTheLinesBeforeAndDownComesBack() {
        for (String line : new String[] {"5 0 4'", "6 0 4'6"}) {
            type(line);
            box.enter();
        }
        box.recallOlder();
        assertEquals("6 0 4'6", box.textProperty().get());
        box.recallOlder();
        assertEquals("5 0 4'", box.textProperty().get());
        box.recallOlder();
        assertEquals("5 0 4'", box.textProperty().get());
        box.recallNewer();
        assertEquals("6 0 4'6", box.textProperty().get());
        box.recallNewer();
        assertEquals("", box.textProperty().get());
    }

    @Test
    void inAnOpenedPegUpRecallsItsLastReading() {
        desk.document().begin(Pegs.bare().withReading(Reading.of(11.5, -20, 1.3716)));
        box.recallOlder();
        assertEquals("s7 20L 4'6", box.textProperty().get());
    }

    @Test
    void aClickOnTheMapFillsDistanceAndDirection() {
        box.fillFrom(Place.polar(10.5, -12.5));
        assertEquals("s6+0.5 12.5L ", box.textProperty().get());
        type(box.textProperty().get() + "4'6");
        box.fillFrom(Place.polar(7, 10));
        assertEquals("s4 10R 4'6", box.textProperty().get());
        assertTrue(box.enter());
    }
}

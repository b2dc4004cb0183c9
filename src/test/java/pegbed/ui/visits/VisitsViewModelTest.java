package pegbed.ui.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.guidance.NextReading;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.session.Answer;
import pegbed.session.Pegs;
import pegbed.session.VisitedPegs;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;
import pegbed.wording.LevelWords;

class VisitsViewModelTest {
    @TempDir
    private Path folder;

    private WindowViewModels desk(Peg peg) {
        return Desks.atOnce(folder, peg, VisitedPegs.MORNING);
    }

    private static void read(WindowViewModels desk, String line) {
        desk.box().textProperty().set(line);
        assertTrue(desk.box().enter(), desk.box().errorProperty().get());
    }

    /** The sample's second visit was made 8 cm, 3 inches, higher than its first. */
    @Test
    void eachVisitIsListedWithItsLevelAgainstTheFirst() throws InputException {
        List<VisitsViewModel.Row> rows = desk(VisitedPegs.nine()).visits().rows();
        assertEquals(2, rows.size());
        assertEquals("2 May 2026", rows.get(0).day());
        assertEquals("26 readings", rows.get(0).readings());
        assertEquals("the level of the first", rows.get(0).level());
        assertEquals("18 Jul 2026", rows.get(1).day());
        assertTrue(
                rows.get(1).level().matches("(2½|3|3½) in higher, give or take [½¾1] in"),
                rows.get(1).level());
    }

    @Test
    void beginningAVisitAsksForChecksAndEachTellsTheLevelBetter() throws InputException {
        WindowViewModels desk = desk(VisitedPegs.nine());
        VisitsViewModel visits = desk.visits();
        assertEquals("", visits.whyNotProperty().get());
        visits.begin();
        assertEquals(3, visits.rows().size());
        assertEquals("12 Sept 2026", visits.rows().get(2).day().replace("Sep ", "Sept "));
        assertEquals(3, visits.checks().size());
        assertTrue(visits.checks().get(0).why().contains("well plumbed"));
        assertTrue(visits.whyNotProperty().get().startsWith("The latest visit has nothing in it yet"));
        assertEquals(0, visits.steps().size());
        String before = visits.levelProperty().get();
        read(desk, "s4 0 5'2");
        read(desk, "s2 80R 2'5");
        assertEquals(2, visits.steps().size());
        assertTrue(
                visits.steps().get(0).startsWith("s4 0 5'2: "), visits.steps().get(0));
        assertFalse(before.equals(visits.levelProperty().get()));
        desk.document().undo();
        desk.document().undo();
        assertEquals(before, visits.levelProperty().get());
        desk.document().undo();
        assertEquals(VisitedPegs.nine(), desk.session().peg());
        assertEquals(2, visits.rows().size());
    }

    @Test
    void aCheckIsTakenIntoTheBoxAndOnlyItsDepthIsLeftToType() throws InputException {
        WindowViewModels desk = desk(VisitedPegs.nine());
        desk.visits().begin();
        VisitsViewModel.Check check = desk.visits().checks().get(0);
        desk.visits().take(check);
        read(desk, desk.box().textProperty().get() + "5'2");
        assertEquals(0, desk.session().peg().today().readings().get(0).place().distanceTo(check.place()), 0.05);
    }

    /** Peg 14 was read once, its board measured: 4 inches less from the board to the water are 4 inches more water. */
    @Test
    void everythingIsLevelledAnewAtOnceByTheBoard() throws InputException {
        WindowViewModels desk = desk(VisitedPegs.fourteen());
        double deepest = deepest(desk);
        double board = desk.session().peg().today().boardToWaterMetres().orElseThrow();
        desk.visits().begin();
        assertEquals(deepest, deepest(desk), 0.01);
        desk.board().textProperty().set((board - 0.1016) + "m");
        assertTrue(desk.board().echoProperty().get().endsWith("against the earlier measure."));
        assertTrue(desk.board().enter());
        assertEquals(deepest + 0.1016, deepest(desk), 0.01);
        assertTrue(
                desk.visits().levelProperty().get().startsWith("The water stands 4 in higher than on "),
                desk.visits().levelProperty().get());
        assertTrue(desk.visits().rows().get(1).level().contains("; board to water "));
    }

    private static double deepest(WindowViewModels desk) {
        return ((Answer.Ready) desk.session().answer())
                .findings()
                .deepest()
                .spot()
                .depthMetres();
    }

    @Test
    void aMeasureThatCanNotBeReadStaysInTheFieldWithItsSentence() throws InputException {
        WindowViewModels desk = desk(VisitedPegs.nine());
        BoardViewModel board = desk.board();
        board.textProperty().set("knee high");
        assertEquals("", board.errorProperty().get());
        assertFalse(board.enter());
        assertTrue(
                board.errorProperty().get().startsWith("\"knee\" is not a depth"),
                board.errorProperty().get());
        assertEquals("knee high", board.textProperty().get());
        board.textProperty().set("15in");
        assertTrue(board.echoProperty().get().startsWith("1 ft 3 in (0.38 m); no earlier visit was measured"));
        assertTrue(board.enter());
        assertEquals(0.381, desk.session().peg().today().boardToWaterMetres().orElseThrow(), 1e-9);
        assertEquals("1'3", board.textProperty().get());
        board.textProperty().set("");
        assertTrue(board.enter());
        assertTrue(desk.session().peg().today().boardToWaterMetres().isEmpty());
        desk.document().undo();
        assertEquals("1'3", board.textProperty().get());
    }

    /** Leaving the field as it is must not change a measure that was given more finely than it is printed. */
    @Test
    void leavingTheFieldUntouchedChangesNothing() throws InputException {
        WindowViewModels desk = desk(VisitedPegs.fourteen());
        Peg before = desk.session().peg();
        assertTrue(desk.board().enter());
        assertEquals(before, desk.session().peg());
    }

    @Test
    void aHoleIsToldWhereItIsAndHowDeep() throws InputException {
        WindowViewModels desk = desk(VisitedPegs.dugOut());
        assertEquals(1, desk.visits().changes().size());
        VisitsViewModel.Changed changed = desk.visits().changes().get(0);
        assertTrue(changed.words().startsWith("The bottom has changed at "), changed.words());
        assertTrue(changed.words().contains(" deeper ± "), changed.words());
        assertTrue(changed.place().distanceTo(VisitedPegs.HOLE) < 1);
        assertEquals(0, desk(VisitedPegs.nine()).visits().changes().size());
    }

    @Test
    void twoVisitsAreCompared() throws InputException {
        WindowViewModels desk = desk(VisitedPegs.dugOut());
        ComparisonViewModel comparison = desk.comparison();
        assertEquals(List.of("1: 2 May 2026", "2: 18 Jul 2026", "3: 20 Aug 2026"), comparison.visits());
        assertEquals(0, comparison.earlierProperty().get());
        assertEquals(2, comparison.laterProperty().get());
        comparison.compare();
        assertTrue(comparison.headingProperty().get().contains("the bottom changed"));
        VisitsViewModel.Changed dug = comparison.places().get(0);
        assertTrue(dug.words().startsWith("Dug out or washed away: "), dug.words());
        assertTrue(dug.place().distanceTo(VisitedPegs.HOLE) < 1.5);
        comparison.laterProperty().set(1);
        assertEquals(0, comparison.places().size());
        comparison.compare();
        assertTrue(comparison.headingProperty().get().endsWith("nothing changed by more than the doubt."));
        comparison.earlierProperty().set(1);
        comparison.compare();
        assertEquals(
                "Choose an earlier visit first and a later one second.",
                comparison.errorProperty().get());
        comparison.earlierProperty().set(0);
        comparison.compare();
        read(desk, "s4 0 5'2");
        assertEquals("", comparison.headingProperty().get());
    }

    @Test
    void diggingLeavesTheEarlierReadingsAndUsesNone() throws InputException {
        WindowViewModels desk = desk(VisitedPegs.nine());
        desk.visits().setDugOut(true);
        assertTrue(desk.visits().dugOutProperty().get());
        assertEquals(
                "Nothing that was read earlier is used, so today's level stands alone.",
                desk.visits().levelProperty().get());
        assertTrue(desk.visits().rows().get(1).afresh());
        assertEquals(30, desk.session().peg().readings().size());
        desk.document().undo();
        assertFalse(desk.visits().dugOutProperty().get());
    }

    @Test
    void aFirstVisitHasNothingToBeToldAgainst() {
        WindowViewModels desk = desk(Pegs.plumbed(12));
        assertTrue(desk.visits().levelProperty().get().startsWith("This is the first visit"));
        assertEquals(0, desk.visits().checks().size());
        assertFalse(desk.visits().laterProperty().get());
        desk.document().begin(Pegs.bare());
        assertEquals("", desk.visits().levelProperty().get());
        assertTrue(desk.visits().whyNotProperty().get().startsWith("Nothing was read at this peg yet"));
        desk.visits().begin();
        assertFalse(desk.visits().errorProperty().get().isEmpty());
    }

    /** The level does not depend on the depth that is looked for. */
    @Test
    void anotherTargetAsksForNoLevels() throws InputException {
        WindowViewModels desk = desk(Peg.EMPTY);
        AtomicInteger asked = new AtomicInteger();
        VisitsViewModel visits = new VisitsViewModel(
                desk.session(),
                VisitedPegs.MORNING,
                work -> {
                    asked.incrementAndGet();
                    work.run();
                },
                Runnable::run,
                place -> {});
        desk.document().begin(VisitedPegs.nine());
        assertEquals(1, asked.get());
        List<VisitsViewModel.Row> rows = List.copyOf(visits.rows());
        String level = visits.levelProperty().get();
        assertFalse(level.isEmpty());
        desk.target().metresProperty().set(0.6);
        assertTrue(desk.session().answer() instanceof Answer.Ready);
        assertEquals(1, asked.get());
        assertEquals(level, visits.levelProperty().get());
        assertEquals(rows, visits.rows());
        read(desk, "s4 0 5'2");
        assertEquals(2, asked.get());
    }

    @Test
    void theNextReadingOfALaterVisitIsTheLevelsFirstCheck() throws InputException {
        WindowViewModels desk = desk(VisitedPegs.nine());
        desk.visits().begin();
        var next = desk.guide().nextProperty().get().orElseThrow();
        assertEquals(NextReading.Purpose.LEVEL, next.purpose());
        assertEquals(desk.visits().checks().get(0).place(), next.place());
        assertTrue(
                desk.guide().wordsProperty().get().contains("It tells how high the water stands today"),
                desk.guide().wordsProperty().get());
    }

    @Test
    void whereARingAndAComparisonTellTwoFiguresItIsSaidWhy() throws InputException {
        WindowViewModels desk = desk(VisitedPegs.dugOut());
        assertEquals(1, desk.visits().changes().size());
        desk.comparison().compare();
        assertTrue(
                desk.comparison().headingProperty().get().endsWith(":"),
                desk.comparison().headingProperty().get());
        assertEquals(
                LevelWords.WHY_TWO_FIGURES, desk.comparison().noteProperty().get());
        desk.comparison().earlierProperty().set(0);
        desk.comparison().laterProperty().set(1);
        desk.comparison().compare();
        assertEquals("", desk.comparison().noteProperty().get());
    }
}

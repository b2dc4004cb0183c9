package pegbed.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.StartLine;
import pegbed.ui.app.Desks;
import pegbed.ui.app.SamplePegFiles;
import pegbed.ui.app.WindowViewModels;
import pegbed.wording.PlanCards;

class PlanViewModelTest {
    @TempDir
    private Path folder;

    private WindowViewModels desk;
    private PlanViewModel plan;

    @BeforeEach
    void open() throws InputException {
        desk = Desks.atOnce(folder, SamplePegFiles.first());
        plan = desk.plan();
    }

    @Test
    void linesAreNumberedInTheOrderInWhichTheyAreFishedWithTheirRigs() {
        assertTrue(plan.lines().size() >= 3);
        for (int i = 0; i < plan.lines().size(); i++) {
            PlanCards.LineCard line = plan.lines().get(i);
            assertEquals(i + 1, line.number());
            assertTrue(line.title().matches(".*, rig [1-9]"), line.title());
            assertTrue(line.where().contains("section"), line.where());
            assertFalse(line.why().isBlank());
        }
        assertTrue(
                plan.lines().get(0).what().endsWith("Start here."),
                plan.lines().get(0).what());
        assertTrue(
                plan.rigs().get(0).title().startsWith("Rig 1 for line"),
                plan.rigs().get(0).title());
    }

    @Test
    void theStartIsChosenKeptAndUndone() {
        plan.startOn(Optional.of(StartLine.ACROSS));
        assertEquals(
                Optional.of(StartLine.ACROSS),
                desk.session().peg().wishes().lines().start());
        assertTrue(
                plan.lines().get(0).title().startsWith("Across"),
                plan.lines().get(0).title());
        assertTrue(
                plan.lines().get(0).what().endsWith("Start here, as you wished."),
                plan.lines().get(0).what());
        desk.document().undo();
        assertEquals(Optional.empty(), plan.startProperty().get());
        assertTrue(plan.lines().get(0).what().endsWith("Start here."));
    }

    @Test
    void aPinnedLineStaysAndIsLetFreeAgain() {
        PlanCards.LineCard line = plan.lines().get(1);
        plan.fixOrRelease(line);
        assertTrue(plan.wishedProperty().get());
        PlanCards.LineCard fixed = plan.lines().stream()
                .filter(PlanCards.LineCard::fixed)
                .findFirst()
                .orElseThrow();
        assertEquals(line.place(), fixed.place());
        plan.fixOrRelease(fixed);
        assertFalse(plan.wishedProperty().get());
        assertTrue(plan.lines().stream().noneMatch(PlanCards.LineCard::fixed));
    }

    @Test
    void aForbiddenPlaceHasNoLineAnyMoreAndUndoBringsItBack() {
        Place place = plan.lines().get(0).place();
        plan.forbid(plan.lines().get(0));
        assertTrue(plan.lines().stream().noneMatch(line -> line.place().equals(place)));
        assertEquals("Forbid line", desk.document().undoProperty().get());
        desk.document().undo();
        assertEquals(place, plan.lines().get(0).place());
        plan.forbid(plan.lines().get(0));
        plan.releaseAll();
        assertFalse(plan.wishedProperty().get());
        assertEquals(place, plan.lines().get(0).place());
    }

    @Test
    void withoutAnswersThereIsNoPlan() {
        desk.document().begin(Peg.EMPTY);
        assertTrue(plan.lines().isEmpty());
        assertTrue(plan.rigs().isEmpty());
    }
}

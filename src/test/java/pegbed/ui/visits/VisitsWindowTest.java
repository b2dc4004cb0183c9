package pegbed.ui.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.session.Answer;
import pegbed.session.VisitedPegs;
import pegbed.ui.app.InScenes;
import pegbed.ui.controls.Texts;
import pegbed.ui.shelf.ShelfViewModel;

/** The next visit and the shelf in the window itself, with real scenes and without a display. */
@Tag("slow")
class VisitsWindowTest extends InScenes {
    @BeforeEach
    void open() throws InputException {
        scenes.clock = VisitedPegs.MORNING;
        scenes.open(VisitedPegs.nine());
        scenes.waitForAnswers();
    }

    private double deepest() {
        scenes.waitForAnswers();
        return scenes.desk()
                .session()
                .answer()
                .shown()
                .map(Answer.Ready::findings)
                .orElseThrow()
                .deepest()
                .spot()
                .depthMetres();
    }

    private double plannedDepth() {
        scenes.waitUntil(() -> scenes.desk()
                .plan()
                .planProperty()
                .get()
                .filter(plan -> scenes.desk().session().answer() instanceof Answer.Ready ready
                        && plan.findings() == ready.findings())
                .isPresent());
        return scenes.desk().plan().planProperty().get().orElseThrow().lines().stream()
                .mapToDouble(line -> line.candidate().spot().depthMetres())
                .max()
                .orElseThrow();
    }

    /** A check that reads 15 cm deeper than expected, on level and well plumbed ground, is mostly the water's rise. */
    @Test
    void beginningAVisitAndEnteringACheckLevelsEverythingAtOnce() {
        scenes.tab("tab-visits");
        double before = deepest();
        scenes.click("#begin-visit");
        assertEquals(3, scenes.peg().visits().size());
        assertTrue(scenes.<TextField>find("#reading").isFocused());
        scenes.waitUntil(() -> scenes.desk().visits().checks().size() == 3);
        double begun = deepest();
        double target = scenes.desk()
                .session()
                .answer()
                .shown()
                .orElseThrow()
                .findings()
                .targetMetres();
        double line = plannedDepth();
        scenes.click("#take-check-1");
        assertTrue(scenes.<TextField>find("#reading").isFocused());
        String filled = scenes.<TextField>find("#reading").getText();
        VisitsViewModel.Check check = scenes.desk().visits().checks().get(0);
        double expected = depthAt(check);
        scenes.write(List.of(metres(expected + 0.15)));
        assertEquals(1, scenes.peg().today().readings().size(), filled);
        scenes.waitUntil(() -> scenes.desk().visits().steps().size() == 1);
        double risen = deepest() - begun;
        assertTrue(risen > 0.08 && risen < 0.16, "risen by " + risen + ", before " + before);
        double targetNow = scenes.desk()
                .session()
                .answer()
                .shown()
                .orElseThrow()
                .findings()
                .targetMetres();
        assertEquals(target + risen / 2, targetNow, 0.01);
        assertEquals(line + risen, plannedDepth(), 0.04);
        assertEquals(expected + risen, depthAt(check), 0.03);
        assertTrue(scenes.<Label>find("#level").getText().contains(" higher than on 2 May 2026"));
        scenes.shortcut(KeyCode.Z);
        scenes.shortcut(KeyCode.Z);
        assertEquals(2, scenes.peg().visits().size());
        assertEquals(before, deepest(), 1e-9);
    }

    private static String metres(double depth) {
        return Texts.number(depth, 2) + "m";
    }

    private double depthAt(VisitsViewModel.Check check) {
        return scenes.desk()
                .session()
                .answer()
                .shown()
                .orElseThrow()
                .map()
                .bottom()
                .at(check.place().xMetres(), check.place().yMetres())
                .depthMetres();
    }

    @Test
    void theBoardIsTypedAndWhatCanNotBeReadIsSaidBeside() {
        scenes.tab("tab-visits");
        scenes.click("#board");
        scenes.write(List.of("knee"));
        assertTrue(scenes.<Label>find("#board-error").getText().startsWith("✗ \"knee\" is not a depth"));
        scenes.on(() -> scenes.<TextField>find("#board").clear());
        scenes.write(List.of("15in"));
        assertFalse(scenes.there("#board-error"));
        assertTrue(scenes.<Label>find("#board-echo").getText().startsWith("1 ft 3 in (0.38 m)"));
        assertEquals(0.381, scenes.peg().today().boardToWaterMetres().orElseThrow(), 1e-9);
        assertTrue(scenes.there("#visit-2"));
        assertTrue(scenes.<Node>find("#visit-2").getAccessibleText().contains("board to water 1 ft 3 in"));
    }

    @Test
    void twoVisitsAreComparedInTheTab() throws InputException {
        scenes.on(() -> {
            try {
                scenes.desk().document().begin(VisitedPegs.dugOut());
            } catch (InputException e) {
                throw new AssertionError(e);
            }
        });
        scenes.waitForAnswers();
        scenes.tab("tab-visits");
        assertEquals(3, scenes.<ComboBox<?>>find("#compare-to").getItems().size());
        scenes.on(() ->
                scenes.<ComboBox<?>>find("#compare-from").getSelectionModel().select(0));
        scenes.on(() ->
                scenes.<ComboBox<?>>find("#compare-to").getSelectionModel().select(2));
        scenes.on(() -> scenes.<javafx.scene.control.Button>find("#compare").fire());
        scenes.waitUntil(() -> !scenes.desk().comparison().places().isEmpty());
        assertTrue(scenes.<Label>find("#compare-heading").getText().contains("the bottom changed"));
        scenes.waitUntil(() -> scenes.desk().visits().changes().size() == 1);
        assertEquals(List.of(), scenes.nameless());
    }

    private Path shelf() throws IOException {
        Path pegs = Files.createDirectories(folder.resolve("pegs"));
        for (String name : List.of("tansy-cut-14", "tansy-cut-9", "hobbrel-pond-3")) {
            Files.copy(Path.of("sample-pegs", name + ".peg.json"), pegs.resolve(name + ".peg.json"));
        }
        return pegs;
    }

    private TableView<ShelfViewModel.Row> openShelf(Path pegs) {
        scenes.chosen = Optional.of(pegs);
        scenes.on(scenes.frame()::showShelf);
        scenes.settle();
        scenes.click("#shelf-choose");
        TableView<ShelfViewModel.Row> table = scenes.find("#shelf-pegs");
        scenes.waitUntil(() -> table.getItems().size() == 3);
        scenes.settle();
        return table;
    }

    @Test
    void theShelfFindsWhileTypingAndOpensWithEnter() throws IOException {
        openShelf(shelf());
        scenes.press(KeyCode.ESCAPE);
        assertFalse(scenes.there("#shelf"));
        scenes.on(scenes.frame()::showShelf);
        scenes.settle();
        assertTrue(scenes.<TextField>find("#shelf-search").isFocused());
        assertEquals(List.of(), scenes.nameless());
        scenes.resize(960, 510);
        assertEquals(List.of(), scenes.cutOff());
        scenes.write(List.of("hobbrel"));
        scenes.waitUntil(() -> scenes.peg().name().water().equals("Hobbrel Pond"));
        assertFalse(scenes.there("#shelf"));
        scenes.waitUntil(() -> scenes.desk().session().file().isPresent());
    }

    @Test
    void theShelfDeletesOnlyWhenToldTwice() throws IOException {
        Path pegs = shelf();
        TableView<ShelfViewModel.Row> table = openShelf(pegs);
        scenes.click("#shelf-delete");
        assertTrue(scenes.<Label>find("#shelf-asked").getText().startsWith("Delete Hobbrel Pond, peg 3?"));
        scenes.press(KeyCode.ESCAPE);
        assertFalse(scenes.there("#shelf-asked"));
        assertTrue(scenes.there("#shelf"));
        assertTrue(Files.exists(pegs.resolve("hobbrel-pond-3.peg.json")));
        scenes.click("#shelf-delete");
        scenes.press(KeyCode.ENTER);
        scenes.waitUntil(() -> table.getItems().size() == 2);
        assertTrue(Files.exists(pegs.resolve("deleted/hobbrel-pond-3.peg.json")));
        assertTrue(scenes.<Label>find("#shelf-said").getText().startsWith("Hobbrel Pond, peg 3 is deleted"));
        scenes.press(KeyCode.ESCAPE);
        assertFalse(scenes.there("#shelf"));
    }

    @Test
    void aPegIsRenamedOnTheShelf() throws IOException {
        TableView<ShelfViewModel.Row> table = openShelf(shelf());
        scenes.click("#shelf-rename");
        scenes.on(() -> scenes.<TextField>find("#shelf-number").setText("30"));
        scenes.click("#shelf-rename-yes");
        scenes.waitUntil(() -> table.getItems().get(0).number().equals("30"));
    }
}

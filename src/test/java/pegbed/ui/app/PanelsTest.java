package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.model.Place;
import pegbed.session.VisitedPegs;
import pegbed.wording.PlanCards;

/** What panels and sheets show when something is chosen or done in them. */
@Tag("slow")
class PanelsTest extends InScenes {
    @BeforeEach
    void open() throws Exception {
        scenes.clock = VisitedPegs.MORNING;
        scenes.open(VisitedPegs.dugOut());
        scenes.waitForAnswers();
    }

    private Bounds onScene(Node node) {
        return node.localToScene(node.getLayoutBounds());
    }

    private void choose(String table, int row) {
        TableView<?> rows = scenes.find(table);
        scenes.on(() -> {
            rows.requestFocus();
            rows.getSelectionModel().clearAndSelect(row);
        });
        scenes.settle();
    }

    @Test
    void aChosenRowIsShownOnTheMap() {
        scenes.tab("tab-readings");
        choose(".readings .table-view", 7);
        assertPointsAt(scenes.peg().readings().get(7).place());
        scenes.tab("tab-place");
        choose(".place .table-view", 3);
        assertPointsAt(scenes.peg().banks().near().get(3).place());
        int marks =
                scenes.peg().banks().near().size() + scenes.peg().banks().far().size();
        choose(".place .table-view", marks + 1);
        assertPointsAt(scenes.peg().marks().get(1).place());
    }

    private void assertPointsAt(Place place) {
        Place pointer = scenes.desk().map().pointerProperty().get();
        assertEquals(0, place.distanceTo(pointer), 1e-6);
    }

    @Test
    void aReadingThatIsTypedLeavesThePointerWhereItIs() {
        scenes.tab("tab-readings");
        choose(".readings .table-view", 7);
        scenes.on(() -> scenes.desk().map().point(Place.polar(5, 10)));
        scenes.on(scenes.frame()::focusBox);
        scenes.give(List.of("s3 0 5'1"));
        scenes.waitForAnswers();
        assertPointsAt(Place.polar(5, 10));
    }

    @Test
    void compareScrollsToItsResult() {
        scenes.tab("tab-visits");
        ScrollPane panel = scenes.find("#visits");
        assertEquals(0, panel.getVvalue());
        scenes.on(() -> scenes.desk().comparison().compare());
        scenes.waitUntil(() -> !scenes.desk().comparison().places().isEmpty());
        scenes.waitUntil(() ->
                onScene(scenes.find("#compared")).getMaxY() <= onScene(panel).getMaxY() + 1);
        assertTrue(onScene(scenes.find("#compare-heading")).getMinY()
                >= onScene(panel).getMinY());
    }

    @Test
    void theProfileSaysWhichWayItGoesHoweverManySlopesItMeets() {
        scenes.on(() -> scenes.desk().map().point(Place.polar(9.4, 14)));
        scenes.waitUntil(() -> scenes.<Label>find("#slopes").getText().length() > 100);
        scenes.settle();
        scenes.on(() -> scenes.frame().layout());
        Label title = scenes.find("#profile-title");
        assertTrue(title.getText().startsWith("Bottom 14° right"), title.getText());
        assertTrue(title.getWidth() >= title.prefWidth(-1) - 1, title.getWidth() + " points");
    }

    @Test
    void whatBecameOfTheCardStandsAboveItsButtons() {
        scenes.waitUntil(() -> scenes.desk().plan().planProperty().get().isPresent());
        scenes.resize(1024, 600);
        scenes.shortcut(KeyCode.P);
        scenes.waitUntil(() -> scenes.there("#card-picture"));
        scenes.chosen = Optional.of(folder.resolve("mine.png"));
        scenes.click("#card-save");
        scenes.waitUntil(() -> scenes.<Label>find("#card-message").getText().equals("Saved mine.png."));
        scenes.settle();
        scenes.on(() -> scenes.frame().layout());
        Bounds message = onScene(scenes.find("#card-message"));
        Bounds buttons = onScene(scenes.find("#card-save"));
        assertTrue(message.getMaxY() <= buttons.getMinY() && buttons.getMinY() - message.getMaxY() < 30);
    }

    @Test
    void aTableThatCanBeReadClearsTheErrorOfTheOneBefore() throws Exception {
        Path bad = Files.writeString(folder.resolve("bad.csv"), "nothing,of,this\n1,2,3\n");
        Path good = Files.writeString(folder.resolve("good.csv"), "distance_m,angle_deg,depth_m\n5,3,1.5\n");
        scenes.chosen = Optional.of(bad);
        scenes.on(scenes.frame()::bringIn);
        assertFalse(scenes.<Label>find("#news").getText().isEmpty());
        int before = scenes.peg().readings().size();
        scenes.chosen = Optional.of(good);
        scenes.on(scenes.frame()::bringIn);
        assertTrue(scenes.<Label>find("#import-understood").getText().contains("depth_m: depth in metres"));
        assertEquals(before, scenes.peg().readings().size(), "nothing is taken before it was looked at");
        scenes.click("#import-take");
        assertEquals(before + 1, scenes.peg().readings().size());
        assertEquals("", scenes.<Label>find("#news").getText());
    }

    @Test
    void theChosenPegOfTheShelfStaysChosen() throws Exception {
        Path pegs = Files.createDirectories(folder.resolve("pegs"));
        for (String name : List.of("tansy-cut-14", "tansy-cut-9", "hobbrel-pond-3")) {
            Files.copy(Path.of("sample-pegs", name + ".peg.json"), pegs.resolve(name + ".peg.json"));
        }
        scenes.on(() -> {
            scenes.frame().showShelf();
            scenes.frame().shelf().choose(pegs);
        });
        TableView<?> table = scenes.find("#shelf-pegs");
        scenes.waitUntil(() -> table.getItems().size() == 3);
        choose("#shelf-pegs", 2);
        Files.copy(pegs.resolve("tansy-cut-9.peg.json"), pegs.resolve("another.peg.json"));
        scenes.on(() -> scenes.frame().shelf().look());
        scenes.waitUntil(() -> table.getItems().size() == 4);
        assertEquals(3, table.getSelectionModel().getSelectedIndex(), "the same peg one row lower");
        assertTrue(table.getColumns().stream().anyMatch(column -> "File".equals(column.getText())));
        Files.delete(pegs.resolve("tansy-cut-14.peg.json"));
        scenes.on(() -> scenes.frame().shelf().look());
        scenes.waitUntil(() -> table.getItems().size() == 3);
        assertEquals(0, table.getSelectionModel().getSelectedIndex(), "it is gone");
    }

    @Test
    void theLargeButtonsShowTheLinesToFishToo() {
        scenes.waitUntil(() -> !scenes.desk().plan().lines().isEmpty());
        scenes.on(scenes.frame()::toBankside);
        scenes.click("#bank-lines");
        PlanCards.LineCard first = scenes.desk().plan().lines().get(0);
        Button line = scenes.find("#bank-line-" + first.number());
        assertTrue(line.getText().contains(first.title()) && line.getText().contains(first.where()), line.getText());
        scenes.on(line::fire);
        assertPointsAt(first.place());
        assertTrue(scenes.find("#bank-enter").isDisabled());
        scenes.click("#bank-lines");
        assertTrue(scenes.there("#bank-depth"));
        assertFalse(scenes.there("#bank-line-" + first.number()));
    }
}

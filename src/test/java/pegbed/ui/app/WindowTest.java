package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import javafx.stage.Screen;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.session.Answer;
import pegbed.session.Pegs;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.PegWriter;
import pegbed.ui.bankside.BanksideView;

/** The window itself, with real scenes and without a display. */
@Tag("window")
class WindowTest extends InScenes {
    private static final List<String> TWELVE = List.of(
            "s1 0 3'9",
            "s3 0 5'1",
            "s5 0 5'3",
            "s6 0 4'2",
            "s7 0 2'8",
            "s8-0.5 0 2'2",
            "s1 80L 2'4",
            "s1 80R 2'3",
            "s6 @leaning 4'",
            "s7 @leaning 2'9",
            "s6 @white 4'1 silt",
            "s7 @white+1 2'7 firm tight to the reeds");

    @BeforeEach
    void open() {
        scenes.open(Pegs.bare());
    }

    @Test
    void aWholeVisitIsFoundAsItWasLeft() {
        scenes.write(TWELVE);
        assertEquals(12, scenes.peg().readings().size());
        scenes.shortcut(KeyCode.Z);
        scenes.shortcut(KeyCode.Z);
        scenes.shortcut(KeyCode.Z);
        assertEquals(9, scenes.peg().readings().size());
        scenes.waitForAnswers();
        scenes.on(() -> scenes.<Slider>find("#target").setValue(0.72));
        scenes.waitForAnswers();
        scenes.click("#tool-far-bank");
        scenes.clickMap(new Place(5, 13.1));
        assertEquals(4, scenes.peg().banks().far().size());
        Path file = folder.resolve("nine.peg.json");
        scenes.chosen = Optional.of(file);
        scenes.shortcut(KeyCode.S);
        scenes.waitUntil(() -> Files.exists(file) && !scenes.desk().session().unsaved());
        Peg left = scenes.peg();
        scenes.close();
        scenes = new Scenes(folder.resolve("own"));
        scenes.open(Peg.EMPTY);
        scenes.chosen = Optional.of(file);
        scenes.shortcut(KeyCode.O);
        scenes.waitUntil(() -> scenes.desk().session().file().isPresent());
        scenes.waitForAnswers();
        assertEquals(PegWriter.text(left), PegWriter.text(scenes.peg()));
        scenes.tab("tab-readings");
        assertEquals(9, scenes.<TableView<?>>find("#readings").getItems().size());
        assertEquals(0.72, scenes.<Slider>find("#target").getValue(), 1e-9);
        assertEquals("Tansy Cut, peg 9", scenes.<Label>find("#title").getText());
    }

    @Test
    void twelveReadingsNeedTheirOwnCharactersAndEnterEachAndNothingElse() {
        long keys = scenes.write(TWELVE);
        assertEquals(TWELVE.stream().mapToInt(String::length).sum() + 12, keys);
        assertEquals(12, scenes.peg().readings().size());
        assertTrue(scenes.<TextField>find("#reading").isFocused());
    }

    @Test
    void aBadLineStaysInTheBoxWithItsSentenceBeside() {
        scenes.write(List.of("11 20L knee deep"));
        assertEquals("11 20L knee deep", scenes.<TextField>find("#reading").getText());
        assertTrue(
                scenes.<Label>find("#echo").getText().startsWith("✗ \"knee\" is not a depth"),
                scenes.<Label>find("#echo").getText());
        scenes.press(KeyCode.BACK_SPACE);
        assertTrue(scenes.<TextField>find("#reading").isFocused());
        assertEquals(0, scenes.peg().readings().size());
    }

    @Test
    void aClickOnTheMapFillsTheBoxAndTheDepthIsAllThatIsLeftToType() {
        scenes.give(TWELVE.subList(0, 3));
        scenes.waitForAnswers();
        scenes.clickMap(Place.polar(7, 20));
        String filled = scenes.<TextField>find("#reading").getText();
        assertTrue(filled.matches("s[34][+-]?[0-9.]* [0-9.]+R "), filled);
        assertTrue(scenes.<TextField>find("#reading").isFocused());
        scenes.write(List.of("5'2"));
        Place place = scenes.peg().readings().get(3).place();
        assertEquals(7, place.distanceMetres(), 0.1);
        assertEquals(20, place.angleDegrees(), 1);
    }

    @Test
    void enterInTheEmptyBoxTakesUpTheNextPlaceAndTheDepthIsTypedBehindIt() {
        scenes.give(TWELVE.subList(0, 3));
        scenes.waitForAnswers();
        scenes.waitUntil(() -> scenes.desk().guide().nextProperty().get().isPresent());
        scenes.press(KeyCode.ENTER);
        TextField box = scenes.find("#reading");
        assertEquals(box.getLength(), box.getCaretPosition());
        scenes.write(List.of("4'2"));
        assertEquals(4, scenes.peg().readings().size());
        Place far = Place.polar(6, 10);
        // As the visits' cards do.
        scenes.on(() -> scenes.desk().box().fillFrom(far));
        assertEquals(box.getLength(), box.getCaretPosition());
    }

    @Test
    void pastedTabsAreBlanks() {
        scenes.on(() -> Clipboard.getSystemClipboard().setContent(Map.of(DataFormat.PLAIN_TEXT, "11\t20L\t4'6\n")));
        scenes.shortcut(KeyCode.V);
        assertEquals("11 20L 4'6", scenes.<TextField>find("#reading").getText());
        scenes.on(() -> Clipboard.getSystemClipboard()
                .setContent(Map.of(DataFormat.PLAIN_TEXT, "11\t20L\t4'6\n11\t10L\t4'8\n")));
        scenes.shortcut(KeyCode.V);
        assertEquals(2, scenes.peg().readings().size());
    }

    @Test
    void enterInANewPegGoesToTheNextFieldAndAWrongOneIsMarked() {
        scenes.on(() -> scenes.frame().newPeg());
        scenes.settle();
        scenes.write(List.of("Mallowfield Pools", "Tansy Cut", "12"));
        assertEquals("Tansy Cut", scenes.<TextField>find("#new-water").getText());
        assertTrue(scenes.<TextField>find("#new-joints").isFocused());
        scenes.on(() -> scenes.<TextField>find("#far-out").setText("over there"));
        scenes.click("#begin-peg");
        TextField wrong = scenes.find("#far-out");
        PseudoClass marked = PseudoClass.getPseudoClass("wrong");
        assertTrue(wrong.isFocused() && wrong.getPseudoClassStates().contains(marked));
        assertFalse(scenes.<TextField>find("#near-left").getPseudoClassStates().contains(marked));
        scenes.on(() -> wrong.setText("12 0"));
        scenes.press(KeyCode.ENTER);
        assertTrue(scenes.<TextField>find("#far-right").isFocused());
        scenes.press(KeyCode.ENTER);
        scenes.waitUntil(() -> "12".equals(scenes.peg().name().number()));
    }

    @Test
    void upBringsBackTheLineBefore() {
        scenes.give(TWELVE.subList(0, 2));
        scenes.press(KeyCode.UP);
        assertEquals("s3 0 5'1", scenes.<TextField>find("#reading").getText());
    }

    @Test
    void largeButtonsAddAReadingWithoutAKeyboard() {
        scenes.click("#bankside");
        for (String button : List.of(
                "#bank-section-far-more",
                "#bank-section-far-more",
                "#bank-direction-far-less",
                "#bank-depth-far-more",
                "#bank-depth-more",
                "#bank-bottom-more",
                "#bank-enter")) {
            scenes.click(button);
        }
        assertEquals(1, scenes.peg().readings().size());
        assertEquals(
                scenes.<Label>find("#bank-direction").getText(),
                scenes.peg().readings().get(0).typed().direction());
        assertEquals(41 * 0.0254, scenes.peg().readings().get(0).depthMetres(), 1e-9);
        assertTrue(scenes.<Label>find("#bank-said").getText().startsWith("Added: "));
        scenes.click("#bank-back");
        assertTrue(scenes.<TextField>find("#reading").isFocused());
    }

    @Test
    void aDepthIsWholeOnTheLargeWheelsAtEverySize() {
        scenes.click("#bankside");
        for (double[] size : new double[][] {{1366, 740}, {1024, 600}, {960, 510}, {683, 384}, {800, 1280}}) {
            scenes.resize(size[0], size[1]);
            Label depth = scenes.find("#bank-depth");
            // From 3 ft on: 10 and 11 inches, and two figures of feet.
            for (int inch = 0; inch < 12; inch++) {
                scenes.on(() -> scenes.<Button>find("#bank-depth-more").fire());
                assertWhole(depth, size);
            }
            scenes.on(() -> IntStream.range(0, 21)
                    .forEach(foot -> scenes.<Button>find("#bank-depth-far-more").fire()));
            scenes.on(() -> scenes.<Button>find("#bank-depth-less").fire());
            assertWhole(depth, size);
            Button most = scenes.find("#bank-depth-far-more");
            assertTrue(most.localToScene(most.getLayoutBounds()).getMaxX() <= size[0]);
            scenes.on(() -> IntStream.range(0, 24)
                    .forEach(foot -> scenes.<Button>find("#bank-depth-far-less").fire()));
            scenes.on(() -> scenes.<Button>find("#bank-depth-more").fire());
        }
    }

    private void assertWhole(Label label, double[] size) {
        scenes.settle();
        scenes.on(() -> label.getScene().getRoot().layout());
        String seen = ((Text) label.lookup(".text")).getText();
        assertEquals(label.getText(), seen, size[0] + " by " + size[1]);
    }

    @Test
    void everyLargeButtonIsTwelveMillimetresAtLeast() {
        scenes.click("#bankside");
        List<Button> buttons = scenes.all(".large");
        assertEquals(22, buttons.size());
        for (Button button : buttons) {
            assertTrue(
                    button.getWidth() >= BanksideView.MIN_POINTS && button.getHeight() >= BanksideView.MIN_POINTS,
                    button.getId() + " is " + button.getWidth() + " by " + button.getHeight());
            assertTrue(button.localToScene(button.getLayoutBounds()).getMaxX()
                    <= scenes.scene().getWidth());
            assertTrue(button.localToScene(button.getLayoutBounds()).getMaxY()
                    <= scenes.scene().getHeight());
        }
    }

    @Test
    void closingWithUnsavedEditsAsks() {
        scenes.give(TWELVE.subList(0, 1));
        scenes.askToClose();
        assertTrue(scenes.there("#ask-unsaved"));
        scenes.click("#unsaved-stay");
        assertFalse(scenes.there("#ask-unsaved"));
        assertTrue(scenes.isShowing());
        Path file = folder.resolve("saved.peg.json");
        scenes.chosen = Optional.of(file);
        scenes.askToClose();
        scenes.click("#unsaved-save");
        scenes.waitUntil(() -> !scenes.isShowing());
        assertTrue(Files.exists(file));
    }

    @Test
    void givingEditsUpClosesWithoutAFile() {
        scenes.give(TWELVE.subList(0, 1));
        scenes.askToClose();
        scenes.click("#unsaved-drop");
        scenes.waitUntil(() -> !scenes.isShowing());
        assertEquals(Optional.empty(), scenes.desk().session().file());
    }

    @Test
    void theCardIsLookedAtAndSavedAsTheKindThatItsNameAsksFor() throws Exception {
        scenes.give(TWELVE);
        scenes.waitForAnswers();
        scenes.waitUntil(() -> scenes.desk().plan().planProperty().get().isPresent());
        scenes.shortcut(KeyCode.P);
        scenes.waitUntil(() -> scenes.there("#card-picture"));
        Object sheet = scenes.find("#card-picture");
        scenes.shortcut(KeyCode.P);
        assertSame(sheet, scenes.find("#card-picture"), "a key that is held down opens no second card");
        Path card = folder.resolve("card.pdf");
        scenes.chosen = Optional.of(card);
        scenes.click("#card-save");
        scenes.waitUntil(() -> scenes.<Label>find("#card-message").getText().equals("Saved card.pdf."));
        assertEquals(
                "%PDF",
                Files.readString(card, java.nio.charset.StandardCharsets.ISO_8859_1)
                        .substring(0, 4));
        scenes.chosen = Optional.of(folder.resolve("card.doc"));
        scenes.click("#card-save");
        scenes.waitUntil(() -> scenes.<Label>find("#card-message").getText().startsWith("card.doc must end in .pdf"));
        assertFalse(Files.exists(folder.resolve("card.doc")));
        scenes.click("#card-close");
        assertFalse(scenes.there("#card-picture"));
    }

    @Test
    void closingWithoutEditsDoesNotAsk() {
        scenes.askToClose();
        scenes.waitUntil(() -> !scenes.isShowing());
    }

    @Test
    void anotherProgramsSaveIsSaidInTheWindow() throws Exception {
        Path file = folder.resolve("nine.peg.json");
        scenes.chosen = Optional.of(file);
        scenes.shortcut(KeyCode.S);
        scenes.waitUntil(
                () -> Files.exists(file) && scenes.desk().session().file().isPresent());
        PegFile.save(file, Pegs.plumbed(3), Optional.empty());
        scenes.on(() -> scenes.desk().session().lookForOtherChanges());
        scenes.waitUntil(() -> scenes.<Label>find("#news").getText().startsWith("Another window or program"));
        scenes.click("#open-again");
        scenes.waitUntil(() -> scenes.peg().readings().size() == 3);
    }

    @Test
    void theMapShowsDeepWaterDarkerThanShallowAndLandAsLand() {
        scenes.give(TWELVE);
        scenes.waitForAnswers();
        scenes.waitUntil(() -> scenes.frame().main().map().settled());
        double deep = scenes.lightness(Place.polar(6.2, 3));
        double ledge = scenes.lightness(Place.polar(12.3, -4));
        double land = scenes.lightness(new Place(0, 14.2));
        assertTrue(deep < ledge - 0.1, "deep " + deep + ", ledge " + ledge);
        assertTrue(land > deep, "land " + land + ", deep " + deep);
    }

    @Test
    void theLinesTabShowsLinesOnTheMapInsteadOfFlatSpots() {
        scenes.give(TWELVE);
        scenes.waitForAnswers();
        scenes.waitUntil(() -> !scenes.desk().plan().lines().isEmpty());
        scenes.waitUntil(() -> scenes.frame().main().map().settled());
        int[] before = scenes.mapPixels();
        scenes.on(() -> scenes.<TabPane>find("#tabs").getSelectionModel().select(1));
        scenes.waitUntil(() -> scenes.frame().main().map().settled() && differing(before, scenes.mapPixels()) > 200);
    }

    private static long differing(int[] before, int[] after) {
        return IntStream.range(0, before.length)
                .filter(i -> before[i] != after[i])
                .count();
    }

    @Test
    void theMapFollowsAMarkThatIsDragged() {
        scenes.give(TWELVE);
        scenes.waitForAnswers();
        scenes.click("#tool-mark");
        scenes.dragMap(new Place(4, 13.1), new Place(5.5, 13.3));
        assertEquals(5.5, scenes.peg().marks().get(1).place().xMetres(), 0.2);
        scenes.shortcut(KeyCode.Z);
        assertEquals(4, scenes.peg().marks().get(1).place().xMetres(), 1e-9);
    }

    @Test
    void aDrawnLineTurnsTheProfile() {
        scenes.give(TWELVE);
        scenes.waitForAnswers();
        scenes.click("#tool-course");
        scenes.dragMap(new Place(-4, 6), new Place(4, 6));
        assertTrue(scenes.<Label>find("#profile-title").getText().startsWith("Bottom along the line from "));
        scenes.click("#follow-pointer");
        assertTrue(
                scenes.<Label>find("#profile-title").getText().matches("Bottom (straight out|\\d+° (left|right)) .*"));
    }

    @Test
    void theMapWorksByKeyboard() {
        scenes.give(TWELVE);
        scenes.waitForAnswers();
        scenes.on(() -> scenes.frame().main().map().requestFocus());
        scenes.on(() -> scenes.desk().map().point(Place.polar(6, 0)));
        scenes.press(KeyCode.RIGHT);
        scenes.press(KeyCode.UP);
        assertEquals(6.25, scenes.desk().map().pointerProperty().get().distanceMetres(), 1e-9);
        assertEquals(2, scenes.desk().map().pointerProperty().get().angleDegrees(), 1e-9);
        scenes.press(KeyCode.ENTER);
        assertEquals("s3+0.75 2R ", scenes.<TextField>find("#reading").getText());
        assertTrue(scenes.<TextField>find("#reading").isFocused());
    }

    @Test
    void aNewPegIsBegunFromItsSheet() {
        scenes.shortcut(KeyCode.N);
        scenes.on(() -> {
            scenes.<TextField>find("#new-water").setText("Hobbrel Pond");
            scenes.<TextField>find("#new-number").setText("3");
            scenes.<TextField>find("#near-left").setText("over there");
        });
        scenes.click("#begin-peg");
        assertTrue(scenes.<Label>find("#new-error").getText().startsWith("\"over\" is not a distance"));
        scenes.on(() -> scenes.<TextField>find("#near-left").setText("4 85L"));
        scenes.click("#has-far");
        scenes.click("#begin-peg");
        scenes.waitUntil(() -> scenes.peg().name().title().equals("Hobbrel Pond, peg 3"));
        assertEquals(2, scenes.peg().banks().near().size());
        assertEquals(0, scenes.peg().banks().far().size());
        scenes.write(List.of("6 0 4'"));
        assertEquals(1, scenes.peg().readings().size());
    }

    @Test
    void aPegWithoutReadingsShowsItsPlaceAndWhatIsMissing() {
        assertTrue(scenes.<Label>find("#state").getText().startsWith("No reading yet"));
        scenes.waitUntil(() -> scenes.frame().main().map().settled());
        double land = scenes.lightness(new Place(0, 14.2));
        double water = scenes.lightness(Place.polar(6, 0));
        assertTrue(Math.abs(land - water) > 0.02, "land " + land + ", water " + water);
    }

    @Test
    void theHintAndTheCautionsStandOnTheFirstStartAndNeverAgain() {
        scenes.close();
        scenes = new Scenes(folder.resolve("fresh"));
        scenes.openFresh();
        assertTrue(scenes.there("#cautions"));
        scenes.click("#cautions-read");
        assertTrue(scenes.there("#hint"));
        scenes.size(683, 384);
        assertTrue(width(".hint-words") > 0.8 * width("#hint"), "beside the buttons");
        scenes.size(1366, 768);
        assertTrue(width(".hint-words") < width("#hint") - width("#hint-next"), "above the buttons");
        scenes.click("#hint-next");
        scenes.click("#hint-next");
        scenes.click("#hint-close");
        scenes.close();
        scenes = new Scenes(folder.resolve("fresh"));
        scenes.openFresh();
        assertFalse(scenes.there("#hint"));
        assertFalse(scenes.there("#cautions"));
        scenes.click("#cautions-open");
        assertTrue(scenes.there("#cautions"));
    }

    private double width(String query) {
        return scenes.<Region>find(query).getWidth();
    }

    @Test
    void everyControlHasANameForScreenReaders() {
        scenes.give(TWELVE);
        scenes.waitForAnswers();
        TabPane tabs = scenes.find("#tabs");
        for (int i = 0; i < tabs.getTabs().size(); i++) {
            int index = i;
            scenes.on(() -> tabs.getSelectionModel().select(index));
            assertEquals(List.of(), scenes.nameless());
        }
        scenes.click("#bankside");
        assertEquals(List.of(), scenes.nameless());
    }

    @Test
    void nothingIsCutOffOnASmallScreen() {
        scenes.give(TWELVE);
        scenes.waitForAnswers();
        for (double[] size : new double[][] {{1366, 740}, {960, 510}}) {
            scenes.resize(size[0], size[1]);
            assertEquals(List.of(), scenes.cutOff(), size[0] + " by " + size[1]);
        }
    }

    @Test
    void theWindowHasASizeOfItsOwnWhateverItWasShownAt() {
        double screenHeight = Screen.getPrimary().getVisualBounds().getHeight();
        assertEquals(Math.min(740, screenHeight), scenes.heightWhenShown(), 1);
        assertEquals(800, scenes.stage().getMinWidth());
        assertEquals(Math.min(600, screenHeight), scenes.stage().getMinHeight());
    }

    @Test
    void everyTabCanBeReachedOnASmallScreen() {
        scenes.resize(960, 510);
        TabPane tabs = scenes.find("#tabs");
        scenes.waitUntil(() -> tabs.getTabs().stream()
                .map(tab -> tabs.lookup("#" + tab.getId()))
                .allMatch(
                        header -> header.localToScene(header.getLayoutBounds()).getMaxX() <= 960));
    }

    @Test
    void answersThatAreOldAreMarkedAsOld() {
        scenes.give(TWELVE);
        scenes.waitForAnswers();
        scenes.on(
                () -> scenes.desk().place().change(scenes.desk().place().rows().get(1), "16 0"));
        scenes.waitUntil(() -> scenes.desk().session().answer() instanceof Answer.Failed);
        assertTrue(scenes.<Label>find("#state").getText().endsWith("The map is the one before."));
    }

    @Test
    void aClosedWindowIsLetGo() {
        scenes.give(TWELVE);
        scenes.waitForAnswers();
        WeakReference<Object> window = new WeakReference<>(scenes.frame());
        // The toolkit itself keeps hold of the last window that had the focus.
        for (int later = 0; later < 2; later++) {
            scenes.close();
            scenes = new Scenes(folder.resolve("own"));
            scenes.open(Pegs.bare());
            scenes.give(TWELVE.subList(0, 1));
        }
        scenes.waitUntil(() -> {
            System.gc();
            return window.refersTo(null);
        });
    }
}

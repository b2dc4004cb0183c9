package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.storage.peg.PegWriter;

/** What holds for every sheet, in a real scene. */
@Tag("slow")
class SheetsTest extends InScenes {
    /** All sheets that a person can ask for, by their ids. */
    private static final Map<String, Consumer<WindowFrame>> SHEETS = sheets();

    private static Map<String, Consumer<WindowFrame>> sheets() {
        Map<String, Consumer<WindowFrame>> sheets = new LinkedHashMap<>();
        sheets.put("card", WindowFrame::showCard);
        sheets.put("rigs", WindowFrame::showRigs);
        sheets.put("shelf", WindowFrame::showShelf);
        sheets.put("new-peg", WindowFrame::newPeg);
        sheets.put("cautions", WindowFrame::showCautions);
        return sheets;
    }

    @BeforeEach
    void open() throws Exception {
        scenes.open(SamplePegFiles.first());
        scenes.waitForAnswers();
        scenes.waitUntil(() -> scenes.desk().plan().planProperty().get().isPresent());
        Path file = folder.resolve("nine.peg.json");
        scenes.chosen = Optional.of(file);
        scenes.shortcut(KeyCode.S);
        scenes.waitUntil(() -> Files.exists(file) && !scenes.desk().session().unsaved());
    }

    private Node theOnlySheet() {
        List<Node> open = scenes.<Sheets>find(".sheets").getChildren();
        assertEquals(1, open.size());
        return open.get(0);
    }

    @Test
    void noSecondSheetOpensWhileOneIsOpen() {
        for (Map.Entry<String, Consumer<WindowFrame>> first : SHEETS.entrySet()) {
            scenes.on(() -> first.getValue().accept(scenes.frame()));
            Node sheet = theOnlySheet();
            assertEquals(first.getKey(), sheet.getId());
            for (Consumer<WindowFrame> second : SHEETS.values()) {
                scenes.on(() -> second.accept(scenes.frame()));
                assertSame(sheet, theOnlySheet());
            }
            for (KeyCode key : new KeyCode[] {KeyCode.P, KeyCode.R, KeyCode.N, KeyCode.O}) {
                scenes.shortcut(key);
                assertSame(sheet, theOnlySheet(), () -> "Ctrl+" + key + " on " + sheet.getId());
            }
            scenes.press(KeyCode.ESCAPE);
            assertEquals(List.of(), scenes.<Sheets>find(".sheets").getChildren());
            assertTrue(scenes.<TextField>find("#reading").isFocused());
        }
    }

    @Test
    void theQuestionAboutEditsIsNotPushedAsideEither() {
        scenes.give(List.of("s3 0 5'1"));
        scenes.on(scenes.frame()::newPeg);
        Node question = theOnlySheet();
        assertEquals("ask-unsaved", question.getId());
        for (Consumer<WindowFrame> second : SHEETS.values()) {
            scenes.on(() -> second.accept(scenes.frame()));
            assertSame(question, theOnlySheet());
        }
    }

    @Test
    void theWindowsOwnCloseButtonAsksAboutEditsUnderAnySheet() {
        scenes.give(List.of("s3 0 5'1"));
        for (String id : List.of("card", "rigs", "shelf", "cautions")) {
            scenes.on(() -> SHEETS.get(id).accept(scenes.frame()));
            assertEquals(id, theOnlySheet().getId());
            scenes.askToClose();
            assertEquals("ask-unsaved", theOnlySheet().getId());
            scenes.click("#unsaved-stay");
            assertTrue(scenes.isShowing());
        }
    }

    @Test
    void theKeysOfTheMenuDoNothingUnderASheet() {
        String before = PegWriter.text(scenes.peg());
        scenes.on(scenes.frame()::showCautions);
        scenes.<MenuButton>find("#peg-menu").getItems().stream()
                .filter(item -> item.getOnAction() != null)
                .forEach(item -> assertTrue(item.isDisable(), item.getText()));
        scenes.chosen = Optional.of(Path.of("sample-pegs", "tansy-cut-14.peg.json"));
        scenes.shortcut(KeyCode.O);
        assertEquals(before, PegWriter.text(scenes.peg()));
        scenes.press(KeyCode.ESCAPE);
        scenes.<MenuButton>find("#peg-menu").getItems().stream()
                .filter(item -> item.getOnAction() != null)
                .forEach(item -> assertFalse(item.isDisable(), item.getText()));
    }
}

package pegbed.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.model.RigTemplate;
import pegbed.session.Pegs;
import pegbed.ui.app.InScenes;

/** The sheet on which rigs are changed, in a real scene. */
@Tag("slow")
class RigsSheetTest extends InScenes {
    @BeforeEach
    void open() {
        scenes.open(Pegs.bare());
        scenes.shortcut(KeyCode.R);
        scenes.waitUntil(() -> scenes.there("#rigs"));
    }

    private List<RigTemplate> templates() {
        return scenes.peg().wishes().rigs().templates();
    }

    private void type(String field, String words) {
        scenes.on(() -> {
            scenes.<TextField>find(field).requestFocus();
            scenes.<TextField>find(field).selectAll();
        });
        scenes.write(List.of(words));
    }

    @Test
    void aHookLengthIsChangedUsedAndUndone() {
        type("#rig-2-hook-length", "a bit");
        assertEquals("a bit", scenes.<TextField>find("#rig-2-hook-length").getText());
        assertEquals(
                "The hook length is a length like 4in; \"a bit\" is none.",
                scenes.<Label>find("#rig-2-error").getText());
        scenes.click("#rigs-use");
        assertTrue(scenes.<TextField>find("#rig-2-hook-length").isFocused());
        assertEquals(List.of(), templates());
        type("#rig-2-hook-length", "6in");
        assertFalse(scenes.there("#rig-2-error"));
        scenes.click("#rigs-use");
        assertEquals(0.1524, templates().get(1).hookLengthMetres(), 1e-12);
        scenes.press(KeyCode.ESCAPE);
        assertFalse(scenes.there("#rigs"));
        scenes.shortcut(KeyCode.Z);
        assertEquals(List.of(), templates());
    }

    @Test
    void everyControlIsNamedAndNothingIsCutOff() {
        assertEquals(List.of(), scenes.nameless());
        scenes.resize(1366, 740);
        assertEquals(List.of(), scenes.cutOff());
    }

    @Test
    void aRowIsAddedAndTakenAwayFromTheKeyboard() {
        scenes.on(() -> scenes.find("#rigs-add").requestFocus());
        scenes.press(KeyCode.SPACE);
        assertTrue(scenes.<TextField>find("#rig-8-name").isFocused());
        scenes.write(List.of("winter"));
        scenes.on(() -> scenes.find("#rig-1-delete").requestFocus());
        scenes.press(KeyCode.SPACE);
        assertTrue(scenes.<TextField>find("#rig-1-name").isFocused());
        assertEquals("winter", scenes.<TextField>find("#rig-7-name").getText());
    }
}

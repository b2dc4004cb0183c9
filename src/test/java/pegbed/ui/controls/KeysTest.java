package pegbed.ui.controls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;

class KeysTest {
    @Test
    void thePageOfTheWindowHasTheTableOfKeys() throws IOException {
        List<String> page = Files.readAllLines(Path.of("docs", "window.md"));
        int begin = page.indexOf(Keys.table().get(0));
        assertTrue(begin >= 0, () -> "docs/window.md lacks\n" + String.join("\n", Keys.table()));
        int end = begin;
        while (end < page.size() && page.get(end).startsWith("|")) {
            end++;
        }
        assertEquals(String.join("\n", Keys.table()), String.join("\n", page.subList(begin, end)));
    }

    private static KeyEvent press(KeyCode code, boolean shift, boolean control, boolean alt) {
        return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, control, alt, false);
    }

    @Test
    void aKeyMeansWhatItsTableSaysWhereItIsPressed() {
        assertEquals(
                Optional.of(Keys.OLDER_LINE), Keys.pressed(Keys.Where.BOX, press(KeyCode.UP, false, false, false)));
        assertEquals(Optional.of(Keys.POINT_OUT), Keys.pressed(Keys.Where.MAP, press(KeyCode.UP, false, false, false)));
        assertEquals(Optional.of(Keys.PAN_OUT), Keys.pressed(Keys.Where.MAP, press(KeyCode.UP, false, true, false)));
        assertEquals(Optional.empty(), Keys.pressed(Keys.Where.MAP, press(KeyCode.UP, false, false, true)));
        assertEquals(Optional.empty(), Keys.pressed(Keys.Where.WINDOW, press(KeyCode.UP, false, false, false)));
    }

    @Test
    void plusIsPlusWithShiftAndWithout() {
        assertEquals(Optional.of(Keys.CLOSER), Keys.pressed(Keys.Where.MAP, press(KeyCode.EQUALS, true, false, false)));
        assertEquals(Optional.of(Keys.CLOSER), Keys.pressed(Keys.Where.MAP, press(KeyCode.PLUS, false, false, false)));
    }
}

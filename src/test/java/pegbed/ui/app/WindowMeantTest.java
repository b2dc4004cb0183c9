package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WindowMeantTest {
    @Test
    void aPegFileAloneOpensTheWindowAndACommandDoesNot() {
        assertTrue(Window.isMeant());
        assertTrue(Window.isMeant("sample-pegs/tansy-cut-9.peg.json"));
        assertFalse(Window.isMeant("lines", "sample-pegs/tansy-cut-9.peg.json"));
        assertFalse(Window.isMeant("--help"));
        assertFalse(Window.isMeant("notes.txt"));
    }
}

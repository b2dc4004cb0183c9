package pegbed.report.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

class SingleLineTest {
    @Test
    void whatWasTypedBecomesOneLine() {
        assertEquals("<script> \"a\" & 'b'", SingleLine.of("<script>\n\"a\" & 'b'\u0000"));
        assertEquals("עץ", SingleLine.of("\u202Eעץ\u202C"), "Signs that turn the writing are taken out.");
        assertEquals("abc…", SingleLine.of("abcdefgh", 4));
        assertEquals("abcd", SingleLine.of("abcd", 4));
        assertFalse(SingleLine.of("x".repeat(100_000)).length() > 200);
        assertEquals("", SingleLine.of("\uD800"), "Half a sign is no sign.");
    }
}

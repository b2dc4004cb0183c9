package pegbed.report.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import pegbed.model.Units;

class FiguresTest {
    @Test
    void feetAndInches() {
        assertEquals("4'6", Figures.depth(54 * 0.0254, Units.Depth.FEET));
        assertEquals("5'0", Figures.depth(60 * 0.0254, Units.Depth.FEET));
        assertEquals("5'0", Figures.depth(59.6 * 0.0254, Units.Depth.FEET), "Twelve inches are a foot.");
        assertEquals("9\"", Figures.depth(9 * 0.0254, Units.Depth.FEET));
        assertEquals("0\"", Figures.depth(0, Units.Depth.FEET));
        assertEquals("-2\"", Figures.depth(-2 * 0.0254, Units.Depth.FEET));
    }

    @Test
    void metric() {
        assertEquals("137", Figures.depth(1.3721, Units.Depth.CENTIMETRES));
        assertEquals("1.37", Figures.depth(1.3721, Units.Depth.METRES));
    }

    @Test
    void whatWasTypedBecomesOneLine() {
        assertEquals("<script> \"a\" & 'b'", Figures.oneLine("<script>\n\"a\" & 'b'\u0000"));
        assertEquals("עץ", Figures.oneLine("\u202Eעץ\u202C"), "Signs that turn the writing are taken out.");
        assertEquals("abc…", Figures.oneLine("abcdefgh", 4));
        assertEquals("abcd", Figures.oneLine("abcd", 4));
        assertFalse(Figures.oneLine("x".repeat(100_000)).length() > 200);
        assertEquals("", Figures.oneLine("\uD800"), "Half a sign is no sign.");
    }
}

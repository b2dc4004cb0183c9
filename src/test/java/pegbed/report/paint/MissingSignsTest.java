package pegbed.report.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pegbed.report.drawing.Lettering;

/** A sign that no face has is written by its name. */
class MissingSignsTest {
    private static final String FISH = "\uD83D\uDC1F";

    @Test
    void signsAreNamed() {
        assertEquals("Pool [fish] 9", MissingSigns.named("Pool " + FISH + " 9", sign -> sign < 0x250));
        assertEquals("[CJK U+9C7C][CJK U+6C60]", MissingSigns.named("魚池".replace('魚', '鱼'), sign -> sign < 0x250));
        assertEquals("[hiragana letter ka]", MissingSigns.named("か", sign -> sign < 0x250));
        assertEquals("ü é", MissingSigns.named("ü é", sign -> sign < 0x250));
        assertEquals("[fish]", MissingSigns.named(FISH + "\uFE0F\u200D", sign -> sign < 0x250));
    }

    @Test
    void aCardNamesThem() {
        PdfFonts fonts = new PdfFonts();
        Lettering usual = new Lettering(10, false, false);
        assertEquals("[CJK U+6C60] 9", fonts.shown("池 9", usual));
        assertTrue(fonts.widthPoints("池", usual) > fonts.widthPoints("U+6C60", usual));
    }
}

package pegbed.report.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.report.drawing.Lettering;

/** The faces that a PDF carries. */
class PdfFontsTest {
    private static final PdfFonts FONTS = new PdfFonts();
    private static final Lettering PLAIN = Lettering.plain(10);

    @ParameterizedTest
    @ValueSource(strings = {"5 ft 6½ in", "Mallowfield", "Żółć", "левый столб", "4×12, 0.20 g", ""})
    void widthsAreThoseOfThePdf(String words) throws IOException {
        try (PDDocument document = new PDDocument()) {
            for (Lettering lettering : new Lettering[] {PLAIN, Lettering.bold(12)}) {
                var face = PDType0Font.load(document, FONTS.face(lettering), true);
                assertEquals(
                        face.getStringWidth(words) / 1000 * lettering.sizePoints(),
                        FONTS.widthPoints(words, lettering),
                        0.02);
            }
        }
    }

    @Test
    void aSignWithoutALetterBecomesABox() {
        assertEquals("post [CJK U+6C34]", FONTS.shown("post \u6C34", PLAIN));
        assertEquals("a[fish]b", FONTS.shown("a\uD83D\uDC1Fb", PLAIN));
        assertEquals("[U+D83D]", FONTS.shown("\uD83D", PLAIN));
    }

    @Test
    void wordsFromRightToLeftAreTurnedRound() {
        assertEquals("post \u05D2\u05D1\u05D0.", FONTS.shown("post \u05D0\u05D1\u05D2.", PLAIN));
        assertEquals("\u05D1\u05D0", FONTS.shown("\u05D0\u05D1", PLAIN));
        assertEquals("(\u05D1) \u05D0", FONTS.shown("\u05D0 (\u05D1)", PLAIN));
    }

    @Test
    void outlinesAreAsWideAsTheWords() {
        var bounds = FONTS.outline("HHH", PLAIN).getBounds2D();
        assertEquals(FONTS.widthPoints("HHH", PLAIN), bounds.getMaxX() + bounds.getMinX(), 0.3);
        assertEquals(Lettering.CAP_HEIGHT * 10, bounds.getMaxY(), 0.1);
        assertFalse(bounds.isEmpty());
    }

    @Test
    void mapsHaveTheSameLetters() {
        for (boolean bold : new boolean[] {false, true}) {
            for (boolean italic : new boolean[] {false, true}) {
                Lettering lettering = new Lettering(9.5, bold, italic);
                for (String words : new String[] {"5'6", "s6", "1 in 12 \u00B1 \u00BD", "\u0416\u03A9 \u2190"}) {
                    assertEquals(
                            FONTS.widthPoints(words, lettering),
                            LetterOutlines.MEASURE.widthPoints(words, lettering),
                            1e-9,
                            words);
                }
            }
        }
    }
}

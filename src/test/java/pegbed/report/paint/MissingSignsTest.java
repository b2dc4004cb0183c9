package pegbed.report.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.junit.jupiter.api.Test;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.Themes;
import pegbed.report.drawing.View;

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
        String ofNoFace = "\uE123";
        assertEquals(Optional.empty(), fonts.ofSystem(ofNoFace, usual));
        assertEquals(fonts.widthPoints("[U+E123]", usual), fonts.widthPoints(ofNoFace, usual), 1e-9);
    }

    @Test
    void aCardTakesTheSystemsFaceWhereThatHasThem() throws IOException {
        PdfFonts fonts = new PdfFonts();
        Lettering usual = new Lettering(10, false, false);
        assertEquals(Optional.empty(), fonts.ofSystem("Pool 9", usual));
        assumeTrue(LetterOutlines.hasAll("池", usual), "no face of this system has ideographs");
        assertTrue(fonts.widthPoints("池", usual) < fonts.widthPoints("[CJK U+6C60]", usual) / 3);
        Text name = new Text(Role.TITLE, Layer.FURNITURE, Frame.SHEET, 20, 20, Text.Align.START, 0, usual, "池 9");
        Drawing drawing = new Drawing(List.of(name), new View(100, 50, 1, 0, 0));
        try (PDDocument read = Loader.loadPDF(PdfWriter.write(List.of(drawing), Themes.LIGHT, "Peg", fonts))) {
            PDResources resources = read.getPage(0).getResources();
            COSName only = resources.getPropertiesNames().iterator().next();
            assertEquals("池 9", resources.getProperties(only).getCOSObject().getString(COSName.ACTUAL_TEXT));
        }
    }
}

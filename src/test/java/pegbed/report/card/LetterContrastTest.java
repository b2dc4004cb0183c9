package pegbed.report.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbed.report.drawing.Colour;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Ink;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Pen;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.View;
import pegbed.report.paint.PngWriter;

/** The measure itself: known colours, and halos that count as far as they reach. */
class LetterContrastTest {
    private static final View VIEW = new View(100, 40, 1, 0, 40);
    private static final Text TEXT = new Text(
            Role.READING_FIGURE, Layer.READINGS, Frame.SHEET, 50, 25, Text.Align.MIDDLE, 0, Lettering.bold(16), "5'6");

    /** Letters, their halo if any, and the sheet that they stand on. */
    private record OnSheet(Ink letters, Colour sheet) implements Theme {
        @Override
        public Colour fill(Role role, int step, int steps) {
            return sheet;
        }

        @Override
        public Pen pen(Role role) {
            return Pen.of(sheet, 1);
        }

        @Override
        public Ink ink(Role role) {
            return letters;
        }
    }

    private static double contrast(Colour letters, Optional<Pen> halo, Colour sheet) {
        Theme theme = new OnSheet(new Ink(letters, halo), sheet);
        Drawing drawing = new Drawing(List.of(TEXT), VIEW);
        return LetterContrast.of(TEXT, VIEW, PngWriter.image(drawing, theme, 2), 2);
    }

    /** WCAG 2.2: black on white is 21 to 1; #767676 on white is 4.54 (from memory of its understanding document). */
    @Test
    void knownContrasts() {
        Colour white = Colour.of(0xffffff);
        assertEquals(21, contrast(Colour.of(0x000000), Optional.empty(), white), 0.01);
        assertEquals(4.54, contrast(Colour.of(0x767676), Optional.empty(), white), 0.01);
        assertEquals(1, contrast(white, Optional.empty(), white), 0.01);
    }

    @Test
    void aHaloCountsWhereItIsPaintedAndAsMuchAsItCovers() {
        Colour black = Colour.of(0x000000);
        Colour deep = Colour.of(0x2a4a80);
        Colour paper = Colour.of(0xffffff);
        double bare = contrast(black, Optional.empty(), deep);
        double thin = contrast(black, Optional.of(Pen.of(paper, 0.8)), deep);
        double faint = contrast(black, Optional.of(Pen.of(paper.withOpacity(0.3), 3)), deep);
        double full = contrast(black, Optional.of(Pen.of(paper, 3)), deep);
        assertTrue(bare < 3, "bare " + bare);
        assertEquals(bare, thin, 0.3, "A halo that ends short of a point leaves the ground beside it.");
        assertTrue(faint > bare + 0.5 && faint < 8, "faint " + faint);
        assertEquals(21, full, 0.2);
    }
}

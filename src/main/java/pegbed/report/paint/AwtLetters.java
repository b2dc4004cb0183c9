package pegbed.report.paint;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.TextMeasure;

/** The sans-serif letters of the Java runtime; works without a screen. */
public final class AwtLetters implements TextMeasure {
    /** There is nothing to set. */
    public static final TextMeasure MEASURE = new AwtLetters();

    private static final FontRenderContext CONTEXT = new FontRenderContext(new AffineTransform(), true, true);

    private AwtLetters() {}

    static Font font(Lettering lettering) {
        int style = (lettering.bold() ? Font.BOLD : 0) | (lettering.italic() ? Font.ITALIC : 0);
        return new Font(Font.SANS_SERIF, style, 1).deriveFont((float) lettering.sizePoints());
    }

    /**
     * A line of letters, laid out.
     *
     * @param advancePoints its length
     * @param outline of all letters, from the origin to the right, y down; not to be changed
     */
    record Line(double advancePoints, Shape outline) {}

    private record Words(String words, Lettering lettering) {}

    /** Lines that are laid out already: a map writes the same few words again and again. */
    private static final Map<Words, Line> LINES = new ConcurrentHashMap<>();

    private static final int MAX_LINES = 2000;

    /** Every face has the Latin letters, and the signs before this one in general. */
    private static final int FIRST_LOOKED_AT = 0x250;

    /** Letters as a line. Not for empty words. */
    static Line line(String words, Lettering lettering) {
        Words key = new Words(words, lettering);
        Line known = LINES.get(key);
        if (known != null) {
            return known;
        }
        Font font = font(lettering);
        // The logical face is made of all faces of the system that Java knows of.
        String named = MissingSigns.named(words, sign -> has(font, sign));
        TextLayout layout = new TextLayout(named.isEmpty() ? " " : named, font, CONTEXT);
        Line line = new Line(layout.getAdvance(), layout.getOutline(null));
        if (LINES.size() >= MAX_LINES) {
            LINES.clear();
        }
        LINES.put(key, line);
        return line;
    }

    /** Whether a face of the system can draw every sign of some words. */
    static boolean hasAll(String words, Lettering lettering) {
        Font font = font(lettering);
        return words.codePoints().allMatch(sign -> has(font, sign));
    }

    /** A face of pictures alone, as many of emoji are, has no outline to draw a sign by. */
    private static boolean has(Font font, int sign) {
        if (sign < FIRST_LOOKED_AT || MissingSigns.isModifier(sign)) {
            return true;
        }
        return font.canDisplay(sign)
                && (Character.isWhitespace(sign)
                        || Character.isSpaceChar(sign)
                        || !font.createGlyphVector(CONTEXT, Character.toString(sign))
                                .getOutline()
                                .getBounds2D()
                                .isEmpty());
    }

    @Override
    public double widthPoints(String words, Lettering lettering) {
        return words.isEmpty() ? 0 : line(words, lettering).advancePoints();
    }
}

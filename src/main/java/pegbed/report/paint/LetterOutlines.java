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

/**
 * Lines of letters as outlines, by the program's own faces; those of the system draw what these lack, and scripts whose
 * letters change their shape by their neighbours. Works without a screen, and without any face of the system.
 */
public final class LetterOutlines implements TextMeasure {
    /** There is nothing to set. */
    public static final TextMeasure MEASURE = new LetterOutlines();

    /** For one thread at a time. */
    private static final OwnFaces OWN = new OwnFaces();

    private static final FontRenderContext CONTEXT = new FontRenderContext(new AffineTransform(), true, true);

    private LetterOutlines() {}

    private static Font font(Lettering lettering) {
        int style = (lettering.bold() ? Font.BOLD : 0) | (lettering.italic() ? Font.ITALIC : 0);
        return new Font(Font.SANS_SERIF, style, 1).deriveFont((float) lettering.sizePoints());
    }

    /**
     * A line of letters, laid out.
     *
     * @param advancePoints its length
     * @param outline of all letters, from the origin to the right, y down; not to be changed
     */
    public record Line(double advancePoints, Shape outline) {}

    private record Words(String words, Lettering lettering) {}

    /** Lines that are laid out already: a map writes the same few words again and again. */
    private static final Map<Words, Line> LINES = new ConcurrentHashMap<>();

    private static final int MAX_LINES = 2000;

    /** Every face has the Latin letters, and the signs before this one in general. */
    private static final int FIRST_LOOKED_AT = 0x250;

    /** Letters as a line. Not for empty words. */
    public static Line line(String words, Lettering lettering) {
        Words key = new Words(words, lettering);
        Line known = LINES.get(key);
        if (known != null) {
            return known;
        }
        Line line = made(words, lettering);
        if (LINES.size() >= MAX_LINES) {
            LINES.clear();
        }
        LINES.put(key, line);
        return line;
    }

    private static Line made(String words, Lettering lettering) {
        boolean isPlain = words.codePoints().allMatch(LetterOutlines::isPlain);
        if (isPlain && ownHasAll(words, lettering)) {
            return own(words, lettering);
        }
        try {
            return bySystem(words, lettering);
        } catch (LinkageError | InternalError e) {
            // Java's own fonts can't be had where the system has none.
            return own(words, lettering);
        }
    }

    /** Letters that stand beside each other from left to right: Latin, Greek, Cyrillic, signs and arrows. */
    private static boolean isPlain(int sign) {
        return sign < 0x300
                || (sign >= 0x370 && sign < 0x483)
                || (sign >= 0x2010 && sign < 0x2E00 && Character.getType(sign) != Character.FORMAT);
    }

    private static boolean ownHasAll(String words, Lettering lettering) {
        synchronized (OWN) {
            return OWN.hasAll(words, lettering);
        }
    }

    private static Line own(String words, Lettering lettering) {
        synchronized (OWN) {
            String shown = OWN.shown(words, lettering);
            AffineTransform down = new AffineTransform(1, 0, lettering.italic() ? OwnFaces.SHEAR : 0, -1, 0, 0);
            return new Line(
                    OWN.widthPoints(shown, lettering),
                    OWN.outline(shown, lettering).createTransformedShape(down));
        }
    }

    private static Line bySystem(String words, Lettering lettering) {
        Font font = font(lettering);
        // The logical face is made of all faces of the system that Java knows of.
        String named = MissingSigns.named(words, sign -> has(font, sign));
        TextLayout layout = new TextLayout(named.isEmpty() ? " " : named, font, CONTEXT);
        return new Line(layout.getAdvance(), layout.getOutline(null));
    }

    /** Whether a face of the system can draw every sign of some words. */
    static boolean hasAll(String words, Lettering lettering) {
        Font font = font(lettering);
        try {
            return words.codePoints().allMatch(sign -> has(font, sign));
        } catch (LinkageError | InternalError e) {
            return false; // The system has no face at all.
        }
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

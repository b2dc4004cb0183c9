package pegbed.report.paint;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
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

    /** Letters as a line that is laid out once and drawn or measured. Not for empty words. */
    static TextLayout line(String words, Lettering lettering) {
        return new TextLayout(words, font(lettering), CONTEXT);
    }

    @Override
    public double widthPoints(String words, Lettering lettering) {
        return words.isEmpty() ? 0 : line(words, lettering).getAdvance();
    }
}

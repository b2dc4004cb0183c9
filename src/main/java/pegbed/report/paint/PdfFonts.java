package pegbed.report.paint;

import java.awt.geom.GeneralPath;
import java.util.Optional;
import org.apache.fontbox.ttf.TrueTypeFont;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.TextMeasure;

/**
 * The letters of a PDF card, which carries the program's own faces with it. Words with a sign that these lack are drawn
 * by the system's faces where those have them all. Not for more than one thread.
 */
public final class PdfFonts implements TextMeasure {
    private final OwnFaces own = new OwnFaces();

    TrueTypeFont face(Lettering lettering) {
        return own.face(lettering);
    }

    /** Words as the system's faces draw them, where the card's own lack a sign and those have all. */
    Optional<LetterOutlines.Line> ofSystem(String words, Lettering lettering) {
        return own.hasAll(words, lettering) || !LetterOutlines.hasAll(words, lettering)
                ? Optional.empty()
                : Optional.of(LetterOutlines.line(words, lettering));
    }

    /** Words as {@link OwnFaces#shown} has them. */
    String shown(String words, Lettering lettering) {
        return own.shown(words, lettering);
    }

    @Override
    public double widthPoints(String words, Lettering lettering) {
        return ofSystem(words, lettering)
                .map(LetterOutlines.Line::advancePoints)
                .orElseGet(() -> own.widthPoints(own.shown(words, lettering), lettering));
    }

    /** Outline of words that are in the order in which they are seen, in points, baseline at 0, y up. */
    GeneralPath outline(String shown, Lettering lettering) {
        return own.outline(shown, lettering);
    }
}

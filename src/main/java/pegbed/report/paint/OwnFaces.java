package pegbed.report.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import pegbed.report.drawing.Lettering;

/**
 * The program's own two faces: DejaVu Sans plain and bold, whose licence stands beside them. Slanted letters are the
 * same ones sheared. They look the same on every system, and are there where a system has none. Not for more than one
 * thread.
 */
final class OwnFaces {
    /** Of slanted letters, to the right for each unit up. */
    static final double SHEAR = 0.2;

    private static final String FOLDER = "/pegbed/report/fonts/";
    private final TrueTypeFont plain = load("DejaVuSans.ttf");
    private final TrueTypeFont bold = load("DejaVuSans-Bold.ttf");

    private static TrueTypeFont load(String name) {
        try (InputStream in = OwnFaces.class.getResourceAsStream(FOLDER + name)) {
            TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            // Without ligatures, so that the words of a card can be found and copied.
            face.setEnableGsub(false);
            return face;
        } catch (IOException e) {
            throw new UncheckedIOException("The program's own font " + name + " can't be read.", e);
        }
    }

    TrueTypeFont face(Lettering lettering) {
        return lettering.bold() ? bold : plain;
    }

    /** Whether a face has all signs of some words, but for those that only change how others look. */
    boolean hasAll(String words, Lettering lettering) {
        CmapLookup glyphs = glyphs(face(lettering));
        return words.codePoints().allMatch(sign -> glyphs.getGlyphId(sign) != 0 || MissingSigns.isModifier(sign));
    }

    /**
     * Words in the order in which they are seen, from left to right, with the name of every sign that the face lacks.
     * Runs from right to left are turned round; letters that change their shape by their neighbours keep their bare
     * one.
     */
    String shown(String words, Lettering lettering) {
        CmapLookup glyphs = glyphs(face(lettering));
        String text = MissingSigns.named(words, sign -> glyphs.getGlyphId(sign) != 0);
        if (!Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
            return text;
        }
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        Object[] parts = new Object[runs];
        for (int i = 0; i < runs; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String part = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            parts[i] = levels[i] % 2 == 0 ? part : reversed(part);
        }
        Bidi.reorderVisually(levels, 0, parts, 0, runs);
        StringBuilder seen = new StringBuilder();
        for (Object part : parts) {
            seen.append(part);
        }
        return seen.toString();
    }

    private static String reversed(String run) {
        StringBuilder back = new StringBuilder();
        run.codePoints().forEach(sign -> back.insert(0, Character.toString(mirrored(sign))));
        return back.toString();
    }

    private static int mirrored(int sign) {
        int at = "()[]{}<>".indexOf(sign);
        return at < 0 ? sign : "()[]{}<>".charAt(at ^ 1);
    }

    /** Length of words that are in the order in which they are seen, points. */
    double widthPoints(String shown, Lettering lettering) {
        TrueTypeFont face = face(lettering);
        try {
            double units = 0;
            for (int sign : shown.codePoints().toArray()) {
                units += face.getAdvanceWidth(glyphs(face).getGlyphId(sign));
            }
            return units * lettering.sizePoints() / face.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Outline of words that are in the order in which they are seen, in points, baseline at 0, y up. */
    GeneralPath outline(String shown, Lettering lettering) {
        TrueTypeFont face = face(lettering);
        GeneralPath all = new GeneralPath();
        try {
            double scale = lettering.sizePoints() / face.getUnitsPerEm();
            double x = 0;
            for (int sign : shown.codePoints().toArray()) {
                int glyph = glyphs(face).getGlyphId(sign);
                GlyphData data = face.getGlyph().getGlyph(glyph);
                if (data != null) {
                    all.append(data.getPath().getPathIterator(new AffineTransform(scale, 0, 0, scale, x, 0)), false);
                }
                x += face.getAdvanceWidth(glyph) * scale;
            }
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static CmapLookup glyphs(TrueTypeFont face) {
        try {
            return face.getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

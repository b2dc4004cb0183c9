package pegbed.report.paint;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;
import org.locationtech.jts.awt.ShapeWriter;
import org.locationtech.jts.geom.Geometry;
import pegbed.report.drawing.Colour;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Ink;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Pen;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.View;

/**
 * Writes drawings as a PDF, each a page, a point of the view a point of the page: areas and lines as paths, text as
 * text in the program's own faces, of which the file carries the letters that it uses. No date and no name of a machine
 * goes into it, so that the same drawings give the same bytes.
 */
public final class PdfWriter {
    private final PDDocument document;
    private final Theme theme;
    private final PdfFonts fonts;
    private final ShapeWriter shapes = new ShapeWriter();
    private final Map<TrueTypeFont, PDFont> faces = new HashMap<>();
    private final Map<Double, PDExtendedGraphicsState> opacities = new HashMap<>();

    /** The page that is being written, and its view. */
    private PDPageContentStream page;

    private View view;

    private PdfWriter(PDDocument document, Theme theme, PdfFonts fonts) {
        this.document = document;
        this.theme = theme;
        this.fonts = fonts;
        shapes.setRemoveDuplicatePoints(true);
    }

    /**
     * The PDF file's bytes.
     *
     * @param pages in order
     * @param title what the document is called
     * @param fonts the faces, whose measure the drawings were laid out with
     */
    public static byte[] write(List<Drawing> pages, Theme theme, String title, PdfFonts fonts) {
        try (PDDocument document = new PDDocument()) {
            describe(document, title);
            PdfWriter writer = new PdfWriter(document, theme, fonts);
            for (Drawing drawing : pages) {
                writer.add(drawing);
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to memory can't fail.", e);
        }
    }

    private static void describe(PDDocument document, String title) {
        PDDocumentInformation about = document.getDocumentInformation();
        about.setTitle(title);
        about.setProducer("Pegbed");
        document.setDocumentId(0L);
        document.getDocumentCatalog().setLanguage("en-GB");
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
    }

    private void add(Drawing drawing) throws IOException {
        view = drawing.view();
        PDPage sheet = new PDPage(new PDRectangle((float) view.widthPoints(), (float) view.heightPoints()));
        document.addPage(sheet);
        try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
            page = content;
            write(drawing);
        }
    }

    private void write(Drawing drawing) throws IOException {
        page.setLineCapStyle(1);
        page.setLineJoinStyle(1);
        fill(theme.fill(Role.SHEET, 0, 1));
        page.addRect(0, 0, (float) view.widthPoints(), (float) view.heightPoints());
        page.fill();
        for (Item item : drawing.items()) {
            if (item instanceof Fill fill) {
                fill(theme.fill(fill.role(), fill.step(), fill.steps()));
                path(fill.shape(), fill.frame());
                page.fillEvenOdd();
            } else if (item instanceof Stroke stroke) {
                pen(theme.pen(stroke.role()));
                path(stroke.lines(), stroke.frame());
                page.stroke();
            } else if (item instanceof Text text && !text.words().isBlank()) {
                write(text);
            }
        }
    }

    private void write(Text text) throws IOException {
        Lettering lettering = text.lettering();
        AffineTransform at = SheetTransform.of(view, text.frame());
        if (text.frame() instanceof Frame.Water) {
            at = AffineTransform.getTranslateInstance(view.x(text.x()), view.y(text.y()));
        } else {
            at.translate(text.x(), text.y());
        }
        at.preConcatenate(new AffineTransform(1, 0, 0, -1, 0, view.heightPoints()));
        at.rotate(Math.toRadians(text.turnDegrees()));
        at.scale(1, -1);
        double back = switch (text.align()) {
            case START -> 0;
            case MIDDLE -> 0.5;
            case END -> 1;
        };
        at.translate(-back * fonts.widthPoints(text.words(), lettering), 0);
        Ink ink = theme.ink(text.role());
        Optional<LetterOutlines.Line> drawn = fonts.ofSystem(text.words(), lettering);
        if (drawn.isPresent()) {
            // These outlines are slanted already, and their y goes down.
            at.scale(1, -1);
            writeAsOutline(text.words(), drawn.get().outline(), at, ink);
        } else {
            if (lettering.italic()) {
                at.shear(OwnFaces.SHEAR, 0);
            }
            writeAsText(text.words(), lettering, at, ink);
        }
    }

    private void writeAsText(String words, Lettering lettering, AffineTransform at, Ink ink) throws IOException {
        String shown = fonts.shown(words, lettering);
        if (ink.halo().isPresent()) {
            pen(ink.halo().get());
            path(fonts.outline(shown, lettering).getPathIterator(at));
            page.stroke();
        }
        fill(ink.colour());
        page.beginText();
        page.setFont(face(lettering), (float) lettering.sizePoints());
        page.setTextMatrix(new Matrix(at));
        page.showText(shown);
        page.endText();
    }

    /** Letters as areas; the words go with them, so that they can be found and copied (ISO 32000-1, 14.9.4). */
    private void writeAsOutline(String words, Shape outline, AffineTransform at, Ink ink) throws IOException {
        COSDictionary actual = new COSDictionary();
        actual.setString(COSName.ACTUAL_TEXT, words);
        page.beginMarkedContent(COSName.getPDFName("Span"), PDPropertyList.create(actual));
        if (ink.halo().isPresent()) {
            pen(ink.halo().get());
            path(outline.getPathIterator(at));
            page.stroke();
        }
        fill(ink.colour());
        path(outline.getPathIterator(at));
        page.fill();
        page.endMarkedContent();
    }

    private PDFont face(Lettering lettering) throws IOException {
        TrueTypeFont face = fonts.face(lettering);
        PDFont known = faces.get(face);
        if (known == null) {
            known = PDType0Font.load(document, face, true);
            faces.put(face, known);
        }
        return known;
    }

    private void path(Geometry shape, Frame frame) throws IOException {
        AffineTransform at = SheetTransform.of(view, frame);
        at.preConcatenate(new AffineTransform(1, 0, 0, -1, 0, view.heightPoints()));
        path(shapes.toShape(shape).getPathIterator(at));
    }

    private void path(PathIterator path) throws IOException {
        float[] c = new float[6];
        float x = 0;
        float y = 0;
        for (; !path.isDone(); path.next()) {
            switch (path.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> page.moveTo(c[0], c[1]);
                case PathIterator.SEG_LINETO -> page.lineTo(c[0], c[1]);
                case PathIterator.SEG_QUADTO -> {
                    // A quadratic curve as a cubic one.
                    page.curveTo(
                            x + 2 * (c[0] - x) / 3,
                            y + 2 * (c[1] - y) / 3,
                            c[2] + 2 * (c[0] - c[2]) / 3,
                            c[3] + 2 * (c[1] - c[3]) / 3,
                            c[2],
                            c[3]);
                    c[0] = c[2];
                    c[1] = c[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    page.curveTo(c[0], c[1], c[2], c[3], c[4], c[5]);
                    c[0] = c[4];
                    c[1] = c[5];
                }
                default -> page.closePath();
            }
            x = c[0];
            y = c[1];
        }
    }

    private void pen(Pen pen) throws IOException {
        Colour colour = pen.colour();
        page.setStrokingColor(colour.red() / 255f, colour.green() / 255f, colour.blue() / 255f);
        opacity(colour);
        page.setLineWidth((float) pen.widthPoints());
        float[] dashes = new float[pen.dashPoints().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = pen.dashPoints().get(i).floatValue();
        }
        page.setLineDashPattern(dashes, 0);
    }

    private void fill(Colour colour) throws IOException {
        page.setNonStrokingColor(colour.red() / 255f, colour.green() / 255f, colour.blue() / 255f);
        opacity(colour);
    }

    private void opacity(Colour colour) throws IOException {
        PDExtendedGraphicsState state = opacities.get(colour.opacity());
        if (state == null) {
            state = new PDExtendedGraphicsState();
            state.setStrokingAlphaConstant((float) colour.opacity());
            state.setNonStrokingAlphaConstant((float) colour.opacity());
            opacities.put(colour.opacity(), state);
        }
        page.setGraphicsStateParameters(state);
    }
}

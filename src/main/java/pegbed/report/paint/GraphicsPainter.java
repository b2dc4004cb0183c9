package pegbed.report.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.locationtech.jts.awt.ShapeWriter;
import org.locationtech.jts.geom.Envelope;
import pegbed.report.drawing.Colour;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Pen;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.View;

/** Paints a drawing on an image with Java's own graphics, one unit of the graphics a point. */
public final class GraphicsPainter {
    private final Graphics2D graphics;
    private final Theme theme;
    private final ShapeWriter shapes = new ShapeWriter();

    private GraphicsPainter(Graphics2D graphics, Theme theme) {
        this.graphics = graphics;
        this.theme = theme;
        shapes.setRemoveDuplicatePoints(true);
    }

    /** Paints the sheet and the drawing on it. The graphics' transform is kept, its paint and stroke are not. */
    public static void paint(Drawing drawing, Theme theme, Graphics2D graphics) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        GraphicsPainter painter = new GraphicsPainter(graphics, theme);
        View view = drawing.view();
        graphics.setPaint(colour(theme.fill(Role.SHEET, 0, 1)));
        graphics.fill(new Rectangle2D.Double(0, 0, view.widthPoints(), view.heightPoints()));
        for (Item item : drawing.items()) {
            painter.paint(item, view);
        }
    }

    private void paint(Item item, View view) {
        if (item instanceof Fill fill) {
            if (meets(fill.shape(), fill.frame(), view, 0)) {
                graphics.setPaint(colour(theme.fill(fill.role(), fill.step(), fill.steps())));
                graphics.fill(shape(fill.shape(), fill.frame(), view));
            }
        } else if (item instanceof Stroke stroke) {
            Pen pen = theme.pen(stroke.role());
            if (meets(stroke.lines(), stroke.frame(), view, pen.widthPoints())) {
                graphics.setPaint(colour(pen.colour()));
                graphics.setStroke(stroke(pen));
                graphics.draw(shape(stroke.lines(), stroke.frame(), view));
            }
        } else if (item instanceof Text text) {
            write(text, view);
        }
    }

    /** Whether any of a geometry may lie in what is painted; what lies beside it costs as much to paint. */
    private boolean meets(org.locationtech.jts.geom.Geometry geometry, Frame frame, View view, double about) {
        Envelope box = geometry.getEnvelopeInternal();
        Rectangle2D onSheet = SheetTransform.of(view, frame)
                .createTransformedShape(
                        new Rectangle2D.Double(box.getMinX(), box.getMinY(), box.getWidth(), box.getHeight()))
                .getBounds2D();
        return meets(
                onSheet.getX() - about,
                onSheet.getY() - about,
                onSheet.getWidth() + 2 * about,
                onSheet.getHeight() + 2 * about);
    }

    private boolean meets(double x, double y, double width, double height) {
        Rectangle2D clip =
                graphics.getClip() == null ? null : graphics.getClip().getBounds2D();
        return clip == null
                || (x <= clip.getMaxX()
                        && x + width >= clip.getX()
                        && y <= clip.getMaxY()
                        && y + height >= clip.getY());
    }

    private Shape shape(org.locationtech.jts.geom.Geometry geometry, Frame frame, View view) {
        return SheetTransform.of(view, frame).createTransformedShape(shapes.toShape(geometry));
    }

    private void write(Text text, View view) {
        if (text.words().isBlank()) {
            return;
        }
        LetterOutlines.Line line = LetterOutlines.line(text.words(), text.lettering());
        double back = switch (text.align()) {
                    case START -> 0;
                    case MIDDLE -> 0.5;
                    case END -> 1;
                }
                * line.advancePoints();
        AffineTransform at = SheetTransform.of(view, text.frame());
        if (text.frame() instanceof Frame.Water) {
            at = AffineTransform.getTranslateInstance(view.x(text.x()), view.y(text.y()));
        } else {
            at.translate(text.x(), text.y());
        }
        at.rotate(Math.toRadians(text.turnDegrees()));
        at.translate(-back, 0);
        double reach = line.advancePoints() + 2 * text.lettering().sizePoints();
        if (!meets(at.getTranslateX() - reach, at.getTranslateY() - reach, 2 * reach, 2 * reach)) {
            return;
        }
        LetterPictures.put(graphics, text, theme.ink(text.role()), line, at);
    }

    private static BasicStroke stroke(Pen pen) {
        float[] dashes = new float[pen.dashPoints().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = pen.dashPoints().get(i).floatValue();
        }
        return new BasicStroke(
                (float) pen.widthPoints(),
                BasicStroke.CAP_ROUND,
                BasicStroke.JOIN_ROUND,
                10,
                dashes.length == 0 ? null : dashes,
                0);
    }

    static Color colour(Colour colour) {
        return new Color(colour.red(), colour.green(), colour.blue(), (int) Math.round(255 * colour.opacity()));
    }
}

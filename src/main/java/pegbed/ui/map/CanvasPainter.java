package pegbed.ui.map;

import java.awt.geom.AffineTransform;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontPosture;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import pegbed.report.drawing.Colour;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Ink;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Pen;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.View;
import pegbed.report.paint.SheetTransform;

/** Paints a drawing on a canvas: the few items that must follow at once, over the picture that is painted aside. */
final class CanvasPainter {
    private final GraphicsContext canvas;
    private final Theme theme;

    private CanvasPainter(GraphicsContext canvas, Theme theme) {
        this.canvas = canvas;
        this.theme = theme;
    }

    /** Paints a drawing as a view shows it, which may be another than the one its labels were placed for. */
    static void paint(Drawing drawing, View view, Theme theme, GraphicsContext canvas) {
        canvas.save();
        canvas.setLineCap(StrokeLineCap.ROUND);
        canvas.setLineJoin(StrokeLineJoin.ROUND);
        canvas.setTextBaseline(VPos.BASELINE);
        CanvasPainter painter = new CanvasPainter(canvas, theme);
        for (Item item : drawing.items()) {
            painter.paint(item, view);
        }
        canvas.restore();
    }

    private void paint(Item item, View view) {
        if (item instanceof Fill fill) {
            canvas.setFill(colour(theme.fill(fill.role(), fill.step(), fill.steps())));
            trace(fill.shape(), SheetTransform.of(view, fill.frame()));
            canvas.fill();
        } else if (item instanceof Stroke stroke) {
            take(theme.pen(stroke.role()));
            trace(stroke.lines(), SheetTransform.of(view, stroke.frame()));
            canvas.stroke();
        } else if (item instanceof Text text) {
            write(text, view);
        }
    }

    private void take(Pen pen) {
        canvas.setStroke(colour(pen.colour()));
        canvas.setLineWidth(pen.widthPoints());
        canvas.setLineDashes(
                pen.dashPoints().stream().mapToDouble(Double::doubleValue).toArray());
    }

    private void trace(Geometry geometry, AffineTransform toSheet) {
        canvas.beginPath();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            Geometry part = geometry.getGeometryN(i);
            if (part instanceof Polygon polygon) {
                traceLine(polygon.getExteriorRing(), toSheet);
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    traceLine(polygon.getInteriorRingN(hole), toSheet);
                }
            } else if (part instanceof LineString line) {
                traceLine(line, toSheet);
            }
        }
    }

    private void traceLine(LineString line, AffineTransform toSheet) {
        double[] at = new double[2];
        Coordinate[] corners = line.getCoordinates();
        for (int i = 0; i < corners.length; i++) {
            at[0] = corners[i].x;
            at[1] = corners[i].y;
            toSheet.transform(at, 0, at, 0, 1);
            if (i == 0) {
                canvas.moveTo(at[0], at[1]);
            } else {
                canvas.lineTo(at[0], at[1]);
            }
        }
        if (line.isClosed()) {
            canvas.closePath();
        }
    }

    private void write(Text text, View view) {
        if (text.words().isBlank()) {
            return;
        }
        double x = text.x();
        double y = text.y();
        if (text.frame() instanceof Frame.Water) {
            x = view.x(x);
            y = view.y(y);
        } else if (text.frame() instanceof Frame.At at) {
            x += view.x(at.xMetres());
            y += view.y(at.yMetres());
        }
        canvas.save();
        canvas.translate(x, y);
        canvas.rotate(text.turnDegrees());
        canvas.setFont(font(text.lettering()));
        canvas.setTextAlign(
                switch (text.align()) {
                    case START -> TextAlignment.LEFT;
                    case MIDDLE -> TextAlignment.CENTER;
                    case END -> TextAlignment.RIGHT;
                });
        Ink ink = theme.ink(text.role());
        ink.halo().ifPresent(halo -> {
            take(halo);
            canvas.strokeText(text.words(), 0, 0);
        });
        canvas.setFill(colour(ink.colour()));
        canvas.fillText(text.words(), 0, 0);
        canvas.restore();
    }

    private static Font font(Lettering lettering) {
        return Font.font(
                "SansSerif",
                lettering.bold() ? FontWeight.BOLD : FontWeight.NORMAL,
                lettering.italic() ? FontPosture.ITALIC : FontPosture.REGULAR,
                lettering.sizePoints());
    }

    static Color colour(Colour colour) {
        return Color.rgb(colour.red(), colour.green(), colour.blue(), colour.opacity());
    }
}

package pegbed.report.drawing;

import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Paints drawings on a canvas. */
public final class CanvasPainting {
    private final DrawingCanvas canvas;
    private final Theme theme;

    private CanvasPainting(DrawingCanvas canvas, Theme theme) {
        this.canvas = canvas;
        this.theme = theme;
    }

    /** Paints a drawing as a view shows it, which may be another than the one its labels were placed for. */
    public static void paint(Drawing drawing, View view, Theme theme, DrawingCanvas canvas) {
        CanvasPainting painting = new CanvasPainting(canvas, theme);
        for (Item item : drawing.items()) {
            painting.paint(item, view);
        }
    }

    private void paint(Item item, View view) {
        FrameScale scale = FrameScale.of(view, item.frame());
        if (item instanceof Fill fill) {
            trace(fill.shape(), scale);
            canvas.fill(theme.fill(fill.role(), fill.step(), fill.steps()));
        } else if (item instanceof Stroke stroke) {
            trace(stroke.lines(), scale);
            canvas.stroke(theme.pen(stroke.role()));
        } else if (item instanceof Text text && !text.words().isBlank()) {
            canvas.write(text, scale.x(text.x()), scale.y(text.y()), theme.ink(text.role()));
        }
    }

    private void trace(Geometry geometry, FrameScale scale) {
        canvas.beginPath();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            Geometry part = geometry.getGeometryN(i);
            if (part instanceof Polygon polygon) {
                trace(polygon.getExteriorRing(), scale);
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    trace(polygon.getInteriorRingN(hole), scale);
                }
            } else if (part instanceof LineString line) {
                trace(line, scale);
            }
        }
    }

    private void trace(LineString line, FrameScale scale) {
        CoordinateSequence corners = line.getCoordinateSequence();
        for (int i = 0; i < corners.size(); i++) {
            double x = scale.x(corners.getX(i));
            double y = scale.y(corners.getY(i));
            if (i == 0) {
                canvas.moveTo(x, y);
            } else {
                canvas.lineTo(x, y);
            }
        }
        if (line.isClosed()) {
            canvas.closePath();
        }
    }
}

package pegbed.report.day;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import pegbed.geometry.Shapes;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;

/** Items on a sheet, points from its top left corner, y down. */
final class Marks {
    private static final int ROUND = 6;

    private Marks() {}

    static Item rectangle(Role role, double left, double top, double right, double bottom) {
        return fill(role, Shapes.FACTORY.toGeometry(new Envelope(left, right, top, bottom)));
    }

    static Item disc(Role role, double x, double y, double radius) {
        return fill(role, circle(x, y, radius));
    }

    static Item ring(Role role, double x, double y, double radius) {
        return stroke(role, circle(x, y, radius).getBoundary());
    }

    private static Geometry circle(double x, double y, double radius) {
        return Shapes.FACTORY.createPoint(new Coordinate(x, y)).buffer(radius, ROUND);
    }

    /** A triangle that stands on its base, the point up. */
    static Item triangle(Role role, double x, double bottom, double size) {
        return fill(role, Shapes.FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(x - size, bottom),
            new Coordinate(x + size, bottom),
            new Coordinate(x, bottom - 1.8 * size),
            new Coordinate(x - size, bottom)
        }));
    }

    static Item cross(Role role, double x, double y, double size) {
        return stroke(role, Shapes.FACTORY.createMultiLineString(new LineString[] {
            line(x - size, y - size, x + size, y + size), line(x - size, y + size, x + size, y - size)
        }));
    }

    static Item segment(Role role, double x1, double y1, double x2, double y2) {
        return stroke(role, line(x1, y1, x2, y2));
    }

    private static LineString line(double x1, double y1, double x2, double y2) {
        return Shapes.FACTORY.createLineString(new Coordinate[] {new Coordinate(x1, y1), new Coordinate(x2, y2)});
    }

    static Text text(Role role, double x, double base, Text.Align align, Lettering lettering, String words) {
        return new Text(role, Layer.FURNITURE, Frame.SHEET, x, base, align, 0, lettering, words);
    }

    private static Item fill(Role role, Geometry shape) {
        return new Fill(role, Layer.FURNITURE, Frame.SHEET, shape);
    }

    private static Item stroke(Role role, Geometry lines) {
        return new Stroke(role, Layer.FURNITURE, Frame.SHEET, lines);
    }
}

package pegbed.report.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import pegbed.geometry.Shapes;
import pegbed.model.Hazard;

/** Shapes of symbols in points about their middle, y down. */
final class Symbols {
    private static final int SIDES = 48;

    private Symbols() {}

    static Polygon disc(double radius) {
        return Shapes.FACTORY.createPolygon(circle(0, 0, radius));
    }

    static LineString ring(double radius) {
        return Shapes.FACTORY.createLineString(circle(0, 0, radius));
    }

    static Coordinate[] circle(double x, double y, double radius) {
        Coordinate[] corners = new Coordinate[SIDES + 1];
        for (int i = 0; i < SIDES; i++) {
            double turn = 2 * Math.PI * i / SIDES;
            corners[i] = new Coordinate(x + radius * Math.sin(turn), y - radius * Math.cos(turn));
        }
        corners[SIDES] = new Coordinate(corners[0]);
        return corners;
    }

    /** A closed shape through x, y, x, y … */
    static Polygon polygon(double... xy) {
        Coordinate[] open = coordinates(xy);
        return Shapes.polygon(Arrays.asList(open));
    }

    static LineString line(double... xy) {
        return Shapes.FACTORY.createLineString(coordinates(xy));
    }

    static Geometry lines(LineString... lines) {
        return Shapes.FACTORY.createMultiLineString(lines);
    }

    private static Coordinate[] coordinates(double... xy) {
        Coordinate[] places = new Coordinate[xy.length / 2];
        for (int i = 0; i < places.length; i++) {
            places[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        return places;
    }

    static Polygon box(double left, double top, double right, double bottom) {
        return polygon(left, top, right, top, right, bottom, left, bottom);
    }

    /** A frame with pointed ends about a figure. */
    static Polygon lozenge(double width, double height) {
        double x = width / 2;
        double y = height / 2;
        return polygon(-x, -y, x, -y, x + y, 0, x, y, -x, y, -x - y, 0);
    }

    /** The plummet that stands for the deepest place: its tip at the middle. */
    static Polygon plummet() {
        return polygon(0, 1, -5.6, -10, -3.8, -16.5, 3.8, -16.5, 5.6, -10);
    }

    /** The eye of the plummet and a ring about the place. */
    static Geometry plummetLines() {
        return lines(
                Shapes.FACTORY.createLineString(circle(0, -19.4, 2.6)),
                Shapes.FACTORY.createLineString(arc(0, 0, 8.5, 48, 312)));
    }

    /** Part of a circle, degrees clockwise from up. */
    static Coordinate[] arc(double x, double y, double radius, double from, double to) {
        List<Coordinate> places = new ArrayList<>();
        int steps = Math.max(2, (int) Math.ceil(Math.abs(to - from) / 7.5));
        for (int i = 0; i <= steps; i++) {
            double turn = Math.toRadians(from + (to - from) * i / steps);
            places.add(new Coordinate(x + radius * Math.sin(turn), y - radius * Math.cos(turn)));
        }
        return places.toArray(Coordinate[]::new);
    }

    /**
     * A ring with short teeth, as a map rings a hollow; the teeth point inwards about a hollow, outwards about a hump.
     */
    static Geometry toothed(double radius, double tooth, boolean hollow) {
        int teeth = Math.max(8, (int) Math.round(2 * Math.PI * radius / 9));
        LineString[] lines = new LineString[teeth + 1];
        lines[teeth] = ring(radius);
        double tip = hollow ? radius - tooth : radius + tooth;
        for (int i = 0; i < teeth; i++) {
            double sin = Math.sin(2 * Math.PI * i / teeth);
            double cos = Math.cos(2 * Math.PI * i / teeth);
            lines[i] = line(radius * sin, -radius * cos, tip * sin, -tip * cos);
        }
        return lines(lines);
    }

    /** A post on its foot. */
    static Geometry mark() {
        return lines(line(0, 2, 0, -9), line(-4, 2, 4, 2));
    }

    static Polygon markHead() {
        return polygon(0, -12.5, 3.6, -9, 0, -5.5, -3.6, -9);
    }

    /** What kind of hazard it is, shown by its shape. */
    static Geometry hazard(Hazard.Kind kind) {
        return switch (kind) {
            case SNAG -> lines(line(-5, -5, 5, 5), line(-5, 5, 5, -5), line(0, -6.5, 0, 6.5));
            case LILIES_OR_REEDS ->
                lines(
                        line(-5, 5, -6, -4),
                        line(-2, 5, -2.5, -6),
                        line(1.5, 5, 2, -5),
                        line(4.5, 5, 6, -3),
                        line(-7, 5, 7, 5));
            case LOW_BRANCH ->
                lines(line(-7, -4, 7, -2), line(-3, -3.4, -1, 4), line(1.5, -2.8, 4.5, 3.5), line(-1.8, 1, -4, 4));
            case OVERHEAD_LINE -> lines(line(2.5, -8, -3.5, 1, 3.5, -1, -2.5, 8), line(-2.8, 4.5, -2.5, 8, 0.6, 6.6));
            case OTHER -> lines(line(0, -6, 0, 2), line(0, 5.4, 0, 5.5));
        };
    }

    /** The platform under the angler, whose middle is at the front edge. */
    static Polygon seat() {
        return box(-11, 3, 11, 15);
    }

    static Polygon angler() {
        return Shapes.FACTORY.createPolygon(circle(0, 3.5, 3.6));
    }
}

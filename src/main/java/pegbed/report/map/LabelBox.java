package pegbed.report.map;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import pegbed.geometry.Shapes;

/**
 * A rectangle on the sheet, turned about its centre.
 *
 * @param x of the centre, points
 * @param y of the centre, points
 * @param width points
 * @param height points
 * @param turnDegrees clockwise as seen
 */
record LabelBox(double x, double y, double width, double height, double turnDegrees) {
    static LabelBox square(double x, double y, double side) {
        return new LabelBox(x, y, side, side, 0);
    }

    /** The same with so many points more on every side. */
    LabelBox grown(double points) {
        return new LabelBox(x, y, width + 2 * points, height + 2 * points, turnDegrees);
    }

    Envelope envelope() {
        double cos = Math.abs(Math.cos(Math.toRadians(turnDegrees)));
        double sin = Math.abs(Math.sin(Math.toRadians(turnDegrees)));
        double across = (width * cos + height * sin) / 2;
        double up = (width * sin + height * cos) / 2;
        return new Envelope(x - across, x + across, y - up, y + up);
    }

    /** Whether the two share more than their rims. Two rectangles lie apart if a side of one of them parts them. */
    boolean overlaps(LabelBox other) {
        if (turnDegrees == 0 && other.turnDegrees == 0) {
            return Math.abs(other.x - x) < (width + other.width) / 2 - 1e-9
                    && Math.abs(other.y - y) < (height + other.height) / 2 - 1e-9;
        }
        return !apartAlong(turnDegrees, other)
                && !apartAlong(turnDegrees + 90, other)
                && !apartAlong(other.turnDegrees, other)
                && !apartAlong(other.turnDegrees + 90, other);
    }

    private boolean apartAlong(double degrees, LabelBox other) {
        double ux = Math.cos(Math.toRadians(degrees));
        double uy = Math.sin(Math.toRadians(degrees));
        double between = Math.abs((other.x - x) * ux + (other.y - y) * uy);
        return between >= halfAlong(ux, uy) + other.halfAlong(ux, uy) - 1e-9;
    }

    private double halfAlong(double ux, double uy) {
        double cos = Math.cos(Math.toRadians(turnDegrees));
        double sin = Math.sin(Math.toRadians(turnDegrees));
        return (Math.abs(width * (ux * cos + uy * sin)) + Math.abs(height * (uy * cos - ux * sin))) / 2;
    }

    /**
     * The part of a straight line inside it (Liang, Y.-D. & Barsky, B. A. (1984), "A new concept and method for line
     * clipping", ACM Transactions on Graphics 3, 1–22, in the rectangle's own directions).
     *
     * @return where the line enters and leaves, as shares of it, 0 at its start; empty if it passes by
     */
    Optional<double[]> inside(double x0, double y0, double x1, double y1) {
        // Most lines pass far off: no corner is farther from the middle than this.
        double far = (width + height) / 2;
        if (Math.min(x0, x1) > x + far
                || Math.max(x0, x1) < x - far
                || Math.min(y0, y1) > y + far
                || Math.max(y0, y1) < y - far) {
            return Optional.empty();
        }
        double cos = Math.cos(Math.toRadians(turnDegrees));
        double sin = Math.sin(Math.toRadians(turnDegrees));
        double across = (x0 - x) * cos + (y0 - y) * sin;
        double down = (y0 - y) * cos - (x0 - x) * sin;
        double[] part = {0, 1};
        boolean hit = narrowed(part, across, (x1 - x0) * cos + (y1 - y0) * sin, width / 2)
                && narrowed(part, down, (y1 - y0) * cos - (x1 - x0) * sin, height / 2);
        return hit && part[0] < part[1] ? Optional.of(part) : Optional.empty();
    }

    /** Keeps the part in which start + share · step lies within a half width of 0; false if there is none. */
    private static boolean narrowed(double[] part, double start, double step, double half) {
        if (step == 0) {
            return Math.abs(start) < half;
        }
        double one = (-half - start) / step;
        double other = (half - start) / step;
        part[0] = Math.max(part[0], Math.min(one, other));
        part[1] = Math.min(part[1], Math.max(one, other));
        return part[0] < part[1];
    }

    /** Its outline in points of the sheet. */
    Polygon outline() {
        double cos = Math.cos(Math.toRadians(turnDegrees));
        double sin = Math.sin(Math.toRadians(turnDegrees));
        Coordinate[] corners = new Coordinate[5];
        double[][] signs = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}, {-1, -1}};
        for (int i = 0; i < 5; i++) {
            double across = signs[i][0] * width / 2;
            double down = signs[i][1] * height / 2;
            corners[i] = new Coordinate(x + across * cos - down * sin, y + across * sin + down * cos);
        }
        return Shapes.FACTORY.createPolygon(corners);
    }
}

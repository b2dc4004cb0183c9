package pegbed.report.map;

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

package pegbed.report.map;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/** Places along a line by their distance from its start; many of one line are found quickly. */
final class LineWalk {
    private final Coordinate[] places;
    /** How far each place is from the start, along the line. */
    private final double[] walked;

    LineWalk(LineString line) {
        places = line.getCoordinates();
        walked = new double[places.length];
        for (int i = 1; i < places.length; i++) {
            double dx = places[i].x - places[i - 1].x;
            double dy = places[i].y - places[i - 1].y;
            walked[i] = walked[i - 1] + Math.sqrt(dx * dx + dy * dy);
        }
    }

    double length() {
        return walked[walked.length - 1];
    }

    /** The place at a distance from the start, of 0 to {@link #length}; beyond them the nearer end. */
    Coordinate at(double distance) {
        int found = Arrays.binarySearch(walked, distance);
        if (found >= 0) {
            return places[found];
        }
        int after = -found - 1;
        if (after == 0) {
            return places[0];
        }
        if (after == places.length) {
            return places[after - 1];
        }
        double share = (distance - walked[after - 1]) / (walked[after] - walked[after - 1]);
        Coordinate from = places[after - 1];
        Coordinate to = places[after];
        return new Coordinate(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
    }
}

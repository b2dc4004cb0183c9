package pegbed.plan;

import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import pegbed.geometry.Shapes;
import pegbed.model.Place;

/** What a set of lines must keep to (common practice; the costs are empirical). */
public final class LineRules {
    /** Two lines fed closer than this draw from the same fish, metres. */
    public static final double SPACING_METRES = 2;

    /** A line nearer than this to the way of another's fish to the seat is spoilt by them, metres. */
    public static final double PATH_METRES = 1;

    /** How far a float is slid on one rig: 3 in, metres. */
    public static final double TRAVEL_METRES = 0.075;

    /** No line is chosen within this of a place that the person forbids, metres. */
    public static final double FORBIDDEN_METRES = 1;

    /** What one more rig to tie is worth in lines. */
    static final double RIG_COST = 0.08;

    /** What a line in the way of another loses. */
    static final double PATH_COST = 0.2;

    private static final Coordinate SEAT = new Coordinate(0, 0);
    private static final double ROUNDING = 1e-9;

    private LineRules() {}

    /** Whether two lines are far enough from each other. */
    public static boolean spaced(Place a, Place b) {
        return a.distanceTo(b) >= SPACING_METRES - ROUNDING;
    }

    /** Whether one of two lines lies in the way of the other's fish to the seat. */
    public static boolean inTheWay(Place a, Place b) {
        return fromPath(a, b) < PATH_METRES - ROUNDING || fromPath(b, a) < PATH_METRES - ROUNDING;
    }

    /** Metres from a place to the straight way between the seat and a line. */
    public static double fromPath(Place place, Place line) {
        return Distance.pointToSegment(Shapes.coordinate(place), SEAT, Shapes.coordinate(line));
    }

    /** The fewest rigs that serve lines of these depths, metres. */
    static int rigs(List<Double> depthsMetres) {
        return RigCover.count(
                depthsMetres.stream().mapToDouble(Double::doubleValue).toArray(), TRAVEL_METRES);
    }
}

package pegbed.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * A bank of any shape, taken as drawn: a line that parts the plane in two. An open one goes on beyond both ends:
 * straight on where it leaves the seat behind, straight away from the seat where it turns back. One that ends within
 * {@value #CLOSED_METRES} m of its beginning, or that winds round its own end, is a ring.
 *
 * <p>Immutable and thread-safe.
 */
final class DrawnBank {
    /** Ends this near to each other close a ring, metres. */
    static final double CLOSED_METRES = 0.3;

    /** As far as anybody would look, metres. */
    private static final double FAR_METRES = 450;

    /** The last stretch of the bank that tells how it goes on, metres. */
    private static final double END_METRES = 2;

    /** An end that runs no nearer than this to straight away from the seat says nothing of where the bank goes on. */
    private static final double WIDEST_DEGREES = 60;

    /** Of so many corners all distances are found sooner one by one than by the index. */
    private static final int FEW_CORNERS = 60;

    private static final Coordinate ORIGIN = new Coordinate(0, 0);

    private final boolean ring;
    private final List<Coordinate> line;
    /** The same, not changed. */
    private final Coordinate[] corners;

    private final List<Coordinate> endless;
    private final Geometry left;
    private final IndexedPointInAreaLocator inLeft;
    private final STRtree segments;

    private DrawnBank(boolean ring, List<Coordinate> line, List<Coordinate> endless, Geometry left) {
        this.ring = ring;
        this.line = List.copyOf(line);
        this.endless = List.copyOf(endless);
        this.left = left;
        this.corners = line.toArray(Coordinate[]::new);
        this.inLeft = new IndexedPointInAreaLocator(left);
        this.segments = new STRtree();
        for (int i = 1; i < line.size(); i++) {
            segments.insert(new Envelope(line.get(i - 1), line.get(i)), i);
        }
        segments.build();
    }

    /**
     * The bank through places in order; beyond it is its left side.
     *
     * @param given two places at least, no two neighbours equal, not crossing itself
     * @param roomMetres how far from the seat the line is wanted at least
     * @return empty if it winds so round its own end that it can be neither continued nor closed
     */
    static Optional<DrawnBank> of(List<Coordinate> given, double roomMetres) {
        if (closes(given)) {
            return closed(given);
        }
        double furthest =
                given.stream().mapToDouble(c -> Math.hypot(c.x, c.y)).max().orElseThrow();
        double radius = Math.max(roomMetres, furthest + 1);
        End first = new End(given, radius);
        List<Coordinate> backwards = new ArrayList<>(given);
        Collections.reverse(backwards);
        End last = new End(backwards, radius);
        for (List<Coordinate> tips : List.of(
                List.of(first.likely(), last.likely()),
                List.of(first.away, last.away),
                List.of(first.straight, last.straight),
                List.of(first.away, last.straight),
                List.of(first.straight, last.away))) {
            List<Coordinate> line = new ArrayList<>(given);
            line.add(0, tips.get(0));
            line.add(tips.get(1));
            if (Shapes.line(line).isSimple()) {
                return Optional.of(open(line, Math.max(FAR_METRES, 2 * radius) / radius));
            }
        }
        return closed(given);
    }

    /** Whether the places close by themselves. */
    static boolean closes(List<Coordinate> given) {
        return given.size() > 3 && given.get(0).distance(given.get(given.size() - 1)) <= CLOSED_METRES;
    }

    private static Optional<DrawnBank> closed(List<Coordinate> given) {
        List<Coordinate> corners = new ArrayList<>(given);
        if (closes(given)) {
            corners.remove(corners.size() - 1);
        }
        if (corners.size() < 3) {
            return Optional.empty();
        }
        Polygon inside = Shapes.polygon(corners);
        if (!inside.isValid()) {
            return Optional.empty();
        }
        List<Coordinate> line = List.of(inside.getExteriorRing().getCoordinates());
        boolean leftIsInside = Orientation.isCCW(inside.getExteriorRing().getCoordinates());
        double furthest =
                line.stream().mapToDouble(c -> Math.hypot(c.x, c.y)).max().orElseThrow();
        Geometry left = leftIsInside
                ? inside
                : Overlay.difference(Shapes.disc(0, 0, Math.max(FAR_METRES, 2 * furthest)), inside);
        return Optional.of(new DrawnBank(true, line, line, left));
    }

    private static DrawnBank open(List<Coordinate> line, double stretch) {
        Coordinate first = line.get(0);
        Coordinate last = line.get(line.size() - 1);
        List<Coordinate> endless = new ArrayList<>(line);
        endless.add(0, new Coordinate(first.x * stretch, first.y * stretch));
        endless.add(new Coordinate(last.x * stretch, last.y * stretch));
        List<Coordinate> ring = new ArrayList<>(endless);
        double outer = Math.hypot(last.x, last.y) * stretch;
        double from = Math.atan2(last.y, last.x);
        double to = Math.atan2(first.y, first.x);
        double turn = to > from ? to - from : to - from + 2 * Math.PI;
        int steps = (int) Math.ceil(Math.toDegrees(turn));
        for (int i = 1; i < steps; i++) {
            double angle = from + turn * i / steps;
            ring.add(new Coordinate(outer * Math.cos(angle), outer * Math.sin(angle)));
        }
        return new DrawnBank(false, line, endless, Shapes.polygon(ring));
    }

    /** An end of a bank, and where the bank could leave the circle about the seat beyond it. */
    private static final class End {
        private final Coordinate straight;
        private final Coordinate away;
        private final boolean turnsBack;

        End(List<Coordinate> line, double radius) {
            Coordinate end = line.get(0);
            Coordinate before = line.get(1);
            for (int i = 2; i < line.size() && before.distance(end) < END_METRES; i++) {
                before = line.get(i);
            }
            double stretch = before.distance(end);
            double out = Math.max(end.distance(ORIGIN), 1e-9);
            double dx = stretch < 1e-9 ? end.x / out : (end.x - before.x) / stretch;
            double dy = stretch < 1e-9 ? end.y / out : (end.y - before.y) / stretch;
            double along = end.x * dx + end.y * dy;
            double t = -along + Math.sqrt(along * along + radius * radius - out * out);
            straight = new Coordinate(end.x + t * dx, end.y + t * dy);
            away = new Coordinate(end.x * radius / out, end.y * radius / out);
            turnsBack = along < out * Math.cos(Math.toRadians(WIDEST_DEGREES));
        }

        Coordinate likely() {
            return turnsBack ? away : straight;
        }
    }

    /** The bank the other way round: its two sides change places. */
    DrawnBank reversed() {
        List<Coordinate> back = new ArrayList<>(line);
        Collections.reverse(back);
        return ring
                ? closed(back).orElseThrow()
                : open(back, endless.get(0).distance(ORIGIN) / line.get(0).distance(ORIGIN));
    }

    /** Whether the bank closes. */
    boolean isRing() {
        return ring;
    }

    /** The line, an open one as far as the circle about the seat. */
    List<Coordinate> line() {
        return line;
    }

    /** The line, an open one as far as anybody would look. */
    List<Coordinate> endless() {
        return endless;
    }

    /** What lies to its left, as far as anybody would look. */
    Geometry left() {
        return left;
    }

    /** Signed distance, metres, positive to the left. */
    double leftOf(double xMetres, double yMetres) {
        Coordinate place = new Coordinate(xMetres, yMetres);
        double distance = distance(place);
        return inLeft.locate(place) == Location.EXTERIOR ? -distance : distance;
    }

    private double distance(Coordinate place) {
        if (corners.length <= FEW_CORNERS) {
            return Distance.pointToSegmentString(place, corners);
        }
        Object nearest = segments.nearestNeighbour(
                new Envelope(place),
                -1,
                (one, other) ->
                        distance(place, (Integer) (one.getItem().equals(-1) ? other.getItem() : one.getItem())));
        return distance(place, (Integer) nearest);
    }

    private double distance(Coordinate place, int segment) {
        return Distance.pointToSegment(place, corners[segment - 1], corners[segment]);
    }

    /** The line as a geometry. */
    LineString toGeometry() {
        return Shapes.line(line);
    }
}

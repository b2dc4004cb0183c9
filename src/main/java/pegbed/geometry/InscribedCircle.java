package pegbed.geometry;

import java.util.Comparator;
import java.util.PriorityQueue;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * The largest circle that fits into an area: the place in it that is farthest from its rim and its holes. Where several
 * places have as much room, which they often have in areas made of grid cells, it is the one nearest to the area's
 * centroid; the choice depends on nothing but the area.
 *
 * @param xMetres x of the centre, metres
 * @param yMetres y of the centre, metres
 * @param radiusMetres radius, metres, 0 or more
 */
public record InscribedCircle(double xMetres, double yMetres, double radiusMetres) {
    /** How far a radius may fall short of the largest one unless another is given, metres. */
    public static final double TOLERANCE_METRES = 0.01;

    /** Rooms that differ by less are the same: what remains is rounding, metres. */
    private static final double SAME_METRES = 1e-9;

    /** The largest inscribed circle, its radius at most {@link #TOLERANCE_METRES} too small. */
    public static InscribedCircle of(Geometry area) {
        return of(area, TOLERANCE_METRES);
    }

    /**
     * The largest inscribed circle, found by branch and bound over ever smaller squares, those with the most possible
     * room first (the method of JTS's {@code MaximumInscribedCircle}, whose choice among equals depends on the order of
     * its queue).
     *
     * @param area a polygon or several, not empty
     * @param toleranceMetres how far the radius may fall short of the largest one, metres, above 0
     */
    public static InscribedCircle of(Geometry area, double toleranceMetres) {
        if (!(area instanceof Polygonal) || area.isEmpty()) {
            throw new IllegalArgumentException(
                    "An inscribed circle needs an area, not an empty or a " + area.getGeometryType() + ".");
        }
        if (!(toleranceMetres > 0)) {
            throw new IllegalArgumentException("The tolerance must be above 0, not " + toleranceMetres + " m.");
        }
        Room room = new Room(area);
        Envelope box = area.getEnvelopeInternal();
        double half = Math.max(box.getWidth(), box.getHeight()) / 2;
        PriorityQueue<Square> queue = new PriorityQueue<>(Square.ORDER);
        queue.add(room.square(box.centre(), half));
        Square best = room.square(room.centroid, 0);
        while (!queue.isEmpty()) {
            Square square = queue.remove();
            if (square.isBetterThan(best)) {
                best = square;
            }
            if (square.bound() <= best.room + toleranceMetres) {
                break;
            }
            double quarter = square.half / 2;
            for (int part = 0; part < 4; part++) {
                Square smaller = room.square(
                        new Coordinate(
                                square.at.x + (part % 2 == 0 ? -quarter : quarter),
                                square.at.y + (part / 2 == 0 ? -quarter : quarter)),
                        quarter);
                if (smaller.bound() > best.room + toleranceMetres || smaller.isBetterThan(best)) {
                    queue.add(smaller);
                }
            }
        }
        return new InscribedCircle(best.at.x, best.at.y, Math.max(0, best.room));
    }

    /** How much room there is at a place: to the rim, negative outside. */
    private static final class Room {
        private final Coordinate centroid;
        private final IndexedPointInAreaLocator locator;
        private final IndexedFacetDistance rim;
        private final Geometry area;

        Room(Geometry area) {
            this.area = area;
            centroid = area.getCentroid().getCoordinate();
            locator = new IndexedPointInAreaLocator(area);
            rim = new IndexedFacetDistance(area.getBoundary());
        }

        Square square(Coordinate at, double half) {
            Coordinate[] nearest = rim.nearestPoints(area.getFactory().createPoint(at));
            double distance = nearest[0].distance(nearest[1]);
            boolean outside = locator.locate(at) == Location.EXTERIOR;
            return new Square(at, half, outside ? -distance : distance, at.distance(centroid));
        }
    }

    /**
     * A square, and how much room its centre has.
     *
     * @param half half its side, metres
     * @param room to the rim from its centre, metres, negative outside
     * @param fromCentroid how far its centre is from the area's centroid, metres
     */
    private record Square(Coordinate at, double half, double room, double fromCentroid) {
        /** Most possible room first; the order of any two is settled, so that no queue can change the outcome. */
        static final Comparator<Square> ORDER = Comparator.comparingDouble((Square square) -> -square.bound())
                .thenComparingDouble(Square::fromCentroid)
                .thenComparingDouble(square -> square.at.x)
                .thenComparingDouble(square -> square.at.y);

        /** No place in it has more room. */
        double bound() {
            return room + half * Math.sqrt(2);
        }

        boolean isBetterThan(Square other) {
            return room > other.room + SAME_METRES
                    || (room > other.room - SAME_METRES && fromCentroid < other.fromCentroid);
        }
    }
}

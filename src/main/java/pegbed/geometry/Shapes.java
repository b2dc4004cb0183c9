package pegbed.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.GeometryFilter;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.Polygonal;
import pegbed.model.BankPoint;
import pegbed.model.Place;

/** Small conversions between places and shapes. */
public final class Shapes {
    /** One factory with floating precision for the whole program. */
    public static final GeometryFactory FACTORY = new GeometryFactory();

    private Shapes() {}

    public static Coordinate coordinate(Place place) {
        return new Coordinate(place.xMetres(), place.yMetres());
    }

    /** A polygon through places, closed by itself; three at least. */
    public static Polygon polygon(List<Coordinate> ring) {
        Coordinate[] closed = new Coordinate[ring.size() + 1];
        for (int i = 0; i < ring.size(); i++) {
            closed[i] = ring.get(i);
        }
        closed[ring.size()] = new Coordinate(ring.get(0));
        return FACTORY.createPolygon(closed);
    }

    /** A line through the points of a bank, joined to a ring or not; two points at least. */
    public static LineString line(List<BankPoint> bank, boolean ring) {
        List<Coordinate> corners = new ArrayList<>(
                bank.stream().map(point -> coordinate(point.place())).toList());
        if (ring) {
            corners.add(corners.get(0));
        }
        return line(corners);
    }

    /** A line through places. */
    static LineString line(List<Coordinate> places) {
        return FACTORY.createLineString(places.toArray(new Coordinate[0]));
    }

    /** The areas of a shape, without loose lines and points such as an intersection leaves where two only touch. */
    public static Geometry areas(Geometry shape) {
        if (shape instanceof Polygonal) {
            return shape;
        }
        List<Polygon> polygons = new ArrayList<>();
        shape.apply((GeometryFilter) part -> {
            if (part instanceof Polygon polygon) {
                polygons.add(polygon);
            }
        });
        return FACTORY.buildGeometry(polygons);
    }

    /** A disc drawn as a polygon of 128 sides. */
    public static Geometry disc(double xMetres, double yMetres, double radiusMetres) {
        return FACTORY.createPoint(new Coordinate(xMetres, yMetres)).buffer(radiusMetres, 32);
    }
}

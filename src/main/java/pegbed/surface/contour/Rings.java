package pegbed.surface.contour;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Makes areas of closed contours, and keeps slivers out. */
final class Rings {
    private final GeometryFactory factory;
    private final double sliver;

    Rings(GeometryFactory factory, double cellMetres) {
        this.factory = factory;
        sliver = Tolerance.sliverSquareMetres(cellMetres);
    }

    static boolean isClosed(Coordinate[] line) {
        return line[0].equals2D(line[line.length - 1]);
    }

    /** Signed area of a ring, positive if it runs clockwise. */
    static double area(Coordinate[] ring) {
        return Area.ofRingSigned(ring);
    }

    /** The area at the right of closed contours: the clockwise ones hold it, the others are its holes. */
    Geometry area(List<Coordinate[]> contours) {
        List<Shell> shells = new ArrayList<>();
        List<Coordinate[]> holes = new ArrayList<>();
        for (Coordinate[] ring : contours) {
            double area = area(ring);
            if (area >= sliver) {
                shells.add(new Shell(ring, area));
            } else if (area <= -sliver) {
                holes.add(ring);
            }
        }
        for (Coordinate[] hole : holes) {
            Shell home = null;
            for (Shell shell : shells) {
                if ((home == null || shell.area < home.area) && shell.holds(hole[0])) {
                    home = shell;
                }
            }
            if (home == null) {
                throw new IllegalStateException("A hole of a contour lies in no shell.");
            }
            home.holes.add(factory.createLinearRing(hole));
        }
        return polygonal(shells.stream().map(shell -> shell.polygon(factory)).toList());
    }

    /** The part of an area within an outline, without slivers. */
    Geometry within(Geometry area, Geometry outline) {
        List<Polygon> parts = new ArrayList<>();
        for (Object part :
                PolygonExtracter.getPolygons(OverlayNGRobust.overlay(area, outline, OverlayNG.INTERSECTION))) {
            Polygon polygon = (Polygon) part;
            if (polygon.getArea() >= sliver) {
                parts.add(withoutSpecks(polygon));
            }
        }
        return polygonal(parts);
    }

    private Polygon withoutSpecks(Polygon polygon) {
        List<LinearRing> holes = new ArrayList<>();
        for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
            if (Area.ofRing(polygon.getInteriorRingN(k).getCoordinates()) >= sliver) {
                holes.add(polygon.getInteriorRingN(k));
            }
        }
        return holes.size() == polygon.getNumInteriorRing()
                ? polygon
                : factory.createPolygon(polygon.getExteriorRing(), holes.toArray(LinearRing[]::new));
    }

    private Geometry polygonal(List<Polygon> polygons) {
        return polygons.size() == 1
                ? polygons.get(0)
                : polygons.isEmpty()
                        ? factory.createPolygon()
                        : factory.createMultiPolygon(polygons.toArray(Polygon[]::new));
    }

    private static final class Shell {
        private final Coordinate[] ring;
        private final double area;
        private final Envelope box = new Envelope();
        private final List<LinearRing> holes = new ArrayList<>();

        Shell(Coordinate[] ring, double area) {
            this.ring = ring;
            this.area = area;
            for (Coordinate point : ring) {
                box.expandToInclude(point);
            }
        }

        boolean holds(Coordinate place) {
            return box.contains(place) && PointLocation.isInRing(place, ring);
        }

        Polygon polygon(GeometryFactory factory) {
            return factory.createPolygon(factory.createLinearRing(ring), holes.toArray(LinearRing[]::new));
        }
    }
}

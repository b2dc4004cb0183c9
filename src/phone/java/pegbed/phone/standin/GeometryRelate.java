package pegbed.phone.standin;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.IntersectionMatrix;
import org.locationtech.jts.operation.relate.RelateOp;

/**
 * Stands for JTS's class of this name, which chooses between two ways of relating geometries: the one that it takes
 * unless told otherwise is here alone.
 */
public final class GeometryRelate {
    private GeometryRelate() {}

    public static void setRelateImpl(String way) {
        // There is one way.
    }

    public static IntersectionMatrix relate(Geometry a, Geometry b) {
        return RelateOp.relate(a, b);
    }

    public static boolean relate(Geometry a, Geometry b, String pattern) {
        return relate(a, b).matches(pattern);
    }

    /** Collections, which can't be related as a whole, meet where their parts do. */
    public static boolean intersects(Geometry a, Geometry b) {
        if (!isCollection(a) && !isCollection(b)) {
            return relate(a, b).isIntersects();
        }
        for (int i = 0; i < a.getNumGeometries(); i++) {
            for (int j = 0; j < b.getNumGeometries(); j++) {
                if (a.getGeometryN(i).intersects(b.getGeometryN(j))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isCollection(Geometry geometry) {
        return geometry.getGeometryType().equals(Geometry.TYPENAME_GEOMETRYCOLLECTION);
    }

    public static boolean disjoint(Geometry a, Geometry b) {
        return !intersects(a, b);
    }

    public static boolean contains(Geometry a, Geometry b) {
        return a.getEnvelopeInternal().contains(b.getEnvelopeInternal()) && relate(a, b).isContains();
    }

    public static boolean covers(Geometry a, Geometry b) {
        return a.getEnvelopeInternal().covers(b.getEnvelopeInternal()) && relate(a, b).isCovers();
    }

    public static boolean coveredBy(Geometry a, Geometry b) {
        return covers(b, a);
    }

    public static boolean within(Geometry a, Geometry b) {
        return contains(b, a);
    }

    public static boolean crosses(Geometry a, Geometry b) {
        return relate(a, b).isCrosses(a.getDimension(), b.getDimension());
    }

    public static boolean touches(Geometry a, Geometry b) {
        return relate(a, b).isTouches(a.getDimension(), b.getDimension());
    }

    public static boolean overlaps(Geometry a, Geometry b) {
        return relate(a, b).isOverlaps(a.getDimension(), b.getDimension());
    }

    public static boolean equalsTopo(Geometry a, Geometry b) {
        return a.getEnvelopeInternal().equals(b.getEnvelopeInternal())
                && relate(a, b).isEquals(a.getDimension(), b.getDimension());
    }
}

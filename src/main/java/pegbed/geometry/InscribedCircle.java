package pegbed.geometry;

import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygonal;

/**
 * The largest circle that fits into an area: the place in it that is farthest from its rim and its holes.
 *
 * @param xMetres x of the centre, metres
 * @param yMetres y of the centre, metres
 * @param radiusMetres radius, metres, 0 or more
 */
public record InscribedCircle(double xMetres, double yMetres, double radiusMetres) {
    /** How far a radius may fall short of the largest one unless another is given, metres. */
    public static final double TOLERANCE_METRES = 0.01;

    /** The largest inscribed circle, its radius at most {@link #TOLERANCE_METRES} too small. */
    public static InscribedCircle of(Geometry area) {
        return of(area, TOLERANCE_METRES);
    }

    /**
     * The largest inscribed circle, found by branch and bound over ever smaller squares (JTS).
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
        MaximumInscribedCircle circle = new MaximumInscribedCircle(area, toleranceMetres);
        return new InscribedCircle(
                circle.getCenter().getX(),
                circle.getCenter().getY(),
                circle.getRadiusLine().getLength());
    }
}

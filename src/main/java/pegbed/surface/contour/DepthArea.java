package pegbed.surface.contour;

import org.locationtech.jts.geom.Geometry;

/**
 * The area at least so deep.
 *
 * @param levelMetres the depth, metres
 * @param area a valid Polygon or MultiPolygon, empty where nothing is so deep
 */
public record DepthArea(double levelMetres, Geometry area) {}

package pegbed.surface.contour;

import org.locationtech.jts.geom.MultiLineString;

/**
 * The lines of one depth.
 *
 * @param levelMetres the depth, metres
 * @param lines maximal lines and closed rings (first point = last), deeper water to the right of their course; none
 *     where the field does not reach the level
 */
public record Contour(double levelMetres, MultiLineString lines) {}

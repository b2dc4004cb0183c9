package pegbed.findings;

import org.locationtech.jts.geom.Geometry;

/**
 * A connected part of the bottom, made of whole cells of the grid.
 *
 * @param shape its outline
 * @param areaMetres2 its area, square metres
 * @param shallowestMetres least mean depth of a disc in it, metres
 * @param deepestMetres greatest, metres
 */
public record Area(Geometry shape, double areaMetres2, double shallowestMetres, double deepestMetres) {}

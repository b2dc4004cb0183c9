package pegbed.report.drawing;

import org.locationtech.jts.geom.Geometry;

/**
 * A filled area without an outline, holes left open.
 *
 * @param role what it means
 * @param layer what it is switched with
 * @param frame what the coordinates are
 * @param shape polygonal, not empty; not to be changed
 * @param step which of the steps of its role, from 0: the depth band, shallowest first; 0 for other roles
 * @param steps how many steps there are, 1 or more
 */
public record Fill(Role role, Layer layer, Frame frame, Geometry shape, int step, int steps) implements Item {
    public Fill {
        if (shape.getDimension() != 2) {
            throw new IllegalArgumentException("A filled area needs a polygonal shape, not " + shape.getGeometryType());
        }
        if (step < 0 || step >= steps) {
            throw new IllegalArgumentException("Step " + step + " is not one of " + steps + ".");
        }
    }

    /** An area whose role has no steps. */
    public Fill(Role role, Layer layer, Frame frame, Geometry shape) {
        this(role, layer, frame, shape, 0, 1);
    }
}

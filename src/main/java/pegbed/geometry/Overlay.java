package pegbed.geometry;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What two shapes share and what one leaves of the other, by the overlay that copes with nearly equal lines. */
public final class Overlay {
    private Overlay() {}

    public static Geometry intersection(Geometry one, Geometry other) {
        return OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION);
    }

    public static Geometry difference(Geometry from, Geometry other) {
        return OverlayNGRobust.overlay(from, other, OverlayNG.DIFFERENCE);
    }
}

package pegbed.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What shapes share, cover together and leave of each other, by the overlay that copes with nearly equal lines. */
public final class Overlay {
    private Overlay() {}

    public static Geometry intersection(Geometry one, Geometry other) {
        return OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION);
    }

    public static Geometry difference(Geometry from, Geometry other) {
        return OverlayNGRobust.overlay(from, other, OverlayNG.DIFFERENCE);
    }

    /**
     * What one shape leaves of another when all of many are taken away; they may overlap, and there may be thousands.
     */
    public static Geometry difference(Geometry from, List<? extends Geometry> others) {
        if (others.isEmpty()) {
            return from;
        }
        return difference(from, others.size() == 1 ? others.get(0) : OverlayNGRobust.union(new ArrayList<>(others)));
    }
}

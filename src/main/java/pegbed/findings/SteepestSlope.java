package pegbed.findings;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.Place;
import pegbed.surface.BottomGrid;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;

/**
 * The steepest ground of a zone.
 *
 * @param zone which
 * @param place where
 * @param slope steepness of the mean gradient over the disc of 0.5 m, rise over run
 * @param downhillDegrees direction in which it gets deeper, degrees from straight out, positive to the right
 * @param depthMetres mean depth there, metres
 */
public record SteepestSlope(Zone zone, Place place, double slope, double downhillDegrees, double depthMetres) {
    static List<SteepestSlope> of(BottomGrid grid, Zones zones) {
        List<SteepestSlope> found = new ArrayList<>();
        GridFrame frame = grid.frame();
        for (Zone zone : Zone.values()) {
            int steepest = -1;
            double max = -1;
            for (int i : zones.nodes(zone)) {
                double slope = grid.discSlope(i);
                if (slope > max) {
                    steepest = i;
                    max = slope;
                }
            }
            if (steepest >= 0) {
                Disc disc = grid.disc(steepest);
                found.add(new SteepestSlope(
                        zone,
                        new Place(frame.x(steepest % frame.columns()), frame.y(steepest / frame.columns())),
                        disc.slope(),
                        Math.toDegrees(Math.atan2(disc.slopeX(), disc.slopeY())),
                        disc.depthMetres()));
            }
        }
        return List.copyOf(found);
    }
}

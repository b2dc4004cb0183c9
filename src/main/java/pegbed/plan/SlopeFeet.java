package pegbed.plan;

import java.util.HashSet;
import java.util.Set;
import pegbed.findings.DepthProfile;
import pegbed.findings.PegMap;
import pegbed.surface.BottomGrid;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;

/** Where slopes end in deep water, looked for on rays from the seat every 15° within {@code Zones.WIDEST_DEGREES}. */
final class SlopeFeet {
    private static final double STEP_DEGREES = 15;

    private SlopeFeet() {}

    /** Nodes of the grid that are the foot of a slope, and fishable. */
    static Set<Integer> of(PegMap map) {
        Set<Integer> feet = new HashSet<>();
        for (double angle = -60; angle <= 60; angle += STEP_DEGREES) {
            along(map, Math.toRadians(angle), feet);
        }
        return feet;
    }

    private static void along(PegMap map, double angle, Set<Integer> feet) {
        BottomGrid grid = map.grid();
        GridFrame frame = grid.frame();
        int before = -1;
        for (double r = 0; r <= map.water().reachMetres(); r += frame.cellMetres()) {
            int node = map.nodeAt(r * Math.sin(angle), r * Math.cos(angle));
            if (node < 0 || node == before || !map.zones().isFishable(node)) {
                before = -1;
                continue;
            }
            if (before >= 0) {
                double here = fall(grid.disc(node), angle);
                double there = fall(grid.disc(before), angle);
                if (there >= DepthProfile.MIN_SLOPE && here < DepthProfile.MIN_SLOPE) {
                    feet.add(node);
                } else if (there > -DepthProfile.MIN_SLOPE && here <= -DepthProfile.MIN_SLOPE) {
                    feet.add(before);
                }
            }
            before = node;
        }
    }

    private static double fall(Disc disc, double angle) {
        return disc.slopeX() * Math.sin(angle) + disc.slopeY() * Math.cos(angle);
    }
}

package pegbed.findings;

import java.util.List;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.surface.BottomGrid;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;

/** The deepest usable place: over discs in the fishable water in front, the greatest D̂ − 0.15·(1 − P(|g| ≤ limit)). */
public final class DeepestSearch {
    /** What a slope is worth less than level ground, metres. */
    private static final double SLOPE_COST_METRES = 0.15;

    /** Depth within which the area counts as the deepest water: 4 in, metres. */
    public static final double AREA_METRES = 0.10;

    private DeepestSearch() {}

    /** @throws InputException if no disc fits into the fishable water */
    static Deepest of(BottomGrid grid, Zones zones) throws InputException {
        FlatProbability odds = FlatProbability.USUAL;
        GridFrame frame = grid.frame();
        int deepest = -1;
        for (int i = 0; i < frame.size(); i++) {
            if (zones.isInFront(i) && (deepest < 0 || grid.discDepth(i) > grid.discDepth(deepest))) {
                deepest = i;
            }
        }
        if (deepest < 0) {
            throw new InputException(
                    "No place in this water is wide enough for a rig; check the banks, the limits and the hazards.");
        }
        // The deepest disc first: after it few are deep enough to be asked how steep they are.
        int best = deepest;
        double bestGentle = odds.gentle(grid.disc(deepest));
        double bestScore = score(grid.discDepth(deepest), bestGentle);
        for (int i = 0; i < frame.size(); i++) {
            if (!zones.isInFront(i) || grid.discDepth(i) < bestScore) {
                continue;
            }
            double gentle = odds.gentle(grid.disc(i));
            double score = score(grid.discDepth(i), gentle);
            if (score > bestScore || (score == bestScore && i < best)) {
                best = i;
                bestScore = score;
                bestGentle = gentle;
            }
        }
        Disc disc = grid.disc(best);
        double minDepth = disc.depthMetres() - AREA_METRES;
        double maxDepth = disc.depthMetres() + AREA_METRES;
        List<Integer> nodes = ConnectedAreas.from(frame, best, i -> {
            double depth = grid.discDepth(i);
            return zones.isFishable(i)
                    && depth >= minDepth
                    && depth <= maxDepth
                    && grid.discSlope(i) <= odds.slopeLimit();
        });
        Place place = new Place(frame.x(best % frame.columns()), frame.y(best / frame.columns()));
        Spot spot = new Spot(place, disc.depthMetres(), disc.sdMetres(), disc.slope(), bestGentle);
        return new Deepest(spot, ConnectedAreas.area(grid, nodes), grid.discDepth(deepest));
    }

    /** What a place is worth as the deepest, metres: its depth, less by the odds that it is too steep. */
    public static double score(double depthMetres, double gentle) {
        return depthMetres - SLOPE_COST_METRES * (1 - gentle);
    }
}

package pegbed.analysis;

import java.util.List;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.surface.BottomGrid;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.GridFrame;
import pegbed.surface.Neighbours;
import pegbed.surface.ReadingCheck;
import pegbed.surface.Survey;

/**
 * Everything about a peg's bottom that does not depend on the target depth.
 *
 * @param peg the document it was made from
 * @param water its water
 * @param bottom the fitted bottom, at the level of the latest visit
 * @param grid that bottom on 25 cm
 * @param zones where the zones lie
 * @param deepest the deepest usable place
 * @param slopes the steepest place of each zone
 * @param checks every reading beside what the peg's other readings make of it, in the survey's order
 */
public record PegMap(
        Peg peg,
        PegWater water,
        FittedBottom bottom,
        BottomGrid grid,
        Zones zones,
        Deepest deepest,
        List<SteepestSlope> slopes,
        List<ReadingCheck> checks) {
    /** Readings further than this many standard deviations from what the others expect are suspicious. */
    public static final double SUSPICIOUS = 3;

    /**
     * Fits the bottom of a peg and finds its deepest usable place.
     *
     * @throws InputException if the banks can't be used
     */
    public static PegMap of(Peg peg, Monitor monitor) throws InputException {
        return of(peg, Neighbours.NONE, monitor);
    }

    /**
     * As {@link #of(Peg, Monitor)}, starting from what other pegs of the same water teach.
     *
     * @throws InputException if the banks can't be used
     */
    public static PegMap of(Peg peg, Neighbours neighbours, Monitor monitor) throws InputException {
        PegWater water = PegWater.of(peg);
        Survey survey = Survey.of(peg, water);
        FittedBottom bottom = BottomModel.fit(survey.beside(neighbours), monitor);
        // Other pegs may be wrong about this one: only its own readings can make a reading suspicious.
        FittedBottom alone = bottom.lesson().isPresent() ? BottomModel.fit(survey, monitor) : bottom;
        BottomGrid grid = bottom.grid(monitor);
        Zones zones = Zones.of(grid, water, peg.pole());
        return new PegMap(
                peg,
                water,
                bottom,
                grid,
                zones,
                DeepestSearch.of(grid, zones),
                SteepestSlope.of(grid, zones),
                alone.readings());
    }

    /** The same bottom, for a peg that differs only in what does not change it, such as its wishes. */
    public PegMap withPeg(Peg other) {
        return new PegMap(other, water, bottom, grid, zones, deepest, slopes, checks);
    }

    /** Whether another map is of the same bottom and place, made by {@link #withPeg} if it is not the same one. */
    public boolean differsInWishesOnly(PegMap other) {
        return grid == other.grid;
    }

    /** The node of the grid nearest to a place, -1 off the grid. */
    int nodeAt(double xMetres, double yMetres) {
        GridFrame frame = grid.frame();
        long column = Math.round((xMetres - frame.xMinMetres()) / frame.cellMetres());
        long row = Math.round((yMetres - frame.yMinMetres()) / frame.cellMetres());
        boolean within = column >= 0 && row >= 0 && column < frame.columns() && row < frame.rows();
        return within ? frame.index((int) column, (int) row) : -1;
    }

    /** The readings that the others contradict. */
    public List<ReadingCheck> suspicious() {
        return checks.stream()
                .filter(check -> Math.abs(check.standardised()) > SUSPICIOUS)
                .toList();
    }
}

package pegbed.surface;

import java.util.Arrays;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import pegbed.geometry.PegWater;
import pegbed.model.Monitor;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;

/**
 * The bottom of a peg on a grid of 25 cm: depth, doubt, and the disc quantities at every node.
 *
 * <p>Depth and doubt have a value at every node in the water and some cells beyond (so that what is drawn can be clipped
 * to the outline); disc quantities at those in the water. Immutable and thread-safe.
 */
public final class BottomGrid {
    /** How many cells beyond the water values are computed. */
    private static final int BEYOND = 4;

    private final GridFrame frame;
    private final boolean[] water;
    private final double[] depth;
    private final double[] sd;
    private final DiscPosteriors discs;

    /** What it was filled from; empty where a reading was added since. */
    private final Optional<GridSolution> solution;

    private BottomGrid(GridSolution filled, DiscPosteriors discs, Optional<GridSolution> solution) {
        this.frame = filled.nodes().frame;
        this.water = filled.nodes().water;
        this.depth = filled.depth();
        this.sd = filled.sd();
        this.discs = discs;
        this.solution = solution;
    }

    static BottomGrid of(FittedBottom bottom, Monitor monitor) {
        PegWater peg = bottom.survey()
                .water()
                .orElseThrow(() -> new IllegalStateException("A grid needs banks to know where the water is."));
        Envelope box = peg.water().getEnvelopeInternal();
        double margin = BEYOND * Disc.CELL_METRES;
        GridFrame frame = GridFrame.covering(
                box.getMinX() - margin,
                box.getMinY() - margin,
                box.getMaxX() + margin,
                box.getMaxY() + margin,
                Disc.CELL_METRES);
        return new GridComputation(bottom, frame, waterNodes(peg, frame)).run(monitor);
    }

    private static boolean[] waterNodes(PegWater peg, GridFrame frame) {
        boolean[] water = new boolean[frame.size()];
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                water[frame.index(column, row)] = peg.isWater(frame.x(column), frame.y(row));
            }
        }
        return water;
    }

    /** A grid as it was solved. */
    static BottomGrid of(GridSolution solution, DiscPrior prior) {
        return new BottomGrid(solution, DiscPosteriors.of(solution, prior), Optional.of(solution));
    }

    /**
     * This grid with one observation more (Rasmussen & Williams 2006, A.12 for one row): the mean goes up by v·β, the
     * covariance down by v·v'.
     *
     * @param solution what this grid was filled from
     * @param v row of the new observation in L⁻¹k, by slot, metres
     * @param beta its entry of L⁻¹y
     */
    BottomGrid withRow(GridSolution solution, double[] v, double beta) {
        double[] mean = solution.mean().clone();
        double[] variance = solution.variance().clone();
        for (int i = 0; i < v.length; i++) {
            mean[i] += v[i] * beta;
            variance[i] -= v[i] * v[i];
        }
        GridSolution moved = new GridSolution(solution.nodes(), solution.places(), solution.whitened(), mean, variance);
        return new BottomGrid(moved, discs.withRow(moved, v, beta), Optional.empty());
    }

    /** What it was filled from; empty where a reading was added since, so that it has to be filled anew. */
    Optional<GridSolution> solution() {
        return solution;
    }

    /** Whether a reading was added to it without working it out anew. */
    public boolean isProvisional() {
        return solution.isEmpty();
    }

    /** The mask grown by a number of cells in all eight directions. */
    static boolean[] grown(GridFrame frame, boolean[] mask, int cells) {
        boolean[] wide = new boolean[mask.length];
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                if (mask[frame.index(column, row)]) {
                    int left = Math.max(0, column - cells);
                    int right = Math.min(frame.columns() - 1, column + cells);
                    for (int r = Math.max(0, row - cells); r <= Math.min(frame.rows() - 1, row + cells); r++) {
                        Arrays.fill(wide, frame.index(left, r), frame.index(right, r) + 1, true);
                    }
                }
            }
        }
        return wide;
    }

    public GridFrame frame() {
        return frame;
    }

    /** Whether a node lies in the water within reach and limits. */
    public boolean isWater(int index) {
        return water[index];
    }

    /** Expected depth, metres. */
    public Field depth() {
        return new Field(frame, depth);
    }

    /** Standard deviation of the depth that a rig laid there would find, metres. */
    public Field sd() {
        return new Field(frame, sd);
    }

    /** The disc about a node in the water; every component NaN elsewhere. */
    public Disc disc(int index) {
        return discs.at(index);
    }

    /** Mean depth of the disc about a node, metres, quicker to have than all of the {@linkplain #disc disc}. */
    public double discDepth(int index) {
        return discs.depth(index);
    }

    /** Steepness of the disc about a node, rise over run, quicker to have than all of the {@linkplain #disc disc}. */
    public double discSlope(int index) {
        return discs.slope(index);
    }

    /** What the standard deviation of a disc's mean depth is not above, metres. */
    public double discSdMost(int index) {
        return discs.sdMost(index);
    }
}

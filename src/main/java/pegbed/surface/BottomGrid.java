package pegbed.surface;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import pegbed.geometry.PegWater;
import pegbed.model.Monitor;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;
import pegbed.surface.prior.BankDistances;

/**
 * The bottom of a peg on a grid of 25 cm: depth, doubt, and the disc quantities at every node.
 *
 * <p>Depth and doubt have a value at every node in the water and some cells beyond (so that what is drawn can be
 * clipped to the outline); disc quantities at those in the water. Immutable and thread-safe.
 */
public final class BottomGrid {
    /** How many cells beyond the water values are computed. */
    private static final int BEYOND = 4;

    private final GridNodes nodes;
    private final BankDistances distances;
    private final double[] depth;
    private final double[] sd;
    private final DiscPosteriors discs;
    private final List<Part> parts;
    private final boolean provisional;

    /**
     * The posterior of one structure on the grid.
     *
     * @param weight how much it counts
     * @param solution what was solved for
     * @param discs its discs
     */
    record Part(double weight, GridSolution solution, DiscPosteriors discs) {}

    private BottomGrid(GridNodes nodes, BankDistances distances, List<Part> parts, boolean provisional) {
        this.nodes = nodes;
        this.distances = distances;
        this.parts = List.copyOf(parts);
        this.provisional = provisional;
        double[] mean = new double[nodes.count()];
        double[] variance = new double[nodes.count()];
        mix(parts, mean, variance);
        discs = parts.size() == 1
                ? parts.get(0).discs()
                : DiscPosteriors.mixture(
                        nodes,
                        mean,
                        variance,
                        parts.stream()
                                .map(part -> new DiscPosteriors.Part(part.weight(), part.discs()))
                                .toList());
        double[] doubt = new double[mean.length];
        for (int i = 0; i < doubt.length; i++) {
            double placing =
                    PlacingVariance.at(distances, i, nodes.difference(mean, i, 1, 0), nodes.difference(mean, i, 0, 1));
            doubt[i] = Math.sqrt(Math.max(0, variance[i]) + placing);
        }
        depth = nodes.byNode(mean);
        sd = nodes.byNode(doubt);
    }

    /** Mean and variance of the mixture by slot. */
    private static void mix(List<Part> parts, double[] mean, double[] variance) {
        for (Part part : parts) {
            double weight = part.weight();
            double[] own = part.solution().mean();
            double[] ownVariance = part.solution().variance();
            for (int i = 0; i < mean.length; i++) {
                mean[i] += weight * own[i];
                variance[i] += weight * (ownVariance[i] + own[i] * own[i]);
            }
        }
        for (int i = 0; i < mean.length; i++) {
            variance[i] -= mean[i] * mean[i];
        }
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
        GridNodes nodes = new GridNodes(frame, waterNodes(peg, frame));
        double[][] at = nodes.coordinates();
        BankDistances distances =
                BankDistances.of(at[0], at[1], peg, bottom.scale().horizontal());
        List<Part> parts = new ArrayList<>();
        int[] counting = bottom.counting();
        for (int s : counting) {
            StructureFit fit = bottom.fits().get(s);
            Monitor own = new PartMonitor(monitor, parts.size(), counting.length);
            GridSolution solution = new GridComputation(fit, nodes, at, distances).run(own);
            DiscPrior prior = new DiscPrior(fit.covariance(), nodes, solution.places());
            parts.add(new Part(bottom.weight(s), solution, DiscPosteriors.of(solution, prior)));
        }
        return new BottomGrid(nodes, distances, parts, false);
    }

    /** Reports the progress of one structure as a part of that of all. */
    private record PartMonitor(Monitor whole, int before, int parts) implements Monitor {
        @Override
        public void progress(double share) {
            whole.progress((before + share) / parts);
        }

        @Override
        public boolean cancelled() {
            return whole.cancelled();
        }
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

    /**
     * This grid with one observation more (Rasmussen & Williams 2006, A.12 for one row): the mean of each structure
     * goes up by v·β, its covariance down by v·v'.
     *
     * @param v for each structure, its row of the new observation in L⁻¹k, by slot, metres
     * @param beta for each structure, its entry of L⁻¹y
     */
    BottomGrid withRows(double[][] v, double[] beta) {
        List<Part> moved = new ArrayList<>();
        for (int p = 0; p < v.length; p++) {
            Part part = parts.get(p);
            double[] mean = part.solution().mean().clone();
            double[] variance = part.solution().variance().clone();
            for (int i = 0; i < mean.length; i++) {
                mean[i] += v[p][i] * beta[p];
                variance[i] -= v[p][i] * v[p][i];
            }
            GridSolution solution = new GridSolution(
                    nodes, part.solution().places(), part.solution().whitened(), mean, variance);
            moved.add(new Part(part.weight(), solution, part.discs().withRow(solution, v[p], beta[p])));
        }
        return new BottomGrid(nodes, distances, moved, true);
    }

    /** The posteriors of the structures whose weight is above 0, in the order of the bottom's fits. */
    List<Part> parts() {
        return parts;
    }

    /** Whether a reading was added to it without working it out anew. */
    public boolean isProvisional() {
        return provisional;
    }

    /** Number of structures whose weight is above 0. */
    public int structures() {
        return parts.size();
    }

    /** Weight of one of them. */
    public double weight(int structure) {
        return parts.get(structure).weight();
    }

    /** Mean depth of the disc about a node under one structure, metres. */
    public double discDepth(int structure, int index) {
        return parts.get(structure).discs().depth(index);
    }

    /** An upper bound of the standard deviation of a disc's mean depth under one structure, metres. */
    public double discSdUpper(int structure, int index) {
        return parts.get(structure).discs().sdUpper(index);
    }

    public GridFrame frame() {
        return nodes.frame;
    }

    /** Whether a node lies in the water within reach and limits. */
    public boolean isWater(int index) {
        return nodes.water[index];
    }

    /** Expected depth, metres. */
    public Field depth() {
        return new Field(nodes.frame, depth);
    }

    /** Standard deviation of the depth that a rig laid there would find, metres. */
    public Field sd() {
        return new Field(nodes.frame, sd);
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
}

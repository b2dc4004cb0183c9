package pegbed.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import pegbed.surface.posterior.Disc;

/**
 * The discs of a grid. Their mean depths and slopes are there from the start, for all are looked at; their covariances
 * are worked out when they are first asked for, for of few they are. Thread-safe; nobody sees it change.
 */
final class DiscPosteriors {
    private static final Disc NONE = new Disc(
            Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    private final GridNodes nodes;
    private final double[] depth;
    private final double[] slopeX;
    private final double[] slopeY;
    private final double[] sdUpper;
    private final IntFunction<Disc> work;
    /** Threads may work one out twice, which gives the same; a record is seen whole or not at all (JLS 17.5). */
    private final Disc[] known;

    /**
     * The discs of a grid.
     *
     * @param nodes its nodes
     * @param mean expected depth by slot, metres
     * @param variance of the depth by slot, square metres
     * @param work works out the disc about a water node, the same whenever it is asked
     */
    private DiscPosteriors(GridNodes nodes, double[] mean, double[] variance, IntFunction<Disc> work) {
        this.nodes = nodes;
        this.work = work;
        known = new Disc[nodes.frame.size()];
        depth = nodes.unknown();
        slopeX = nodes.unknown();
        slopeY = nodes.unknown();
        sdUpper = nodes.unknown();
        double[] sd = new double[variance.length];
        for (int i = 0; i < sd.length; i++) {
            sd[i] = Math.sqrt(Math.max(0, variance[i]));
        }
        DiscStencil stencil = new DiscStencil(nodes);
        for (int node = 0; node < depth.length; node++) {
            if (nodes.water[node]) {
                stencil.to(node);
                stencil.look(sd);
                sdUpper[node] = stencil.depth();
                stencil.look(mean);
                depth[node] = stencil.depth();
                slopeX[node] = stencil.slopeX();
                slopeY[node] = stencil.slopeY();
            }
        }
    }

    /** The discs of a mixture, whose parts are discs on the same nodes. */
    static DiscPosteriors mixture(GridNodes nodes, double[] mean, double[] variance, List<Part> parts) {
        return new DiscPosteriors(nodes, mean, variance, node -> {
            List<Disc.Component> components = new ArrayList<>();
            for (Part part : parts) {
                components.add(new Disc.Component(part.weight(), part.discs().at(node)));
            }
            return Disc.mixture(components);
        });
    }

    /** Discs of one structure and how much they count. */
    record Part(double weight, DiscPosteriors discs) {}

    /** The discs of what was solved for. */
    static DiscPosteriors of(GridSolution solution, DiscPrior prior) {
        return new DiscPosteriors(solution.nodes(), solution.mean(), solution.variance(), node -> {
            DiscStencil stencil = new DiscStencil(solution.nodes());
            stencil.to(node);
            double[] c = prior.of(stencil);
            stencil.takeProducts(solution.whitened(), solution.observations(), c);
            stencil.look(solution.mean());
            return new Disc(stencil.depth(), stencil.slopeX(), stencil.slopeY(), c[0], c[1], c[2], c[3], c[4], c[5]);
        });
    }

    /**
     * These discs with one observation more.
     *
     * @param moved what was solved for, with it
     * @param v its row of L⁻¹k, by slot, metres
     * @param beta its entry of L⁻¹y
     */
    DiscPosteriors withRow(GridSolution moved, double[] v, double beta) {
        return new DiscPosteriors(nodes, moved.mean(), moved.variance(), node -> {
            DiscStencil stencil = new DiscStencil(nodes);
            stencil.to(node);
            stencil.look(v);
            return at(node).after(stencil.depth(), stencil.slopeX(), stencil.slopeY(), beta);
        });
    }

    /** The disc about a node of the frame; every component NaN where no water is. */
    Disc at(int node) {
        if (!nodes.water[node]) {
            return NONE;
        }
        Disc disc = known[node];
        if (disc == null) {
            disc = work.apply(node);
            known[node] = disc;
        }
        return disc;
    }

    /** D of a node's disc, metres; NaN where no water is. */
    double depth(int node) {
        return depth[node];
    }

    /** Steepness of a node's disc, rise over run; NaN where no water is. */
    double slope(int node) {
        return Math.sqrt(slopeX[node] * slopeX[node] + slopeY[node] * slopeY[node]);
    }

    /** An upper bound of D's standard deviation, metres: the mean of those of the disc's nodes. */
    double sdUpper(int node) {
        return sdUpper[node];
    }
}

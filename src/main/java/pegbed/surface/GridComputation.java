package pegbed.surface;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import pegbed.model.Monitor;

/**
 * Fills a {@link BottomGrid}: covariances and triangular solves for many nodes at once, then the disc functionals from
 * their neighbours. Loops run over nodes innermost, which is what a processor does fast; nodes do not depend on each
 * other, so that all cores may work, and the answer is the same however many there are.
 */
final class GridComputation {
    /** So many nodes are solved for together: their rows fit into a processor's cache. */
    private static final int BLOCK = 128;

    private final FittedBottom bottom;
    private final GridNodes nodes;
    private final Places places;
    private final int n;
    /** L⁻¹k, observation by node. */
    private final double[][] whitened;

    private final double[] mean;
    private final double[] variance;

    GridComputation(FittedBottom bottom, GridFrame frame, boolean[] water) {
        this.bottom = bottom;
        nodes = new GridNodes(frame, water);
        double[][] at = nodes.coordinates();
        places = bottom.places(at[0], at[1]);
        n = bottom.observations().count;
        whitened = new double[n][nodes.count()];
        mean = new double[nodes.count()];
        variance = new double[nodes.count()];
    }

    BottomGrid run(Monitor monitor) {
        int blocks = (nodes.count() + BLOCK - 1) / BLOCK;
        AtomicInteger done = new AtomicInteger();
        IntStream.range(0, blocks).parallel().forEach(block -> {
            monitor.check();
            condition(block * BLOCK, Math.min((block + 1) * BLOCK, nodes.count()));
            monitor.progress(0.8 * done.incrementAndGet() / blocks);
        });
        GridSolution solution = new GridSolution(nodes, places, whitened, mean, variance);
        double[][] disc = discs(monitor);
        monitor.progress(1);
        return BottomGrid.solved(solution, disc);
    }

    /** Mean and variance of some nodes. */
    private void condition(int from, int to) {
        BottomCovariance k = bottom.covariance();
        Conditioned conditioned = bottom.conditioned();
        double[] alpha = conditioned.alpha();
        for (int i = from; i < to; i++) {
            mean[i] = bottom.tub().depth(places, i) + conditioned.constant();
            variance[i] = k.between(places, i, places, i);
        }
        for (int j = 0; j < n; j++) {
            double[] row = whitened[j];
            bottom.covariances(places, from, to, j, row);
            double pull = alpha[j];
            for (int i = from; i < to; i++) {
                mean[i] += pull * row[i];
            }
        }
        conditioned.whiten(whitened, from, to);
        for (double[] row : whitened) {
            for (int i = from; i < to; i++) {
                variance[i] -= row[i] * row[i];
            }
        }
    }

    /** D, gx, gy and their covariances C_DD, C_DX, C_DY, C_XX, C_XY, C_YY, by node of the frame. */
    private double[][] discs(Monitor monitor) {
        double[][] disc = new double[9][];
        Arrays.setAll(disc, f -> nodes.unknown());
        DiscPrior prior = new DiscPrior(bottom.covariance(), nodes, places);
        nodes.runs.parallelStream().forEach(run -> {
            monitor.check();
            DiscStencil stencil = new DiscStencil(run.length());
            stencil.look(mean, run);
            System.arraycopy(stencil.depth, 0, disc[0], run.node(), run.length());
            System.arraycopy(stencil.slopeX, 0, disc[1], run.node(), run.length());
            System.arraycopy(stencil.slopeY, 0, disc[2], run.node(), run.length());
            prior.into(run, disc);
            for (double[] row : whitened) {
                stencil.look(row, run);
                stencil.takeProducts(disc, run);
            }
        });
        return disc;
    }
}

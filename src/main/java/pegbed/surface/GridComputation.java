package pegbed.surface;

import java.util.concurrent.atomic.AtomicInteger;
import pegbed.model.Monitor;
import pegbed.model.Parallel;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.prior.BankDistances;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.PlaceCoordinates;

/**
 * Solves one structure's fit on the nodes of a {@link BottomGrid}: covariances and triangular solves for many nodes at
 * once. Loops run over nodes innermost, which is what a processor does fast; nodes do not depend on each other, so that
 * all cores may work, and the answer is the same however many there are.
 */
final class GridComputation {
    /** So many nodes are solved for together: their rows fit into a processor's cache. */
    private static final int BLOCK = 128;

    /** Blocks are shared out among so many, more than any usual number of cores. */
    private static final int STRANDS = 16;

    private final StructureFit bottom;
    private final GridNodes nodes;
    private final PlaceCoordinates places;
    private final int n;
    /** L⁻¹k of each node, one after the other. */
    private final double[] whitened;

    private final double[] mean;
    private final double[] variance;

    /**
     * @param nodes where values are wanted
     * @param at their coordinates: x, then y, metres
     * @param distances theirs from the banks
     */
    GridComputation(StructureFit bottom, GridNodes nodes, double[][] at, BankDistances distances) {
        this.bottom = bottom;
        this.nodes = nodes;
        places = PlaceCoordinates.of(at[0], at[1], bottom.prior(), distances);
        n = bottom.observations().count;
        whitened = new double[n * nodes.count()];
        mean = new double[nodes.count()];
        variance = new double[nodes.count()];
    }

    GridSolution run(Monitor monitor) {
        int blocks = (nodes.count() + BLOCK - 1) / BLOCK;
        int strands = Math.min(blocks, STRANDS);
        AtomicInteger done = new AtomicInteger();
        Parallel.each(strands, strand -> {
            // One place in memory for all its blocks, which stays near the processor.
            double[][] rows = new double[n][BLOCK];
            for (int block = strand; block < blocks; block += strands) {
                monitor.check();
                condition(block * BLOCK, Math.min((block + 1) * BLOCK, nodes.count()), rows);
                // One after the other, so that the progress reported never falls.
                synchronized (done) {
                    monitor.progress((double) done.incrementAndGet() / blocks);
                }
            }
        });
        return new GridSolution(nodes, places, whitened, mean, variance);
    }

    /**
     * L⁻¹k, mean and variance of some nodes.
     *
     * @param rows written over: observation by node
     */
    private void condition(int from, int to, double[][] rows) {
        BottomCovariance k = bottom.covariance();
        GaussianProcess process = bottom.process();
        double[] alpha = process.alpha();
        PlaceCoordinates some = places.part(from, to);
        double[] depth = new double[some.count];
        double[] left = new double[some.count];
        for (int i = 0; i < some.count; i++) {
            depth[i] = bottom.prior().depth(some, i) + process.constant();
            left[i] = k.between(some, i, some, i);
        }
        bottom.covariances(some, rows);
        for (int j = 0; j < n; j++) {
            double[] row = rows[j];
            double pull = alpha[j];
            for (int i = 0; i < depth.length; i++) {
                depth[i] += pull * row[i];
            }
        }
        process.whiten(rows, 0, some.count);
        for (double[] row : rows) {
            for (int i = 0; i < left.length; i++) {
                left[i] -= row[i] * row[i];
            }
        }
        System.arraycopy(depth, 0, mean, from, some.count);
        System.arraycopy(left, 0, variance, from, some.count);
        int j = 0;
        for (; j + 4 <= n; j += 4) {
            putTogether(rows[j], rows[j + 1], rows[j + 2], rows[j + 3], from * n + j, some.count);
        }
        for (; j < n; j++) {
            double[] row = rows[j];
            for (int i = 0; i < some.count; i++) {
                whitened[(from + i) * n + j] = row[i];
            }
        }
    }

    /** Four observations' figures of each node, put side by side. */
    private void putTogether(double[] a, double[] b, double[] c, double[] d, int first, int count) {
        int at = first;
        for (int i = 0; i < count; i++, at += n) {
            whitened[at] = a[i];
            whitened[at + 1] = b[i];
            whitened[at + 2] = c[i];
            whitened[at + 3] = d[i];
        }
    }
}

package pegbed.guidance;

import java.util.stream.IntStream;
import pegbed.findings.PegMap;
import pegbed.findings.StandardNormal;
import pegbed.surface.Lookahead;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;

/**
 * By how much a planned reading lowers the doubt of the whole map: Σ w_k·cov(f_k, f_c)² / (var_c + τ_c²) over nodes k
 * that fill the water in front, divided by their number, in square metres. Until the deepest place has had its
 * readings, places that may prove the deepest weigh more: w_k = 1 + a·P(D_k > D_deepest − 5 cm).
 */
final class VarianceReduction {
    /** Every which node counts: 75 cm apart. */
    private static final int STRIDE = 3;

    /** Nearly as deep as the deepest, metres. */
    private static final double NEARLY_METRES = 0.05;

    private static final double MIN_SD_METRES = 0.03;

    private VarianceReduction() {}

    /** Gain of each planned reading. */
    static double[] of(PegMap map, Lookahead lookahead, GuidanceWeights blend) {
        GridFrame frame = map.grid().frame();
        int[] nodes = IntStream.range(0, frame.size())
                .filter(i -> onStride(frame.x(i % frame.columns()), frame.cellMetres())
                        && onStride(frame.y(i / frame.columns()), frame.cellMetres())
                        && map.zones().isInFront(i))
                .toArray();
        double[][] moves = lookahead.depths(
                IntStream.of(nodes)
                        .mapToDouble(i -> frame.x(i % frame.columns()))
                        .toArray(),
                IntStream.of(nodes)
                        .mapToDouble(i -> frame.y(i / frame.columns()))
                        .toArray());
        double nearly = map.deepest().spot().depthMetres() - NEARLY_METRES;
        double share = map.peg().readings().size() < blend.deepestUntil() ? blend.deepShare() : 0;
        double[] gains = new double[lookahead.size()];
        for (int k = 0; k < nodes.length; k++) {
            double more = share == 0 ? 0 : share * deeper(map.grid().disc(nodes[k]), nearly);
            double weight = (1 + more) / nodes.length;
            for (int c = 0; c < gains.length; c++) {
                gains[c] += weight * moves[k][c] * moves[k][c];
            }
        }
        return gains;
    }

    private static boolean onStride(double metres, double cellMetres) {
        return Math.round(metres / cellMetres) % STRIDE == 0;
    }

    /** Probability that a disc is deeper than a depth. */
    private static double deeper(Disc disc, double depthMetres) {
        return StandardNormal.cumulative((disc.depthMetres() - depthMetres) / Math.max(disc.sdMetres(), MIN_SD_METRES));
    }
}

package pegbed.guidance;

import java.util.Optional;
import pegbed.findings.FlatSearch;
import pegbed.findings.Zone;
import pegbed.surface.posterior.Disc;

/**
 * One decision that the readings serve: which of some nodes to name, by the greatest worth.
 *
 * @param zone the zone in which a flat spot is sought; empty for the deepest place
 * @param targetMetres depth at which it is sought, metres; NaN for the deepest place
 * @param weight what one unit of worth counts
 * @param followed by how many times as much as it does a reading is taken to move what is expected, 1 or more
 * @param nodes the nodes that may be named, best first
 * @param discs the disc about each
 * @param worth what each is worth now
 */
record Decision(
        Optional<Zone> zone,
        double targetMetres,
        double weight,
        double followed,
        int[] nodes,
        Disc[] discs,
        double[] worth) {
    /** Moves smaller than these can't change a worth by much: depth in metres, slope. */
    private static final double MIN_DEPTH = 0.002;

    private static final double MIN_SLOPE = 0.004;

    /** The same decision with other discs about its nodes. */
    Decision with(Disc[] others) {
        double[] worths = new double[others.length];
        for (int k = 0; k < worths.length; k++) {
            worths[k] = zone.isEmpty() ? new DeepWorth().now(others[k]) : new FlatWorth(targetMetres).now(others[k]);
        }
        return new Decision(zone, targetMetres, weight, followed, nodes, others, worths);
    }

    /** Worths of node k after a planned reading, one an outcome z (standard deviations). */
    void after(int k, double moveD, double moveX, double moveY, double[] z, double[] result) {
        if (zone.isEmpty()) {
            new DeepWorth().after(discs[k], followed * moveD, followed * moveX, followed * moveY, z, result);
        } else if (Math.abs(moveD) < MIN_DEPTH && Math.hypot(moveX, moveY) < MIN_SLOPE) {
            java.util.Arrays.fill(result, worth[k]);
        } else {
            new FlatWorth(targetMetres).after(discs[k], moveD, moveX, moveY, z, result);
        }
    }

    /**
     * More than the worths of node k after a planned reading can be, one an outcome z; what costs as much is not tried.
     */
    void upperBound(int k, double moveD, double moveX, double moveY, double[] z, double[] result) {
        if (zone.isEmpty()) {
            java.util.Arrays.fill(result, Double.POSITIVE_INFINITY);
        } else {
            new FlatWorth(targetMetres).upperBound(discs[k], moveD, moveX, moveY, z, result);
        }
    }

    /** How much a move at node k might matter, to find the candidates worth a closer look. */
    double stir(int k, double moveD, double moveX, double moveY) {
        if (zone.isEmpty()) {
            return Math.exp(worth[k] - worth[0]) * Math.abs(moveD) / GuidanceWeights.DEPTH_METRES;
        }
        double band = FlatSearch.WIDE.bandMetres();
        double limit = FlatSearch.WIDE.slopeLimit();
        return (worth[k] + 0.05)
                * Math.sqrt(moveD * moveD / (band * band) + (moveX * moveX + moveY * moveY) / (limit * limit));
    }
}

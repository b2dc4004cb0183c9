package pegbed.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbed.findings.FlatProbability;
import pegbed.findings.PegMap;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.surface.Lookahead;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;

/**
 * The reading that settles most about one line: the place, at the line or near it, whose reading most changes the
 * probability that the line is flat at its depth, E|P(z) − P| over the reading's outcome z.
 *
 * @param place where to read
 * @param now the probability as it is, 0 to 1
 * @param change by how much the reading is expected to move it, up or down
 */
public record ConfirmingReading(Place place, double now, double change) {
    /** Readings further from a line than this are about something else, metres. */
    private static final double NEAR_METRES = 2.5;

    /**
     * The confirming reading of a line.
     *
     * @param line where the rig is to lie
     * @param targetMetres the depth at which it is to be flat, metres
     * @return empty where the line is too near the bank for a rig, or no place near it can be plumbed
     */
    public static Optional<ConfirmingReading> of(PegMap map, Place line, double targetMetres) {
        GridFrame frame = map.grid().frame();
        int node = map.nodeAt(line.xMetres(), line.yMetres());
        if (node < 0 || !map.grid().isWater(node)) {
            return Optional.empty();
        }
        Disc disc = map.grid().disc(node);
        List<Candidate> near = near(map, line);
        int visit = map.peg().visits().size() - 1;
        Lookahead lookahead = Lookahead.of(
                map.bottom(), near.stream().map(c -> c.planned(visit)).toList());
        double[][] moves = lookahead.discs(frame, new int[] {node})[0];
        int best = -1;
        double max = -1;
        for (int c = 0; c < near.size(); c++) {
            double change = change(disc, moves[0][c], moves[1][c], moves[2][c], targetMetres);
            if (change > max) {
                max = change;
                best = c;
            }
        }
        double now = FlatProbability.USUAL.flat(disc, targetMetres);
        return best < 0
                ? Optional.empty()
                : Optional.of(new ConfirmingReading(near.get(best).place(), now, max));
    }

    /** The line itself first, so that it is preferred where others settle no more. */
    private static List<Candidate> near(PegMap map, Place line) {
        Candidates candidates = Candidates.of(map.peg(), map.water());
        List<Candidate> near = new ArrayList<>();
        if (candidates.allows(line)) {
            near.add(new Candidate(line.distanceMetres(), line.angleDegrees(), Precision.PLAIN));
        }
        candidates.open().stream()
                .filter(candidate -> candidate.place().distanceTo(line) <= NEAR_METRES)
                .forEach(near::add);
        return near;
    }

    private static double change(Disc disc, double moveD, double moveX, double moveY, double target) {
        double[] p = new double[KnowledgeGradient.Z.length];
        double mean = 0;
        for (int j = 0; j < p.length; j++) {
            p[j] = FlatProbability.USUAL.flat(disc.after(moveD, moveX, moveY, KnowledgeGradient.Z[j]), target);
            mean += KnowledgeGradient.WEIGHT[j] * p[j];
        }
        double change = 0;
        for (int j = 0; j < p.length; j++) {
            change += KnowledgeGradient.WEIGHT[j] * Math.abs(p[j] - mean);
        }
        return change;
    }
}

package pegbed.guidance;

import java.util.List;
import pegbed.model.Place;
import pegbed.surface.Lookahead;
import pegbed.surface.posterior.Disc;

/**
 * What the best reading promised before the last one was taken, for the decisions as they are asked now: the same nodes
 * and candidates, and the place of the last reading itself. Leaving one reading out of a Gaussian field needs no new
 * fit (Rasmussen & Williams 2006, section 5.4.2): expectations, variances and moves before it follow from those after
 * it and from the moves that it made, with the hyperparameters as they are now.
 */
final class RetrospectiveGain {
    private final List<Decision> choices;
    /**
     * Moves of the disc quantities after the last reading, by decision, node, quantity and reading, the last at the
     * end.
     */
    private final double[][][][] moves;
    /** The readings that are compared, the one that was taken among them. */
    private final int readings;
    /** By how much the last reading moved the depth at each of the planned. */
    private final double[] moved;
    /** Standard deviation of each of the planned, before the last and after it. */
    private final double[] spreadBefore;

    private final double[] spreadAfter;
    private final double outcome;

    private RetrospectiveGain(
            List<Decision> choices, double[][][][] moves, Lookahead withLast, List<Place> planned, double outcome) {
        this.choices = choices;
        this.moves = moves;
        this.outcome = outcome;
        readings = planned.size() + 1;
        moved = new double[planned.size()];
        spreadBefore = new double[planned.size()];
        spreadAfter = new double[planned.size()];
        double[][] depths = withLast.depths(
                planned.stream().mapToDouble(Place::xMetres).toArray(),
                planned.stream().mapToDouble(Place::yMetres).toArray());
        for (int c = 0; c < moved.length; c++) {
            moved[c] = depths[c][moved.length];
            spreadAfter[c] = withLast.spreadMetres(c);
            spreadBefore[c] = Math.hypot(spreadAfter[c], moved[c]);
        }
    }

    /**
     * The greatest gain of any reading before the last.
     *
     * @param moves by decision, node, quantity and reading, as {@code withLast} gives them
     * @param withLast the view on the planned readings and, after them, on the one that was taken
     * @param planned where the planned readings are
     * @param outcome how the one that was taken came out
     */
    static double max(
            List<Decision> choices, double[][][][] moves, Lookahead withLast, List<Place> planned, double outcome) {
        return new RetrospectiveGain(choices, moves, withLast, planned, outcome).max();
    }

    private double max() {
        double[][][][] before = new double[moves.length][][][];
        List<Decision> asked = new java.util.ArrayList<>();
        for (int d = 0; d < moves.length; d++) {
            Decision choice = choices.get(d);
            Disc[] discs = new Disc[moves[d].length];
            before[d] = new double[moves[d].length][3][];
            for (int k = 0; k < discs.length; k++) {
                double[][] node = moves[d][k];
                int last = readings - 1;
                discs[k] = choice.discs()[k].before(node[0][last], node[1][last], node[2][last], outcome);
                for (int f = 0; f < node.length; f++) {
                    before[d][k][f] = before(node[f]);
                }
            }
            asked.add(choice.with(discs));
        }
        double max = 0;
        for (int c : ValueOfInformation.closely(asked, before, readings)) {
            double gain = 0;
            for (int d = 0; d < before.length; d++) {
                gain += KnowledgeGradient.gain(asked.get(d), before[d], c);
            }
            max = Math.max(max, gain);
        }
        return max;
    }

    /** Moves of one quantity before the last reading, from those after it. */
    private double[] before(double[] after) {
        double[] before = new double[readings];
        double last = after[readings - 1];
        for (int c = 0; c < moved.length; c++) {
            before[c] = (after[c] * spreadAfter[c] + last * moved[c]) / spreadBefore[c];
        }
        before[readings - 1] = last;
        return before;
    }
}

package pegbed.guidance;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pegbed.findings.FlatSearch;
import pegbed.findings.PegMap;
import pegbed.model.Place;
import pegbed.surface.Lookahead;
import pegbed.surface.grid.GridFrame;

/**
 * What each candidate is expected to gain for the decisions that the readings serve. Only the candidates that stir the
 * decisions most are looked at closely; the others count as 0.
 */
final class ValueOfInformation {
    /** How many candidates the depths at the nodes leave, and how many of those their discs leave. */
    private static final int ROUGHLY = 72;

    private static final int CLOSELY = 36;

    /** A place within this of a decision's nodes is about that decision, metres. */
    private static final double NEAR_METRES = 2.5;

    private final PegMap map;
    private final List<Candidate> candidates;
    private final List<Decision> choices;
    /** Candidates whose discs were looked at, as indices. */
    private final int[] shortlist;
    /** The view on the shortlist and, where {@link #seesLast}, on the last reading that was taken. */
    private final Lookahead some;

    private final boolean seesLast;
    /** Moves of the disc quantities by decision, node, quantity and reading that {@link #some} looks at. */
    private final double[][][][] moves;
    /** Weighted, by decision and place in the shortlist. */
    private final double[][] gains;

    private final double[] total;

    private ValueOfInformation(PegMap map, List<Candidate> candidates, List<Decision> choices) {
        this.map = map;
        this.candidates = candidates;
        this.choices = choices;
        int visit = map.peg().visits().size() - 1;
        Lookahead lookahead = Lookahead.of(
                map.bottom(),
                candidates.stream().map(candidate -> candidate.planned(visit)).toList());
        GridFrame frame = map.grid().frame();
        shortlist = roughly(lookahead, frame);
        Lookahead these = lookahead.only(shortlist);
        Optional<Lookahead> withLast = these.withTaken(last());
        some = withLast.orElse(these);
        seesLast = withLast.isPresent();
        moves = new double[choices.size()][][][];
        for (int d = 0; d < moves.length; d++) {
            moves[d] = some.discs(frame, choices.get(d).nodes());
        }
        gains = new double[moves.length][shortlist.length];
        total = new double[candidates.size()];
        for (int c : closely(choices, moves, shortlist.length)) {
            for (int d = 0; d < moves.length; d++) {
                gains[d][c] = KnowledgeGradient.gain(choices.get(d), moves[d], c);
                total[shortlist[c]] += gains[d][c];
            }
        }
    }

    /** Appraises candidates at the target that the person set, else at half the deepest. */
    static ValueOfInformation of(PegMap map, List<Candidate> candidates, GuidanceWeights blend) {
        double target =
                map.peg().wishes().targetMetres().orElse(map.deepest().spot().depthMetres() / 2);
        return new ValueOfInformation(map, candidates, Decisions.of(map, target, blend));
    }

    /** Appraises candidates for the deepest place alone. */
    static ValueOfInformation ofDeepest(PegMap map, List<Candidate> candidates, GuidanceWeights blend) {
        return new ValueOfInformation(map, candidates, List.of(Decisions.deepest(map, blend)));
    }

    /** Those of some readings that stir the decisions most by their discs. */
    static int[] closely(List<Decision> choices, double[][][][] moves, int readings) {
        double[] stir = new double[readings];
        for (int d = 0; d < moves.length; d++) {
            Decision choice = choices.get(d);
            for (int c = 0; c < readings; c++) {
                double max = 0;
                for (int k = 0; k < moves[d].length; k++) {
                    max = Math.max(max, choice.stir(k, moves[d][k][0][c], moves[d][k][1][c], moves[d][k][2][c]));
                }
                stir[c] += choice.weight() * max;
            }
        }
        return first(stir, CLOSELY);
    }

    private int[] roughly(Lookahead lookahead, GridFrame frame) {
        double[] stir = new double[lookahead.size()];
        for (Decision choice : choices) {
            int[] nodes = choice.nodes();
            double[][] depths = lookahead.depths(
                    Arrays.stream(nodes)
                            .mapToDouble(i -> frame.x(i % frame.columns()))
                            .toArray(),
                    Arrays.stream(nodes)
                            .mapToDouble(i -> frame.y(i / frame.columns()))
                            .toArray());
            for (int c = 0; c < stir.length; c++) {
                double max = 0;
                for (int k = 0; k < nodes.length; k++) {
                    max = Math.max(max, choice.stir(k, depths[k][c], 0, 0));
                }
                stir[c] += choice.weight() * max;
            }
        }
        return first(stir, ROUGHLY);
    }

    /** Indices of the greatest values, in falling order. */
    private static int[] first(double[] values, int count) {
        return IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(c -> -values[c]).thenComparingInt(c -> c))
                .limit(count)
                .mapToInt(c -> c)
                .toArray();
    }

    /** The decisions. */
    List<Decision> choices() {
        return choices;
    }

    /** Gain of every candidate, all decisions together. Shared, not to be changed. */
    double[] total() {
        return total;
    }

    /** The greatest gain of any candidate. */
    double max() {
        return Arrays.stream(total).max().orElse(0);
    }

    /**
     * The greatest gain of any candidate before the last reading was taken, as {@link RetrospectiveGain} computes it;
     * the same as now where one reading is a small part of many condensed; infinite where nothing has been read today.
     */
    double maxBefore() {
        if (map.peg().today().readings().isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        List<Place> planned = Arrays.stream(shortlist)
                .mapToObj(c -> candidates.get(c).place())
                .toList();
        return seesLast ? RetrospectiveGain.max(choices, moves, some, planned, some.outcome(last())) : max();
    }

    private int last() {
        return map.peg().readings().size() - 1;
    }

    /** The decision that gains most by a candidate; one about places far off counts half, as it explains less. */
    Decision dominant(int candidate) {
        return choices.get(dominantIndex(place(candidate)));
    }

    private int place(int candidate) {
        return IntStream.range(0, shortlist.length)
                .filter(c -> shortlist[c] == candidate)
                .findFirst()
                .orElseThrow();
    }

    private int dominantIndex(int c) {
        int best = 0;
        double max = Double.NEGATIVE_INFINITY;
        for (int d = 0; d < gains.length; d++) {
            double explains = gains[d][c] * (isNear(choices.get(d), shortlist[c]) ? 1 : 0.5);
            if (explains > max) {
                max = explains;
                best = d;
            }
        }
        return best;
    }

    private boolean isNear(Decision choice, int candidate) {
        Place place = candidates.get(candidate).place();
        GridFrame frame = map.grid().frame();
        return IntStream.of(choice.nodes())
                .anyMatch(i -> Math.hypot(
                                frame.x(i % frame.columns()) - place.xMetres(),
                                frame.y(i / frame.columns()) - place.yMetres())
                        <= NEAR_METRES);
    }

    /** Whether a candidate reduces the doubt of the slope or of the depth more, at the node that it may move most. */
    Reason.FlatQuestion question(int candidate) {
        int c = place(candidate);
        int decision = dominantIndex(c);
        double max = -1;
        boolean steepness = false;
        for (int k = 0; k < moves[decision].length; k++) {
            double d = moves[decision][k][0][c];
            double x = moves[decision][k][1][c];
            double y = moves[decision][k][2][c];
            double stir = choices.get(decision).stir(k, d, x, y);
            if (stir > max) {
                max = stir;
                steepness =
                        Math.hypot(x, y) / FlatSearch.WIDE.slopeLimit() > Math.abs(d) / FlatSearch.WIDE.bandMetres();
            }
        }
        return steepness ? Reason.FlatQuestion.SLOPE : Reason.FlatQuestion.DEPTH;
    }
}

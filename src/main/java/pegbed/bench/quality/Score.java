package pegbed.bench.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import pegbed.bench.practice.DiscMeans;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.Truth;
import pegbed.findings.Confidence;
import pegbed.findings.Zone;
import pegbed.findings.Zones;
import pegbed.model.Place;

/**
 * How far one method's bottom of one peg is from the truth.
 *
 * <p>Depth and slope are compared on 25 cm nodes that are water in truth, within reach, and within 62° of straight out or
 * within 7 m.
 *
 * @param rmseMetres root mean square error of the depth, metres
 * @param slopeRmse root mean square length of the error of the gradient over discs of 0.5 m, rise over run
 * @param coverage share of nodes whose true depth lies within 1.645 standard deviations; NaN without any
 * @param answered share of the nodes at which the method has a depth
 * @param deepestRegretMetres mean depth of the truly deepest disc less that of the disc named, metres
 * @param flats one outcome a task that can be done
 * @param words one outcome a task, whether it can be done or not
 */
public record Score(
        double rmseMetres,
        double slopeRmse,
        double coverage,
        double answered,
        double deepestRegretMetres,
        List<Outcome> flats,
        List<Outcome> words) {
    /**
     * What became of one flat spot that was named.
     *
     * @param confidence the word with which it was named
     * @param right within 10 cm of the target and no steeper than 0.30
     * @param strict within 5 cm and no steeper than 0.20
     */
    record Outcome(Confidence confidence, boolean right, boolean strict) {}

    private static final double STEP = 0.25;
    private static final double NEAR_METRES = 7;

    public static Score of(SurveyedBottom surveyed, PracticePeg peg) {
        Truth truth = peg.truth();
        double reach = peg.empty().pole().reachMetres();
        double error2 = 0;
        double slope2 = 0;
        int nodes = 0;
        int answered = 0;
        int covered = 0;
        int slopes = 0;
        boolean tellsDoubt = true;
        for (double y = -2; y <= reach; y += STEP) {
            for (double x = -Math.floor(reach / STEP) * STEP; x <= reach; x += STEP) {
                double r = Math.hypot(x, y);
                double angle = Math.toDegrees(Math.atan2(Math.abs(x), y));
                double depth = truth.depthAt(x, y);
                if (r > reach || (angle > Zones.WIDEST_DEGREES && r > NEAR_METRES) || Double.isNaN(depth)) {
                    continue;
                }
                nodes++;
                if (!surveyed.answers(x, y)) {
                    continue;
                }
                double error = surveyed.depthAt(x, y) - depth;
                answered++;
                error2 += error * error;
                double sd = surveyed.sdAt(x, y);
                tellsDoubt &= !Double.isNaN(sd);
                covered += Math.abs(error) <= 1.645 * sd ? 1 : 0;
                DiscMeans.Mean seen = DiscMeans.of(surveyed::depthAt, x, y);
                DiscMeans.Mean real = truth.disc(x, y);
                double dx = seen.slopeX() - real.slopeX();
                double dy = seen.slopeY() - real.slopeY();
                if (!Double.isNaN(dx + dy)) {
                    slope2 += dx * dx + dy * dy;
                    slopes++;
                }
            }
        }
        List<Outcome> flats = new ArrayList<>();
        List<Outcome> words = new ArrayList<>();
        for (PracticePeg.Task task : peg.tasks()) {
            Outcome outcome = outcome(surveyed, truth, task);
            words.add(outcome);
            if (task.feasible()) {
                flats.add(outcome);
            }
        }
        return new Score(
                Math.sqrt(error2 / answered),
                Math.sqrt(slope2 / slopes),
                tellsDoubt ? (double) covered / answered : Double.NaN,
                (double) answered / nodes,
                regret(surveyed.deepest(), peg),
                flats,
                words);
    }

    /** The whole depth is lost where the disc that was named is partly land. */
    static double regret(Place named, PracticePeg peg) {
        double depth = peg.truth().disc(named.xMetres(), named.yMetres()).depth();
        return peg.deepestMetres() - (Double.isNaN(depth) ? 0 : depth);
    }

    static Outcome outcome(SurveyedBottom surveyed, Truth truth, PracticePeg.Task task) {
        Zone zone = java.util.Arrays.stream(Zone.values())
                .filter(z -> z.words().equals(task.zone()))
                .findFirst()
                .orElseThrow();
        SurveyedBottom.Answer answer = surveyed.flat(zone, task.targetMetres());
        if (answer == null) {
            return new Outcome(Confidence.NONE, false, false);
        }
        DiscMeans.Mean real =
                truth.disc(answer.place().xMetres(), answer.place().yMetres());
        double off = Math.abs(real.depth() - task.targetMetres());
        return new Outcome(
                answer.confidence(), off <= 0.10 && real.slope() <= 0.30, off <= 0.05 && real.slope() <= 0.20);
    }

    /** Mean of a figure over pegs. */
    static double mean(List<Score> scores, ToDoubleFunction<Score> figure) {
        return scores.stream().mapToDouble(figure).average().orElse(Double.NaN);
    }
}

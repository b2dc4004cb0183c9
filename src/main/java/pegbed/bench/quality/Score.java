package pegbed.bench.quality;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import pegbed.bench.practice.DiscMeans;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.Truth;
import pegbed.findings.Zone;
import pegbed.findings.Zones;
import pegbed.model.Place;

/**
 * How far one method's bottom of one peg is from the truth.
 *
 * <p>Depth and slope are compared on 25 cm nodes that are water in truth, within reach, and within 62° of straight out
 * or within 7 m.
 *
 * @param rmseMetres root mean square error of the depth, metres
 * @param slopeRmse root mean square length of the error of the gradient over discs of 0.5 m, rise over run
 * @param doubt how true its doubt is; empty from a method that tells none
 * @param answered share of the nodes at which the method has a depth
 * @param deepestRegretMetres mean depth of the truly deepest disc less that of the disc named, metres
 * @param flats one outcome a task that can be done
 * @param words one outcome a task, whether it can be done or not
 * @param lines outcomes of the lines of a plan, by what they are named for
 */
public record Score(
        double rmseMetres,
        double slopeRmse,
        Optional<Doubt> doubt,
        double answered,
        double deepestRegretMetres,
        List<Outcome> flats,
        List<Outcome> words,
        Map<SurveyedBottom.Kind, List<Outcome>> lines) {
    private static final double STEP = 0.25;
    private static final double NEAR_METRES = 7;

    public static Score of(SurveyedBottom surveyed, PracticePeg peg) {
        Truth truth = peg.truth();
        double reach = peg.empty().pole().reachMetres();
        double error2 = 0;
        double slope2 = 0;
        int nodes = 0;
        int answered = 0;
        int slopes = 0;
        Doubt.Sum doubt = new Doubt.Sum();
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
                Optional<PredictedDepth> predicted = surveyed.predicted(x, y);
                if (predicted.isPresent()) {
                    doubt.add(predicted.get(), depth, truth.isLandWithin(x, y, Doubt.NEAR_BANK_METRES));
                }
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
                answered > 0 && doubt.count() == answered ? Optional.of(doubt.mean()) : Optional.empty(),
                (double) answered / nodes,
                regret(surveyed.deepest(), peg),
                flats,
                words,
                lines(surveyed, truth));
    }

    /** The whole depth is lost where the disc that was named is partly land. */
    static double regret(Place named, PracticePeg peg) {
        double depth = peg.truth().disc(named.xMetres(), named.yMetres()).depth();
        return peg.deepestMetres() - (Double.isNaN(depth) ? 0 : depth);
    }

    static Outcome outcome(SurveyedBottom surveyed, Truth truth, PracticePeg.Task task) {
        Zone zone = Arrays.stream(Zone.values())
                .filter(z -> z.words().equals(task.zone()))
                .findFirst()
                .orElseThrow();
        SurveyedBottom.Answer answer = surveyed.flat(zone, task.targetMetres());
        if (answer == null) {
            return Outcome.NONE;
        }
        DiscMeans.Mean real = disc(truth, answer.place());
        return Outcome.of(answer, Math.abs(real.depth() - task.targetMetres()), real.slope());
    }

    private static DiscMeans.Mean disc(Truth truth, Place place) {
        return truth.disc(place.xMetres(), place.yMetres());
    }

    private static Map<SurveyedBottom.Kind, List<Outcome>> lines(SurveyedBottom surveyed, Truth truth) {
        Map<SurveyedBottom.Kind, List<Outcome>> lines = new EnumMap<>(SurveyedBottom.Kind.class);
        for (SurveyedBottom.NamedLine line : surveyed.lines()) {
            DiscMeans.Mean real = disc(truth, line.answer().place());
            double off = Math.abs(real.depth() - line.flatAtMetres());
            add(lines, line.kind(), Outcome.of(line.answer(), off, real.slope()));
            if (line.kind() == SurveyedBottom.Kind.TRACK) {
                add(lines, SurveyedBottom.Kind.TRACK_SLOPE, Outcome.of(line.answer(), 0, real.slope()));
            }
        }
        return lines;
    }

    private static void add(Map<SurveyedBottom.Kind, List<Outcome>> lines, SurveyedBottom.Kind kind, Outcome outcome) {
        lines.computeIfAbsent(kind, k -> new ArrayList<>()).add(outcome);
    }

    /** Share of the nodes whose true depth lies in the 90 % interval; NaN from a method that tells no doubt. */
    public double coverage90() {
        return doubt.map(Doubt::coverage90).orElse(Double.NaN);
    }

    /** Mean of a figure over the pegs that have it; NaN where none has. */
    static double mean(List<Score> scores, ToDoubleFunction<Score> figure) {
        return scores.stream()
                .mapToDouble(figure)
                .filter(value -> !Double.isNaN(value))
                .average()
                .orElse(Double.NaN);
    }

    /** Mean of a figure of the doubt over the pegs that have it; NaN where none has. */
    static double meanDoubt(List<Score> scores, ToDoubleFunction<Doubt> figure) {
        return mean(scores, score -> score.doubt().map(figure::applyAsDouble).orElse(Double.NaN));
    }
}

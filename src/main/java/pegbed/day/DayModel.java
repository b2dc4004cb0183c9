package pegbed.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import pegbed.model.DayEvent;
import pegbed.model.Place;

/**
 * The rates of a day's lines under every {@link Wandering}, each weighted by how well it foretold the day's fish minute
 * by minute (Bayes' rule; Bayesian model averaging: Hoeting et al. 1999, Statistical Science 14:382–417). A rate is
 * told as the gamma distribution of its mean and variance.
 */
final class DayModel {
    /** What lies further back is left out, minutes. */
    private static final int LONGEST_MINUTES = 24 * 60;

    private static final double HOURS_A_MINUTE = 1.0 / 60;

    /** Fewer fish are not told apart from none. */
    private static final double LEAST_FISH = 1e-9;

    /** Of a variance, what two rates share is at most this much. */
    private static final double MOST_SHARED = 0.95;

    private final List<LineHistory> lines;
    private final LineCondition[] conditions;
    private final List<LogRates> hypotheses;
    private final double[] logWeights = new double[Wandering.ALL.size()];

    private DayModel(List<LineHistory> lines, RatePrior prior) {
        this.lines = lines;
        conditions = new LineCondition[lines.size()];
        Arrays.setAll(conditions, i -> new LineCondition());
        List<Place> places = lines.stream().map(LineHistory::place).toList();
        hypotheses = Wandering.ALL.stream()
                .map(wandering -> new LogRates(wandering, prior, places))
                .toList();
    }

    /** What the day says up to now. */
    static DayModel of(LineHistories histories, RatePrior prior) {
        DayModel model = new DayModel(histories.lines(), prior);
        Instant first = histories.lines().stream()
                .flatMap(line -> firsts(line).stream())
                .min(Instant::compareTo)
                .orElse(histories.now());
        double since = Math.min(LONGEST_MINUTES, Spell.minutesBetween(first, histories.now()));
        int minutes = (int) Math.ceil(since);
        Instant start = histories.now().minusSeconds(60L * minutes);
        List<LineMinutes> all = histories.lines().stream()
                .map(line -> LineMinutes.of(line, start, minutes))
                .toList();
        for (int minute = 0; minute < minutes; minute++) {
            model.pass(all, minute);
        }
        return model;
    }

    private static List<Instant> firsts(LineHistory line) {
        List<Instant> firsts = new ArrayList<>();
        line.events().stream()
                .map(event -> event.time().toInstant())
                .findFirst()
                .ifPresent(firsts::add);
        line.spells().stream().map(Spell::start).findFirst().ifPresent(firsts::add);
        return firsts;
    }

    /** What happened on a line in each minute of a time. */
    private record LineMinutes(double[] share, int[] fish, int[] feeds) {
        static LineMinutes of(LineHistory line, Instant start, int minutes) {
            double[] share = new double[minutes];
            for (Spell spell : line.spells()) {
                double from = Math.max(0, Spell.minutesBetween(start, spell.start()));
                double to = Math.min(minutes, Spell.minutesBetween(start, spell.end()));
                for (int m = (int) from; m < to; m++) {
                    share[m] += Math.max(0, Math.min(to, m + 1) - Math.max(from, m));
                }
            }
            int[] fish = new int[minutes];
            int[] feeds = new int[minutes];
            for (DayEvent event : line.events()) {
                int m = Math.min(minutes - 1, (int)
                        Math.floor(Spell.minutesBetween(start, event.time().toInstant())));
                if (m < 0) {
                    continue;
                }
                if (event.kind() == DayEvent.Kind.FISH) {
                    fish[m] += event.count();
                } else if (event.kind() == DayEvent.Kind.FEED) {
                    feeds[m]++;
                }
            }
            return new LineMinutes(share, fish, feeds);
        }
    }

    private void pass(List<LineMinutes> all, int minute) {
        for (int i = 0; i < lines.size(); i++) {
            for (int feed = 0; feed < all.get(i).feeds()[minute]; feed++) {
                conditions[i].feed();
            }
        }
        for (int i = 0; i < lines.size(); i++) {
            double share = all.get(i).share()[minute];
            int caught = all.get(i).fish()[minute];
            if (share > 0 || caught > 0) {
                double hours = Math.max(share, 0.5 * Math.min(1, caught)) * HOURS_A_MINUTE;
                for (int h = 0; h < logWeights.length; h++) {
                    logWeights[h] += hypotheses.get(h).learn(now(i), hours, caught);
                }
            }
        }
        hypotheses.forEach(rates -> rates.pass(1));
        for (int i = 0; i < lines.size(); i++) {
            conditions[i].pass(1, Math.min(1, all.get(i).share()[minute]));
        }
    }

    private LogRates.At now(int line) {
        return new LogRates.At(line, 0, conditions[line].fed(), conditions[line].fished());
    }

    /**
     * A line some minutes ahead, fed as it is now.
     *
     * @param begun when it begins to be fished, minutes from now
     */
    LogRates.At ahead(int line, double begun, double minutes) {
        LineCondition condition = conditions[line];
        return new LogRates.At(line, minutes, condition.fed(), condition.fishedAhead(begun, minutes - begun));
    }

    int lines() {
        return lines.size();
    }

    /** The hypotheses, in the order of {@link #weights}. */
    List<LogRates> hypotheses() {
        return hypotheses;
    }

    /** How likely each hypothesis is. */
    double[] weights() {
        double most = Arrays.stream(logWeights).max().orElseThrow();
        double[] weights =
                Arrays.stream(logWeights).map(log -> Math.exp(log - most)).toArray();
        double sum = Arrays.stream(weights).sum();
        return Arrays.stream(weights).map(weight -> weight / sum).toArray();
    }

    /** The present fish an hour of a line, as if it were fished now. */
    GammaMixture rate(int line) {
        LogRates.At now = now(line);
        return mixture(rates -> rates.rate(now).gamma());
    }

    /**
     * The expected number of fish in some minutes to come, as if the line were fished in them; given how it wanders and
     * how its rate is.
     *
     * @param line which
     * @param minutes how long from now
     * @param lost minutes at first in which it is not fished, since one is on the way to it
     */
    GammaMixture ahead(int line, int minutes, int lost) {
        return mixture(rates -> fish(rates, line, minutes, lost));
    }

    private GammaMixture mixture(Function<LogRates, GammaDistribution> part) {
        return new GammaMixture(weights(), hypotheses.stream().map(part).toList());
    }

    /** Mean over the minutes, variation of their middle. */
    private GammaDistribution fish(LogRates rates, int line, int minutes, int lost) {
        double sum = 0;
        for (int minute = lost; minute < minutes; minute++) {
            sum += rates.rate(ahead(line, lost, minute + 0.5)).mean();
        }
        double variance = rates.rate(middle(line, minutes, lost)).variance();
        return GammaDistribution.ofMean(
                Math.max(LEAST_FISH, sum * HOURS_A_MINUTE), LogNormal.squaredVariation(variance));
    }

    private LogRates.At middle(int line, int minutes, int lost) {
        return ahead(line, lost, (lost + minutes) / 2.0);
    }

    /**
     * The probability that one line gives more fish in some minutes to come than another, an equal number counting
     * half. What both rates share, the day above all, is held at its mean, since it raises both or neither.
     *
     * @param one the line that is changed to
     * @param here the line that is fished
     * @param lost minutes of changing
     */
    double more(int one, int here, int minutes, int lost) {
        double[] weights = weights();
        double probability = 0;
        for (int h = 0; h < weights.length; h++) {
            LogRates rates = hypotheses.get(h);
            LogRates.At there = middle(one, minutes, lost);
            LogRates.At stay = middle(here, minutes, 0);
            double thereVariance = rates.covariance(there, there);
            double hereVariance = rates.covariance(stay, stay);
            double shared = Math.max(
                    0, Math.min(rates.covariance(there, stay), MOST_SHARED * Math.min(thereVariance, hereVariance)));
            probability += weights[h]
                    * PoissonGamma.more(
                            fish(rates, one, minutes, lost)
                                    .withVariation(LogNormal.squaredVariation(thereVariance - shared)),
                            fish(rates, here, minutes, 0)
                                    .withVariation(LogNormal.squaredVariation(hereVariance - shared)));
        }
        return probability;
    }

    /** The fish expected in each of some minutes to come, as if the line were fished in all of them. */
    double[] expected(int line, int minutes) {
        double[] weights = weights();
        double[] expected = new double[minutes];
        for (int h = 0; h < weights.length; h++) {
            for (int minute = 0; minute < minutes; minute++) {
                double rate =
                        hypotheses.get(h).rate(ahead(line, 0, minute + 0.5)).mean();
                expected[minute] += weights[h] * rate * HOURS_A_MINUTE;
            }
        }
        return expected;
    }
}

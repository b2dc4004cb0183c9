package pegbed.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether another line would give more fish in the next half hour than the one that is fished, its rest and feed and
 * the minutes of changing counted; as odds, to be told and not to be ordered.
 *
 * @param saying what can be said
 * @param fished the line that is fished; empty while none is
 * @param expectedHere fish expected on it in the next half hour; 0 while none is fished
 * @param others the other lines, the one with the highest odds first
 * @param named the one that is spoken of; empty unless {@link Saying#BETTER} or {@link Saying#WORTH_TRYING}
 * @param leaveInMinutes after how long the rate here is expected to have fallen to the best average elsewhere, the
 *     change counted ({@link MarginalValue}); 0 if it has; empty if not within the half hour, or with no other line
 */
public record LineOdds(
        Saying saying,
        Optional<LineHistory> fished,
        double expectedHere,
        List<Other> others,
        Optional<Other> named,
        OptionalDouble leaveInMinutes) {
    /** How far ahead is looked, minutes. */
    public static final int AHEAD_MINUTES = 30;

    /** What a change of lines costs if nothing else is known, minutes (our choice). */
    public static final int CHANGE_MINUTES = 3;

    /** With fewer fish in the day, and less fished, nothing is said (our choice). */
    public static final int LEAST_FISH = 3;

    public static final double LEAST_FISHED_MINUTES = 20;

    /** So long a line is given before another is spoken of, minutes (our choice). */
    public static final double LEAST_STAY_MINUTES = 5;

    /** So long a line is fished before the best one is chosen ({@link LookAhead}), minutes (our choice). */
    static final double TRIAL_MINUTES = 10;

    /** What can be said. */
    public enum Saying {
        /** Nothing: too little has happened. */
        TOO_LITTLE,
        /** Nothing is being fished, or there is no other line. */
        NO_CHOICE,
        /** The line has only just been begun. */
        JUST_BEGUN,
        /** No other line promises more. */
        STAY,
        /** Another line is expected to give more. */
        BETTER,
        /** Another line is expected to give no more, but it may be so much better that a trial pays. */
        WORTH_TRYING
    }

    /**
     * Another line.
     *
     * @param line which
     * @param odds probability that it would give more fish in the next half hour, an equal number counting half
     * @param expected fish expected on it in that time, the change counted
     * @param trial fish expected in that time if it is tried for {@link #TRIAL_MINUTES}, and the line that is best by
     *     then is fished afterwards, the changes counted
     * @param best probability that it is the best of all lines, which is how often discounted Thompson sampling would
     *     choose it (Raj & Kalyani 2017)
     */
    public record Other(LineHistory line, double odds, double expected, double trial, double best) {}

    public LineOdds {
        others = List.copyOf(others);
    }

    /**
     * The odds of a day's lines.
     *
     * @param histories its lines
     * @param prior what earlier visits say, or {@link RatePrior#VAGUE}
     * @param changeMinutes what a change of lines costs, minutes, 0 to {@link #AHEAD_MINUTES}
     */
    public static LineOdds of(LineHistories histories, RatePrior prior, int changeMinutes) {
        if (changeMinutes < 0 || changeMinutes > AHEAD_MINUTES) {
            throw new IllegalArgumentException(
                    "A change of lines costs between 0 and " + AHEAD_MINUTES + " minutes, not " + changeMinutes + ".");
        }
        return of(DayModel.of(histories, prior), histories, prior.visits() > 0, changeMinutes);
    }

    private static LineOdds of(DayModel model, LineHistories histories, boolean visited, int lost) {
        List<LineHistory> lines = histories.lines();
        int here = -1;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).fishedNow()) {
                here = i;
            }
        }
        if (here < 0 || lines.size() < 2) {
            Optional<LineHistory> fished = histories.fished();
            return new LineOdds(
                    Saying.NO_CHOICE,
                    fished,
                    here < 0 ? 0 : model.ahead(here, AHEAD_MINUTES, 0).mean(),
                    List.of(),
                    Optional.empty(),
                    OptionalDouble.empty());
        }
        List<GammaMixture> ahead = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            ahead.add(model.ahead(i, AHEAD_MINUTES, i == here ? 0 : lost));
        }
        List<GammaDistribution> matched =
                ahead.stream().map(GammaMixture::matched).toList();
        LookAhead look = new LookAhead(model, here, TRIAL_MINUTES, AHEAD_MINUTES, lost);
        List<Other> others = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (i != here) {
                others.add(new Other(
                        lines.get(i),
                        model.more(i, here, AHEAD_MINUTES, lost),
                        ahead.get(i).mean(),
                        look.fish(i),
                        best(matched, i)));
            }
        }
        others.sort(Comparator.comparingDouble(Other::odds).reversed());
        double expected = ahead.get(here).mean();
        double staying = look.fish(here);
        Optional<Other> promising =
                others.stream().max(Comparator.comparingDouble(Other::trial)).filter(other -> other.trial() > staying);
        Saying saying = enough(lines, visited) ? saying(lines.get(here), expected, promising) : Saying.TOO_LITTLE;
        return new LineOdds(
                saying,
                Optional.of(lines.get(here)),
                expected,
                others,
                promising.filter(other -> saying == Saying.BETTER || saying == Saying.WORTH_TRYING),
                leaveIn(model, lines.size(), here, lost));
    }

    private static boolean enough(List<LineHistory> lines, boolean visited) {
        return visited
                || lines.stream().mapToInt(LineHistory::fish).sum() >= LEAST_FISH
                || lines.stream().mapToDouble(LineHistory::fishedMinutes).sum() >= LEAST_FISHED_MINUTES;
    }

    private static Saying saying(LineHistory here, double expected, Optional<Other> promising) {
        Spell spell = here.spells().get(here.spells().size() - 1);
        if (spell.minutes() < LEAST_STAY_MINUTES) {
            return Saying.JUST_BEGUN;
        }
        return promising
                .map(other -> other.expected() > expected ? Saying.BETTER : Saying.WORTH_TRYING)
                .orElse(Saying.STAY);
    }

    /** ∫ f_i Π F_k: the mean of the product of the others' distribution functions at quantiles of one line. */
    private static double best(List<GammaDistribution> lines, int i) {
        int steps = 32;
        double sum = 0;
        for (int s = 0; s < steps; s++) {
            double value = lines.get(i).quantile((s + 0.5) / steps);
            double product = 1;
            for (int k = 0; k < lines.size(); k++) {
                product *= k == i ? 1 : lines.get(k).cumulative(value);
            }
            sum += product;
        }
        return sum / steps;
    }

    private static OptionalDouble leaveIn(DayModel model, int lines, int here, int lost) {
        double elsewhere = 0;
        for (int i = 0; i < lines; i++) {
            if (i != here) {
                double[] there = model.expected(i, AHEAD_MINUTES);
                MarginalValue value = MarginalValue.of(stay -> gain(there, stay), lost, AHEAD_MINUTES);
                elsewhere = Math.max(elsewhere, value.averageAMinute());
            }
        }
        double[] rates = model.expected(here, AHEAD_MINUTES);
        for (int minute = 0; minute < rates.length; minute++) {
            if (rates[minute] <= elsewhere) {
                return OptionalDouble.of(minute);
            }
        }
        return OptionalDouble.empty();
    }

    private static double gain(double[] perMinute, double minutes) {
        double sum = 0;
        int whole = (int) minutes;
        for (int m = 0; m < whole; m++) {
            sum += perMinute[m];
        }
        return whole < perMinute.length ? sum + (minutes - whole) * perMinute[whole] : sum;
    }
}

package pegbed.day;

import java.util.ArrayList;
import java.util.List;

/**
 * What each line promises if it is fished for a while and then whichever line is best by then: a line of which little
 * is known promises more than its mean, since a trial that goes badly is left (one step of Bayesian look-ahead, the
 * knowledge gradient of Frazier, Powell & Dayanik 2008, SIAM Journal on Control and Optimization 47:2410–2439). The
 * mean is taken over the rates that the line may have and the numbers of fish that it may then give; each number
 * changes what is expected of every line.
 */
final class LookAhead {
    /** More fish than this are looked at as one. */
    private static final int MOST_FISH = 40;

    private static final double HOURS_A_MINUTE = 1.0 / 60;

    private final DayModel model;
    private final double[] weights;
    private final int here;
    private final double minutes;
    private final double until;
    private final double lost;

    /**
     * A look ahead.
     *
     * @param here the line that is fished
     * @param minutes how long a line is fished before the best is chosen
     * @param until how far is looked, minutes from now
     * @param lost what each change costs, minutes
     */
    LookAhead(DayModel model, int here, double minutes, double until, double lost) {
        this.model = model;
        this.weights = model.weights();
        this.here = here;
        this.minutes = minutes;
        this.until = until;
        this.lost = lost;
    }

    /** One hypothesis at one rate of the line that is fished first: what it gives, and then the best of all lines. */
    private record Case(double weight, double fish, double[] afterwards) {}

    /** The fish expected by the end if a line is fished first. */
    double fish(int first) {
        double start = first == here ? 0 : Math.min(lost, until);
        double end = Math.min(until, start + minutes);
        List<Case> cases = new ArrayList<>();
        for (int h = 0; h < weights.length; h++) {
            addCases(model.hypotheses().get(h), weights[h], first, start, end, cases);
        }
        return cases.stream().mapToDouble(each -> each.weight() * each.fish()).sum() + afterwards(cases);
    }

    private void addCases(LogRates rates, double weight, int first, double start, double end, List<Case> cases) {
        LogRates.At trial = model.ahead(first, start, (start + end) / 2);
        LogNormal rate = rates.rate(trial);
        double deviation = Math.sqrt(rate.variance());
        int lines = model.lines();
        double[] mean = new double[lines];
        double[] slope = new double[lines];
        for (int i = 0; i < lines; i++) {
            double begun = i == first ? start : end + lost;
            double from = Math.max(begun, end);
            if (from < until) {
                LogRates.At then = model.ahead(i, begun, (from + until) / 2);
                slope[i] = rates.covariance(trial, then) / deviation;
                mean[i] = rates.rate(then).mean() * (until - from) * HOURS_A_MINUTE;
            }
        }
        for (int g = 0; g < GaussHermite.SIZE; g++) {
            double z = GaussHermite.node(g);
            double[] afterwards = new double[lines];
            for (int i = 0; i < lines; i++) {
                afterwards[i] = mean[i] * Math.exp(slope[i] * z - slope[i] * slope[i] / 2);
            }
            double fish = Math.exp(rate.log() + deviation * z) * (end - start) * HOURS_A_MINUTE;
            cases.add(new Case(weight * GaussHermite.weight(g), fish, afterwards));
        }
    }

    /** Σ over numbers of fish of the most that a line is then expected to give, times the number's probability. */
    private double afterwards(List<Case> cases) {
        double[] probability = cases.stream()
                .mapToDouble(each -> each.weight() * Math.exp(-each.fish()))
                .toArray();
        double[] left = cases.stream().mapToDouble(Case::weight).toArray();
        double sum = 0;
        for (int fish = 0; fish < MOST_FISH; fish++) {
            sum += best(cases, probability);
            for (int c = 0; c < probability.length; c++) {
                left[c] -= probability[c];
                probability[c] *= cases.get(c).fish() / (fish + 1);
            }
        }
        return sum + best(cases, left);
    }

    /** The most that a line is expected to give, over some cases. */
    private double best(List<Case> cases, double[] weights) {
        double best = 0;
        for (int i = 0; i < model.lines(); i++) {
            double expected = 0;
            for (int c = 0; c < weights.length; c++) {
                expected += weights[c] * cases.get(c).afterwards()[i];
            }
            best = Math.max(best, expected);
        }
        return best;
    }
}

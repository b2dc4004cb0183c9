package pegbed.day;

import java.util.List;
import pegbed.model.Place;

/**
 * What is known of the logarithms of a day's rates under one {@link Wandering}, as a normal distribution of their
 * parts: ln(rate of a line) = the day + the line's own level + its deviation at present + a · fed − t · fished. A
 * minute's count changes the sum by {@link LogNormal#learning} and its parts by how they go with it (the dynamic
 * generalized linear model of West, Harrison & Migon 1985, Journal of the American Statistical Association 80:73–83);
 * the deviations move on as they wander.
 */
final class LogRates {
    /** By how much the logarithm rises on a line that is well fed, a: mean and standard deviation (our choice). */
    private static final double ATTRACTION = 0.5;

    private static final double ATTRACTION_SD = 0.5;

    /** By how much it falls on a line that is fished on and on, t: the same (our choice). */
    private static final double TIRING = 0.5;

    private static final double TIRING_SD = 0.5;

    /**
     * A line at a time to come.
     *
     * @param line which
     * @param minutes from now
     * @param fed see {@link LineCondition#fed}, at that time
     * @param fished see {@link LineCondition#fished}, at that time
     */
    record At(int line, double minutes, double fed, double fished) {}

    private final Wandering wandering;
    private final int lines;
    private final double[] mean;
    private final double[][] covariance;

    /** Before the day. */
    LogRates(Wandering wandering, RatePrior prior, List<Place> places) {
        this.wandering = wandering;
        lines = places.size();
        int size = 2 * lines + 3;
        mean = new double[size];
        covariance = new double[size][size];
        double day = LogNormal.variance(prior.day().squaredVariation());
        double wander = wandering.sd() * wandering.sd();
        set(0, Math.log(prior.day().mean()) - day / 2 - wander / 2, day);
        for (int i = 0; i < lines; i++) {
            double own = LogNormal.variance(1 / prior.shape(places.get(i)));
            set(1 + i, Math.log(prior.factor(places.get(i))) - own / 2, own);
            set(1 + lines + i, 0, wander);
        }
        set(size - 2, ATTRACTION, ATTRACTION_SD * ATTRACTION_SD);
        set(size - 1, TIRING, TIRING_SD * TIRING_SD);
    }

    private void set(int part, double value, double variance) {
        mean[part] = value;
        covariance[part][part] = variance;
    }

    /** Where the parts of a line's logarithm are: the day, its level, its deviation, feed, tiring. */
    private int[] parts(At at) {
        return new int[] {0, 1 + at.line(), 1 + lines + at.line(), 2 * lines + 1, 2 * lines + 2};
    }

    /** How much of each part is in the logarithm. */
    private double[] factors(At at) {
        return new double[] {1, 1, wandering.left(at.minutes()), at.fed(), -at.fished()};
    }

    /** The rate of a line, fish an hour. */
    LogNormal rate(At at) {
        int[] parts = parts(at);
        double[] factors = factors(at);
        double log = 0;
        for (int p = 0; p < parts.length; p++) {
            log += factors[p] * mean[parts[p]];
        }
        return new LogNormal(log, covariance(at, at));
    }

    /** The covariance of the logarithms of two lines' rates, or of one's at two times. */
    double covariance(At one, At other) {
        int[] ones = parts(one);
        double[] oneFactors = factors(one);
        int[] others = parts(other);
        double[] otherFactors = factors(other);
        double sum = 0;
        for (int p = 0; p < ones.length; p++) {
            for (int q = 0; q < others.length; q++) {
                sum += oneFactors[p] * covariance[ones[p]][others[q]] * otherFactors[q];
            }
        }
        if (one.line() == other.line()) {
            double earlier = Math.min(one.minutes(), other.minutes());
            double later = Math.max(one.minutes(), other.minutes());
            sum += wandering.added(earlier) * wandering.left(later - earlier);
        }
        return sum;
    }

    /** A line is fished; ln of the probability of its fish, but for a term that depends on their number alone. */
    double learn(At now, double hours, int fish) {
        int size = mean.length;
        int[] parts = parts(now);
        double[] factors = factors(now);
        double[] with = new double[size];
        for (int k = 0; k < size; k++) {
            for (int p = 0; p < parts.length; p++) {
                with[k] += covariance[k][parts[p]] * factors[p];
            }
        }
        LogNormal before = rate(now);
        LogNormal.Learned learned = before.learning(hours, fish);
        double step = (learned.after().log() - before.log()) / before.variance();
        double surer = (before.variance() - learned.after().variance()) / (before.variance() * before.variance());
        for (int k = 0; k < size; k++) {
            mean[k] += with[k] * step;
            for (int m = 0; m < size; m++) {
                covariance[k][m] -= with[k] * surer * with[m];
            }
        }
        return learned.logProbability();
    }

    /** Time passes. */
    void pass(double minutes) {
        double left = wandering.left(minutes);
        double added = wandering.added(minutes);
        for (int i = 1 + lines; i < 1 + 2 * lines; i++) {
            mean[i] *= left;
            for (int k = 0; k < mean.length; k++) {
                covariance[i][k] *= left;
                covariance[k][i] *= left;
            }
            covariance[i][i] += added;
        }
    }
}

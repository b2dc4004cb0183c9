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

    /** Parts of one line's logarithm: the day, its level, its deviation, feed and tiring. */
    private static final int PARTS = 5;

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

    private int part(At at, int p) {
        return switch (p) {
            case 0 -> 0;
            case 1 -> 1 + at.line();
            case 2 -> 1 + lines + at.line();
            case 3 -> 2 * lines + 1;
            default -> 2 * lines + 2;
        };
    }

    private double factor(At at, int p) {
        return switch (p) {
            case 0, 1 -> 1;
            case 2 -> wandering.left(at.minutes());
            case 3 -> at.fed();
            default -> -at.fished();
        };
    }

    Wandering wandering() {
        return wandering;
    }

    /** The rate of a line, fish an hour. */
    LogNormal rate(At at) {
        double log = 0;
        for (int p = 0; p < PARTS; p++) {
            log += factor(at, p) * mean[part(at, p)];
        }
        return new LogNormal(log, covariance(at, at));
    }

    /** The covariance of the logarithms of two lines' rates, or of one's at two times. */
    double covariance(At one, At other) {
        double sum = 0;
        for (int p = 0; p < PARTS; p++) {
            double[] row = covariance[part(one, p)];
            double part = 0;
            for (int q = 0; q < PARTS; q++) {
                part += row[part(other, q)] * factor(other, q);
            }
            sum += factor(one, p) * part;
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
        double[] with = new double[size];
        for (int k = 0; k < size; k++) {
            for (int p = 0; p < PARTS; p++) {
                with[k] += covariance[k][part(now, p)] * factor(now, p);
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

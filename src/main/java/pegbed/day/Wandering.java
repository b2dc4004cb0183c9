package pegbed.day;

import java.util.ArrayList;
import java.util.List;

/**
 * A hypothesis of how a line's rate wanders: its logarithm is about that of the line's own level by an
 * Ornstein–Uhlenbeck process.
 *
 * @param halfLifeMinutes after how long half of a deviation is left, and what a minute then tells of it, minutes
 * @param sd standard deviation of the logarithm about the level
 */
record Wandering(double halfLifeMinutes, double sd) {
    /** The hypotheses, all as likely before the day: our choice, round figures over what seems possible. */
    static final List<Wandering> ALL = all();

    private static List<Wandering> all() {
        List<Wandering> all = new ArrayList<>();
        for (double halfLife : new double[] {15, 40, 120}) {
            for (double sd : new double[] {0.3, 0.6, 1.2}) {
                all.add(new Wandering(halfLife, sd));
            }
        }
        return List.copyOf(all);
    }

    /** What is left of a deviation after some minutes, 0 to 1. */
    double left(double minutes) {
        return Math.exp(-Math.log(2) * minutes / halfLifeMinutes);
    }

    /** What some minutes add to the variance of a deviation that is known. */
    double added(double minutes) {
        double left = left(minutes);
        return sd * sd * (1 - left * left);
    }
}

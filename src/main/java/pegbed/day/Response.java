package pegbed.day;

import java.util.ArrayList;
import java.util.List;

/**
 * A hypothesis of how a line's rate behaves: rate = base · exp(attraction · fed − tiring · fished), where the base
 * wanders.
 *
 * @param halfLifeMinutes after how long a minute counts half of what it did, minutes
 * @param tiring by how much the logarithm of the rate falls on a line that is fished on and on
 * @param attraction by how much the logarithm of the rate rises on a line that is well fed
 */
record Response(double halfLifeMinutes, double tiring, double attraction) {
    /** The hypotheses, all as likely before the day: our choice, round figures over what seems possible. */
    static final List<Response> ALL = all();

    private static List<Response> all() {
        List<Response> all = new ArrayList<>();
        for (double tiring : new double[] {0, 0.5, 1}) {
            for (double attraction : new double[] {0, 0.5, 1}) {
                for (double halfLife : new double[] {15, 30, 60}) {
                    all.add(new Response(halfLife, tiring, attraction));
                }
            }
        }
        return List.copyOf(all);
    }

    /** What is left of a minute's weight after some minutes. */
    double fade(double minutes) {
        return Math.exp(-Math.log(2) * minutes / halfLifeMinutes);
    }

    /** Rate over base. */
    double factor(LineCondition line) {
        return Math.exp(attraction * line.fed() - tiring * line.fished());
    }
}

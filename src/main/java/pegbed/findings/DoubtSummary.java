package pegbed.findings;

import java.util.Arrays;
import java.util.Optional;
import pegbed.surface.grid.Field;

/**
 * How well a peg's bottom is known as a whole, over the water within 62° of straight out.
 *
 * @param medianSdMetres median of the standard deviation, metres
 * @param guessShare share of the water where it is above 10 cm, so that the map is a guess there, 0 to 1
 * @param order the strictest survey order whose uncertainty the median doubt meets, as a yardstick
 */
public record DoubtSummary(double medianSdMetres, double guessShare, Optional<SurveyOrder> order) {
    /** Above this the map is drawn as a guess, metres. */
    public static final double GUESS_SD_METRES = 0.10;

    /** The summary; empty if no water lies within 62° of straight out. */
    public static Optional<DoubtSummary> of(PegMap map) {
        Field sd = map.grid().sd();
        double[] all = new double[sd.frame().size()];
        double depths = 0;
        int count = 0;
        int guesses = 0;
        for (int i = 0; i < all.length; i++) {
            double x = sd.frame().x(i % sd.frame().columns());
            double y = sd.frame().y(i / sd.frame().columns());
            if (map.grid().isWater(i) && Math.toDegrees(Math.atan2(Math.abs(x), y)) <= Zones.WIDEST_DEGREES) {
                all[count++] = sd.at(i);
                depths += map.grid().depth().at(i);
                guesses += sd.at(i) > GUESS_SD_METRES ? 1 : 0;
            }
        }
        if (count == 0) {
            return Optional.empty();
        }
        double[] sds = Arrays.copyOf(all, count);
        Arrays.sort(sds);
        double median = sds[count / 2];
        return Optional.of(
                new DoubtSummary(median, (double) guesses / count, SurveyOrder.metBy(depths / count, median)));
    }
}

package pegbed.day;

import java.util.function.DoubleUnaryOperator;

/**
 * The marginal value theorem: stay while the rate of gain here is more than the best average rate to be had elsewhere,
 * the way there counted (Charnov 1976, Theoretical Population Biology 9:129–136).
 *
 * @param stayMinutes how long to stay at a place like this, minutes
 * @param averageAMinute gain a minute of that stay and the way together
 */
public record MarginalValue(double stayMinutes, double averageAMinute) {
    /** The golden section. */
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private static final double CLOSE_MINUTES = 1e-7;

    /**
     * The stay with the most gain a minute, G(t)/(t + way), which is where G'(t) equals it: by golden section search
     * (Kiefer 1953, Proceedings of the AMS 4:502–506).
     *
     * @param gain what a stay of some minutes brings, 0 at 0, rising ever less steeply
     * @param wayMinutes how long the way takes, minutes, 0 or more
     * @param longestMinutes no longer stay is thought of, minutes, above 0
     */
    public static MarginalValue of(DoubleUnaryOperator gain, double wayMinutes, double longestMinutes) {
        if (!(wayMinutes >= 0 && longestMinutes > 0)) {
            throw new IllegalArgumentException("The way takes 0 minutes or more, and the longest stay above 0, not "
                    + wayMinutes + " and " + longestMinutes + ".");
        }
        DoubleUnaryOperator average = t -> gain.applyAsDouble(t) / (t + wayMinutes);
        double low = 0;
        double high = longestMinutes;
        while (high - low > CLOSE_MINUTES) {
            double first = high - GOLDEN * (high - low);
            double second = low + GOLDEN * (high - low);
            if (average.applyAsDouble(first) < average.applyAsDouble(second)) {
                low = first;
            } else {
                high = second;
            }
        }
        double stay = (low + high) / 2;
        return new MarginalValue(stay, average.applyAsDouble(stay));
    }
}

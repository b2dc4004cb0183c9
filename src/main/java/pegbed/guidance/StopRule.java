package pegbed.guidance;

import java.util.function.DoubleSupplier;

/**
 * When another reading would hardly change the lines: when the best next reading is expected to gain less than
 * {@value #MIN_GAIN} (a chance of one in fourteen of winning a flat spot, or 1 cm at the deepest place), now and before
 * the last reading too.
 */
public final class StopRule {
    /** The smallest gain that is worth a reading, in the unit of {@link NextReading#gain}. */
    public static final double MIN_GAIN = 0.07;

    private StopRule() {}

    /**
     * Whether to stop.
     *
     * @param gain of the best next reading now; NaN while it is not computed
     * @param before what the best reading promised before the last one was taken
     */
    static boolean stops(double gain, DoubleSupplier before) {
        return gain < MIN_GAIN && before.getAsDouble() < MIN_GAIN;
    }
}

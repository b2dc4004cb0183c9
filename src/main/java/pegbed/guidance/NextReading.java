package pegbed.guidance;

import pegbed.model.Place;

/**
 * The reading to take next.
 *
 * @param place where
 * @param purpose what it serves most
 * @param reason why it is worth taking
 * @param gain what the best next reading is expected to gain for the deepest place and the flat spots together: 1 is a
 *     flat spot won, or 15 cm at the deepest place; NaN while it is not computed (the opening, the spread, and while
 *     the deepest place alone counts)
 * @param stop whether another reading is expected to change the lines by less than {@link StopRule#MIN_GAIN}
 */
public record NextReading(Place place, Purpose purpose, Reason reason, double gain, boolean stop) {
    /** What a reading serves. */
    public enum Purpose {
        /** The level of a later visit's water. */
        LEVEL,
        /** One of the first readings, at a fixed place. */
        OPENING,
        /** A reading that the others contradict. */
        AGAIN,
        /** The map as a whole. */
        MAP,
        /** The deepest place. */
        DEEPEST,
        /** A flat spot. */
        FLAT
    }
}

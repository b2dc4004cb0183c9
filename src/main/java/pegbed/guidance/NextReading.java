package pegbed.guidance;

import pegbed.model.Place;
import pegbed.notation.Wording;

/**
 * The reading to take next.
 *
 * @param place where
 * @param purpose what it serves most
 * @param why one sentence, in the trade's words
 * @param gain what the best next reading is expected to gain for the deepest place and the flat spots together: 1 is a
 *     flat spot won, or 15 cm at the deepest place; NaN while it is not reckoned (the opening, the spread, and
 *     while the deepest place alone counts)
 * @param stop whether another reading would hardly change the lines
 */
public record NextReading(Place place, Purpose purpose, String why, double gain, boolean stop) {
    /** What a reading serves. */
    public enum Purpose {
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

    /** Where it is, in the person's words: distance, direction, clock and aim. */
    public String where(Wording wording) {
        return where(place, wording);
    }

    /** A place in the person's words: distance, direction, clock and aim. */
    public static String where(Place place, Wording wording) {
        double angle = place.angleDegrees();
        String aim = wording.aim(place);
        // Where no mark is near enough to aim by, the aim is the clock again.
        return wording.distance(place.distanceMetres()) + ", " + wording.direction(angle) + " (" + wording.clock(angle)
                + ")" + (aim.startsWith("towards ") ? "" : ", " + aim);
    }
}

package pegbed.model;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * One plumbed reading.
 *
 * @param typed what the person typed
 * @param place where it was taken
 * @param precision how well that place is known
 * @param depthMetres depth below the water's level at its visit, metres, 0 to {@value #DEEPEST_METRES}
 * @param bottom what the plummet felt
 * @param note the person's own words, may be empty
 * @param time when it was taken, where known
 * @param extras fields of a later version
 */
public record Reading(
        Typed typed,
        Place place,
        Precision precision,
        double depthMetres,
        Bottom bottom,
        String note,
        Optional<OffsetDateTime> time,
        Extras extras) {
    /** Deeper than this is taken for a slip of the pen. */
    public static final double DEEPEST_METRES = 30;

    public Reading {
        Check.within(depthMetres, 0, DEEPEST_METRES, "The depth in metres");
    }

    /** A reading from plain numbers. */
    public static Reading of(double distanceMetres, double angleDegrees, double depthMetres) {
        return new Reading(
                Typed.NOTHING,
                Place.polar(distanceMetres, angleDegrees),
                Precision.PLAIN,
                depthMetres,
                Bottom.UNKNOWN,
                "",
                Optional.empty(),
                Extras.NONE);
    }
}

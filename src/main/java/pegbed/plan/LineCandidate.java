package pegbed.plan;

import java.util.Optional;
import pegbed.findings.Confidence;
import pegbed.findings.Spot;
import pegbed.findings.Zone;
import pegbed.model.Place;

/**
 * A place that could be a line.
 *
 * @param zone the part of the peg that it serves; empty for a fixed line outside every zone
 * @param origin how it came to be one
 * @param spot the place; its pFlat is the probability that it is flat at {@code flatAtMetres}, the same functional for
 *     every line and flat spot
 * @param flatAtMetres the depth at which it is sought, metres: the target, or its own depth
 * @param areaMetres2 size of the flat area about it, square metres; 0 where none is known
 * @param worth what it is worth by itself, 0 to about 1
 */
public record LineCandidate(
        Optional<Zone> zone, Origin origin, Spot spot, double flatAtMetres, double areaMetres2, double worth) {
    /** Where a candidate comes from. */
    public enum Origin {
        /** The deepest usable place, or water nearly as deep. */
        DEEPEST,
        /** Flat at the target depth. */
        FLAT,
        /** Flat, at the depth nearest to the target that the zone has. */
        NEAREST_FLAT,
        /** Flat in front of the seat. */
        SHORT,
        /** Where a slope ends in deep water. */
        FOOT_OF_SLOPE,
        /** Fixed by the person. */
        FIXED
    }

    public Place place() {
        return spot.place();
    }

    /** How sure it is that the spot is what it is named for. */
    public Confidence confidence() {
        return Confidence.of(spot.pFlat());
    }

    /** Whether the person fixed it. */
    public boolean isFixed() {
        return origin == Origin.FIXED;
    }
}

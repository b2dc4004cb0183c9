package pegbed.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pegbed.findings.Spot;
import pegbed.findings.Zone;

/**
 * Something that was wanted and could not be had.
 *
 * @param kind what
 * @param zone where; empty for what concerns no zone
 * @param nearestMetres the depth nearest to the target at which the zone is likely flat, where it is asked for and
 *     known
 * @param spot the place it is about: the likeliest or best one left in the zone, or the one that the person fixed
 * @param line the line that stands in for it
 */
public record Shortfall(
        Kind kind, Optional<Zone> zone, OptionalDouble nearestMetres, Optional<Spot> spot, OptionalInt line) {
    /** What could not be had. */
    public enum Kind {
        /** The zone has no water in which a rig may be fished. */
        NO_WATER,
        /** Nothing flat at the target; a line is at the nearest depth that has a flat. */
        OTHER_DEPTH,
        /** Nothing flat at the target or near it. */
        NO_FLAT,
        /** Everything there was forbidden, or would put the pole under a line or a branch. */
        KEPT_AWAY,
        /** Every place there is within 2 m of another line. */
        CROWDED,
        /** As many lines as were wanted at most are elsewhere. */
        ENOUGH_LINES,
        /** It would need more rigs than are wanted. */
        ENOUGH_RIGS,
        /** It is not worth the rig that it needs or the line that it would disturb. */
        NOT_WORTH_IT,
        /** A fixed line is outside the fishable water. */
        FIXED_OUTSIDE,
        /** A fixed line would put the pole under an overhead line or a low branch. */
        FIXED_UNDER_SOMETHING,
        /** A fixed line is within 2 m of another fixed line. */
        FIXED_CROWDED,
        /** The fixed lines are more than the lines wanted. */
        FIXED_TOO_MANY,
        /** The fixed lines need more rigs than are wanted. */
        FIXED_NEED_RIGS,
        /** No line is planned where the person likes to start. */
        NO_START
    }

    static Shortfall of(Kind kind, Zone zone) {
        return new Shortfall(kind, Optional.of(zone), OptionalDouble.empty(), Optional.empty(), OptionalInt.empty());
    }

    static Shortfall ofPin(Kind kind, Spot spot) {
        return new Shortfall(kind, Optional.empty(), OptionalDouble.empty(), Optional.of(spot), OptionalInt.empty());
    }

    static Shortfall ofAll(Kind kind) {
        return new Shortfall(kind, Optional.empty(), OptionalDouble.empty(), Optional.empty(), OptionalInt.empty());
    }
}

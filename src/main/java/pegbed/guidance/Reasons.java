package pegbed.guidance;

import java.util.Locale;
import pegbed.findings.PegMap;
import pegbed.findings.Spot;
import pegbed.findings.Zone;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.notation.Wording;
import pegbed.surface.posterior.ReadingCheck;

/** Why a reading is worth taking, from the term that gains most by it, in one sentence. */
final class Reasons {
    /** Nearer than this two places are the same spot to an angler, metres. */
    private static final double SAME_SPOT_METRES = 0.8;

    /** A gap between readings that an angler would call one, metres. */
    private static final double GAP_METRES = 1.75;

    private Reasons() {}

    static String map(PegMap map, Place place) {
        double nearest = map.peg().readings().stream()
                .map(Reading::place)
                .mapToDouble(place::distanceTo)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        if (nearest < GAP_METRES) {
            return "Of all places it would make the map as a whole surest.";
        }
        return Double.isInfinite(nearest)
                ? "Nothing has been plumbed yet, and this place tells most about the rest."
                : String.format(
                        Locale.ROOT,
                        "It would fill the map where it is least known: the nearest reading is %.1f m away.",
                        nearest);
    }

    /** Why a reading that the others contradict is to be taken again. */
    static String again(PegMap map, ReadingCheck check) {
        Wording wording = Wording.of(map.peg());
        double off = check.readMetres() - check.expectedMetres();
        return "The reading here, " + wording.depth(check.readMetres()) + ", is "
                + wording.depthToHalfInch(Math.abs(off)) + (off > 0 ? " deeper" : " shallower")
                + " than the others expect; plumb it again.";
    }

    static String deepest(PegMap map, Place place) {
        Spot spot = map.deepest().spot();
        if (spot.place().distanceTo(place) < SAME_SPOT_METRES) {
            return "It would settle how deep the deepest spot is.";
        }
        Wording wording = Wording.of(map.peg());
        return "It would settle whether it is deeper here than at "
                + wording.distance(spot.place().distanceMetres()) + ", "
                + wording.direction(spot.place().angleDegrees()) + ", the deepest so far.";
    }

    /**
     * Why a reading helps a flat spot.
     *
     * @param steepness whether it tells more about the slope there than about the depth
     */
    static String flat(PegMap map, Decision choice, boolean steepness) {
        String target = Wording.of(map.peg()).depth(choice.targetMetres());
        String ground = ground(map, choice.zone().orElseThrow());
        return steepness
                ? "It would settle whether " + ground + " is level where it is about " + target + " deep."
                : "It would settle how deep " + ground + " is, where " + target + " is sought.";
    }

    private static String ground(PegMap map, Zone zone) {
        return switch (zone) {
            case ACROSS -> map.water().hasFarBank() ? "the ledge across" : "the bottom further out";
            case LEFT_MARGIN -> "the left margin";
            case RIGHT_MARGIN -> "the right margin";
            case SHORT -> "the bottom short";
            case TRACK -> "the track";
        };
    }
}

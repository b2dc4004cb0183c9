package pegbed.guidance;

import pegbed.findings.PegMap;
import pegbed.findings.Spot;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.posterior.ReadingCheck;

/** Why a reading is worth taking, from the term that gains most by it. */
final class Reasons {
    /** Nearer than this two places are the same spot to an angler, metres. */
    private static final double SAME_SPOT_METRES = 0.8;

    /** A gap between readings that an angler would call one, metres. */
    private static final double GAP_METRES = 1.75;

    private Reasons() {}

    static Reason map(PegMap map, Place place) {
        double nearest = map.peg().readings().stream()
                .map(Reading::place)
                .mapToDouble(place::distanceTo)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        if (nearest < GAP_METRES) {
            return new Reason.SurestMap();
        }
        return Double.isInfinite(nearest) ? new Reason.NothingPlumbed() : new Reason.FillsGap(nearest);
    }

    /** Why a reading that the others contradict is to be taken again. */
    static Reason again(ReadingCheck check) {
        return new Reason.Contradicted(check.readMetres(), check.expectedMetres());
    }

    static Reason deepest(PegMap map, Place place) {
        Spot spot = map.deepest().spot();
        return spot.place().distanceTo(place) < SAME_SPOT_METRES
                ? new Reason.DepthOfDeepest()
                : new Reason.DeeperThan(spot.place());
    }

    /** Why a reading helps a flat spot. */
    static Reason flat(PegMap map, Decision choice, Reason.FlatQuestion question) {
        return new Reason.FlatSpotSought(
                question, choice.zone().orElseThrow(), map.water().hasFarBank(), choice.targetMetres());
    }
}

package pegbed.guidance;

import pegbed.findings.Zone;
import pegbed.model.Place;

/** Why a reading is worth taking: the question that it answers, with the figures that a sentence about it needs. */
public sealed interface Reason {
    /** What one of the first readings asks. */
    enum OpeningQuestion {
        /** How quickly the near ledge drops. */
        NEAR_LEDGE,
        /** Where the track begins, on a water with a far bank. */
        TRACK_START,
        /** Where the near slope ends, on open water. */
        NEAR_SLOPE_END,
        /** How deep the middle is. */
        MIDDLE,
        /** Where the bottom begins to rise on the far side. */
        FAR_SLOPE_START,
        /** Whether the bottom still falls further out, on open water. */
        FALL_FURTHER_OUT,
        /** How deep it is as far out as can be reached. */
        LAST_REACH,
        /** How deep the left margin is. */
        LEFT_MARGIN,
        /** How deep the right margin is. */
        RIGHT_MARGIN
    }

    /** It is one of the first readings, at a fixed place. */
    record OpeningPlace(OpeningQuestion question) implements Reason {}

    /**
     * It tells how today's water stands to that of the earlier visits, without which their depths are not known today.
     *
     * @param depthMetres what is expected there, metres
     * @param sdAfterMetres standard deviation of the level once it is taken, metres
     */
    record LevelOfDay(double depthMetres, double sdAfterMetres) implements Reason {}

    /**
     * A reading taken there is contradicted by the others.
     *
     * @param readMetres what was read, metres
     * @param expectedMetres what the others expect, metres
     */
    record Contradicted(double readMetres, double expectedMetres) implements Reason {}

    /** Nothing has been plumbed, and this place is correlated most with the rest. */
    record NothingPlumbed() implements Reason {}

    /**
     * It fills a gap in the map.
     *
     * @param nearestMetres distance to the nearest reading, metres
     */
    record FillsGap(double nearestMetres) implements Reason {}

    /** Of all places it lowers the standard deviation of the map as a whole most. */
    record SurestMap() implements Reason {}

    /** The depth at the deepest place is not known well enough. */
    record DepthOfDeepest() implements Reason {}

    /** It may be deeper here than at the deepest place so far. */
    record DeeperThan(Place deepest) implements Reason {}

    /**
     * A flat spot is sought.
     *
     * @param question whether the slope or the depth of the ground is in doubt
     * @param zone where it is sought
     * @param farBank whether the water has a far bank, as the zones are named by it
     * @param targetMetres the depth at which it is sought, metres
     */
    record FlatSpotSought(FlatQuestion question, Zone zone, boolean farBank, double targetMetres) implements Reason {}

    /** What is in doubt about a flat spot. */
    enum FlatQuestion {
        SLOPE,
        DEPTH
    }
}

package pegbed.guidance;

/**
 * How the guidance weighs what it may learn. The usual blend was chosen on simulated pegs; see
 * {@code docs/decisions/0010-where-to-plumb-next.md}.
 *
 * @param spreadUntil up to this many readings the map alone counts
 * @param deepestUntil after that, up to this many readings, the deepest place alone counts
 * @param minDeepestGain as long as a reading is expected to gain so much for it: worth, as {@link #deepestWeight}
 * @param followed by how many times as much a reading is taken to move what is expected meanwhile, 1 or more: as if
 *     others followed it there
 * @param mapEvery after that every so many readings one is for the map; 0 for never
 * @param deepShare how much more a place that may prove the deepest counts for the map, 0 or more; only until the
 *     deepest place has had its readings
 * @param deepestWeight worth of the deepest place, per {@value #DEPTH_METRES} m gained
 * @param ownDepthWeight worth of a flat spot at the zone's own best depth, where that is not the target
 * @param tie share of the greatest gain by which a nearer place may fall short and still be preferred
 */
public record GuidanceWeights(
        int spreadUntil,
        int deepestUntil,
        double minDeepestGain,
        double followed,
        int mapEvery,
        double deepShare,
        double deepestWeight,
        double ownDepthWeight,
        double tie) {
    /** A gain in depth that is worth as much as a flat spot won, metres. */
    static final double DEPTH_METRES = 0.15;

    public static final GuidanceWeights USUAL = new GuidanceWeights(14, 18, 0.035, 1.7, 3, 2, 1, 0.5, 0.05);
}

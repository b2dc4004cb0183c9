package pegbed.findings;

/**
 * The deepest place that can be used.
 *
 * @param spot the place; its pFlat is the probability that it is no steeper than the limit
 * @param area the connected part within 10 cm of its depth that is not steeper than the limit
 * @param steepDepthMetres the greatest expected depth in front however steep it is there, metres: that of the spot or
 *     more
 */
public record Deepest(Spot spot, Area area, double steepDepthMetres) {}

package pegbed.findings;

/**
 * The deepest place that can be used.
 *
 * @param spot the place; its pFlat is the probability that it is no steeper than the limit
 * @param area the connected part within 10 cm of its depth that is not steeper than the limit
 * @param settles what one more reading there would settle, one sentence
 */
public record Deepest(Spot spot, Area area, String settles) {}

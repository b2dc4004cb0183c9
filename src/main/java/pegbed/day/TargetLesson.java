package pegbed.day;

/**
 * The target depth that earlier visits speak for.
 *
 * @param depthMetres middle of the depth band that did best, metres
 * @param best in how many visits it did best
 * @param visits in how many visits it was fished beside another depth
 */
public record TargetLesson(double depthMetres, int best, int visits) {}

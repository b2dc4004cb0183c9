package pegbed.surface.posterior;

/**
 * A place where later readings show another bottom than earlier ones, after the water's level is allowed for.
 *
 * @param xMetres metres to the right of the seat
 * @param yMetres metres straight out
 * @param since index of the first visit that shows it, 1 or more
 * @param deeperMetres how much deeper the bottom is now in the middle of the place, metres; negative if silted up
 * @param sdMetres standard deviation of that, metres
 * @param probability that the bottom has changed somewhere between those visits, beside that the readings are only
 *     noisy, 0 to 1
 */
public record BottomChange(
        double xMetres, double yMetres, int since, double deeperMetres, double sdMetres, double probability) {
    /** How far a change reaches: its standard deviation about its middle, metres (empirical). */
    static final double SPREAD_METRES = 0.6;

    /** So far from its middle about half of a change is felt, metres. */
    public static final double HALF_FELT_METRES = 0.7;

    /** Share of the change in the middle that is felt so far away: exp(−d²/(2·0.6²)). */
    public static double share(double distanceMetres) {
        double z = distanceMetres / SPREAD_METRES;
        return Math.exp(-z * z / 2);
    }
}

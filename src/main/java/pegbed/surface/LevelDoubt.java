package pegbed.surface;

/**
 * The doubt that is told of a level, and how far the solve overdoes it.
 *
 * <p>The model knows one roughness for the whole peg, and most of what it takes for roughness comes from the slopes; on
 * level ground a reading says more of the water's level than the solve believes. What readings add to the prior's
 * precision is therefore divided by q = 0.4 + 0.6·min(1, s/0.35), s the mean steepness of the ground that they were taken
 * on. The figures are empirical, from simulated pegs; {@code docs/visits.md} has what comes of it.
 */
final class LevelDoubt {
    private static final double FLAT = 0.4;
    private static final double STEEP = 0.35;

    private LevelDoubt() {}

    /**
     * Standard deviation to tell, metres.
     *
     * @param prior variance of the offset before any reading, square metres
     * @param solved variance of it that the solve gives, square metres
     * @param steepness mean steepness of the ground read, rise over run
     */
    static double sd(double prior, double solved, double steepness) {
        if (prior <= 0 || solved <= 0) {
            return 0;
        }
        double added = Math.max(0, 1 / solved - 1 / prior);
        return Math.sqrt(1 / (1 / prior + added / overdone(steepness)));
    }

    /** q: how many times too much variance the solve gives to readings on ground of a steepness. */
    static double overdone(double steepness) {
        return FLAT + (1 - FLAT) * Math.min(1, steepness / STEEP);
    }
}

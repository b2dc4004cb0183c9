package pegbed.surface.prior;

/**
 * Depth of the water at the very edge of a bank under one structure (empirical, from simulated and real bottoms).
 *
 * @param metres expected depth, metres
 * @param sharedSdMetres standard deviation of the error that all points of one bank have in common, metres
 * @param ownSdMetres standard deviation of the independent error of each point, metres
 */
public record EdgeDepth(double metres, double sharedSdMetres, double ownSdMetres) {
    /** Of a structure. */
    public static EdgeDepth of(Structure structure) {
        return switch (structure) {
            case TUB -> new EdgeDepth(0.15, 0.30, 0.15);
            case FALL, OPEN, BASIN -> new EdgeDepth(0.07, 0.16, 0.15);
        };
    }
}

package pegbed.surface.prior;

/**
 * How much water a structure expects at the very edge of a bank (empirical, from simulated and real bottoms).
 *
 * @param metres expected
 * @param sharedSdMetres standard deviation of what all points of one bank have in common, metres
 * @param ownSdMetres standard deviation of what each point has besides, metres
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

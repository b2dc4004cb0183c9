package pegbed.surface.prior;

/**
 * How much the other pegs of the same water count for a peg before its own readings.
 *
 * @param pegs how many others there are
 * @param alike odds, 0 to 1, that this peg is like them, by its own readings
 */
public record NeighbourInfluence(int pegs, double alike) {
    /** Whether they count for something: below even odds the peg is taken to be unlike the others. */
    public boolean heeded() {
        return alike >= 0.5;
    }
}

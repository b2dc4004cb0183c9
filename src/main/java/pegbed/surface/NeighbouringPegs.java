package pegbed.surface;

import java.util.List;
import pegbed.surface.survey.Scale;

/**
 * The mapped pegs of the same water as one that is being plumbed. What they teach is worked out by
 * {@link NeighbourProfile}.
 *
 * <p>Immutable and thread-safe.
 */
public final class NeighbouringPegs {
    /** No other peg is known. */
    public static final NeighbouringPegs NONE = new NeighbouringPegs(List.of());

    /** A peg of fewer readings than this teaches nothing. */
    public static final int TEACHES_FROM = 8;

    private final List<FittedBottom> bottoms;

    private NeighbouringPegs(List<FittedBottom> bottoms) {
        this.bottoms = List.copyOf(bottoms);
    }

    /** Other pegs, each fitted by itself; those of too few readings, or deeper than a peg's scale, are left aside. */
    public static NeighbouringPegs of(List<FittedBottom> bottoms) {
        List<FittedBottom> mapped = bottoms.stream()
                .filter(bottom -> bottom.soundings() >= TEACHES_FROM)
                .filter(NeighbouringPegs::isPeg)
                .toList();
        return mapped.isEmpty() ? NONE : new NeighbouringPegs(mapped);
    }

    private static boolean isPeg(FittedBottom bottom) {
        return bottom.survey().water().isPresent() && bottom.scale().equals(Scale.PEG);
    }

    /** Whether there is nobody to learn from. */
    public boolean isEmpty() {
        return bottoms.isEmpty();
    }

    /** Those with a far bank, or those without one, that have a tub to speak of. */
    List<FittedBottom> alike(boolean farBank) {
        return bottoms.stream()
                .filter(bottom -> bottom.survey().coordinates().hasFarBank() == farBank)
                .filter(bottom -> bottom.tub().isPresent())
                .toList();
    }
}

package pegbed.model;

import java.util.OptionalDouble;

/**
 * What the person wants of the answers.
 *
 * @param targetMetres the depth sought across and in the margins, metres; empty follows half the deepest
 * @param lines how many lines, and which
 * @param rigs how many rigs, and how they are tied
 * @param byItself whether the peg starts from nothing, not from other pegs of the same water
 * @param extras fields of a later version
 */
public record Wishes(OptionalDouble targetMetres, LineWishes lines, RigWishes rigs, boolean byItself, Extras extras) {
    public static final Wishes NONE =
            new Wishes(OptionalDouble.empty(), LineWishes.USUAL, RigWishes.USUAL, false, Extras.NONE);

    public Wishes {
        if (targetMetres.isPresent()) {
            Check.within(targetMetres.getAsDouble(), 0, Reading.DEEPEST_METRES, "The target depth in metres");
        }
    }

    /** These wishes at another target depth. */
    public Wishes withTarget(OptionalDouble otherMetres) {
        return new Wishes(otherMetres, lines, rigs, byItself, extras);
    }

    /** These wishes with others for the lines. */
    public Wishes withLines(LineWishes others) {
        return new Wishes(targetMetres, others, rigs, byItself, extras);
    }

    /** These wishes with others for the rigs. */
    public Wishes withRigs(RigWishes others) {
        return new Wishes(targetMetres, lines, others, byItself, extras);
    }

    /** These wishes with or without a start from other pegs of the same water. */
    public Wishes withByItself(boolean other) {
        return new Wishes(targetMetres, lines, rigs, other, extras);
    }
}

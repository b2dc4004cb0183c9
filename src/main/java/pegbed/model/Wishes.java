package pegbed.model;

import java.util.OptionalDouble;

/**
 * What the person wants of the answers.
 *
 * @param targetMetres the depth sought across and in the margins, metres; empty follows half the deepest
 * @param extras fields of a later version
 */
public record Wishes(OptionalDouble targetMetres, Extras extras) {
    public static final Wishes NONE = new Wishes(OptionalDouble.empty(), Extras.NONE);

    public Wishes {
        if (targetMetres.isPresent()) {
            Check.within(targetMetres.getAsDouble(), 0, Reading.DEEPEST_METRES, "The target depth in metres");
        }
    }
}

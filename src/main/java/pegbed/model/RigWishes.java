package pegbed.model;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How many rigs the person wants, and how they are tied.
 *
 * @param most how many at most, 1 to {@value #MOST}; empty takes the fewest that cover the best lines
 * @param overdepthMetres line that lies on the bottom when the float's tip just shows, metres, 0 to 1; 0 is dead depth,
 *     empty plumbs to the base of the float's body
 * @param templates how rigs are tied; empty for the usual ones
 */
public record RigWishes(OptionalInt most, OptionalDouble overdepthMetres, List<RigTemplate> templates) {
    /** The most rigs of a peg. */
    public static final int MOST = 12;

    public static final RigWishes USUAL = new RigWishes(OptionalInt.empty(), OptionalDouble.empty(), List.of());

    public RigWishes {
        if (most.isPresent()) {
            Check.within(most.getAsInt(), 1, MOST, "The number of rigs");
        }
        if (overdepthMetres.isPresent()) {
            Check.within(overdepthMetres.getAsDouble(), 0, 1, "The overdepth in metres");
        }
        templates = List.copyOf(templates);
    }

    /** The templates to tie by: the person's own, else {@link RigTemplate#USUAL}. */
    public List<RigTemplate> templatesOrUsual() {
        return templates.isEmpty() ? RigTemplate.USUAL : templates;
    }

    public RigWishes withMost(OptionalInt other) {
        return new RigWishes(other, overdepthMetres, templates);
    }

    public RigWishes withOverdepth(OptionalDouble otherMetres) {
        return new RigWishes(most, otherMetres, templates);
    }

    public RigWishes withTemplates(List<RigTemplate> others) {
        return new RigWishes(most, overdepthMetres, others);
    }
}

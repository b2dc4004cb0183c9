package pegbed.session;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import pegbed.model.LineWishes;
import pegbed.model.Place;
import pegbed.model.RigTemplate;
import pegbed.model.StartLine;

/** Edits of what is wanted of the lines to fish. */
public final class PlanEdits {
    private PlanEdits() {}

    /** A line is fished here, whatever else is chosen. */
    public static Edit fix(Place place) {
        return lines("Pin line", lines -> lines.fixing(place));
    }

    /** No line is fished here. */
    public static Edit forbid(Place place) {
        return lines("Forbid line", lines -> lines.forbidding(place));
    }

    /** Nothing is fixed or forbidden within so many metres of a place. */
    public static Edit release(Place place, double withinMetres) {
        return lines("Let line free", lines -> lines.releasing(place, withinMetres));
    }

    /** Nothing is fixed or forbidden anywhere. */
    public static Edit releaseAll() {
        return lines("Let all lines free", LineWishes::withoutPins);
    }

    /** The plan starts in a part of the peg; empty leaves it to the plan. */
    public static Edit start(Optional<StartLine> part) {
        return lines("Change start line", lines -> lines.withStart(part));
    }

    /**
     * Rigs are tied by these templates.
     *
     * @param templates empty for {@link RigTemplate#USUAL}
     */
    public static Edit rigs(List<RigTemplate> templates) {
        List<RigTemplate> kept = List.copyOf(templates);
        return Edit.of(
                "Change rigs",
                peg -> peg.withWishes(peg.wishes().withRigs(peg.wishes().rigs().withTemplates(kept))));
    }

    /** The bottom starts from nothing, or again from other pegs of the same water. */
    public static Edit byItself(boolean alone) {
        return Edit.of(
                alone ? "Take the peg by itself" : "Start from other pegs",
                peg -> peg.withWishes(peg.wishes().withByItself(alone)));
    }

    private static Edit lines(String label, UnaryOperator<LineWishes> change) {
        return Edit.of(
                label,
                peg -> peg.withWishes(
                        peg.wishes().withLines(change.apply(peg.wishes().lines()))));
    }
}

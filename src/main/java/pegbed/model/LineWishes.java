package pegbed.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How many lines the person wants, and which.
 *
 * @param counts how many at most in each part of the peg
 * @param most how many at most in all, 1 to {@value #MOST}; empty leaves it to the counts
 * @param start where the person likes to start; empty leaves it to the plan
 * @param fixed places at which there must be a line
 * @param forbidden places about which there must be none
 */
public record LineWishes(
        LineCounts counts, OptionalInt most, Optional<StartLine> start, List<LinePin> fixed, List<LinePin> forbidden) {
    /** The most lines of a peg. */
    public static final int MOST = 12;

    public static final LineWishes USUAL =
            new LineWishes(LineCounts.USUAL, OptionalInt.empty(), Optional.empty(), List.of(), List.of());

    public LineWishes {
        if (most.isPresent()) {
            Check.within(most.getAsInt(), 1, MOST, "The number of lines");
        }
        fixed = List.copyOf(fixed);
        forbidden = List.copyOf(forbidden);
        if (fixed.size() > MOST) {
            throw new IllegalArgumentException(
                    "At most " + MOST + " lines can be fixed, not " + fixed.size() + "; let one go first.");
        }
    }

    public LineWishes withCounts(LineCounts others) {
        return new LineWishes(others, most, start, fixed, forbidden);
    }

    public LineWishes withMost(OptionalInt other) {
        return new LineWishes(counts, other, start, fixed, forbidden);
    }

    public LineWishes withStart(Optional<StartLine> other) {
        return new LineWishes(counts, most, other, fixed, forbidden);
    }

    /** These wishes with nothing fixed or forbidden. */
    public LineWishes withoutPins() {
        return new LineWishes(counts, most, start, List.of(), List.of());
    }

    /** How many lines each part is to have at most: at least one where the person likes to start, margins aside. */
    public LineCounts wanted() {
        return new LineCounts(
                atLeast(StartLine.TRACK, counts.track()),
                atLeast(StartLine.ACROSS, counts.across()),
                counts.leftMargin(),
                counts.rightMargin(),
                atLeast(StartLine.SHORT, counts.shortLines()));
    }

    private int atLeast(StartLine part, int count) {
        return start.filter(part::equals).isPresent() ? Math.max(1, count) : count;
    }

    /** These wishes with a line fixed at one more place. */
    public LineWishes fixing(Place place) {
        return new LineWishes(counts, most, start, longer(fixed, place), forbidden);
    }

    /** These wishes with no line about one more place. */
    public LineWishes forbidding(Place place) {
        return new LineWishes(counts, most, start, fixed, longer(forbidden, place));
    }

    /** These wishes without the pins, of either kind, within so many metres of a place. */
    public LineWishes releasing(Place place, double withinMetres) {
        return new LineWishes(
                counts, most, start, without(fixed, place, withinMetres), without(forbidden, place, withinMetres));
    }

    private static List<LinePin> longer(List<LinePin> pins, Place place) {
        List<LinePin> more = new ArrayList<>(pins);
        more.add(LinePin.at(place));
        return more;
    }

    private static List<LinePin> without(List<LinePin> pins, Place place, double withinMetres) {
        return pins.stream()
                .filter(pin -> pin.place().distanceTo(place) > withinMetres)
                .toList();
    }
}

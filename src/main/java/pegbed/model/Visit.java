package pegbed.model;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One day at the peg. Depths of a visit hang on that visit's own water level.
 *
 * @param start when it began, where known
 * @param boardToWaterMetres from the fixed board on the platform down to the water, metres, -5 to 5; empty if not
 *     measured. More means lower water.
 * @param afresh whether the bottom was dug out since the visit before, so that what was read earlier says nothing of
 *     it; the earlier readings stay in the file
 * @param readings in the order in which they were taken
 * @param day the fishing
 * @param note the person's own words, may be empty
 * @param extras fields of a later version
 */
public record Visit(
        Optional<OffsetDateTime> start,
        OptionalDouble boardToWaterMetres,
        boolean afresh,
        List<Reading> readings,
        Day day,
        String note,
        Extras extras) {
    /** A visit of which nothing is known yet. */
    public static final Visit EMPTY = new Visit(Optional.empty(), OptionalDouble.empty(), List.of(), "", Extras.NONE);

    public Visit {
        readings = List.copyOf(readings);
        if (boardToWaterMetres.isPresent()) {
            Check.within(boardToWaterMetres.getAsDouble(), -5, 5, "Board to water in metres");
        }
    }

    /** A visit at a bottom that was not dug out, of which no fishing was noted. */
    public Visit(
            Optional<OffsetDateTime> start,
            OptionalDouble boardToWaterMetres,
            List<Reading> readings,
            String note,
            Extras extras) {
        this(start, boardToWaterMetres, false, readings, Day.NONE, note, extras);
    }

    /** This visit begun at another time. */
    public Visit withStart(Optional<OffsetDateTime> began) {
        return new Visit(began, boardToWaterMetres, afresh, readings, day, note, extras);
    }

    /** This visit with other readings. */
    public Visit withReadings(List<Reading> others) {
        return new Visit(start, boardToWaterMetres, afresh, others, day, note, extras);
    }

    /** This visit with other fishing. */
    public Visit withDay(Day other) {
        return new Visit(start, boardToWaterMetres, afresh, readings, other, note, extras);
    }

    /** This visit with another board measure. */
    public Visit withBoard(OptionalDouble metres) {
        return new Visit(start, metres, afresh, readings, day, note, extras);
    }

    /** This visit at a bottom that was dug out before it, or not. */
    public Visit withAfresh(boolean dugOut) {
        return new Visit(start, boardToWaterMetres, dugOut, readings, day, note, extras);
    }

    /** Whether nothing is known of it but fishing: neither a reading nor the board. */
    public boolean isFishedOnly() {
        return readings.isEmpty()
                && boardToWaterMetres.isEmpty()
                && !day.events().isEmpty();
    }
}

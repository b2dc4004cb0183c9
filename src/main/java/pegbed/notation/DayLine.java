package pegbed.notation;

import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pegbed.model.DayEvent;
import pegbed.model.Place;

/**
 * A typed line of a day's log, as it was understood.
 *
 * @param time when, by the clock of the visit's place; empty for now
 * @param number which of the planned lines; empty where none was named
 * @param place where, if the line was named by its place
 * @param kind what happened
 * @param name what was fed, or the kind of fish; may be empty
 * @param amount how much was fed; may be empty
 * @param count how many fish
 * @param kilograms weight of the fish together
 * @param note the person's own words, may be empty
 */
public record DayLine(
        Optional<LocalTime> time,
        OptionalInt number,
        Optional<Place> place,
        DayEvent.Kind kind,
        String name,
        String amount,
        int count,
        OptionalDouble kilograms,
        String note) {}

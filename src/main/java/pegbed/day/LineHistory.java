package pegbed.day;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pegbed.model.DayEvent;
import pegbed.model.Place;

/**
 * What a day's log says of one line.
 *
 * @param place the planned line's place, or that of the first event where no line is planned
 * @param number of the planned line, from 1; empty where none is planned near
 * @param spells when it was fished, in order of time
 * @param events all of it but notes and stops, in order of time, up to now
 * @param now when the day is looked at
 */
public record LineHistory(Place place, OptionalInt number, List<Spell> spells, List<DayEvent> events, Instant now) {
    public LineHistory {
        spells = List.copyOf(spells);
        events = List.copyOf(events);
    }

    /** The events of one kind. */
    public List<DayEvent> of(DayEvent.Kind kind) {
        return events.stream().filter(event -> event.kind() == kind).toList();
    }

    /** How many fish came in. */
    public int fish() {
        return count(DayEvent.Kind.FISH);
    }

    /** How many fish came off. */
    public int lost() {
        return count(DayEvent.Kind.LOST);
    }

    /** How many bites gave no fish. */
    public int bites() {
        return count(DayEvent.Kind.BITE);
    }

    /** How often it was fed. */
    public int feeds() {
        return count(DayEvent.Kind.FEED);
    }

    /** How often the hook caught something. */
    public int snags() {
        return count(DayEvent.Kind.SNAG);
    }

    private int count(DayEvent.Kind kind) {
        return of(kind).stream().mapToInt(DayEvent::count).sum();
    }

    /** Weight of the fish that were weighed, kilograms. */
    public double kilograms() {
        return events.stream()
                .mapToDouble(event -> event.weightKilograms().orElse(0))
                .sum();
    }

    /** How many of the fish were weighed, alone or together. */
    public int weighed() {
        return events.stream()
                .filter(event -> event.weightKilograms().isPresent())
                .mapToInt(DayEvent::count)
                .sum();
    }

    /** How long it was fished, minutes. */
    public double fishedMinutes() {
        return spells.stream().mapToDouble(Spell::minutes).sum();
    }

    /** Whether it is being fished now. */
    public boolean fishedNow() {
        return !spells.isEmpty() && spells.get(spells.size() - 1).open();
    }

    /** Minutes since it was last fished, 0 while it is; empty if it never was. */
    public OptionalDouble minutesSinceFished() {
        return spells.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Spell.minutesBetween(spells.get(spells.size() - 1).end(), now));
    }

    /** Minutes since it was last fed; empty if it never was. */
    public OptionalDouble minutesSinceFed() {
        return minutesSince(DayEvent.Kind.FEED);
    }

    /** Minutes since its last fish; empty if there was none. */
    public OptionalDouble minutesSinceFish() {
        return minutesSince(DayEvent.Kind.FISH);
    }

    private OptionalDouble minutesSince(DayEvent.Kind kind) {
        Optional<DayEvent> last = of(kind).stream().reduce((first, second) -> second);
        return last.map(event ->
                        OptionalDouble.of(Spell.minutesBetween(event.time().toInstant(), now)))
                .orElse(OptionalDouble.empty());
    }
}

package pegbed.session;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import pegbed.model.DayEvent;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Visit;
import pegbed.notation.DayLine;

/**
 * From a typed line of a day's log to the event that it means at a visit.
 *
 * @param peg the peg
 * @param visit which visit, from 0; empty for the one that goes on, or begins, now
 * @param planned places of the planned lines, in order of their numbers
 * @param now the moment of typing
 */
public record TypedDay(Peg peg, Optional<Integer> visit, List<Place> planned, OffsetDateTime now) {
    /** Clocks differ by so much, minutes. */
    private static final int CLOCKS_MINUTES = 2;

    /** A visit noted later began no more than so long after its first event, hours (our choice). */
    private static final int BEFORE_START_HOURS = 6;

    public TypedDay {
        planned = List.copyOf(planned);
    }

    /**
     * The event.
     *
     * @throws InputException if there is no such line, no line is fished then, or the time can't be
     */
    public DayEvent event(DayLine typed) throws InputException {
        return event(typed, time(typed));
    }

    /** As {@link #event(DayLine)}, in place of an event whose time it keeps where it names none. */
    public DayEvent instead(DayLine typed, DayEvent old) throws InputException {
        return event(typed, typed.time().isPresent() ? time(typed) : old.time());
    }

    private DayEvent event(DayLine typed, OffsetDateTime time) throws InputException {
        Optional<Place> line = line(typed, time);
        return new DayEvent(
                time,
                typed.kind(),
                line,
                typed.name(),
                typed.amount(),
                typed.count(),
                typed.kilograms(),
                typed.note(),
                Extras.NONE);
    }

    private OffsetDateTime time(DayLine typed) throws InputException {
        if (visit.isPresent()) {
            return timeOfVisit(typed, visit.get());
        }
        if (typed.time().isEmpty()) {
            return now.withNano(0);
        }
        OffsetDateTime today = now.with(typed.time().get()).withNano(0);
        if (!today.isAfter(now.plusMinutes(CLOCKS_MINUTES))) {
            return today;
        }
        OffsetDateTime yesterday = today.minusDays(1);
        Visit latest = peg.today();
        boolean overMidnight = latest.start().isPresent()
                && !DayEdits.isOver(latest, now)
                && !yesterday.isBefore(latest.start().get());
        if (overMidnight) {
            return yesterday;
        }
        throw new InputException(typed.time().get() + " is later than now, "
                + now.toLocalTime().withNano(0) + "; for an earlier visit say which, such as --visit "
                + peg.visits().size() + ".");
    }

    private OffsetDateTime timeOfVisit(DayLine typed, int index) throws InputException {
        Visit visited = peg.visits().get(index);
        if (typed.time().isEmpty()) {
            throw new InputException("An event of an earlier visit needs its time, such as 14:20 line 2 fish.");
        }
        if (visited.start().isEmpty()) {
            throw new InputException("Visit " + (index + 1) + " has no date, so that its times can't be placed.");
        }
        OffsetDateTime start = visited.start().get();
        OffsetDateTime same = start.with(typed.time().get()).withNano(0);
        return same.isBefore(start.minusHours(BEFORE_START_HOURS)) ? same.plusDays(1) : same;
    }

    private Optional<Place> line(DayLine typed, OffsetDateTime time) throws InputException {
        if (typed.place().isPresent()) {
            return typed.place();
        }
        if (typed.number().isPresent()) {
            int number = typed.number().getAsInt();
            if (number < 1 || number > planned.size()) {
                throw new InputException("There is no line " + number + "; the plan has "
                        + switch (planned.size()) {
                            case 0 -> "no lines, so say the place, such as at s6 11:30 fish.";
                            case 1 -> "line 1 alone.";
                            default -> "lines 1 to " + planned.size() + ".";
                        });
            }
            return Optional.of(planned.get(number - 1));
        }
        if (!typed.kind().onLine()) {
            return Optional.empty();
        }
        Optional<Place> fished = fishedAt(time);
        if (fished.isEmpty()) {
            throw new InputException("No line is being fished then; say which, such as line 2 "
                    + typed.kind().word() + ".");
        }
        return fished;
    }

    /** The line that was fished at a moment, as the log says so far. */
    private Optional<Place> fishedAt(OffsetDateTime time) {
        Visit at = visit.map(index -> peg.visits().get(index)).orElse(peg.today());
        if (visit.isEmpty() && DayEdits.isOver(at, time)) {
            return Optional.empty();
        }
        Optional<Place> fished = Optional.empty();
        for (DayEvent event : at.day().events()) {
            boolean before = !Duration.between(event.time(), time).isNegative();
            if (before && event.kind() == DayEvent.Kind.STOP) {
                fished = Optional.empty();
            } else if (before && event.kind().onLine() && event.kind() != DayEvent.Kind.FEED) {
                fished = event.line();
            }
        }
        return fished;
    }
}

package pegbed.day;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.DayEvent.Kind;
import pegbed.model.Place;

/** Invented logs. */
final class Logs {
    static final Place FIRST = new Place(0, 9);
    static final Place SECOND = new Place(-3, 13);
    static final Place THIRD = new Place(5, 2);
    static final List<Place> PLANNED = List.of(FIRST, SECOND, THIRD);

    private final OffsetDateTime start;
    private final List<DayEvent> events = new ArrayList<>();

    private Logs(OffsetDateTime start) {
        this.start = start;
    }

    static Logs from(String start) {
        return new Logs(OffsetDateTime.parse(start));
    }

    static Logs morning() {
        return from("2026-06-06T10:00:00+01:00");
    }

    Logs at(int minute, Kind kind, Place place) {
        events.add(DayEvent.of(start.plusMinutes(minute), kind, Optional.ofNullable(place)));
        return this;
    }

    Logs fish(int minute, Place place, int count, double kilograms) {
        events.add(DayEvent.of(start.plusMinutes(minute), Kind.FISH, Optional.of(place))
                .with(count, kilograms > 0 ? OptionalDouble.of(kilograms) : OptionalDouble.empty()));
        return this;
    }

    /** A fish every so many minutes, from one minute up to another. */
    Logs every(int minutes, int from, int to, Place place) {
        for (int minute = from; minute < to; minute += minutes) {
            at(minute, Kind.FISH, place);
        }
        return this;
    }

    Day day() {
        return new Day(Conditions.NONE, events);
    }

    Instant time(int minute) {
        return start.plusMinutes(minute).toInstant();
    }

    LineHistories lines(int now) {
        return LineHistories.of(day(), PLANNED, time(now));
    }
}

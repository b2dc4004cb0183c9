package pegbed.day;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.Place;

/**
 * A day's log by lines. An event belongs to the planned line nearest to its place within {@link #SAME_LINE_METRES}, so
 * that a plan made afresh keeps what was noted; a place without one near makes a line of its own.
 *
 * <p>A spell begins with a start and ends with the start of another line or a stop. A bite, a fish, a lost fish or a
 * snag on a line that is not being fished says that it is: then the spell begun before ends, and its own begins, at the
 * event of the log before it, but at most {@link #UNSAID_START_MINUTES} earlier. Feed says nothing of what is fished.
 * Where nothing is noted for more than {@link #BREAK_MINUTES}, nothing was fished since the event before that. Notes
 * count for nothing.
 *
 * @param lines the planned lines in their order, then the others in the order of their first event
 * @param now up to when events count; later ones are passed over
 */
public record LineHistories(List<LineHistory> lines, Instant now) {
    /** Nearer than this to a line's place is that line, metres (our choice; lines are kept 2 m apart). */
    public static final double SAME_LINE_METRES = 1.5;

    /** A spell without a start began at most so long before its first event, minutes (our choice). */
    public static final double UNSAID_START_MINUTES = 10;

    /** A longer time without an event is a break, minutes (our choice). */
    public static final double BREAK_MINUTES = 120;

    public LineHistories {
        lines = List.copyOf(lines);
    }

    /**
     * The lines of a day.
     *
     * @param day the log
     * @param planned places of the planned lines, in order of their numbers
     * @param now when the day is looked at
     */
    public static LineHistories of(Day day, List<Place> planned, Instant now) {
        List<Building> lines = new ArrayList<>();
        for (int i = 0; i < planned.size(); i++) {
            lines.add(new Building(planned.get(i), OptionalInt.of(i + 1)));
        }
        Fishing fishing = new Fishing();
        for (DayEvent event : day.events()) {
            Instant time = event.time().toInstant();
            if (time.isAfter(now) || event.kind() == DayEvent.Kind.NOTE) {
                continue;
            }
            fishing.breakBefore(time);
            Building line = event.line().map(place -> at(lines, place)).orElse(null);
            switch (event.kind()) {
                case START -> fishing.go(line, time);
                case STOP -> fishing.stop(time);
                case BITE, FISH, LOST, SNAG -> fishing.isOn(line, time);
                default -> {}
            }
            if (line != null && event.kind() != DayEvent.Kind.STOP) {
                line.events.add(event);
            }
            fishing.last = time;
        }
        fishing.breakBefore(now);
        fishing.until(now);
        return new LineHistories(lines.stream().map(line -> line.history(now)).toList(), now);
    }

    /** The line being fished; empty in a break. */
    public Optional<LineHistory> fished() {
        return lines.stream().filter(LineHistory::fishedNow).findFirst();
    }

    /** The line at a place, if there is one. */
    public Optional<LineHistory> at(Place place) {
        return nearest(lines.stream().map(LineHistory::place).toList(), place).map(lines::get);
    }

    private static Building at(List<Building> lines, Place place) {
        Optional<Integer> known = nearest(lines.stream().map(line -> line.place).toList(), place);
        if (known.isPresent()) {
            return lines.get(known.get());
        }
        Building fresh = new Building(place, OptionalInt.empty());
        lines.add(fresh);
        return fresh;
    }

    /** Which of some places is nearest to another, within the distance of one line. */
    static Optional<Integer> nearest(List<Place> places, Place to) {
        Integer nearest = null;
        double least = SAME_LINE_METRES;
        for (int i = 0; i < places.size(); i++) {
            double metres = places.get(i).distanceTo(to);
            if (metres < least || (metres == least && nearest == null)) {
                nearest = i;
                least = metres;
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** A line of which more is to come. */
    private static final class Building {
        final Place place;
        final OptionalInt number;
        final List<Spell> spells = new ArrayList<>();
        final List<DayEvent> events = new ArrayList<>();

        Building(Place place, OptionalInt number) {
            this.place = place;
            this.number = number;
        }

        LineHistory history(Instant now) {
            return new LineHistory(place, number, spells, events, now);
        }
    }

    /** What is being fished while the log is read. */
    private static final class Fishing {
        private Building line;
        private Instant since;
        private Instant last;

        void go(Building to, Instant time) {
            if (line != to) {
                stop(time);
                line = to;
                since = time;
            }
        }

        void isOn(Building on, Instant time) {
            if (line == on) {
                return;
            }
            Instant earliest = time.minus(Duration.ofMinutes((long) UNSAID_START_MINUTES));
            Instant start = last != null && last.isAfter(earliest) ? last : earliest;
            stop(start);
            line = on;
            since = start;
        }

        void stop(Instant time) {
            end(time, false);
        }

        void until(Instant now) {
            end(now, true);
        }

        private void end(Instant time, boolean open) {
            if (line != null && (open || time.isAfter(since))) {
                line.spells.add(new Spell(since, time, open));
            }
            line = null;
        }

        void breakBefore(Instant time) {
            if (last != null && Spell.minutesBetween(last, time) > BREAK_MINUTES) {
                stop(last);
            }
        }
    }
}

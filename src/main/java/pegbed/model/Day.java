package pegbed.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The fishing of one visit.
 *
 * @param conditions what the day was like
 * @param events what happened, in order of time; those of the same moment stay in the order in which they were noted
 */
public record Day(Conditions conditions, List<DayEvent> events) {
    /** Nothing was noted. */
    public static final Day NONE = new Day(Conditions.NONE, List.of());

    /** More events than this are no day's fishing. */
    public static final int MOST_EVENTS = 10_000;

    public Day {
        if (events.size() > MOST_EVENTS) {
            throw new IllegalArgumentException("A day holds at most " + MOST_EVENTS + " events.");
        }
        List<DayEvent> ordered = new ArrayList<>(events);
        ordered.sort(Comparator.comparing(event -> event.time().toInstant()));
        events = List.copyOf(ordered);
    }

    /** This day under other conditions. */
    public Day with(Conditions others) {
        return new Day(others, events);
    }

    /** This day with one event more. */
    public Day with(DayEvent event) {
        List<DayEvent> more = new ArrayList<>(events);
        more.add(event);
        return new Day(conditions, more);
    }

    /** This day with an event in place of the one of a number, counted from 0. */
    public Day replacing(int index, DayEvent event) {
        List<DayEvent> others = new ArrayList<>(events);
        others.set(index, event);
        return new Day(conditions, others);
    }

    /** This day without the event of a number, counted from 0. */
    public Day without(int index) {
        List<DayEvent> others = new ArrayList<>(events);
        others.remove(index);
        return new Day(conditions, others);
    }
}

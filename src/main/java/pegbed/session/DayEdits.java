package pegbed.session;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.Peg;
import pegbed.model.Visit;

/** Edits of a visit's fishing. Visits and events are counted from 0. */
public final class DayEdits {
    /** Nobody sits at a peg for so long without a word, hours (our choice). */
    static final int OVER_HOURS = 12;

    private DayEdits() {}

    /**
     * One more event now: of the latest visit, or of a new one that begins with it where the latest {@link #isOver} by
     * then.
     */
    public static Edit add(DayEvent event) {
        return Edit.of("Note " + event.kind().word(), peg -> {
            if (isOver(peg.today(), event.time())) {
                List<Visit> visits = new ArrayList<>(peg.visits());
                visits.add(Visit.EMPTY.withStart(Optional.of(event.time())).withDay(Day.NONE.with(event)));
                return peg.withVisits(visits);
            }
            return peg.withToday(
                    visit -> (visit.start().isPresent() ? visit : visit.withStart(Optional.of(event.time())))
                            .withDay(visit.day().with(event)));
        });
    }

    /** Whether a visit is over at a moment: nothing is known of it from the {@value #OVER_HOURS} hours before. */
    public static boolean isOver(Visit visit, OffsetDateTime at) {
        Stream<OffsetDateTime> known = Stream.of(
                        visit.start().stream(),
                        visit.readings().stream().flatMap(reading -> reading.time().stream()),
                        visit.day().events().stream().map(DayEvent::time))
                .flatMap(times -> times);
        return known.max(OffsetDateTime.timeLineOrder())
                .filter(last -> last.isBefore(at.minusHours(OVER_HOURS)))
                .isPresent();
    }

    /** Many events of one visit at once, undone as one. */
    public static Edit bringIn(int visit, List<DayEvent> events) {
        return Edit.of(
                "Bring in " + events.size() + (events.size() == 1 ? " event" : " events"),
                peg -> with(peg, visit, day -> {
                    List<DayEvent> more = new ArrayList<>(day.events());
                    more.addAll(events);
                    return new Day(day.conditions(), more);
                }));
    }

    /** Puts another event in the place of one. */
    public static Edit change(int visit, int index, DayEvent event) {
        return Edit.of("Change event", peg -> with(peg, visit, day -> day.replacing(index, event)));
    }

    /** Takes an event away. */
    public static Edit delete(int visit, int index) {
        return Edit.of("Delete event", peg -> with(peg, visit, day -> day.without(index)));
    }

    /** What the day was like. */
    public static Edit conditions(int visit, Conditions conditions) {
        return Edit.step(
                "Change conditions", "conditions " + visit, peg -> with(peg, visit, day -> day.with(conditions)));
    }

    private static Peg with(Peg peg, int visit, UnaryOperator<Day> change) {
        List<Visit> visits = new ArrayList<>(peg.visits());
        visits.set(
                visit, visits.get(visit).withDay(change.apply(visits.get(visit).day())));
        return peg.withVisits(visits);
    }
}

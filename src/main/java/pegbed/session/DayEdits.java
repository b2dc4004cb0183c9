package pegbed.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.Peg;
import pegbed.model.Visit;

/** Edits of a visit's fishing. Visits and events are counted from 0. */
public final class DayEdits {
    private DayEdits() {}

    /** One more event of today's visit, wherever its time puts it. */
    public static Edit add(DayEvent event) {
        return Edit.of("Note " + event.kind().word(), peg -> {
            Peg dated = peg.today().start().isPresent()
                    ? peg
                    : peg.withToday(visit -> visit.withStart(Optional.of(event.time())));
            return dated.withToday(visit -> visit.withDay(visit.day().with(event)));
        });
    }

    /** Many events of one visit at once, undone as one. */
    public static Edit bringIn(int visit, List<DayEvent> events) {
        return Edit.of(
                "Bring in " + events.size() + (events.size() == 1 ? " event" : " events"), peg -> with(peg, visit, day -> {
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
        return Edit.step("Change conditions", "conditions " + visit, peg -> with(peg, visit, day -> day.with(conditions)));
    }

    private static Peg with(Peg peg, int visit, UnaryOperator<Day> change) {
        List<Visit> visits = new ArrayList<>(peg.visits());
        visits.set(visit, visits.get(visit).withDay(change.apply(visits.get(visit).day())));
        return peg.withVisits(visits);
    }
}

package pegbed.session;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import pegbed.model.Bottom;
import pegbed.model.Peg;
import pegbed.model.Reading;

/** Edits of the readings and of what is sought. */
public final class ReadingEdits {
    private ReadingEdits() {}

    /** One more reading at the end of today's. */
    public static Edit add(Reading reading) {
        return Edit.of("Add reading", peg -> peg.withReading(reading));
    }

    /** Many readings at once, undone as one. */
    public static Edit bringIn(List<Reading> readings) {
        return Edit.of(
                "Bring in " + readings.size() + (readings.size() == 1 ? " reading" : " readings"),
                peg -> peg.withToday(visit -> {
                    List<Reading> longer = new ArrayList<>(visit.readings());
                    longer.addAll(readings);
                    return visit.withReadings(longer);
                }));
    }

    /** Puts another reading in the place of one; its time and what a later version wrote stay. */
    public static Edit change(ReadingAt at, Reading reading) {
        return Edit.of(
                "Change reading",
                peg -> with(
                        peg,
                        at,
                        old -> new Reading(
                                reading.typed(),
                                reading.place(),
                                reading.precision(),
                                reading.depthMetres(),
                                reading.bottom(),
                                reading.note(),
                                old.time(),
                                old.extras())));
    }

    /** Takes a reading away. */
    public static Edit delete(ReadingAt at) {
        return Edit.of("Delete reading", peg -> readings(peg, at.visit(), readings -> readings.remove(at.index())));
    }

    /** What the plummet felt. */
    public static Edit bottom(ReadingAt at, Bottom bottom) {
        return Edit.of(
                "Change bottom",
                peg -> with(
                        peg,
                        at,
                        r -> new Reading(
                                r.typed(),
                                r.place(),
                                r.precision(),
                                r.depthMetres(),
                                bottom,
                                r.note(),
                                r.time(),
                                r.extras())));
    }

    /** The person's own words on a reading; a burst of typing is undone as one. */
    public static Edit note(ReadingAt at, String note) {
        return Edit.step(
                "Change note",
                "note " + at.visit() + " " + at.index(),
                peg -> with(
                        peg,
                        at,
                        r -> new Reading(
                                r.typed(),
                                r.place(),
                                r.precision(),
                                r.depthMetres(),
                                r.bottom(),
                                note,
                                r.time(),
                                r.extras())));
    }

    /** The depth sought, metres; empty follows half the deepest. A drag is undone as one. */
    public static Edit target(OptionalDouble metres) {
        UnaryOperator<Peg> change = peg -> peg.withWishes(peg.wishes().withTarget(metres));
        return metres.isPresent()
                ? Edit.step("Change target depth", "target", change)
                : Edit.of("Follow half the deepest", change);
    }

    private static Peg with(Peg peg, ReadingAt at, UnaryOperator<Reading> change) {
        return readings(peg, at.visit(), readings -> readings.set(at.index(), change.apply(readings.get(at.index()))));
    }

    private static Peg readings(Peg peg, int visit, java.util.function.Consumer<List<Reading>> change) {
        List<Reading> readings = new ArrayList<>(peg.visits().get(visit).readings());
        change.accept(readings);
        var visits = new ArrayList<>(peg.visits());
        visits.set(visit, visits.get(visit).withReadings(readings));
        return peg.withVisits(visits);
    }
}

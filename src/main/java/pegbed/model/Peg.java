package pegbed.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * One peg: the whole document, immutable.
 *
 * @param name where it is
 * @param position on the earth, where known
 * @param units how the person says depths and distances
 * @param pole the person's pole
 * @param banks where water meets bank
 * @param limits how far the angler's own water goes
 * @param marks things on the far bank to sight on; names are unique, capitals aside
 * @param hazards what to keep away from
 * @param wishes what the person wants of the answers
 * @param visits in order of time, one at least; the first gives the datum of levels
 * @param extras fields of a later version
 */
public record Peg(
        PegName name,
        Optional<Position> position,
        Units units,
        Pole pole,
        Banks banks,
        Limits limits,
        List<Mark> marks,
        List<Hazard> hazards,
        Wishes wishes,
        List<Visit> visits,
        Extras extras) {
    /** A peg of which nothing is known yet. */
    public static final Peg EMPTY = new Peg(
            new PegName("", "", ""),
            Optional.empty(),
            Units.USUAL,
            Pole.USUAL,
            Banks.NONE,
            Limits.NONE,
            List.of(),
            List.of(),
            Wishes.NONE,
            List.of(Visit.EMPTY),
            Extras.NONE);

    public Peg {
        marks = List.copyOf(marks);
        hazards = List.copyOf(hazards);
        visits = List.copyOf(visits);
        if (visits.isEmpty()) {
            throw new IllegalArgumentException("A peg needs at least one visit.");
        }
        long names = marks.stream()
                .map(mark -> mark.name().toLowerCase(java.util.Locale.ROOT))
                .distinct()
                .count();
        if (names != marks.size()) {
            throw new IllegalArgumentException("Two marks have the same name; give each its own.");
        }
    }

    /** The latest visit: the one that "today" means. */
    public Visit today() {
        return visits.get(visits.size() - 1);
    }

    /** All readings of all visits, in order. */
    public List<Reading> readings() {
        return visits.stream().flatMap(visit -> visit.readings().stream()).toList();
    }

    public Peg withName(PegName other) {
        return new Peg(other, position, units, pole, banks, limits, marks, hazards, wishes, visits, extras);
    }

    public Peg withPosition(Optional<Position> other) {
        return new Peg(name, other, units, pole, banks, limits, marks, hazards, wishes, visits, extras);
    }

    public Peg withUnits(Units other) {
        return new Peg(name, position, other, pole, banks, limits, marks, hazards, wishes, visits, extras);
    }

    public Peg withPole(Pole other) {
        return new Peg(name, position, units, other, banks, limits, marks, hazards, wishes, visits, extras);
    }

    public Peg withBanks(Banks other) {
        return new Peg(name, position, units, pole, other, limits, marks, hazards, wishes, visits, extras);
    }

    public Peg withLimits(Limits other) {
        return new Peg(name, position, units, pole, banks, other, marks, hazards, wishes, visits, extras);
    }

    public Peg withMarks(List<Mark> others) {
        return new Peg(name, position, units, pole, banks, limits, others, hazards, wishes, visits, extras);
    }

    public Peg withHazards(List<Hazard> others) {
        return new Peg(name, position, units, pole, banks, limits, marks, others, wishes, visits, extras);
    }

    public Peg withWishes(Wishes other) {
        return new Peg(name, position, units, pole, banks, limits, marks, hazards, other, visits, extras);
    }

    public Peg withVisits(List<Visit> others) {
        return new Peg(name, position, units, pole, banks, limits, marks, hazards, wishes, others, extras);
    }

    /** This peg with its latest visit changed. */
    public Peg withToday(UnaryOperator<Visit> change) {
        List<Visit> changed = new ArrayList<>(visits);
        changed.set(changed.size() - 1, change.apply(today()));
        return withVisits(changed);
    }

    /** This peg with one more reading at the end of its latest visit. */
    public Peg withReading(Reading reading) {
        return withToday(visit -> {
            List<Reading> longer = new ArrayList<>(visit.readings());
            longer.add(reading);
            return visit.withReadings(longer);
        });
    }
}

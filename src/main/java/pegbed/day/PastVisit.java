package pegbed.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.Place;
import pegbed.model.Visit;

/**
 * The fishing of an earlier visit, by lines.
 *
 * @param index which visit of its peg, from 0; what a place's depth was hangs on it
 * @param date when
 * @param waterCelsius temperature of the water, °C; empty if not taken
 * @param lines what was fished, each line for some time; empty of a visit to another peg, whose places say nothing here
 * @param hours how long was fished in all, above 0
 * @param fish how many came in
 */
public record PastVisit(
        int index, LocalDate date, OptionalDouble waterCelsius, List<LineCatch> lines, double hours, int fish) {
    public PastVisit {
        lines = List.copyOf(lines);
        if (!(hours > 0)) {
            throw new IllegalArgumentException("A visit that was fished took more than 0 hours.");
        }
    }

    /**
     * The fishing of a visit up to its last event; empty if nothing was fished.
     *
     * @param index which visit of its peg, from 0
     * @param planned places of the planned lines
     */
    public static Optional<PastVisit> of(int index, Visit visit, List<Place> planned) {
        Day day = visit.day();
        if (day.events().isEmpty()) {
            return Optional.empty();
        }
        DayEvent last = day.events().get(day.events().size() - 1);
        Instant end = last.time().toInstant();
        List<LineCatch> lines = LineHistories.of(day, planned, end).lines().stream()
                .map(LineCatch::of)
                .filter(line -> line.hours() > 0)
                .toList();
        double hours = lines.stream().mapToDouble(LineCatch::hours).sum();
        return hours > 0
                ? Optional.of(new PastVisit(
                        index,
                        day.events().get(0).time().toLocalDate(),
                        day.conditions().waterCelsius(),
                        lines,
                        hours,
                        lines.stream().mapToInt(LineCatch::fish).sum()))
                : Optional.empty();
    }

    /** This visit as one to another peg of the same water: its fish an hour count, its places do not. */
    public PastVisit elsewhere() {
        return new PastVisit(index, date, waterCelsius, List.of(), hours, fish);
    }

    /** Fish an hour. */
    double rate() {
        return fish / hours;
    }
}

package pegbed.session;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import pegbed.day.EarlierVisits;
import pegbed.day.LineHistories;
import pegbed.day.LineOdds;
import pegbed.day.LineRate;
import pegbed.day.PastVisit;
import pegbed.day.RatePrior;
import pegbed.model.Day;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Visit;

/**
 * What a visit's log says of its lines.
 *
 * @param day the log
 * @param histories the lines as they were fished
 * @param rates how fast fish come on each, in the same order
 * @param odds whether another line would do better now
 * @param prior what earlier visits let one expect
 */
public record DayAnswer(Day day, LineHistories histories, List<LineRate> rates, LineOdds odds, RatePrior prior) {
    public DayAnswer {
        rates = List.copyOf(rates);
    }

    /**
     * The answer of one visit.
     *
     * @param peg the peg
     * @param visit which visit, from 0; later ones count for nothing
     * @param planned places of the planned lines, in order of their numbers
     * @param others other pegs of the same water
     * @param now when it is looked at; a visit that is over is looked at when its last event was
     */
    public static DayAnswer of(Peg peg, int visit, List<Place> planned, List<Peg> others, OffsetDateTime now) {
        Visit looked = peg.visits().get(visit);
        Day day = looked.day();
        OffsetDateTime at = now;
        if (!day.events().isEmpty()) {
            boolean over = visit < peg.visits().size() - 1 || DayEdits.isOver(looked, now);
            OffsetDateTime last = day.events().get(day.events().size() - 1).time();
            at = over || last.isAfter(now) ? last : now;
        }
        RatePrior prior = prior(peg, visit, planned, others, at);
        LineHistories histories = LineHistories.of(day, planned, at.toInstant());
        return new DayAnswer(
                day,
                histories,
                LineRate.of(histories, prior),
                LineOdds.of(histories, prior, LineOdds.CHANGE_MINUTES),
                prior);
    }

    private static RatePrior prior(Peg peg, int visit, List<Place> planned, List<Peg> others, OffsetDateTime at) {
        LocalDate date = at.toLocalDate();
        List<PastVisit> earlier = new ArrayList<>();
        for (int v = 0; v < visit; v++) {
            PastVisit.of(v, peg.visits().get(v), planned).ifPresent(earlier::add);
        }
        for (Peg other : others) {
            for (int v = 0; v < other.visits().size(); v++) {
                PastVisit.of(v, other.visits().get(v), List.of())
                        .filter(past -> past.date().isBefore(date))
                        .map(PastVisit::elsewhere)
                        .ifPresent(earlier::add);
            }
        }
        return EarlierVisits.of(earlier)
                .prior(date, peg.visits().get(visit).day().conditions().waterCelsius());
    }
}

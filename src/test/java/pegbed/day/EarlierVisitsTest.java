package pegbed.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pegbed.day.RatePrior.Weighting;
import pegbed.model.DayEvent.Kind;
import pegbed.model.Visit;

/** The visits are invented. */
class EarlierVisitsTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-06-20");

    private static PastVisit visit(int index, String date, double celsius, int firstFish, int secondFish) {
        return new PastVisit(
                index,
                LocalDate.parse(date),
                celsius > 0 ? OptionalDouble.of(celsius) : OptionalDouble.empty(),
                List.of(new LineCatch(Logs.FIRST, 2, firstFish, 0, 0), new LineCatch(Logs.SECOND, 2, secondFish, 0, 0)),
                4,
                firstFish + secondFish);
    }

    private static RatePrior prior(List<PastVisit> visits, OptionalDouble celsius) {
        return EarlierVisits.of(visits).prior(TODAY, celsius);
    }

    @Test
    void withoutVisitsThePriorIsVague() {
        assertSame(RatePrior.VAGUE, prior(List.of(), OptionalDouble.empty()));
    }

    @Test
    void theMeanIsThatOfTheVisitsAndFewerSayLess() {
        List<PastVisit> visits = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            visits.add(visit(i, "2026-05-0" + (i + 1), 0, 40, 40));
        }
        RatePrior five = prior(visits, OptionalDouble.empty());
        RatePrior one = prior(visits.subList(0, 1), OptionalDouble.empty());
        assertEquals(20, five.day().mean(), 0.5);
        assertEquals(20, one.day().mean(), 0.5);
        assertTrue(five.day().shape() > one.day().shape());
        assertEquals(5, five.visits());
        assertEquals(Weighting.NONE, five.weighting());
    }

    @Test
    void aPlaceThatDidBetterIsExpectedTo() {
        List<PastVisit> visits = List.of(
                visit(0, "2026-05-01", 0, 30, 10), visit(1, "2026-05-08", 0, 24, 6), visit(2, "2026-05-15", 0, 40, 16));
        RatePrior prior = prior(visits, OptionalDouble.empty());
        double first = prior.at(Logs.FIRST).orElseThrow().factor();
        double second = prior.at(Logs.SECOND).orElseThrow().factor();
        assertTrue(first > 1.1 && second < 0.9, first + " " + second);
        assertTrue(first < 1.5, "drawn towards 1, since there are few");
        assertEquals(3, prior.at(Logs.FIRST).orElseThrow().visits());
        assertTrue(prior.at(Logs.THIRD).isEmpty());
        List<LineRate> rates = LineRate.of(Logs.morning().lines(0), prior);
        assertTrue(rates.get(0).fishAnHour().mean() > rates.get(1).fishAnHour().mean());
        assertTrue(rates.get(0).told() && !rates.get(2).told());
    }

    @Test
    void theSeasonCountsWhereVisitsBearItOut() {
        List<PastVisit> seasons = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            seasons.add(visit(i, "2025-06-1" + i, 0, 50 + i, 40));
            seasons.add(visit(i, "2026-01-1" + i, 0, 3 + i, 2));
        }
        RatePrior summer = prior(seasons, OptionalDouble.empty());
        assertEquals(Weighting.SEASON, summer.weighting());
        assertEquals(23, summer.day().mean(), 2);
    }

    @Test
    void theSeasonDoesNotCountWhereItSaysNothingOrVisitsAreFew() {
        List<PastVisit> alike = new ArrayList<>();
        List<PastVisit> few = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            alike.add(visit(i, "2025-06-1" + i, 0, 20 + i, 20));
            alike.add(visit(i, "2026-01-1" + i, 0, 21 - i, 20));
        }
        few.add(visit(0, "2025-06-10", 0, 50, 40));
        few.add(visit(1, "2026-01-10", 0, 3, 2));
        assertEquals(Weighting.NONE, prior(alike, OptionalDouble.empty()).weighting());
        assertEquals(Weighting.NONE, prior(few, OptionalDouble.empty()).weighting());
    }

    @Test
    void theWatersTemperatureCountsWhereItForetellsBetter() {
        List<PastVisit> visits = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            visits.add(visit(i, "2026-05-1" + i, 18 + i * 0.2, 50 + i, 40));
            visits.add(visit(i, "2026-05-1" + i, 5 + i * 0.2, 3 + i, 2));
        }
        RatePrior warm = prior(visits, OptionalDouble.of(18));
        assertEquals(Weighting.WATER_TEMPERATURE, warm.weighting());
        assertEquals(23, warm.day().mean(), 2);
        assertEquals(Weighting.NONE, prior(visits, OptionalDouble.empty()).weighting());
    }

    @Test
    void aVisitToAnotherPegSaysNothingOfPlaces() {
        RatePrior prior = prior(List.of(visit(0, "2026-05-01", 0, 30, 10).elsewhere()), OptionalDouble.empty());
        assertTrue(prior.places().isEmpty());
        assertEquals(10, prior.day().mean(), 0.5);
    }

    @Test
    void aVisitIsReadFromItsLog() {
        Logs log = Logs.morning()
                .at(0, Kind.START, Logs.FIRST)
                .every(10, 5, 60, Logs.FIRST)
                .at(60, Kind.START, Logs.SECOND)
                .at(90, Kind.STOP, null);
        Optional<PastVisit> visit = PastVisit.of(2, Visit.EMPTY.withDay(log.day()), Logs.PLANNED);
        assertEquals(1.5, visit.orElseThrow().hours(), 1e-9);
        assertEquals(6, visit.orElseThrow().fish());
        assertEquals(2, visit.orElseThrow().lines().size());
        assertTrue(PastVisit.of(0, Visit.EMPTY, Logs.PLANNED).isEmpty());
    }
}

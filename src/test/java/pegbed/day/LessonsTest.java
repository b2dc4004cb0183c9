package pegbed.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pegbed.model.Place;

/** The visits are invented. */
class LessonsTest {
    private static final double BAND = 0.0762;
    private static final Place DEEP = new Place(0, 9);
    private static final Place SHALLOW = new Place(-3, 13);
    private static final Place MIDDLE = new Place(4, 3);
    private static final Place SHALLOWEST = new Place(-5, 2);

    private static OptionalDouble depth(Place place) {
        return place.equals(DEEP)
                ? OptionalDouble.of(1.68)
                : place.equals(SHALLOW)
                        ? OptionalDouble.of(10 * BAND)
                        : place.equals(MIDDLE) ? OptionalDouble.of(13 * BAND) : OptionalDouble.of(5 * BAND);
    }

    private static PastVisit visit(int index, int deep, int shallow, int middle, int shallowest) {
        List<LineCatch> lines = List.of(
                new LineCatch(DEEP, 1, deep, deep, deep * 0.5),
                new LineCatch(SHALLOW, 1, shallow, 0, 0),
                new LineCatch(MIDDLE, 0.5, middle, 0, 0),
                new LineCatch(SHALLOWEST, 0.5, shallowest, 0, 0));
        return new PastVisit(
                index,
                LocalDate.of(2026, 5 + index % 2, 3),
                OptionalDouble.empty(),
                lines,
                3,
                deep + shallow + middle + shallowest);
    }

    private static List<PastVisit> visits(int wins, int all) {
        List<PastVisit> visits = new ArrayList<>();
        for (int i = 0; i < all; i++) {
            visits.add(i < wins ? visit(i, 30, 12, 2, 1) : visit(i, 30, 4, 6, 1));
        }
        return visits;
    }

    private static Optional<TargetLesson> target(List<PastVisit> visits) {
        return Lessons.of(visits).target((place, visit) -> depth(place), 1.68, BAND);
    }

    @Test
    void theDepthThatDidBestInFourOfFiveVisitsIsOffered() {
        TargetLesson lesson = target(visits(4, 5)).orElseThrow();
        assertEquals(10 * BAND, lesson.depthMetres(), 1e-12);
        assertEquals(4, lesson.best());
        assertEquals(5, lesson.visits());
    }

    @Test
    void tooFewVisitsOrTooEvenOnesOfferNothing() {
        assertTrue(target(visits(2, 2)).isEmpty());
        assertTrue(target(visits(2, 4)).isEmpty());
        assertTrue(target(List.of()).isEmpty());
    }

    @Test
    void theDeepLineIsNoTarget() {
        assertTrue(target(visits(4, 5)).orElseThrow().depthMetres() < 1);
    }

    @Test
    void aVisitWithHardlyAFishDecidesNothing() {
        List<PastVisit> visits = new ArrayList<>(visits(3, 3));
        for (int i = 3; i < 9; i++) {
            visits.add(visit(i, 0, 0, 1, 0));
        }
        assertEquals(3, target(visits).orElseThrow().visits());
    }

    @Test
    void figuresAreForEachHourFished() {
        List<Lesson<Integer>> lessons = Lessons.of(visits(4, 5)).byDepth((place, visit) -> depth(place), BAND);
        Lesson<Integer> deep = lessons.get(lessons.size() - 1);
        assertEquals(22, deep.kind());
        assertEquals(5, deep.visits());
        assertEquals(5, deep.hours(), 1e-12);
        assertEquals(30, deep.fishAnHour(), 1e-12);
        assertEquals(15, deep.kilogramsAnHour(), 1e-12);
        assertEquals(5, deep.best());
        assertTrue(Double.isNaN(lessons.get(0).kilogramsAnHour()));
    }

    @Test
    void byDistancePartAndMonth() {
        Lessons lessons = Lessons.of(visits(4, 5));
        assertEquals(
                List.of(5, 9, 13),
                lessons.byDistance(1).stream().map(Lesson::kind).toList(),
                "two lines lie 5 and 5.4 m off");
        Lesson<String> left = lessons.byPart(
                        place -> place.xMetres() < 0 ? Optional.of("left") : Optional.<String>empty())
                .get(0);
        assertEquals("left", left.kind());
        assertEquals(7.5, left.hours(), 1e-12);
        assertEquals(
                List.of(Month.MAY, Month.JUNE),
                lessons.byMonth().stream().map(Lesson::kind).toList());
        assertEquals(3, lessons.byMonth().get(0).visits());
        assertEquals(0, lessons.byMonth().get(0).compared());
    }

    @Test
    void aPlaceOfUnknownDepthIsLeftOut() {
        assertTrue(Lessons.of(visits(4, 5))
                .byDepth((place, visit) -> OptionalDouble.empty(), BAND)
                .isEmpty());
    }
}

package pegbed.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Month;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pegbed.day.Lesson;
import pegbed.day.TargetLesson;
import pegbed.findings.PegMap;
import pegbed.findings.Zone;
import pegbed.model.DayEvent;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Visit;
import pegbed.storage.disk.PegFile;

/** The sample peg with twelve visits, all invented. */
class VisitLessonsTest {
    private static final OffsetDateTime LATER = OffsetDateTime.parse("2026-11-28T12:00:00Z");
    private static final double FOOT = 0.3048;
    private static Peg peg;
    private static PegMap map;

    @BeforeAll
    static void open() throws InputException {
        peg = PegFile.read(Path.of("sample-pegs/sallow-cut-5.peg.json")).peg();
        map = PegMap.of(peg, Monitor.NONE);
    }

    @Test
    void theDepthThatDidBestIsOfferedAsTarget() {
        VisitLessons lessons = VisitLessons.of(map, peg, LATER);
        assertEquals(12, lessons.visits());
        TargetLesson target = lessons.target().orElseThrow();
        assertEquals(2.5 * FOOT, target.depthMetres(), 1e-9);
        assertTrue(target.best() > 8 && target.visits() == 12, target.toString());
        assertEquals(map.deepest().spot().depthMetres() / 2, lessons.halfDeepestMetres());
        assertEquals(OptionalDouble.empty(), peg.wishes().targetMetres(), "never taken by itself");
    }

    @Test
    void everyKindOfPlaceCountsAllFish() {
        VisitLessons lessons = VisitLessons.of(map, peg, LATER);
        int fish = peg.visits().stream()
                .flatMap(visit -> visit.day().events().stream())
                .filter(event -> event.kind() == DayEvent.Kind.FISH)
                .mapToInt(DayEvent::count)
                .sum();
        for (List<? extends Lesson<?>> kinds :
                List.of(lessons.byDepth(), lessons.byDistance(), lessons.byPart(), lessons.byMonth())) {
            assertEquals(fish, kinds.stream().mapToInt(Lesson::fish).sum());
        }
        assertEquals(
                List.of(Zone.TRACK, Zone.ACROSS, Zone.LEFT_MARGIN, Zone.SHORT),
                lessons.byPart().stream().map(Lesson::kind).toList());
        assertEquals(Month.APRIL, lessons.byMonth().get(0).kind());
    }

    /** The water stood 3 in higher on a visit: its lines were one band deeper. */
    @Test
    void aVisitsDepthsAreThoseOfItsOwnLevel() throws InputException {
        List<Visit> visits = new ArrayList<>(peg.visits().subList(0, 3));
        visits.set(1, visits.get(1).withBoard(OptionalDouble.of(0.31 - 0.0762)));
        Peg higher = peg.withVisits(visits);
        VisitLessons lessons = VisitLessons.of(PegMap.of(higher, Monitor.NONE), higher, LATER);
        assertEquals(
                List.of(2, 1),
                lessons.byDepth().stream()
                        .filter(lesson -> lesson.kind() == 10 || lesson.kind() == 11)
                        .map(Lesson::visits)
                        .toList());
    }

    @Test
    void theVisitThatGoesOnTeachesNothingYet() throws InputException {
        OffsetDateTime last = peg.today().day().events().get(0).time();
        assertEquals(11, VisitLessons.of(map, peg, last.plusHours(3)).visits());
        Peg more = DayEdits.add(DayEvent.of(LATER, DayEvent.Kind.FISH, Optional.of(new Place(0, 5))))
                .change()
                .apply(peg);
        assertEquals(12, VisitLessons.of(map, more, LATER.plusHours(1)).visits());
    }
}

package pegbed.session;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.report.card.DayPage;
import pegbed.wording.LessonWords;
import pegbed.wording.Quantities;

/** The page that shows the fishing of a peg. */
public final class FishingPage {
    private FishingPage() {}

    /**
     * The page of a visit.
     *
     * @param visit which visit, from 0
     * @param answer what its log says
     * @param lessons what finished visits teach; empty where the bottom is not known
     */
    public static DayPage of(Peg peg, int visit, DayAnswer answer, Optional<VisitLessons> lessons) {
        LessonWords words = LessonWords.of(peg);
        return new DayPage(
                peg,
                peg.visits().get(visit).start().map(Quantities::day).orElse(""),
                answer.histories(),
                lessons.map(VisitLessons::byDepth).orElse(List.of()),
                lessons.map(VisitLessons::bandMetres).orElse(0.0),
                lessons.map(VisitLessons::visits).orElse(0),
                lessons.flatMap(known -> known.target()
                        .map(target -> words.target(target, known.halfDeepestMetres()) + " "
                                + words.leftOut(known.halfDeepestMetres()))));
    }

    /**
     * The page of the latest visit that was fished; empty if none was.
     *
     * @param planned places of the planned lines, in order of their numbers
     * @param lessons what finished visits teach
     * @param now when it is looked at
     */
    public static Optional<DayPage> latest(
            Peg peg, List<Place> planned, Optional<VisitLessons> lessons, OffsetDateTime now) {
        for (int visit = peg.visits().size() - 1; visit >= 0; visit--) {
            if (!peg.visits().get(visit).day().events().isEmpty()) {
                DayAnswer answer = DayAnswer.of(peg, visit, planned, List.of(), now);
                return Optional.of(of(peg, visit, answer, lessons)).filter(page -> !page.isEmpty());
            }
        }
        return Optional.empty();
    }
}

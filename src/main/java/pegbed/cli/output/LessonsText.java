package pegbed.cli.output;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pegbed.day.Lesson;
import pegbed.model.Peg;
import pegbed.session.VisitLessons;
import pegbed.wording.LessonWords;

/** What visits teach, as text. */
final class LessonsText {
    private LessonsText() {}

    /** The target that they speak for, and how it is taken; empty where there is none. */
    static Optional<String> target(Peg peg, VisitLessons lessons) {
        return lessons.target()
                .map(target -> LessonWords.of(peg).target(target, lessons.halfDeepestMetres())
                        + " Take it with --target in this command, or in the window for good.");
    }

    /** Prints tables of what they gave; nothing where no visit is finished. */
    static void print(Peg peg, VisitLessons lessons, PrintWriter out) {
        if (lessons.visits() == 0) {
            return;
        }
        LessonWords words = LessonWords.of(peg);
        out.println("What " + (lessons.visits() == 1 ? "1 visit" : lessons.visits() + " visits") + " gave");
        List<List<String>> rows = new ArrayList<>();
        rows(rows, words, lessons.byDepth(), band -> words.depthBand(band, lessons.bandMetres()));
        rows(rows, words, lessons.byDistance(), band -> words.distanceBand(band, VisitLessons.DISTANCE_METRES));
        rows(rows, words, lessons.byPart(), words::part);
        rows(rows, words, lessons.byMonth(), LessonWords::month);
        PlanText.table(rows, out);
        lessons.target()
                .ifPresent(target -> out.println("  " + words.target(target, lessons.halfDeepestMetres())
                        + " " + words.leftOut(lessons.halfDeepestMetres())
                        + " It is an offer: the target stays as it is until it is taken."));
    }

    private static <K> void rows(
            List<List<String>> rows, LessonWords words, List<Lesson<K>> lessons, Function<K, String> kind) {
        for (Lesson<K> lesson : lessons) {
            rows.add(List.of(
                    kind.apply(lesson.kind()),
                    words.fish(lesson),
                    words.weight(lesson).orElse(""),
                    LessonWords.visits(lesson),
                    LessonWords.best(lesson).orElse("")));
        }
    }
}

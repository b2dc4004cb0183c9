package pegbed.cli.output;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import pegbed.day.Lesson;
import pegbed.model.Peg;
import pegbed.session.VisitLessons;
import pegbed.wording.LessonWords;

/** What visits teach, as JSON. */
public final class LessonsJson {
    private LessonsJson() {}

    /** Puts {@code target_offered}, if visits speak for a target. */
    public static void putTarget(ObjectNode top, Peg peg, VisitLessons lessons) {
        lessons.target()
                .ifPresent(target -> top.putObject("target_offered")
                        .put("depth_m", Output.rounded(target.depthMetres(), 3))
                        .put("best", target.best())
                        .put("visits", target.visits())
                        .put("words", LessonWords.of(peg).target(target, lessons.halfDeepestMetres())));
    }

    /** What they gave by kinds of places. */
    static ObjectNode of(VisitLessons lessons) {
        ObjectNode top = JsonNodeFactory.instance.objectNode();
        top.put("visits", lessons.visits());
        put(top.putArray("by_depth"), lessons.byDepth(), (node, band) -> {
            node.put("depth_m", Output.rounded(band * lessons.bandMetres(), 3));
            node.put("band_m", Output.rounded(lessons.bandMetres(), 4));
        });
        put(top.putArray("by_distance"), lessons.byDistance(), (node, band) -> {
            node.put("distance_m", Output.rounded(band * VisitLessons.DISTANCE_METRES, 2));
            node.put("band_m", VisitLessons.DISTANCE_METRES);
        });
        put(top.putArray("by_part"), lessons.byPart(), (node, part) -> node.put("part", part.words()));
        put(
                top.putArray("by_month"),
                lessons.byMonth(),
                (node, month) -> node.put("month", month.name().toLowerCase(Locale.ROOT)));
        return top;
    }

    private static <K> void put(ArrayNode array, List<Lesson<K>> lessons, BiConsumer<ObjectNode, K> kind) {
        for (Lesson<K> lesson : lessons) {
            ObjectNode node = array.addObject();
            kind.accept(node, lesson.kind());
            node.put("visits", lesson.visits());
            node.put("hours", Output.rounded(lesson.hours(), 2));
            node.put("fish", lesson.fish());
            node.put("fish_an_hour", Output.rounded(lesson.fishAnHour(), 2));
            if (!Double.isNaN(lesson.kilogramsAnHour())) {
                node.put("kg_an_hour", Output.rounded(lesson.kilogramsAnHour(), 2));
            }
            node.put("compared", lesson.compared());
            node.put("best", lesson.best());
        }
    }
}

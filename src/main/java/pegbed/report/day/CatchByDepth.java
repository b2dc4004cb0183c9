package pegbed.report.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbed.day.Lesson;
import pegbed.model.Peg;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.drawing.View;
import pegbed.wording.LessonWords;

/** What visits gave by depth: a bar of fish an hour for each depth band, the shallowest on top. */
public final class CatchByDepth {
    private static final Lettering LABEL = Lettering.plain(9);
    private static final double ROW = 15;
    private static final double BAR = 9;
    private static final double GAP = 7;

    /** Bars have at least this share of the width; where words leave them less, the words are shorter. */
    private static final double LEAST_BARS = 0.3;

    private CatchByDepth() {}

    /**
     * The picture.
     *
     * @param peg the peg
     * @param lessons by depth band, the shallowest first
     * @param bandMetres width of the bands, metres
     * @param width of the sheet, points
     * @param measure how wide texts come out
     * @return empty where nothing was fished at a known depth
     */
    public static Optional<Drawing> of(
            Peg peg, List<Lesson<Integer>> lessons, double bandMetres, double width, TextMeasure measure) {
        if (lessons.isEmpty()) {
            return Optional.empty();
        }
        LessonWords words = LessonWords.of(peg);
        List<String> depths = lessons.stream()
                .map(lesson -> words.depth(lesson.kind(), bandMetres))
                .toList();
        double left = widest(depths, measure) + GAP;
        List<String> said = lessons.stream().map(LessonWords::brief).toList();
        if (width - left - widest(said, measure) - GAP < LEAST_BARS * width) {
            said = lessons.stream().map(LessonWords::briefest).toList();
        }
        double right = width - widest(said, measure) - GAP;
        double most = lessons.stream().mapToDouble(Lesson::fishAnHour).max().orElseThrow();
        List<Item> items = new ArrayList<>();
        items.add(Marks.segment(Role.LEGEND_RULE, left, 0, left, ROW * lessons.size()));
        for (int i = 0; i < lessons.size(); i++) {
            double middle = ROW * (i + 0.5);
            double base = middle + LABEL.sizePoints() * Lettering.CAP_HEIGHT / 2;
            double rate = lessons.get(i).fishAnHour();
            items.add(Marks.text(Role.LEGEND_HEADING, left - GAP, base, Text.Align.END, LABEL, depths.get(i)));
            if (rate > 0) {
                double end = left + Math.max(1, (right - left) * rate / most);
                items.add(Marks.rectangle(Role.CATCH_BAR, left, middle - BAR / 2, end, middle + BAR / 2));
            }
            items.add(Marks.text(Role.LEGEND_HEADING, width, base, Text.Align.END, LABEL, said.get(i)));
        }
        return Optional.of(new Drawing(items, new View(width, ROW * lessons.size() + 2, 1, 0, 0)));
    }

    private static double widest(List<String> words, TextMeasure measure) {
        return words.stream()
                .mapToDouble(each -> measure.widthPoints(each, LABEL))
                .max()
                .orElse(0);
    }
}

package pegbed.wording;

import java.time.Month;
import java.util.Optional;
import pegbed.day.Lesson;
import pegbed.day.Lessons;
import pegbed.day.TargetLesson;
import pegbed.findings.Zone;
import pegbed.model.Decimals;
import pegbed.model.Peg;
import pegbed.notation.Numbers;

/** What visits teach, in the person's words and units. */
public final class LessonWords {
    private final Quantities quantities;
    private final boolean farBank;

    private LessonWords(Peg peg) {
        quantities = Quantities.of(peg);
        farBank = peg.banks().far().size() > 1;
    }

    /** The words at a peg. */
    public static LessonWords of(Peg peg) {
        return new LessonWords(peg);
    }

    /**
     * The target that earlier visits speak for: {@code 2 ft 6 in did best in 4 of 5 visits (half the deepest is 2 ft 9
     * in).}
     *
     * @param halfDeepestMetres half the deepest, metres
     */
    public String target(TargetLesson lesson, double halfDeepestMetres) {
        return quantities.target(lesson.depthMetres()) + " did best in " + lesson.best() + " of " + lesson.visits()
                + " visits (half the deepest is " + quantities.target(halfDeepestMetres) + ").";
    }

    /**
     * What a target leaves out of account: {@code Lines deeper than 4 ft 6 in are left out of that.}
     *
     * @param halfDeepestMetres half the deepest, metres
     */
    public String leftOut(double halfDeepestMetres) {
        return "Lines deeper than " + quantities.depth(2 * Lessons.SHALLOWER_SHARE * halfDeepestMetres)
                + " are left out of that.";
    }

    /** A band of depth by its middle: {@code about 2 ft 6 in deep}. */
    public String depthBand(int band, double bandMetres) {
        return "about " + depth(band, bandMetres) + " deep";
    }

    /** The middle of a band of depth: {@code 2 ft 6 in}. */
    public String depth(int band, double bandMetres) {
        return quantities.depth(band * bandMetres);
    }

    /** A band of distance by its middle: {@code about 12.0 m out}. */
    public String distanceBand(int band, double bandMetres) {
        return "about " + Numbers.print(band * bandMetres, 1, 1) + " m out";
    }

    /** A part of the peg. */
    public String part(Zone zone) {
        return zone.words(farBank);
    }

    /** A month: {@code June}. */
    public static String month(Month month) {
        return Quantities.month(month.getValue());
    }

    /** Fish for the hours: {@code 12.3 fish an hour (37 in 3.0 h)}. */
    public String fish(Lesson<?> lesson) {
        return Decimals.text(lesson.fishAnHour(), 1) + " fish an hour (" + lesson.fish() + " in "
                + Decimals.text(lesson.hours(), 1) + " h)";
    }

    /** Weight for the hours: {@code 4 lb 2 oz an hour}; empty if none was weighed. */
    public Optional<String> weight(Lesson<?> lesson) {
        return Double.isNaN(lesson.kilogramsAnHour())
                ? Optional.empty()
                : Optional.of(quantities.weight(lesson.kilogramsAnHour()) + " an hour");
    }

    /** In few words: {@code 13.0 an hour, 12 visits, best in 10 of 12}. */
    public static String brief(Lesson<?> lesson) {
        return Decimals.text(lesson.fishAnHour(), 1) + " an hour, " + visits(lesson)
                + best(lesson).map(best -> ", " + best).orElse("");
    }

    /** In the fewest words: {@code 13.0, 12 visits}. */
    public static String briefest(Lesson<?> lesson) {
        return Decimals.text(lesson.fishAnHour(), 1) + ", " + visits(lesson);
    }

    /** How many visits are behind it: {@code 5 visits}. */
    public static String visits(Lesson<?> lesson) {
        return lesson.visits() == 1 ? "1 visit" : lesson.visits() + " visits";
    }

    /** How often it did best beside others: {@code best in 4 of 5}; empty where it was never compared. */
    public static Optional<String> best(Lesson<?> lesson) {
        return lesson.compared() == 0
                ? Optional.empty()
                : Optional.of("best in " + lesson.best() + " of " + lesson.compared());
    }
}

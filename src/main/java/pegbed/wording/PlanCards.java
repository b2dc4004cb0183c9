package pegbed.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.plan.Rig;

/** Lines and rigs as cards of a screen: a title and a few lines each. */
public final class PlanCards {
    private PlanCards() {}

    /**
     * A line.
     *
     * @param number 1 for the one to start on
     * @param title what it is and how deep
     * @param where how to find it
     * @param what its ground, its rig, and when to fish it
     * @param why why it was chosen
     * @param fixed whether the person fixed it
     * @param place where
     */
    public record LineCard(
            int number, String title, String where, String what, String why, boolean fixed, Place place) {}

    /**
     * A rig.
     *
     * @param title its number, its float and its lines
     * @param what how it is set and tied
     */
    public record RigCard(String title, String what) {}

    /** The lines, in the order in which they are fished. */
    public static List<LineCard> lines(Plan plan) {
        PlanWords words = PlanWords.of(plan);
        List<LineCard> cards = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            String checks = Stream.concat(words.checks(line).stream(), words.confirming(line).stream())
                    .collect(Collectors.joining(" "));
            cards.add(new LineCard(
                    line.number(),
                    Sentences.capital(words.where(line)) + ", " + words.depth(line) + ", rig " + line.rig(),
                    words.distance(line) + ", " + words.direction(line) + ", " + words.clock(line) + ", "
                            + words.aim(line),
                    Sentences.capital(words.confidence(line)) + ", " + words.slope(line) + ", " + words.doubt(line)
                            + ". " + words.order(line),
                    words.why(line) + (checks.isEmpty() ? "" : " " + checks),
                    line.candidate().isFixed(),
                    line.place()));
        }
        return cards;
    }

    /** The rigs, the shallowest first. */
    public static List<RigCard> rigs(Plan plan) {
        Peg peg = plan.findings().map().peg();
        RigWords words = RigWords.of(peg);
        List<RigCard> cards = new ArrayList<>();
        for (Rig rig : plan.rigs()) {
            String marks = rig.settings().stream()
                    .map(setting -> "line " + setting.line() + ": hook to tip " + words.hookToTip(setting) + ", "
                            + words.mark(setting))
                    .collect(Collectors.joining("; "));
            cards.add(new RigCard(
                    "Rig " + rig.number() + " for " + words.lines(rig) + ", float " + words.floatSize(rig),
                    Sentences.capital(marks) + ". " + Sentences.capital(words.overdepth(rig)) + "; " + words.travel(rig)
                            + ". Shot: " + words.shotting(rig) + ". Hook length " + words.hookLength(rig) + "."));
        }
        return cards;
    }
}

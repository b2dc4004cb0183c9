package pegbed.wording;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pegbed.findings.PegMap;
import pegbed.model.Peg;
import pegbed.model.Units;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.plan.Rig;

/** Sentences that the A5 card and the phone's card share. */
public final class CardWords {
    /** That there is no line. */
    public static final String NO_LINES = "These readings show no line to fish yet.";

    private CardWords() {}

    /** What the signs of the map mean. */
    public static String key(Plan plan) {
        PegMap map = plan.findings().map();
        Peg peg = map.peg();
        String unit = DepthFigures.unit(peg.units().depth());
        String rings = peg.units().distance() == Units.Distance.SECTIONS ? "ends of the pole's sections" : "distances";
        return "Contours in " + unit + ". Ring round a line: full sure, dashed likely, dotted worth a reading."
                + " Hatched: a guess."
                + (map.bottom().changes().isEmpty()
                        ? ""
                        : " Toothed ring: the bottom has changed since an earlier visit.")
                + " Thin rings: " + rings + ". ± holds two times in three.";
    }

    /** Clock, degrees and aim: {@code 11:20, 19° left; aim 0.1 m right of leaning post}. */
    public static String towards(PlanWords words, PlannedLine line) {
        String aim = words.aim(line);
        String direction = words.clock(line) + ", " + words.direction(line);
        // Where no mark is near enough to aim by, the aim is the clock, which stands there already.
        return aim.equals("towards " + words.clock(line))
                ? direction + "; no mark near it"
                : direction + "; aim " + aim;
    }

    /** How the float is set: {@code hook to float tip 3 ft on lines 2, 3 and 4; 2½ in over depth; …}. */
    public static String settings(RigWords words, Rig rig) {
        Map<String, List<Rig.Setting>> same = rig.settings().stream()
                .collect(Collectors.groupingBy(words::hookToTip, LinkedHashMap::new, Collectors.toList()));
        String marks = same.entrySet().stream()
                .map(entry ->
                        same.size() == 1 ? entry.getKey() : entry.getKey() + " on " + words.lines(entry.getValue()))
                .collect(Collectors.joining(", "));
        String travel = same.size() == 1 ? "" : "; " + words.travel(rig);
        return "Hook to float tip: " + marks + " (" + words.overdepth(rig) + ")" + travel + ".";
    }
}

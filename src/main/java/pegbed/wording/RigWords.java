package pegbed.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pegbed.model.Decimals;
import pegbed.model.Peg;
import pegbed.model.RigTemplate;
import pegbed.model.ShotGroup;
import pegbed.plan.Rig;

/** Rigs in the person's words and units. */
public final class RigWords {
    /** Shot is kept this far below the float's body where the water is too shallow for the template, metres. */
    private static final double CLEAR_METRES = 0.05;

    private static final double MOVES_METRES = 0.006;

    private final Quantities quantities;
    private final double topKitMetres;

    private RigWords(Peg peg) {
        quantities = Quantities.of(peg);
        topKitMetres = peg.pole().jointMetres().get(0);
    }

    public static RigWords of(Peg peg) {
        return new RigWords(peg);
    }

    /** Its float: {@code 4×12, 0.20 g}. */
    public String floatSize(Rig rig) {
        RigTemplate template = rig.template();
        return template.floatSize() + ", " + grams(template.floatGrams());
    }

    private static String grams(double grams) {
        return Decimals.text(grams, 2) + " g";
    }

    /** Its lines: {@code line 1}, {@code lines 2 and 3}. */
    public String lines(Rig rig) {
        return lines(rig.settings());
    }

    /** Some of its lines. */
    public String lines(List<Rig.Setting> settings) {
        return PlanWords.numbered(settings.stream().map(Rig.Setting::line).toList());
    }

    /** From the hook to the tip of the float. */
    public String hookToTip(Rig.Setting setting) {
        return quantities.depthToHalfInch(setting.hookToTipMetres());
    }

    /** Where the mark goes for a line. */
    public String mark(Rig.Setting setting) {
        String metres = hookToTip(setting);
        return setting.hookToTipMetres() <= topKitMetres
                ? "hook at one end of the top kit, mark it " + metres + " along"
                : "longer than the top kit: hook at one end, measure " + metres + " along the first sections";
    }

    /** How the float is set: over depth or dead. */
    public String overdepth(Rig rig) {
        return rig.overdepthMetres() == 0
                ? "dead depth: plumbed to the float's tip"
                : quantities.depthToHalfInch(rig.overdepthMetres()) + " over depth";
    }

    /** How far the float is slid between its lines. */
    public String travel(Rig rig) {
        if (rig.settings().size() == 1) {
            return "one line, one mark";
        }
        boolean same = rig.settings().stream().map(this::hookToTip).distinct().count() == 1;
        // Marks are said to the half inch, or the centimetre: where they differ, the slide is that much at least.
        double least = quantities.smallestStepMetres();
        return same
                ? "one mark serves all"
                : "slide the float " + quantities.depthToHalfInch(Math.max(least, rig.travelMetres()));
    }

    public String hookLength(Rig rig) {
        return quantities.depthToHalfInch(rig.template().hookLengthMetres());
    }

    /**
     * Its shotting from the hook up, with the weight of all: {@code 2 × No.10 at …, bulk of 8 × No.10 at … (0.40 g)}.
     */
    public String shotting(Rig rig) {
        List<ShotGroup> shots = rig.template().shots();
        if (shots.isEmpty()) {
            return "no shot given";
        }
        double max = Math.max(
                CLEAR_METRES,
                rig.settings().get(0).hookToTipMetres() - rig.template().tipToBodyMetres() - CLEAR_METRES);
        List<String> groups = new ArrayList<>();
        for (ShotGroup group : shots) {
            double low = Math.min(max, group.lowestMetres());
            double high = Math.min(max, group.highestMetres());
            String what = group.count() + " × " + group.shot().word();
            groups.add(
                    high - low < MOVES_METRES
                            ? (group.count() > 2 ? "bulk of " + what : what) + " at " + quantities.depthToHalfInch(high)
                            : what + " spread " + quantities.depthToHalfInch(low) + " to "
                                    + quantities.depthToHalfInch(high));
        }
        return groups.stream().collect(Collectors.joining(", ")) + " above the hook ("
                + grams(rig.template().shotGrams()) + ")";
    }
}

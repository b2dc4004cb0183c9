package pegbed.cli.output;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import pegbed.findings.Zone;
import pegbed.model.ShotGroup;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.plan.Rig;
import pegbed.wording.FindingWords;
import pegbed.wording.PlanWords;
import pegbed.wording.RigWords;

/** Lines and rigs in JSON: the keys {@code lines}, {@code rigs} and {@code shortfalls} beside {@link LinesJson}'s. */
public final class PlanJson {
    private PlanJson() {}

    public static ObjectNode of(Plan plan) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        PlanWords words = PlanWords.of(plan);
        plan.wishes()
                .lines()
                .start()
                .ifPresent(
                        start -> root.put("start_wished", start.word()).put("starts_as_wished", plan.startsAsWished()));
        ArrayNode lines = root.putArray("lines");
        plan.lines().forEach(line -> line(lines.addObject(), plan, words, line));
        RigWords rigWords = RigWords.of(plan.findings().map().peg());
        ArrayNode rigs = root.putArray("rigs");
        plan.rigs().forEach(rig -> rig(rigs.addObject(), rigWords, rig));
        ArrayNode shortfalls = root.putArray("shortfalls");
        words.shortfalls().forEach(shortfalls::add);
        return root;
    }

    private static void line(ObjectNode node, Plan plan, PlanWords words, PlannedLine line) {
        node.put("number", line.number());
        node.put("zone", line.candidate().zone().map(Zone::words).orElse(""));
        node.put("where", words.where(line));
        LinesJson.spot(node, line.spot());
        node.put("flat_at_m", Output.rounded(line.candidate().flatAtMetres(), 3));
        node.put("area_m2", Output.rounded(line.candidate().areaMetres2(), 2));
        node.put("words", FindingWords.confidence(line.candidate().confidence()));
        node.put("distance", words.distance(line));
        node.put("direction", words.direction(line));
        node.put("clock", words.clock(line));
        node.put("aim", words.aim(line));
        node.put("rig", line.rig());
        node.put("hook_to_tip_m", Output.rounded(plan.hookToTipMetres(line), 3));
        node.put("order", line.role().name().toLowerCase(Locale.ROOT));
        node.put("fixed", line.candidate().isFixed());
        node.put("why", words.why(line));
        ArrayNode checks = node.putArray("checks");
        words.checks(line).forEach(checks::add);
    }

    private static void rig(ObjectNode node, RigWords words, Rig rig) {
        node.put("number", rig.number());
        ArrayNode lines = node.putArray("lines");
        rig.settings().forEach(setting -> lines.add(setting.line()));
        node.put("travel_m", Output.rounded(rig.travelMetres(), 3));
        node.put("overdepth_m", Output.rounded(rig.overdepthMetres(), 3));
        node.put("template", rig.template().name());
        node.put("float", rig.template().floatSize());
        node.put("float_g", rig.template().floatGrams());
        node.put("hook_length_m", rig.template().hookLengthMetres());
        ArrayNode shots = node.putArray("shots");
        for (ShotGroup group : rig.template().shots()) {
            shots.addObject()
                    .put("count", group.count())
                    .put("shot", group.shot().word())
                    .put("lowest_m", group.lowestMetres())
                    .put("highest_m", group.highestMetres());
        }
        node.put("shotting", words.shotting(rig));
        ArrayNode marks = node.putArray("marks");
        rig.settings()
                .forEach(setting -> marks.addObject()
                        .put("line", setting.line())
                        .put("hook_to_tip_m", Output.rounded(setting.hookToTipMetres(), 3))
                        .put("words", words.mark(setting)));
    }
}

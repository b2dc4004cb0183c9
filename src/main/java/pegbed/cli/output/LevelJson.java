package pegbed.cli.output;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import pegbed.model.Peg;
import pegbed.model.Visit;
import pegbed.surface.posterior.BottomChange;
import pegbed.surface.posterior.VisitLevel;
import pegbed.visits.LevelAnswer;
import pegbed.visits.LevelAnswer.CheckReading;
import pegbed.wording.LevelWords;
import pegbed.wording.Quantities;

/** The answers of {@code pegbed level} in JSON. */
public final class LevelJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private LevelJson() {}

    public static ObjectNode of(Peg peg, LevelAnswer answer, List<AfterCheck> after) {
        LevelWords words = new LevelWords(peg);
        Quantities quantities = Quantities.of(peg);
        ObjectNode root = NODES.objectNode();
        Visit today = peg.today();
        root.put("visits", peg.visits().size());
        root.put("readings_today", today.readings().size());
        root.put("afresh", today.afresh());
        today.boardToWaterMetres().ifPresent(m -> root.put("board_to_water_m", m));
        answer.against().ifPresent(level -> root.set("level", level(level, words)));
        ArrayNode levels = root.putArray("against");
        answer.levels().forEach(level -> levels.add(level(level, words)));
        ArrayNode added = root.putArray("added");
        for (AfterCheck check : after) {
            ObjectNode node = added.addObject();
            node.put("reading", check.understood());
            check.answer().against().ifPresent(level -> node.set("level", level(level, words)));
        }
        ArrayNode checks = root.putArray("checks");
        for (CheckReading check : answer.checks()) {
            ObjectNode node = checks.addObject();
            node.put("distance_m", Output.rounded(check.place().distanceMetres(), 2));
            node.put("angle_deg", Output.rounded(check.place().angleDegrees(), 1));
            node.put("section", quantities.distance(check.place().distanceMetres()));
            node.put("aim", quantities.aim(check.place()));
            node.put("depth_m", Output.rounded(check.depthMetres(), 3));
            node.put("sd_after_m", Output.rounded(check.sdAfterMetres(), 4));
            node.put("words", words.check(check));
            node.put("why", words.why(check));
        }
        answer.board().ifPresent(board -> root.put("board_disagrees", words.board(board)));
        root.set("changes", changes(peg, answer.changes()));
        return root;
    }

    /** Where the bottom has changed. */
    public static ArrayNode changes(Peg peg, List<BottomChange> changes) {
        LevelWords words = new LevelWords(peg);
        ArrayNode list = NODES.arrayNode();
        changes.forEach(change -> list.add(change(change, words)));
        return list;
    }

    private static ObjectNode change(BottomChange change, LevelWords words) {
        ObjectNode node = NODES.objectNode();
        node.put("x_m", Output.rounded(change.xMetres(), 2));
        node.put("y_m", Output.rounded(change.yMetres(), 2));
        node.put("since_visit", change.since() + 1);
        node.put("deeper_m", Output.rounded(change.deeperMetres(), 3));
        node.put("sd_m", Output.rounded(change.sdMetres(), 3));
        node.put("p", Output.rounded(change.probability(), 4));
        node.put("words", words.change(change));
        return node;
    }

    private static ObjectNode level(VisitLevel level, LevelWords words) {
        ObjectNode node = NODES.objectNode();
        node.put("visit", level.visit() + 1);
        node.put("readings_used", level.readings());
        node.put("higher_m", Output.rounded(level.higherMetres(), 4));
        node.put("sd_m", Output.rounded(level.sdMetres(), 4));
        node.put("words", words.level(level));
        return node;
    }
}

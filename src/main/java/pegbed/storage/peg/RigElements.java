package pegbed.storage.peg;

import java.util.Map;
import java.util.stream.Collectors;
import pegbed.model.Reading;
import pegbed.model.RigTemplate;
import pegbed.model.Shot;
import pegbed.model.ShotGroup;

/** Rig templates of the peg file to records and back. */
final class RigElements {
    private static final Map<String, Shot> SHOTS = ElementParser.words(Shot.values(), Shot::word);
    private static final Map<String, RigTemplate.Ground> GROUNDS =
            ElementParser.words(RigTemplate.Ground.values(), RigTemplate.Ground::word);

    private RigElements() {}

    private static ShotGroup shots(Fields fields) {
        if (!fields.repeats().isEmpty()) {
            throw new IllegalArgumentException(
                    String.join(", ", fields.repeats().keySet()) + " stands twice in its shots.");
        }
        int count = fields.whole("count", 1, ShotGroup.MOST).orElse(1);
        Shot shot = fields.oneOf("shot", SHOTS)
                .orElseThrow(() -> new IllegalArgumentException("shot must be a size such as No.10."));
        double lowest = fields.needed("lowest_m", 0, 10);
        double highest = fields.number("highest_m", 0, 10).orElse(lowest);
        return new ShotGroup(count, shot, lowest, highest, fields.extras());
    }

    static RigTemplate template(Fields fields) {
        return new RigTemplate(
                fields.words("name"),
                fields.needed("up_to_m", 0.1, Reading.DEEPEST_METRES),
                fields.oneOf("ground", GROUNDS).orElse(RigTemplate.Ground.LEVEL),
                fields.words("float"),
                fields.needed("float_g", 0.01, 50),
                fields.needed("tip_to_body_m", 0, 1),
                fields.needed("hook_length_m", 0.02, 2),
                fields.objects("shots").stream().map(RigElements::shots).toList(),
                fields.extras());
    }

    static String json(RigTemplate template) {
        Members members = new Members()
                .text("name", template.name())
                .number("up_to_m", template.upToMetres())
                .words(
                        "ground",
                        template.ground() == RigTemplate.Ground.LEVEL
                                ? ""
                                : template.ground().word())
                .words("float", template.floatSize())
                .number("float_g", template.floatGrams())
                .number("tip_to_body_m", template.tipToBodyMetres())
                .number("hook_length_m", template.hookLengthMetres())
                .json(
                        "shots",
                        template.shots().stream().map(RigElements::json).collect(Collectors.joining(", ", "[", "]")))
                .extras(template.extras());
        return members.onOneLine();
    }

    private static String json(ShotGroup group) {
        return new Members()
                .number("count", group.count())
                .text("shot", group.shot().word())
                .number("lowest_m", group.lowestMetres())
                .numberUnless(group.lowestMetres(), "highest_m", group.highestMetres())
                .extras(group.extras())
                .onOneLine();
    }
}

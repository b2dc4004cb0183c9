package pegbed.storage.peg;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.LineCounts;
import pegbed.model.LinePin;
import pegbed.model.LineWishes;
import pegbed.model.Reading;
import pegbed.model.RigTemplate;
import pegbed.model.RigWishes;
import pegbed.model.StartLine;
import pegbed.model.Wishes;

/** What has been read of the wishes so far, and how they are written. */
final class WishesDraft {
    /** Its members that are lists with a line for each item. */
    static final List<String> LISTS = List.of("fixed_lines", "forbidden_lines", "rig_templates");

    final Fields fields;
    private final List<LinePin> fixed = new ArrayList<>();
    private final List<LinePin> forbidden = new ArrayList<>();
    private final List<RigTemplate> templates = new ArrayList<>();

    WishesDraft(Fields fields) {
        this.fields = fields;
    }

    /** Adds an item to one of the {@link #LISTS}. */
    void add(String list, Fields item) {
        switch (list) {
            case "fixed_lines" -> addFixed(item);
            case "forbidden_lines" -> forbidden.add(pin(item));
            default -> templates.add(RigElements.template(item));
        }
    }

    private void addFixed(Fields pin) {
        if (fixed.size() == LineWishes.MOST) {
            throw new IllegalArgumentException("there are more than " + LineWishes.MOST + " fixed lines.");
        }
        fixed.add(pin(pin));
    }

    private static LinePin pin(Fields pin) {
        return new LinePin(pin.place(), pin.extras());
    }

    /** The wishes. Takes the fields, so that it works once. */
    Wishes wishes() {
        LineCounts usual = LineCounts.USUAL;
        LineCounts counts = new LineCounts(
                count("track_lines", usual.track()),
                count("across_lines", usual.across()),
                count("left_margin_lines", usual.leftMargin()),
                count("right_margin_lines", usual.rightMargin()),
                count("short_lines", usual.shortLines()));
        return new Wishes(
                fields.number("target_m", 0, Reading.DEEPEST_METRES),
                new LineWishes(
                        counts,
                        fields.whole("most_lines", 1, LineWishes.MOST),
                        fields.oneOf("start_line", StartLine.values(), StartLine::word),
                        fixed,
                        forbidden),
                new RigWishes(
                        fields.whole("most_rigs", 1, RigWishes.MOST), fields.number("overdepth_m", 0, 1), templates),
                fields.flag("by_itself"),
                fields.extras());
    }

    private int count(String name, int usual) {
        return fields.whole(name, 0, LineCounts.MOST).orElse(usual);
    }

    /** The members of wishes that differ from the usual. */
    static String json(Wishes wishes) {
        LineCounts counts = wishes.lines().counts();
        LineCounts usual = LineCounts.USUAL;
        Members members = new Members()
                .number("target_m", wishes.targetMetres())
                .numberUnless(usual.track(), "track_lines", counts.track())
                .numberUnless(usual.across(), "across_lines", counts.across())
                .numberUnless(usual.leftMargin(), "left_margin_lines", counts.leftMargin())
                .numberUnless(usual.rightMargin(), "right_margin_lines", counts.rightMargin())
                .numberUnless(usual.shortLines(), "short_lines", counts.shortLines());
        wishes.lines().most().ifPresent(most -> members.number("most_lines", most));
        wishes.lines().start().ifPresent(start -> members.text("start_line", start.word()));
        pins(members, "fixed_lines", wishes.lines().fixed());
        pins(members, "forbidden_lines", wishes.lines().forbidden());
        wishes.rigs().most().ifPresent(most -> members.number("most_rigs", most));
        members.number("overdepth_m", wishes.rigs().overdepthMetres());
        if (!wishes.rigs().templates().isEmpty()) {
            members.json(
                    "rig_templates",
                    Members.list(
                            wishes.rigs().templates().stream()
                                    .map(RigElements::json)
                                    .toList(),
                            "    "));
        }
        return members.flag("by_itself", wishes.byItself())
                .extras(wishes.extras())
                .onLines("  ");
    }

    private static void pins(Members members, String name, List<LinePin> pins) {
        if (!pins.isEmpty()) {
            members.json(name, Members.list(pins.stream().map(WishesDraft::json).toList(), "    "));
        }
    }

    private static String json(LinePin pin) {
        return new Members()
                .number("x_m", pin.place().xMetres())
                .number("y_m", pin.place().yMetres())
                .extras(pin.extras())
                .onOneLine();
    }
}

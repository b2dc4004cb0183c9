package pegbed.report.card;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.LineCounts;
import pegbed.model.LineWishes;
import pegbed.model.Mark;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Place;
import pegbed.model.RigTemplate;
import pegbed.model.RigWishes;
import pegbed.model.Shot;
import pegbed.model.ShotGroup;
import pegbed.model.Typed;
import pegbed.model.Wishes;
import pegbed.plan.Plan;
import pegbed.storage.disk.PegFile;

/** Plans of the sample pegs, and of one whose every name is hostile. */
final class Plans {
    static final String SCRIPT = "<script>alert(\"x\")</script>";
    static final String IMAGE = "9\"/><img src=x onerror='alert(1)'>";
    static final String ENTITY = "&lt;b&gt; & &amp;";
    static final String HEBREW = "\u05E2\u05D1\u05E8\u05D9\u05EA";
    static final String OVERRIDE = "post\u202Ednuora\u202C \u0000\u0007\n]]>";

    static final List<Plan> SAMPLES =
            List.of(plan(sample("tansy-cut-9")), plan(sample("tansy-cut-14")), plan(sample("hobbrel-pond-3")));

    static final Plan HOSTILE = plan(hostile());

    private Plans() {}

    static Peg sample(String name) {
        try {
            return PegFile.read(Path.of("sample-pegs", name + ".peg.json")).peg();
        } catch (InputException e) {
            throw new IllegalStateException(e);
        }
    }

    static Plan plan(Peg peg) {
        try {
            return Plan.of(Findings.of(PegMap.of(peg, Monitor.NONE), OptionalDouble.empty()), peg.wishes());
        } catch (InputException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Peg hostile() {
        Peg peg = sample("tansy-cut-9");
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark(OVERRIDE, peg.marks().get(0).place(), Extras.NONE));
        marks.add(new Mark(ENTITY, peg.marks().get(1).place(), Extras.NONE));
        RigTemplate template = new RigTemplate(
                SCRIPT,
                3,
                RigTemplate.Ground.LEVEL,
                ("4×12 " + IMAGE + " slim".repeat(40)).substring(0, 200),
                0.2,
                0.06,
                0.1,
                List.of(ShotGroup.spread(12, Shot.NO_11, 0.1, 0.4)),
                Extras.NONE);
        Hazard overhead = new Hazard(
                Hazard.Kind.OVERHEAD_LINE,
                List.of(new Place(6, 3), new Place(7, 12), new Place(7.5, 12)),
                0.5,
                SCRIPT,
                Typed.NOTHING,
                Extras.NONE);
        Hazard other =
                new Hazard(Hazard.Kind.OTHER, List.of(new Place(-4, 6)), 0.3, SCRIPT, Typed.NOTHING, Extras.NONE);
        return peg.withName(new PegName(SCRIPT, HEBREW + " " + ENTITY, IMAGE))
                .withMarks(marks)
                .withHazards(List.of(overhead, other))
                .withWishes(Wishes.NONE
                        .withLines(LineWishes.USUAL.withCounts(new LineCounts(2, 3, 1, 1, 1)))
                        .withRigs(RigWishes.USUAL.withTemplates(List.of(template))));
    }
}

package pegbed.cli.output;

import java.io.PrintWriter;
import java.util.Locale;
import pegbed.findings.Confidence;
import pegbed.findings.Deepest;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.NeighbourFits;
import pegbed.findings.Spot;
import pegbed.findings.SteepestSlope;
import pegbed.findings.Steepness;
import pegbed.geometry.Doubts;
import pegbed.model.Peg;
import pegbed.notation.Wording;
import pegbed.plan.Plan;
import pegbed.surface.BottomModel;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.wording.LevelWords;

/** The answers of {@code pegbed lines} in words. */
public final class LinesText {
    private final Findings findings;
    private final Wording wording;
    private final PrintWriter out;

    private LinesText(Findings findings, PrintWriter out) {
        this.findings = findings;
        this.wording = Wording.of(findings.map().peg());
        this.out = out;
    }

    public static void print(Findings findings, Plan plan, PrintWriter out) {
        new LinesText(findings, out).print(plan);
    }

    private void print(Plan plan) {
        Peg peg = findings.map().peg();
        int readings = findings.map().bottom().soundings();
        out.println(peg.name().title() + ", " + readings + (readings == 1 ? " reading" : " readings"));
        if (readings == 0) {
            out.println("Nothing is plumbed yet: what follows is a guess from the banks alone.");
        } else if (readings < BottomModel.LEARNS_FROM) {
            out.println("Few readings yet: take what follows as a first guess, and mind the doubt.");
        }
        NeighbourFits.sentence(findings.map()).ifPresent(out::println);
        out.println();
        deepest(findings.deepest());
        out.println();
        out.println("Target " + wording.depth(findings.targetMetres())
                + (findings.targetFollows() ? " (half the deepest)" : ""));
        findings.flats().forEach(this::flat);
        out.println();
        out.println("Steepest");
        findings.slopes().forEach(this::slope);
        out.println();
        PlanText.print(plan, out);
        findings.map().suspicious().forEach(this::suspicious);
        LevelWords.changes(findings.map()).forEach(change -> out.println("! " + change));
        Doubts.sentences(Doubts.misplaced(peg, findings.map().water())).forEach(odd -> out.println("! " + odd));
        out.println();
        out.println("For choosing where to fish. Not for navigation, swimming, wading or building.");
        out.println("Keep poles 30 m or more from overhead power lines; stop when there is thunder.");
    }

    private void deepest(Deepest deepest) {
        out.println("Deepest usable");
        out.println("  " + spot(deepest.spot()));
        out.println(String.format(
                Locale.ROOT,
                "  %.1f m² within %s of it, %s to %s. %s",
                deepest.area().areaMetres2(),
                wording.depth(0.10),
                wording.depth(deepest.area().shallowestMetres()),
                wording.depth(deepest.area().deepestMetres()),
                deepest.settles()));
    }

    private void flat(FlatSpot flat) {
        String zone = String.format(Locale.ROOT, "  %-13s", flat.zone().words());
        if (flat.confidence() == Confidence.NONE) {
            String nearest = flat.nearestMetres().isPresent()
                    ? "; the nearest depth with a likely one is "
                            + wording.depth(flat.nearestMetres().getAsDouble())
                    : "; no depth has a likely one yet";
            out.println(zone + "no flat at " + wording.depth(flat.targetMetres()) + " that these readings show"
                    + nearest + ".");
            out.println("               the best guess, " + percent(flat) + ": " + spot(flat.spot()));
            return;
        }
        out.println(zone + flat.confidence().words() + " (" + percent(flat) + "): " + spot(flat.spot()));
        flat.area()
                .ifPresent(area -> out.println(String.format(
                        Locale.ROOT,
                        "               %.1f m², %s to %s",
                        area.areaMetres2(),
                        wording.depth(area.shallowestMetres()),
                        wording.depth(area.deepestMetres()))));
    }

    private static String percent(FlatSpot flat) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * flat.spot().pFlat());
    }

    private String spot(Spot spot) {
        double angle = spot.place().angleDegrees();
        return wording.depth(spot.depthMetres())
                + " ± " + wording.depth(spot.sdMetres())
                + " at " + wording.distance(spot.place().distanceMetres())
                + ", " + wording.direction(angle)
                + " (" + wording.clock(angle) + ")"
                + aim(spot)
                + ", " + Steepness.oneIn(spot.slope());
    }

    /** Where no mark is near enough to aim by, the clock has said it already. */
    private String aim(Spot spot) {
        String aim = wording.aim(spot.place());
        return aim.startsWith("towards ") ? "" : ", " + aim;
    }

    private void slope(SteepestSlope slope) {
        if (slope.slope() >= 0.02) {
            out.println(String.format(Locale.ROOT, "  %-13s%s", slope.zone().words(), Steepness.oneIn(slope.slope()))
                    + " (" + Steepness.drops(slope.slope()) + ") at "
                    + wording.distance(slope.place().distanceMetres()) + ", "
                    + wording.direction(slope.place().angleDegrees()));
        }
    }

    private void suspicious(ReadingCheck check) {
        out.println("! Reading " + (check.sounding() + 1) + " says " + wording.depth(check.readMetres())
                + "; the others expect " + wording.depth(check.expectedMetres()) + ". Take it again if you can.");
    }
}

package pegbed.cli.output;

import java.io.PrintWriter;
import java.util.Locale;
import pegbed.findings.Confidence;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.SteepestSlope;
import pegbed.geometry.Doubts;
import pegbed.model.Peg;
import pegbed.plan.Plan;
import pegbed.session.VisitLessons;
import pegbed.wording.Caution;
import pegbed.wording.FindingWords;
import pegbed.wording.LevelWords;
import pegbed.wording.MapWords;
import pegbed.wording.Quantities;

/** The answers of {@code pegbed lines} as lines of text. */
public final class LinesText {
    private final Findings findings;
    private final VisitLessons lessons;
    private final FindingWords words;
    private final PrintWriter out;

    private LinesText(Findings findings, VisitLessons lessons, PrintWriter out) {
        this.findings = findings;
        this.lessons = lessons;
        this.words = FindingWords.of(findings.map().peg());
        this.out = out;
    }

    /**
     * Prints all answers.
     *
     * @param lessons what earlier visits teach
     */
    public static void print(Findings findings, Plan plan, VisitLessons lessons, PrintWriter out) {
        new LinesText(findings, lessons, out).print(plan);
    }

    private void print(Plan plan) {
        Peg peg = findings.map().peg();
        int readings = findings.map().bottom().soundings();
        out.println(peg.name().title() + ", " + Quantities.readings(readings));
        FindingWords.fewReadings(readings).ifPresent(out::println);
        MapWords.neighbours(findings.map()).ifPresent(out::println);
        FindingWords.structure(findings.map().bottom()).ifPresent(out::println);
        out.println();
        out.println("Deepest usable");
        out.println("  " + words.spot(findings.deepest().spot()));
        out.println("  " + words.deepestArea(findings.deepest()));
        out.println();
        out.println(words.target(findings));
        LessonsText.target(peg, lessons).ifPresent(sentence -> out.println("  " + sentence));
        findings.flats().forEach(this::flat);
        out.println();
        out.println("Steepest");
        findings.slopes().forEach(this::slope);
        out.println();
        PlanText.print(plan, out);
        MapWords map = MapWords.of(peg);
        findings.map().suspicious().forEach(check -> out.println("! " + map.suspicious(check)));
        LevelWords.changes(findings.map()).forEach(change -> out.println("! " + change));
        Doubts.sentences(Doubts.misplaced(peg, findings.map().water())).forEach(odd -> out.println("! " + odd));
        out.println();
        Caution.brief().forEach(out::println);
    }

    private void flat(FlatSpot flat) {
        String zone = String.format(Locale.ROOT, "  %-13s", flat.zone().words());
        if (flat.confidence() == Confidence.NONE) {
            out.println(zone + words.noFlat(flat));
            out.println("               " + words.bestGuess(flat));
            return;
        }
        out.println(zone + words.flat(flat));
        flat.area().ifPresent(area -> out.println("               " + words.area(area)));
    }

    private void slope(SteepestSlope slope) {
        words.slope(slope)
                .ifPresent(steep -> out.println(
                        String.format(Locale.ROOT, "  %-13s", slope.zone().words()) + steep));
    }
}

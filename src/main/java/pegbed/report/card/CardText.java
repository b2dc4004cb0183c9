package pegbed.report.card;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pegbed.geometry.Shapes;
import pegbed.model.Peg;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.plan.Rig;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.map.Heading;
import pegbed.wording.CardWords;
import pegbed.wording.Caution;
import pegbed.wording.PlanWords;
import pegbed.wording.RigWords;
import pegbed.wording.Sentences;

/** What is written on the A5 card above and below its map. */
final class CardText {
    private static final Lettering TITLE = Lettering.bold(17);
    private static final Lettering HEAD = Lettering.bold(11);
    private static final Lettering BODY = Lettering.plain(9.5);
    private static final Lettering NOTE = Lettering.italic(8.8);
    private static final Lettering KEY = Lettering.plain(7.6);
    private static final Lettering CAUTION = Lettering.plain(7.9);
    private static final double INDENT = 23;

    private final Plan plan;
    private final Peg peg;
    private final PlanWords words;
    private final RigWords rigWords;
    private final TextMeasure measure;
    private final double scale;
    private final boolean bestChecks;
    private final double left;
    private final double right;

    /** @param bestChecks whether it says which reading would settle most about each line */
    CardText(Plan plan, TextMeasure measure, double scale, boolean bestChecks, double left, double right) {
        this.plan = plan;
        peg = plan.findings().map().peg();
        words = PlanWords.of(plan);
        rigWords = RigWords.of(peg);
        this.measure = measure;
        this.scale = scale;
        this.bestChecks = bestChecks;
        this.left = left;
        this.right = right;
    }

    Flow above(double top) {
        Flow flow = new Flow(measure, scale, top);
        flow.paragraph(Role.TITLE, TITLE, left, right, Heading.title(peg));
        flow.paragraph(Role.SUBTITLE, BODY, left, right, Heading.subtitle(peg));
        Caution.markedLine(peg).ifPresent(warning -> {
            flow.skip(2);
            flow.paragraph(Role.TITLE, HEAD, left, right, warning);
        });
        return flow;
    }

    Flow below(double top) {
        Flow flow = new Flow(measure, scale, top);
        flow.skip(1);
        flow.paragraph(Role.LEGEND_LABEL, KEY, left, right, CardWords.key(plan));
        flow.skip(4);
        if (plan.lines().isEmpty()) {
            flow.paragraph(Role.LEGEND_HEADING, HEAD, left, right, CardWords.NO_LINES);
        }
        for (PlannedLine line : plan.lines()) {
            line(flow, line);
        }
        flow.paragraph(Role.LEGEND_HEADING, BODY, left, right, words.order());
        rule(flow);
        for (Rig rig : plan.rigs()) {
            rig(flow, rig);
        }
        for (String shortfall : words.shortfalls()) {
            flow.paragraph(Role.LEGEND_HEADING, NOTE, left, right, shortfall);
        }
        rule(flow);
        for (Caution caution : Caution.values()) {
            flow.paragraph(Role.CAUTION, CAUTION, left, right, caution.shortForm());
        }
        return flow;
    }

    private void line(Flow flow, PlannedLine line) {
        double text = left + INDENT * scale;
        flow.badge(left, HEAD.sizePoints(), Integer.toString(line.number()));
        String depth = words.depth(line) + " " + words.plusMinus(line);
        flow.headed(
                Role.LEGEND_HEADING,
                HEAD,
                text,
                right,
                Sentences.capital(words.where(line)) + ": " + words.distance(line),
                depth);
        String rig = CardWords.towards(words, line) + ". Rig " + line.rig() + ".";
        flow.paragraph(Role.LEGEND_HEADING, BODY, text, right, rig);
        Optional<String> check = bestChecks ? words.confirming(line) : Optional.empty();
        String warnings =
                Stream.concat(words.warnings(line).stream(), check.stream()).collect(Collectors.joining(" "));
        if (!warnings.isEmpty()) {
            flow.paragraph(Role.LEGEND_HEADING, NOTE, text, right, warnings);
        }
        flow.skip(3);
    }

    private void rig(Flow flow, Rig rig) {
        flow.headed(
                Role.LEGEND_HEADING,
                HEAD,
                left,
                right,
                "Rig " + rig.number() + ", " + rigWords.lines(rig),
                rigWords.floatSize(rig));
        flow.paragraph(Role.LEGEND_HEADING, BODY, left, right, CardWords.settings(rigWords, rig));
        flow.paragraph(
                Role.LEGEND_HEADING,
                BODY,
                left,
                right,
                "Hook length " + rigWords.hookLength(rig) + "; " + rigWords.shotting(rig) + ".");
        flow.skip(3);
    }

    private void rule(Flow flow) {
        flow.skip(1);
        flow.add(new Stroke(
                Role.LEGEND_RULE,
                Layer.FURNITURE,
                Frame.SHEET,
                Shapes.FACTORY.createLineString(new org.locationtech.jts.geom.Coordinate[] {
                    new org.locationtech.jts.geom.Coordinate(left, flow.y()),
                    new org.locationtech.jts.geom.Coordinate(right, flow.y())
                })));
        flow.skip(2);
    }
}

package pegbed.report.map;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import pegbed.findings.Confidence;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.PegMap;
import pegbed.model.Decimals;
import pegbed.model.Hazard;
import pegbed.model.Units;
import pegbed.plan.Plan;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.drawing.View;
import pegbed.wording.DepthFigures;
import pegbed.wording.FindingWords;
import pegbed.wording.Quantities;

/** The legends of a sheet: depth bar, doubt, flat spots by number, signs. Each is a block that knows its size. */
final class Legend {
    private static final double LINE = 14;

    /** About and between the blocks of a window's legend, points. */
    private static final double AIR = 9;

    /** Width of the depth bar in a window's legend, points. */
    private static final double WINDOW_WIDTH = 240;

    private static final double HEADING = 15;
    private static final double SWATCH = 24;
    /** Share of the sheet that the depth bar takes. */
    private static final double BAR_SHARE = 0.31;

    private static final double BAR_HEIGHT = 13;
    private static final Lettering LETTERS = Lettering.plain(9.5);
    private static final Lettering HEADINGS = Lettering.bold(9.5);

    private final PegMap map;
    private final Findings findings;
    private final Ground ground;
    private final TextMeasure measure;
    private final Units.Depth unit;
    private final Quantities quantities;

    private final Optional<Plan> plan;

    /** @param plan the lines that the map shows */
    Legend(PegMap map, Findings findings, Ground ground, Optional<Plan> plan, TextMeasure measure) {
        this.map = map;
        this.findings = findings;
        this.ground = ground;
        this.plan = plan;
        this.measure = measure;
        this.unit = map.peg().units().depth();
        this.quantities = Quantities.of(map.peg());
    }

    /** What draws a block with its top left corner at a place of the sheet. */
    interface Painter {
        void paint(Composition to, double x, double y);
    }

    /** One line of a list: a sign of {@link #SWATCH} points, then words. */
    private record Entry(String words, Painter sign) {}

    /**
     * One legend.
     *
     * @param width points
     * @param height points
     */
    record Block(double width, double height, Painter painter) {}

    /** All blocks one under the other, on a panel of their own. */
    static Drawing sheet(Legend legend, MapOptions options, double mapPointsPerMetre) {
        List<Block> blocks = legend.blocks(options, WINDOW_WIDTH / BAR_SHARE);
        double width = blocks.stream().mapToDouble(Block::width).max().orElse(0) + 2 * AIR;
        double height =
                blocks.stream().mapToDouble(block -> block.height() + AIR).sum() + AIR;
        View view = new View(width, height, mapPointsPerMetre, 0, 0);
        Composition to = new Composition(
                view, new Envelope(0, width, 0, height), legend.measure, new MapOptions(EnumSet.of(Layer.FURNITURE)));
        to.fill(Role.PANEL, Layer.FURNITURE, Frame.SHEET, Symbols.box(0, 0, width, height));
        double y = AIR;
        for (Block block : blocks) {
            block.painter().paint(to, AIR, y);
            y += block.height() + AIR;
        }
        return to.drawing();
    }

    /** The blocks of a sheet of a width in points, in order of their weight. */
    List<Block> blocks(MapOptions options, double sheetWidth) {
        List<Block> blocks = new ArrayList<>();
        if (ground.bands().size() > 1) {
            blocks.add(depths(sheetWidth));
        }
        if (options.layers().contains(Layer.DOUBT) && !options.joinedUp()) {
            blocks.add(list("How well it is known", doubts()));
        }
        List<Entry> flats = options.layers().contains(Layer.FLATS) && !options.joinedUp() ? flats() : List.of();
        if (!flats.isEmpty()) {
            blocks.add(list("Flat at " + quantities.target(findings.targetMetres()), flats));
        }
        List<Entry> signs = signs(options);
        if (!signs.isEmpty()) {
            blocks.add(list("Signs", signs));
        }
        return blocks;
    }

    private Block depths(double sheetWidth) {
        int bands = ground.bands().size();
        double swatch = Math.max(16, Math.min(44, BAR_SHARE * sheetWidth / bands));
        return new Block(bands * swatch, HEADING + BAR_HEIGHT + 2 * LINE + 5, (to, x, y) -> {
            String heading = "Depth and contours, " + DepthFigures.unit(unit);
            text(to, Role.LEGEND_HEADING, x, y + 9, Text.Align.START, HEADINGS, heading);
            double top = y + HEADING;
            for (int i = 0; i < bands; i++) {
                Geometry box = Symbols.box(x + i * swatch, top, x + (i + 1) * swatch, top + BAR_HEIGHT);
                to.add(new Fill(Role.DEPTH_BAND, Layer.FURNITURE, Frame.SHEET, box, i, bands));
            }
            Geometry rim =
                    Symbols.box(x, top, x + bands * swatch, top + BAR_HEIGHT).getExteriorRing();
            to.add(new Stroke(Role.LEGEND_RULE, Layer.FURNITURE, Frame.SHEET, rim));
            double free = Double.NEGATIVE_INFINITY;
            for (int i = 1; i < bands; i++) {
                double at = x + i * swatch;
                double level = ground.levels().metres().get(i - 1);
                String words = DepthFigures.depth(level, unit);
                Lettering letters = ground.isIndex(level, unit) ? HEADINGS : LETTERS;
                double half = measure.widthPoints(words, letters) / 2;
                Geometry tick = Symbols.line(at, top, at, top + BAR_HEIGHT + 2.5);
                to.add(new Stroke(Role.LEGEND_RULE, Layer.FURNITURE, Frame.SHEET, tick));
                if (at - half >= free) {
                    text(to, Role.LEGEND_LABEL, at, top + BAR_HEIGHT + 12, Text.Align.MIDDLE, letters, words);
                    free = at + half + 3;
                }
            }
            scaleBar(to, x, top + BAR_HEIGHT + 2 * LINE - 4);
        });
    }

    /** A bar of a round number of metres. */
    private static void scaleBar(Composition to, double x, double y) {
        double metres = 0.5;
        for (double round : new double[] {1, 2, 5, 10, 20, 50}) {
            metres = round * to.view.pointsPerMetre() <= 180 ? round : metres;
        }
        double middle = x + metres * to.view.pointsPerMetre() / 2;
        double right = x + metres * to.view.pointsPerMetre();
        to.fill(Role.SCALE_BAR, Layer.FURNITURE, Frame.SHEET, Symbols.box(x, y, middle, y + 4));
        Geometry rim = Symbols.box(x, y, right, y + 4).getExteriorRing();
        to.stroke(Role.SCALE_BAR, Layer.FURNITURE, Frame.SHEET, rim);
        String words = Decimals.text(metres, metres < 1 ? 1 : 0) + " m";
        text(to, Role.LEGEND_LABEL, right + 6, y + 5.6, Text.Align.START, LETTERS, words);
    }

    private List<Entry> doubts() {
        String near = quantities.depth(Ground.GUESS_METRES);
        String middle = quantities.depth(Ground.MORE_GUESS_METRES);
        String far = quantities.depth(Ground.ROUGH_GUESS_METRES);
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry("to about " + near + " or better", (to, x, y) -> veil(to, x, y, 0)));
        entries.add(new Entry("a guess: to about " + middle, (to, x, y) -> veil(to, x, y, 1)));
        entries.add(new Entry("a guess: to about " + far, (to, x, y) -> veil(to, x, y, 2)));
        entries.add(new Entry("a rough guess: worse", (to, x, y) -> veil(to, x, y, 3)));
        entries.add(new Entry("not known", (to, x, y) -> veil(to, x, y, 4)));
        return entries;
    }

    /** @param doubt 0 none to 3 a rough guess; 4 for what is not known */
    private void veil(Composition to, double x, double y, int doubt) {
        Geometry box = Symbols.box(x, y, x + SWATCH, y + 10.5);
        double spacing = GroundPart.HATCH_POINTS;
        int bands = Math.max(2, ground.bands().size());
        to.add(
                doubt == 4
                        ? new Fill(Role.UNKNOWN_WATER, Layer.FURNITURE, Frame.SHEET, box)
                        : new Fill(Role.DEPTH_BAND, Layer.FURNITURE, Frame.SHEET, box, bands / 2, bands));
        if (doubt >= 1 && doubt <= 3) {
            to.fill(Role.DOUBT_VEIL, Layer.FURNITURE, Frame.SHEET, box);
            // The sheet's y runs down, so a line that rises on the map falls here.
            to.stroke(Role.DOUBT_HATCH, Layer.FURNITURE, Frame.SHEET, Lines.hatch(box, spacing, 0, false));
        }
        if (doubt == 2 || doubt == 3) {
            to.stroke(Role.MORE_DOUBT_HATCH, Layer.FURNITURE, Frame.SHEET, Lines.hatch(box, spacing, 0.5, false));
        }
        if (doubt == 3) {
            to.fill(Role.STRONG_DOUBT_VEIL, Layer.FURNITURE, Frame.SHEET, box);
            to.stroke(Role.STRONG_DOUBT_HATCH, Layer.FURNITURE, Frame.SHEET, Lines.hatch(box, spacing, 0, true));
        }
        Role rim = doubt == 0 ? Role.LEGEND_RULE : doubt == 4 ? Role.KNOWN_EDGE : Role.DOUBT_EDGE;
        to.stroke(rim, Layer.FURNITURE, Frame.SHEET, box.getBoundary());
    }

    private List<Entry> flats() {
        if (findings.targetFollows() && !FindingPart.knowsDeepest(findings, ground)) {
            return List.of();
        }
        List<FlatSpot> numbered = FindingPart.numbered(findings, ground);
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < numbered.size(); i++) {
            FlatSpot flat = numbered.get(i);
            String number = Integer.toString(i + 1);
            entries.add(new Entry(
                    flat.zone().words() + ": " + FindingWords.confidence(flat.confidence()) + ", "
                            + quantities.depth(flat.spot().depthMetres()),
                    (to, x, y) -> {
                        Geometry ring = moved(Symbols.ring(6.2), x + SWATCH / 2, y + 5.2);
                        to.stroke(FindingPart.ring(flat.confidence()), Layer.FURNITURE, Frame.SHEET, ring);
                        double base = y + 5.2 + 8.5 * Lettering.CAP_HEIGHT / 2;
                        Lettering letters = Lettering.bold(8.5);
                        text(to, Role.LEGEND_HEADING, x + SWATCH / 2, base, Text.Align.MIDDLE, letters, number);
                    }));
        }
        for (FlatSpot flat : findings.flats()) {
            if (flat.confidence() == Confidence.NONE) {
                String nearest = flat.nearestMetres().isPresent()
                        ? "none, nearest "
                                + quantities.depth(flat.nearestMetres().getAsDouble())
                        : "none";
                entries.add(new Entry(
                        flat.zone().words() + ": " + nearest,
                        (to, x, y) -> to.stroke(
                                Role.LEGEND_RULE,
                                Layer.FURNITURE,
                                Frame.SHEET,
                                Symbols.line(x + SWATCH / 2 - 4, y + 5.2, x + SWATCH / 2 + 4, y + 5.2))));
            }
        }
        return entries;
    }

    private List<Entry> signs(MapOptions options) {
        List<Entry> entries = new ArrayList<>();
        Set<Layer> layers = options.layers();
        if (!options.joinedUp()) {
            answers(entries, layers);
        }
        if (layers.contains(Layer.READINGS)) {
            readings(entries, options.joinedUp());
        }
        if (layers.contains(Layer.CHANGED) && !options.joinedUp()) {
            boolean deeper = map.bottom().changes().stream().anyMatch(change -> change.deeperMetres() > 0);
            boolean shallower = map.bottom().changes().stream().anyMatch(change -> !(change.deeperMetres() > 0));
            if (deeper) {
                entries.add(changed("deeper than at an earlier visit", true));
            }
            if (shallower) {
                entries.add(changed("shallower than at an earlier visit", false));
            }
        }
        if (layers.contains(Layer.HAZARDS)) {
            map.peg().hazards().stream()
                    .map(hazard -> hazard.kind())
                    .distinct()
                    .sorted()
                    .forEach(kind -> entries.add(new Entry(
                            kind == Hazard.Kind.OTHER ? "another hazard" : kind.word(),
                            (to, x, y) -> to.stroke(
                                    Role.HAZARD,
                                    Layer.FURNITURE,
                                    Frame.SHEET,
                                    AffineTransformation.scaleInstance(0.7, 0.7)
                                            .translate(x + SWATCH / 2, y + 5.2)
                                            .transform(Symbols.hazard(kind))))));
        }
        if (layers.contains(Layer.RINGS)) {
            boolean sections = map.peg().units().distance() == Units.Distance.SECTIONS;
            entries.add(figure(
                    sections ? "end of the pole's section" : "ring so far from the seat",
                    Role.LEGEND_LABEL,
                    LETTERS,
                    sections ? "s1, s2" : RingPart.words(map, 0)));
        }
        return entries;
    }

    private void answers(List<Entry> entries, Set<Layer> layers) {
        if (layers.contains(Layer.LINES)
                && plan.filter(made -> !made.lines().isEmpty()).isPresent()) {
            entries.add(new Entry("a line to fish", (to, x, y) -> {
                Geometry square = moved(Symbols.box(-5.5, -5.5, 5.5, 5.5), x + SWATCH / 2, y + 5.2);
                to.fill(Role.LINE_BADGE, Layer.FURNITURE, Frame.SHEET, square);
                text(to, Role.LINE_NUMBER, x + SWATCH / 2, y + 8.4, Text.Align.MIDDLE, Lettering.bold(8.5), "1");
            }));
        }
        if (layers.contains(Layer.DEEPEST) && FindingPart.knowsDeepest(findings, ground)) {
            entries.add(new Entry("the deepest", (to, x, y) -> {
                AffineTransformation small =
                        AffineTransformation.scaleInstance(0.5, 0.5).translate(x + SWATCH / 2, y + 9);
                to.fill(Role.DEEPEST, Layer.FURNITURE, Frame.SHEET, small.transform(Symbols.plummet()));
                to.stroke(Role.DEEPEST, Layer.FURNITURE, Frame.SHEET, small.transform(Symbols.plummetLines()));
            }));
        }
    }

    private void readings(List<Entry> entries, boolean joinedUp) {
        if (!map.peg().readings().isEmpty()) {
            entries.add(figure("a reading", Role.LEGEND_HEADING, Lettering.bold(9.5)));
        }
        if (map.peg().visits().size() > 1
                && map.peg().visits().subList(0, map.peg().visits().size() - 1).stream()
                        .anyMatch(visit -> !visit.readings().isEmpty())) {
            entries.add(figure(
                    joinedUp ? "an earlier visit's" : "an earlier visit's, at today's level",
                    Role.LEGEND_LABEL,
                    Lettering.plain(9.5 * ReadingPart.EARLIER_SHARE)));
        }
        if (!map.suspicious().isEmpty() && !joinedUp) {
            entries.add(new Entry("the other readings contradict it", (to, x, y) -> {
                Geometry frame = moved(Symbols.lozenge(12, 10.5), x + SWATCH / 2, y + 5.2);
                to.fill(Role.SUSPICIOUS_FRAME, Layer.FURNITURE, Frame.SHEET, frame);
                to.stroke(Role.SUSPICIOUS_FRAME, Layer.FURNITURE, Frame.SHEET, frame.getBoundary());
                Lettering letters = Lettering.bold(8.5);
                text(to, Role.SUSPICIOUS_FIGURE, x + SWATCH / 2, y + 8.4, Text.Align.MIDDLE, letters, "?");
            }));
        }
    }

    private static Entry changed(String words, boolean deeper) {
        return new Entry(
                words,
                (to, x, y) -> to.stroke(
                        Role.CHANGED,
                        Layer.FURNITURE,
                        Frame.SHEET,
                        moved(Symbols.toothed(deeper ? 6 : 3.5, 2.5, deeper), x + SWATCH / 2, y + 5.2)));
    }

    private Entry figure(String words, Role role, Lettering letters) {
        return figure(words, role, letters, DepthFigures.depth(1.3716, unit));
    }

    private Entry figure(String words, Role role, Lettering letters, String figure) {
        return new Entry(
                words, (to, x, y) -> text(to, role, x + SWATCH / 2, y + 8.7, Text.Align.MIDDLE, letters, figure));
    }

    private Block list(String heading, List<Entry> entries) {
        double width = measure.widthPoints(heading, HEADINGS);
        for (Entry entry : entries) {
            width = Math.max(width, SWATCH + 6 + measure.widthPoints(entry.words(), LETTERS));
        }
        return new Block(width, HEADING + entries.size() * LINE, (to, x, y) -> {
            text(to, Role.LEGEND_HEADING, x, y + 9, Text.Align.START, HEADINGS, heading);
            double top = y + HEADING;
            for (Entry entry : entries) {
                entry.sign().paint(to, x, top);
                text(to, Role.LEGEND_LABEL, x + SWATCH + 6, top + 8.7, Text.Align.START, LETTERS, entry.words());
                top += LINE;
            }
        });
    }

    private static Geometry moved(Geometry shape, double x, double y) {
        return AffineTransformation.translationInstance(x, y).transform(shape);
    }

    static void text(
            Composition to, Role role, double x, double y, Text.Align align, Lettering lettering, String words) {
        to.add(new Text(role, Layer.FURNITURE, Frame.SHEET, x, y, align, 0, lettering, words));
    }
}

package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import pegbed.findings.Confidence;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.PegMap;
import pegbed.model.Units;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.TextMeasure;
import pegbed.wording.DepthFigures;
import pegbed.wording.FindingWords;
import pegbed.wording.Quantities;

/** The legends of a sheet: depth bar, doubt, flat spots by number, signs. Each is a block that knows its size. */
final class Legend {
    private static final double LINE = 14;
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

    Legend(PegMap map, Findings findings, Ground ground, TextMeasure measure) {
        this.map = map;
        this.findings = findings;
        this.ground = ground;
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

    /** The blocks of a sheet of a width in points, in order of their weight. */
    List<Block> blocks(MapOptions options, double sheetWidth) {
        List<Block> blocks = new ArrayList<>();
        if (ground.bands().size() > 1) {
            blocks.add(depths(sheetWidth));
        }
        if (options.layers().contains(Layer.DOUBT)) {
            blocks.add(list("How well it is known", doubts()));
        }
        List<Entry> flats = options.layers().contains(Layer.FLATS) ? flats() : List.of();
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
        String words = String.format(Locale.ROOT, metres < 1 ? "%.1f m" : "%.0f m", metres);
        text(to, Role.LEGEND_LABEL, right + 6, y + 5.6, Text.Align.START, LETTERS, words);
    }

    private List<Entry> doubts() {
        String near = quantities.depth(Ground.GUESS_METRES);
        String far = quantities.depth(Ground.ROUGH_GUESS_METRES);
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry("to about " + near + " or better", (to, x, y) -> veil(to, x, y, 0)));
        entries.add(new Entry("a guess: to about " + far, (to, x, y) -> veil(to, x, y, 1)));
        entries.add(new Entry("a rough guess: worse", (to, x, y) -> veil(to, x, y, 2)));
        entries.add(new Entry("not known", (to, x, y) -> veil(to, x, y, 3)));
        return entries;
    }

    private void veil(Composition to, double x, double y, int doubt) {
        Geometry box = Symbols.box(x, y, x + SWATCH, y + 10.5);
        double spacing = GroundPart.HATCH_POINTS;
        int bands = Math.max(2, ground.bands().size());
        to.add(
                doubt == 3
                        ? new Fill(Role.UNKNOWN_WATER, Layer.FURNITURE, Frame.SHEET, box)
                        : new Fill(Role.DEPTH_BAND, Layer.FURNITURE, Frame.SHEET, box, bands / 2, bands));
        if (doubt == 1 || doubt == 2) {
            to.fill(Role.DOUBT_VEIL, Layer.FURNITURE, Frame.SHEET, box);
            // The sheet's y runs down, so a line that rises on the map falls here.
            to.stroke(Role.DOUBT_HATCH, Layer.FURNITURE, Frame.SHEET, Lines.hatch(box, spacing, false));
        }
        if (doubt == 2) {
            to.fill(Role.STRONG_DOUBT_VEIL, Layer.FURNITURE, Frame.SHEET, box);
            to.stroke(Role.STRONG_DOUBT_HATCH, Layer.FURNITURE, Frame.SHEET, Lines.hatch(box, spacing, true));
        }
        to.stroke(doubt == 3 ? Role.KNOWN_EDGE : Role.LEGEND_RULE, Layer.FURNITURE, Frame.SHEET, box.getBoundary());
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
        if (options.layers().contains(Layer.DEEPEST) && FindingPart.knowsDeepest(findings, ground)) {
            entries.add(new Entry("the deepest", (to, x, y) -> {
                AffineTransformation small =
                        AffineTransformation.scaleInstance(0.5, 0.5).translate(x + SWATCH / 2, y + 9);
                to.fill(Role.DEEPEST, Layer.FURNITURE, Frame.SHEET, small.transform(Symbols.plummet()));
                to.stroke(Role.DEEPEST, Layer.FURNITURE, Frame.SHEET, small.transform(Symbols.plummetLines()));
            }));
        }
        if (options.layers().contains(Layer.READINGS)) {
            if (!map.peg().readings().isEmpty()) {
                entries.add(figure("a reading", Role.LEGEND_HEADING, Lettering.bold(9.5)));
            }
            if (map.peg().visits().size() > 1
                    && map.peg().visits().subList(0, map.peg().visits().size() - 1).stream()
                            .anyMatch(visit -> !visit.readings().isEmpty())) {
                entries.add(figure(
                        "an earlier visit's, at today's level",
                        Role.LEGEND_LABEL,
                        Lettering.plain(9.5 * ReadingPart.EARLIER_SHARE)));
            }
            if (!map.suspicious().isEmpty()) {
                entries.add(new Entry("the other readings contradict it", (to, x, y) -> {
                    Geometry frame = moved(Symbols.lozenge(12, 10.5), x + SWATCH / 2, y + 5.2);
                    to.fill(Role.SUSPICIOUS_FRAME, Layer.FURNITURE, Frame.SHEET, frame);
                    to.stroke(Role.SUSPICIOUS_FRAME, Layer.FURNITURE, Frame.SHEET, frame.getBoundary());
                    Lettering letters = Lettering.bold(8.5);
                    text(to, Role.SUSPICIOUS_FIGURE, x + SWATCH / 2, y + 8.4, Text.Align.MIDDLE, letters, "?");
                }));
            }
        }
        if (options.layers().contains(Layer.CHANGED)) {
            boolean deeper = map.bottom().changes().stream().anyMatch(change -> change.deeperMetres() > 0);
            boolean shallower = map.bottom().changes().stream().anyMatch(change -> !(change.deeperMetres() > 0));
            if (deeper) {
                entries.add(changed("deeper than at an earlier visit", true));
            }
            if (shallower) {
                entries.add(changed("shallower than at an earlier visit", false));
            }
        }
        if (options.layers().contains(Layer.RINGS)) {
            entries.add(figure("end of the pole's section", Role.LEGEND_LABEL, LETTERS, "s1, s2"));
        }
        return entries;
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

package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import pegbed.findings.PegMap;
import pegbed.geometry.Overlay;
import pegbed.model.Peg;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.TextMeasure;
import pegbed.wording.Caution;

/** What stands about the map on a sheet: title above, legends and caution below, a line round the map. */
final class Sheet {
    static final double MIN_WIDTH_POINTS = 480;
    static final double MIN_HEIGHT_POINTS = 400;

    private static final double MARGIN = 14;
    private static final double TITLE_HEIGHT = 42;
    private static final double GAP = 14;
    private static final double ROW_GAP = 8;
    private static final double CAUTION_HEIGHT = 16;
    private static final Lettering TITLE = Lettering.bold(19);
    private static final Lettering SUBTITLE = Lettering.plain(11);
    private static final Lettering SMALL = Lettering.italic(9.5);

    private final PegMap map;
    private final TextMeasure measure;
    private final double width;
    private final double height;
    private final double frameHeight;
    private final List<List<Legend.Block>> rows = new ArrayList<>();

    /** @param frameHeight the height of a frame that the water fills by its width, both in points */
    Sheet(
            PegMap map,
            Legend legend,
            MapOptions options,
            double widthPoints,
            double heightPoints,
            TextMeasure measure,
            DoubleUnaryOperator frameHeight) {
        if (!(widthPoints >= MIN_WIDTH_POINTS && heightPoints >= MIN_HEIGHT_POINTS)) {
            throw new IllegalArgumentException("A map sheet needs " + MIN_WIDTH_POINTS + " by " + MIN_HEIGHT_POINTS
                    + " points at least, not " + widthPoints + " by " + heightPoints + ".");
        }
        this.map = map;
        this.measure = measure;
        this.width = widthPoints;
        this.height = heightPoints;
        this.frameHeight = frameHeight.applyAsDouble(width - 2 * MARGIN);
        double free = 0;
        for (Legend.Block block : legend.blocks(options, width)) {
            if (rows.isEmpty() || block.width() > free) {
                rows.add(new ArrayList<>());
                free = width - 2 * MARGIN;
            }
            rows.get(rows.size() - 1).add(block);
            free -= block.width() + GAP;
        }
    }

    /** The part of the sheet that the map has, points: as high as the water fills it, if there is so much room. */
    Envelope mapArea() {
        double top = MARGIN + TITLE_HEIGHT;
        return new Envelope(MARGIN, width - MARGIN, top, Math.min(top + frameHeight, height - below()));
    }

    /** The height of a sheet without empty ground, points. */
    double fullHeight() {
        return MARGIN + TITLE_HEIGHT + frameHeight + below();
    }

    private double below() {
        double below = MARGIN + CAUTION_HEIGHT + ROW_GAP;
        for (List<Legend.Block> row : rows) {
            below += rowHeight(row) + ROW_GAP;
        }
        return below;
    }

    private static double rowHeight(List<Legend.Block> row) {
        return row.stream().mapToDouble(Legend.Block::height).max().orElse(0);
    }

    void add(Composition to) {
        Envelope area = mapArea();
        Geometry rim = Symbols.box(area.getMinX(), area.getMinY(), area.getMaxX(), area.getMaxY());
        to.add(new Fill(
                Role.PANEL, Layer.FURNITURE, Frame.SHEET, Overlay.difference(Symbols.box(0, 0, width, height), rim)));
        to.add(new Stroke(Role.LEGEND_RULE, Layer.FURNITURE, Frame.SHEET, rim.getBoundary()));
        Peg peg = map.peg();
        text(to, Role.TITLE, MARGIN + 16, TITLE, Heading.title(peg));
        text(to, Role.SUBTITLE, MARGIN + 33, SUBTITLE, Heading.subtitle(peg));
        legends(to, area.getMaxY() + ROW_GAP + 2);
        // The warning first: what does not fit is cut off at the end.
        String caution = Caution.markedLine(peg).map(warning -> warning + " ").orElse("") + Caution.PURPOSE.shortForm();
        to.add(new Text(
                Role.CAUTION,
                Layer.CAUTION,
                Frame.SHEET,
                MARGIN,
                height - MARGIN + 2,
                Text.Align.START,
                0,
                SMALL,
                fitted(caution, SMALL)));
    }

    private void legends(Composition to, double top) {
        double y = top;
        for (List<Legend.Block> row : rows) {
            double used = row.stream().mapToDouble(Legend.Block::width).sum();
            double gap = row.size() < 2 ? 0 : Math.min(60, (width - 2 * MARGIN - used) / (row.size() - 1));
            double x = MARGIN;
            for (Legend.Block block : row) {
                block.painter().paint(to, x, y);
                x += block.width() + gap;
            }
            y += rowHeight(row) + ROW_GAP;
        }
    }

    private void text(Composition to, Role role, double y, Lettering lettering, String words) {
        Legend.text(to, role, MARGIN, y, Text.Align.START, lettering, fitted(words, lettering));
    }

    /** The words, cut short to the width of the sheet. */
    private String fitted(String words, Lettering lettering) {
        String fit = words;
        int signs = words.codePointCount(0, words.length());
        while (signs > 1 && measure.widthPoints(fit, lettering) > width - 2 * MARGIN) {
            fit = SingleLine.of(words, --signs);
        }
        return fit;
    }
}

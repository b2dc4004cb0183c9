package pegbed.report.card;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import pegbed.geometry.Shapes;
import pegbed.plan.Plan;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.drawing.View;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;

/**
 * The card as one A5 sheet: title, map with numbered lines, lines, rigs, what could not be had, cautions. Letters are
 * as large as leave the map its room; they grow beyond their usual size only where the map fills the width.
 */
public final class CardDrawing {
    /** A5, ISO 216: 148 by 210 mm, in points. */
    public static final double WIDTH_POINTS = 148 / 25.4 * 72;

    public static final double HEIGHT_POINTS = 210 / 25.4 * 72;

    private static final double MARGIN = 15;
    /** How far the paper about the map goes beyond the sheet, so that nothing shows at its edge. */
    private static final double BLEED = 4;

    /** Where letters would have to be smaller, the card leaves out which reading would settle most about each line. */
    private static final double MIN_SCALE_FOR_CHECKS = 0.85;

    private static final double MIN_MAP_HEIGHT = 150;
    private static final double[] SCALES = {1.12, 1.06, 1, 0.94, 0.88, 0.82, 0.76, 0.70, 0.64, 0.58, 0.52};

    /** The map of a card has no soundings and no flats: the lines are what counts. */
    static final Set<Layer> MAP_LAYERS = EnumSet.of(
            Layer.GROUND,
            Layer.DOUBT,
            Layer.CONTOURS,
            Layer.RINGS,
            Layer.CLOCK,
            Layer.HAZARDS,
            Layer.CHANGED,
            Layer.MARKS,
            Layer.LINES,
            Layer.SEAT);

    private final Plan plan;
    private final TextMeasure measure;
    private final MapDrawing map;

    private CardDrawing(Plan plan, TextMeasure measure) {
        this.plan = plan;
        this.measure = measure;
        map = map(plan);
    }

    static MapDrawing map(Plan plan) {
        return MapDrawing.of(plan.findings().map(), plan.findings(), new MapOptions(MAP_LAYERS))
                .with(plan);
    }

    /**
     * The card of a plan.
     *
     * @param measure how wide texts come out
     */
    public static Drawing of(Plan plan, TextMeasure measure) {
        return new CardDrawing(plan, measure).sheet();
    }

    private Drawing sheet() {
        double wished = wishedMapHeight();
        for (double scale : SCALES) {
            boolean bestChecks = scale >= MIN_SCALE_FOR_CHECKS;
            CardText text = new CardText(plan, measure, scale, bestChecks, MARGIN, WIDTH_POINTS - MARGIN);
            double above = text.above(MARGIN).y();
            double below = text.below(0).y();
            double room = HEIGHT_POINTS - MARGIN - above - below;
            boolean last = scale == SCALES[SCALES.length - 1];
            double min = scale > 1 ? wished : Math.min(wished, MIN_MAP_HEIGHT);
            if (room >= min || last) {
                double height = Math.max(40, Math.min(wished, room));
                return sheet(text, new Envelope(MARGIN, WIDTH_POINTS - MARGIN, above + 4, above + height));
            }
        }
        throw new IllegalStateException("The last scale is always taken.");
    }

    /** The height at which the map fills the width. */
    private double wishedMapHeight() {
        return Math.min(0.5 * HEIGHT_POINTS, map.frameHeight(WIDTH_POINTS - 2 * MARGIN));
    }

    private Drawing sheet(CardText text, Envelope area) {
        View inner =
                map.fitted(new Envelope(0, area.getWidth(), 0, area.getHeight()), area.getWidth(), area.getHeight());
        double scale = inner.pointsPerMetre();
        View view = new View(
                WIDTH_POINTS,
                HEIGHT_POINTS,
                scale,
                inner.leftMetres() - area.getMinX() / scale,
                inner.topMetres() + area.getMinY() / scale);
        List<Item> items = new ArrayList<>();
        for (Item item : map.at(inner, measure).items()) {
            items.add(moved(item, area.getMinX(), area.getMinY()));
        }
        Geometry window = Shapes.FACTORY.toGeometry(area);
        Geometry rest = wholeSheet().difference(window);
        items.add(new Fill(Role.PANEL, Layer.FURNITURE, Frame.SHEET, rest));
        items.add(new Stroke(Role.LEGEND_RULE, Layer.FURNITURE, Frame.SHEET, window.getBoundary()));
        items.addAll(text.above(MARGIN).items());
        items.addAll(text.below(area.getMaxY()).items());
        return new Drawing(items, view);
    }

    private static Geometry wholeSheet() {
        return Shapes.FACTORY.toGeometry(new Envelope(-BLEED, WIDTH_POINTS + BLEED, -BLEED, HEIGHT_POINTS + BLEED));
    }

    /** Paper over the whole of an A5 sheet, so that nothing shows at its edge. */
    static Item paper() {
        return new Fill(Role.PANEL, Layer.FURNITURE, Frame.SHEET, wholeSheet());
    }

    /** An item of the map's own sheet at its place on the card; what lies on the water is there already. */
    static Item moved(Item item, double right, double down) {
        if (item.frame() != Frame.SHEET) {
            return item;
        }
        AffineTransformation move = AffineTransformation.translationInstance(right, down);
        if (item instanceof Fill fill) {
            return new Fill(
                    fill.role(), fill.layer(), fill.frame(), move.transform(fill.shape()), fill.step(), fill.steps());
        }
        if (item instanceof Stroke stroke) {
            return new Stroke(stroke.role(), stroke.layer(), stroke.frame(), move.transform(stroke.lines()));
        }
        Text text = (Text) item;
        return new Text(
                text.role(),
                text.layer(),
                text.frame(),
                text.x() + right,
                text.y() + down,
                text.align(),
                text.turnDegrees(),
                text.lettering(),
                text.words());
    }
}

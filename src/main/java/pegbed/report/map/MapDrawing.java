package pegbed.report.map;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.plan.Plan;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.drawing.View;

/**
 * The map of a peg as its angler sees it: seat at the bottom, straight out at the top.
 *
 * <p>Made once for a peg's answers, it gives a drawing for any view. Immutable and thread-safe; the same input gives
 * the same drawing, item for item.
 */
public final class MapDrawing {
    /** Room about the water in which the clock stands, metres. */
    private static final double RIM_METRES = 1.1;

    private final PegMap map;
    private final Findings findings;
    private final MapOptions options;
    private final Optional<Plan> plan;
    private final Ground ground;
    private final Shore shore;

    private MapDrawing(
            PegMap map, Findings findings, MapOptions options, Optional<Plan> plan, Ground ground, Shore shore) {
        this.map = map;
        this.findings = findings;
        this.options = options;
        this.plan = plan;
        this.ground = ground;
        this.shore = shore;
    }

    /**
     * The map of a peg with the answers at one target depth.
     *
     * @param map the peg's bottom
     * @param findings answers found on that map
     * @param options what is drawn
     */
    public static MapDrawing of(PegMap map, Findings findings, MapOptions options) {
        Shore shore = Shore.of(map.water(), map.peg().pole());
        return new MapDrawing(map, findings, options, Optional.empty(), Ground.of(map), shore);
    }

    /** The map of the same place with other readings or answers; what the readings don't move is not made again. */
    public MapDrawing with(PegMap other, Findings others, MapOptions otherOptions) {
        if (other.differsInWishesOnly(map)) {
            return new MapDrawing(other, others, otherOptions, Optional.empty(), ground, shore);
        }
        boolean samePlace = other.peg().banks().equals(map.peg().banks())
                && other.peg().limits().equals(map.peg().limits())
                && other.peg().pole().equals(map.peg().pole());
        return samePlace
                ? new MapDrawing(other, others, otherOptions, Optional.empty(), Ground.of(other), shore)
                : of(other, others, otherOptions);
    }

    /** The same map with other answers or other layers; the shapes of the bottom are not made again. */
    public MapDrawing with(Findings others, MapOptions otherOptions) {
        if (!others.map().equals(map)) {
            throw new IllegalArgumentException("These answers were found on another map.");
        }
        return new MapDrawing(map, others, otherOptions, plan.filter(own -> own.findings() == others), ground, shore);
    }

    /** The same map with the lines of a plan, numbered; on a provisional map those of the map before. */
    public MapDrawing with(Plan lines) {
        if (lines.findings().map() != map && !map.isProvisional()) {
            throw new IllegalArgumentException("These lines were chosen on another map.");
        }
        return new MapDrawing(map, findings, options, Optional.of(lines), ground, shore);
    }

    /**
     * The map alone, filling the view: for a window, which has title and legends of its own.
     *
     * @param view how the water lies on the sheet
     * @param measure how wide texts come out
     */
    public Drawing at(View view, TextMeasure measure) {
        Set<Layer> layers = EnumSet.noneOf(Layer.class);
        layers.addAll(options.layers());
        layers.remove(Layer.FURNITURE);
        layers.remove(Layer.CAUTION);
        Composition to = new Composition(
                view, new Envelope(0, view.widthPoints(), 0, view.heightPoints()), measure, new MapOptions(layers));
        compose(to);
        return to.drawing();
    }

    /**
     * A whole sheet: title, map, legends and caution.
     *
     * @param widthPoints width of the sheet, {@value Sheet#MIN_WIDTH_POINTS} points or more
     * @param heightPoints height of the sheet, {@value Sheet#MIN_HEIGHT_POINTS} points or more
     * @param measure how wide texts come out
     */
    public Drawing sheet(double widthPoints, double heightPoints, TextMeasure measure) {
        Sheet sheet = new Sheet(map, findings, ground, options, widthPoints, heightPoints, measure);
        Envelope area = sheet.mapArea();
        Composition to = new Composition(fitted(area, widthPoints, heightPoints), area, measure, options);
        compose(to);
        sheet.add(to);
        return to.drawing();
    }

    /** How many pixels a point has on a picture of a size, so that its letters can be read: 1 on a small one. */
    public static double pixelsPerPoint(int widthPixels, int heightPixels) {
        return Math.max(1, Math.min(widthPixels / 1000.0, heightPixels / 720.0));
    }

    /** The view that shows all of the water within reach, and the rim, as large as it fits into a part of a sheet. */
    public View fitted(Envelope area, double widthPoints, double heightPoints) {
        Envelope bounds = bounds();
        double scale = Math.min(area.getWidth() / bounds.getWidth(), area.getHeight() / bounds.getHeight());
        double left = bounds.centre().x - (area.getMinX() + area.getWidth() / 2) / scale;
        double top = bounds.centre().y + (area.getMinY() + area.getHeight() / 2) / scale;
        return new View(widthPoints, heightPoints, scale, left, top);
    }

    /**
     * What ought to be seen, metres: the water within reach, the rim before the angler, the seat and the marks near.
     */
    public Envelope bounds() {
        Envelope water = map.water().water().getEnvelopeInternal();
        double reach = map.water().reachMetres();
        Envelope bounds = new Envelope(water);
        bounds.expandBy(RIM_METRES, 0);
        bounds.expandToInclude(0, water.getMaxY() + RIM_METRES);
        bounds.expandToInclude(0, Math.min(-1.2, water.getMinY() - 0.4));
        map.peg().marks().stream()
                .map(mark -> mark.place())
                .filter(place -> Math.abs(place.xMetres()) <= reach && place.distanceMetres() <= 1.5 * reach)
                .forEach(place -> bounds.expandToInclude(place.xMetres(), place.yMetres() + RIM_METRES));
        return bounds;
    }

    /** Parts in the order in which they choose their places; the layers say what lies on top. */
    private void compose(Composition to) {
        GroundPart.add(to, map, ground, shore);
        PlacePart.addSeat(to);
        plan.ifPresent(lines -> LinePart.add(to, lines));
        FindingPart.addSymbols(to, findings, ground);
        PlacePart.addSymbols(to, map);
        ChangePart.addRings(to, map);
        ReadingPart.add(to, map);
        FindingPart.addLabels(to, findings, ground);
        ChangePart.addLabels(to, map);
        PlacePart.addNames(to, map);
        RingPart.addClock(to, map, shore);
        RingPart.addLabels(to, map);
        FindingPart.addZoneLabels(to, map);
        ContourPart.addLabels(to, ground, shore, map.peg().units().depth());
        Masked masked = new Masked(to.view, to.space.texts());
        GroundPart.addHatching(to, ground, masked);
        ContourPart.addLines(to, ground, map.peg().units().depth(), masked);
        RingPart.addRings(to, shore, masked);
        FindingPart.addZones(to, map, masked);
    }
}

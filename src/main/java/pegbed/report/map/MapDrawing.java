package pegbed.report.map;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.Place;
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
    /** Room beside the water for the clock's figures, points. */
    private static final double SIDE_POINTS = 25;

    /** Room above the water for the clock's figures, and for marks with their names, points. */
    private static final double CLOCK_POINTS = 26;

    private static final double MARKS_POINTS = 38;

    /** Room below the water, or below the seat if that is lower, points. */
    private static final double BELOW_POINTS = 12;

    private static final double SEAT_POINTS = 22;

    /** Of the height of the water so much is added at most for marks that stand behind the far bank. */
    private static final double MARKS_SHARE = 0.06;

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
        return new MapDrawing(map, findings, options, Optional.empty(), ground(map, options), shore);
    }

    private static Ground ground(PegMap map, MapOptions options) {
        return options.joinedUp() ? Ground.joinedUp(map) : Ground.of(map);
    }

    /** The shapes of the bottom that options ask for, those at hand if they will do. */
    private Ground groundFor(MapOptions otherOptions) {
        return otherOptions.joinedUp() == options.joinedUp() ? ground : ground(map, otherOptions);
    }

    /** The map of the same place with other readings or answers; what the readings don't move is not made again. */
    public MapDrawing with(PegMap other, Findings others, MapOptions otherOptions) {
        if (other.differsInWishesOnly(map)) {
            return new MapDrawing(other, others, otherOptions, Optional.empty(), groundFor(otherOptions), shore);
        }
        boolean samePlace = other.peg().banks().equals(map.peg().banks())
                && other.peg().limits().equals(map.peg().limits())
                && other.peg().pole().equals(map.peg().pole());
        if (!samePlace) {
            return of(other, others, otherOptions);
        }
        boolean oneMore = other.isProvisional() && !options.joinedUp() && !otherOptions.joinedUp();
        Ground shapes = oneMore ? Ground.provisional(other, ground) : ground(other, otherOptions);
        return new MapDrawing(other, others, otherOptions, Optional.empty(), shapes, shore);
    }

    /** The same map with other answers or other layers; the shapes of the bottom are not made again. */
    public MapDrawing with(Findings others, MapOptions otherOptions) {
        if (!others.map().equals(map)) {
            throw new IllegalArgumentException("These answers were found on another map.");
        }
        return new MapDrawing(
                map,
                others,
                otherOptions,
                plan.filter(own -> own.findings() == others),
                groundFor(otherOptions),
                shore);
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
        Composition to = composition(view, measure);
        compose(to);
        return to.drawing();
    }

    /**
     * The deepest place, the flat spots and the lines alone, quickly: each where it stands on the whole map.
     *
     * @param view how the water lies on the sheet
     * @param measure how wide texts come out
     */
    public Drawing answersAt(View view, TextMeasure measure) {
        Composition to = composition(view, measure);
        addSigns(to);
        to.placer.run(Placer.Rank.DEEPEST_NAME);
        addAnswerLines(to);
        return to.drawing().only(EnumSet.of(Layer.FLATS, Layer.DEEPEST, Layer.LINES));
    }

    private Composition composition(View view, TextMeasure measure) {
        Set<Layer> layers = EnumSet.noneOf(Layer.class);
        layers.addAll(options.layers());
        layers.remove(Layer.FURNITURE);
        layers.remove(Layer.CAUTION);
        Envelope area = new Envelope(0, view.widthPoints(), 0, view.heightPoints());
        return new Composition(view, area, measure, new MapOptions(layers, options.joinedUp(), options.next()));
    }

    /**
     * What the signs and tints mean, for a window, on a sheet of its own size.
     *
     * @param mapPointsPerMetre scale of the map that it explains
     * @param measure how wide texts come out
     */
    public Drawing legend(double mapPointsPerMetre, TextMeasure measure) {
        return Legend.sheet(new Legend(map, findings, ground, plan, measure), options, mapPointsPerMetre);
    }

    /**
     * A whole sheet: title, map, legends and caution.
     *
     * @param widthPoints width of the sheet, {@value Sheet#MIN_WIDTH_POINTS} points or more
     * @param heightPoints height of the sheet, {@value Sheet#MIN_HEIGHT_POINTS} points or more
     * @param measure how wide texts come out
     */
    public Drawing sheet(double widthPoints, double heightPoints, TextMeasure measure) {
        Sheet sheet = new Sheet(
                map,
                new Legend(map, findings, ground, plan, measure),
                options,
                widthPoints,
                heightPoints,
                measure,
                this::frameHeight);
        Envelope area = sheet.mapArea();
        Composition to = new Composition(fitted(area, widthPoints, heightPoints), area, measure, options);
        compose(to);
        sheet.add(to);
        return to.drawing();
    }

    /**
     * The height at which a sheet of a width has no empty ground, points.
     *
     * @param widthPoints width of the sheet, {@value Sheet#MIN_WIDTH_POINTS} points or more
     * @param measure how wide texts come out
     */
    public double sheetHeight(double widthPoints, TextMeasure measure) {
        Sheet sheet = new Sheet(
                map,
                new Legend(map, findings, ground, plan, measure),
                options,
                widthPoints,
                Double.MAX_VALUE,
                measure,
                this::frameHeight);
        return Math.max(Sheet.MIN_HEIGHT_POINTS, sheet.fullHeight());
    }

    /** How many pixels a point has on a picture of a size, so that its letters can be read: 1 on a small one. */
    public static double pixelsPerPoint(double widthPixels, double heightPixels) {
        return Math.max(1, Math.min(widthPixels / 1000.0, heightPixels / 720.0));
    }

    /** The view that shows all of the water within reach, with room for what stands about it. */
    public View fitted(Envelope area, double widthPoints, double heightPoints) {
        Envelope bounds = bounds();
        double width = area.getWidth() - 2 * SIDE_POINTS;
        double height = area.getHeight() - above() - below();
        double scale = Math.max(0.5, Math.min(width / bounds.getWidth(), height / bounds.getHeight()));
        double left = bounds.centre().x - (area.getMinX() + area.getWidth() / 2) / scale;
        double middle = area.getMinY() + above() + height / 2;
        double top = bounds.centre().y + middle / scale;
        return new View(widthPoints, heightPoints, scale, left, top);
    }

    /** What a view that is {@linkplain #fitted fitted} shows of the ground, metres. */
    public Envelope framed(View fitted) {
        Envelope bounds = bounds();
        double scale = fitted.pointsPerMetre();
        return new Envelope(
                bounds.getMinX() - SIDE_POINTS / scale,
                bounds.getMaxX() + SIDE_POINTS / scale,
                bounds.getMinY() - below() / scale,
                bounds.getMaxY() + above() / scale);
    }

    /** The height of a frame that the water fills, with room for what stands about it, points. */
    public double frameHeight(double widthPoints) {
        Envelope bounds = bounds();
        double scale = (widthPoints - 2 * SIDE_POINTS) / bounds.getWidth();
        return scale * bounds.getHeight() + above() + below();
    }

    private double above() {
        return map.peg().marks().isEmpty() ? CLOCK_POINTS : MARKS_POINTS;
    }

    private double below() {
        return map.water().water().getEnvelopeInternal().getMinY() < -0.8 ? BELOW_POINTS : SEAT_POINTS;
    }

    /**
     * What ought to be seen, metres: the water within reach, the seat, and some of the land with marks on it. Marks
     * beyond stand at the edge of the map, in their direction.
     */
    public Envelope bounds() {
        Envelope water = map.water().water().getEnvelopeInternal();
        Envelope bounds = new Envelope(water);
        bounds.expandToInclude(0, 0);
        double most = water.getMaxY() + MARKS_SHARE * water.getHeight();
        map.peg().marks().stream()
                .map(mark -> mark.place())
                .filter(place -> water.getMinX() <= place.xMetres() && place.xMetres() <= water.getMaxX())
                .forEach(place -> bounds.expandToInclude(0, Math.min(most, place.yMetres())));
        return bounds;
    }

    /** All choose their places, the weightier first; the layers say what lies on top. */
    private void compose(Composition to) {
        GroundPart.add(to, map, ground, shore);
        addSigns(to);
        RingPart.addClock(to, map);
        ReadingPart readings = ReadingPart.addFigures(to, map, ground);
        RingPart.addLabels(to, map);
        FindingPart.addZoneLabels(to, map);
        ContourPart.addLabels(to, ground, shore, map.peg().units().depth());
        to.placer.run(Placer.Rank.CONTOUR_FIGURE);
        Masked texts = new Masked(to.view, to.space.texts());
        Masked all = masked(to, Layer.GROUND);
        GroundPart.addLimits(to, map, shore, all);
        GroundPart.addHatching(to, ground, all);
        ContourPart.addLines(to, ground, map.peg().units().depth(), texts);
        RingPart.addRings(to, shore, texts);
        FindingPart.addZones(to, map, all);
        PlacePart.addOutlines(to, map, masked(to, Layer.HAZARDS));
        readings.addLeaders(all);
        if (!options.joinedUp()) {
            ChangePart.addRings(to, map, all);
        }
        addAnswerLines(to);
    }

    private void addSigns(Composition to) {
        to.space.bar(to.toSheet(shore.banks()));
        options.next().ifPresent(place -> to.placer.ask(Placer.Rank.NEXT_SIGN, () -> next(to, place)));
        PlacePart.addSigns(to, map);
        if (options.joinedUp()) {
            JoinedUpNote.add(to);
        } else {
            plan.ifPresent(lines -> LinePart.addSigns(to, lines));
            FindingPart.addSigns(to, findings, ground);
            ChangePart.addLabels(to, map);
        }
    }

    /** Its sign moves with the window's clock and is drawn there; here it takes its place. */
    private static void next(Composition to, Place place) {
        to.space.takeForSign(
                Layer.NEXT,
                LabelBox.square(to.view.x(place.xMetres()), to.view.y(place.yMetres()), 2 * MapOptions.NEXT_POINTS));
    }

    /** What lines have gaps for: all texts, and the signs of other layers, as they lie under those of their own. */
    private static Masked masked(Composition to, Layer layer) {
        List<LabelBox> boxes = new ArrayList<>(to.space.texts());
        boxes.addAll(to.space.signsBut(layer));
        return new Masked(to.view, boxes);
    }

    private void addAnswerLines(Composition to) {
        to.placer.addLeaders(masked(to, Layer.GROUND));
        if (!options.joinedUp()) {
            FindingPart.addRings(to, findings, ground, masked(to, Layer.FLATS));
            plan.ifPresent(lines -> LinePart.addPaths(to, lines, masked(to, Layer.LINES)));
        }
    }
}

package pegbed.phone;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import pegbed.guidance.NextReading;
import pegbed.model.Place;
import pegbed.plan.Plan;
import pegbed.report.drawing.Camera;
import pegbed.report.drawing.CanvasPainting;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.DrawingCanvas;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Pen;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.View;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.report.map.NextSign;

/** The map of the open peg as a page shows it: what was made of it last, and the camera. */
final class MapPicture {
    private static final double MARGIN_POINTS = 4;
    private static final double NEXT_RADIUS_POINTS = 5;
    private static final double CROSS_POINTS = 13;
    private static final double CROSS_WIDTH_POINTS = 1.8;

    private final Camera camera = new Camera();

    /** What the drawing was made from. */
    private Optional<PhonePeg.Shown> of = Optional.empty();

    private Optional<MapDrawing> map = Optional.empty();

    /** The last drawing with its letters placed. */
    private Optional<Drawing> placed = Optional.empty();

    /**
     * How a picture is wanted.
     *
     * @param widthPoints of the canvas, CSS pixels
     * @param heightPoints of the canvas, CSS pixels
     * @param theme colours and pens
     * @param here where the wheels point; empty where no cross is wanted
     * @param flats whether the flat spots are drawn where lines are known, and not these
     * @param moving whether fingers are on the map: the letters of the last picture stay at their places on the water,
     *     which is quicker
     */
    record Wish(
            double widthPoints,
            double heightPoints,
            Theme theme,
            Optional<Place> here,
            boolean flats,
            boolean moving) {}

    Camera camera() {
        return camera;
    }

    /** Paints what there is; the bare sheet while there is no map. */
    void paint(PhonePeg peg, Wish wish, TextMeasure measure, DrawingCanvas canvas) {
        sheet(wish, canvas);
        camera.size(wish.widthPoints(), wish.heightPoints());
        Optional<PhonePeg.Shown> shown = peg.shown();
        if (shown.isEmpty()) {
            return;
        }
        Optional<Place> next = peg.knownNext().map(NextReading::place);
        if (!wish.moving() || placed.isEmpty()) {
            placed = Optional.of(place(peg, shown.get(), next, wish, measure));
        }
        View view = camera.view();
        CanvasPainting.paint(placed.get(), view, wish.theme(), canvas);
        next.ifPresent(place ->
                CanvasPainting.paint(NextSign.at(place, NEXT_RADIUS_POINTS, view), view, wish.theme(), canvas));
        wish.here().ifPresent(place -> cross(place, view, wish.theme(), canvas));
    }

    private Drawing place(PhonePeg peg, PhonePeg.Shown shown, Optional<Place> next, Wish wish, TextMeasure measure) {
        Optional<Plan> plan = peg.shownPlan();
        Set<Layer> layers = EnumSet.copyOf(shown.placeAlone() ? Layer.ofPlaceAlone(Layer.usual()) : Layer.usual());
        layers.remove(wish.flats() || plan.isEmpty() ? Layer.LINES : Layer.FLATS);
        MapOptions options = new MapOptions(layers, false, next);
        MapDrawing drawing = map.isEmpty()
                ? MapDrawing.of(shown.map(), shown.findings(), options)
                : of.filter(before -> before == shown).isPresent()
                        ? map.get().with(shown.findings(), options)
                        : map.get().with(shown.map(), shown.findings(), options);
        map = Optional.of(drawing);
        of = Optional.of(shown);
        View all = fitted(drawing, wish);
        camera.seen(all, drawing.framed(all));
        MapDrawing planned = plan.map(drawing::with).orElse(drawing);
        return planned.at(camera.view(), measure);
    }

    private static View fitted(MapDrawing drawing, Wish wish) {
        Envelope area = new Envelope(
                MARGIN_POINTS, wish.widthPoints() - MARGIN_POINTS, MARGIN_POINTS, wish.heightPoints() - MARGIN_POINTS);
        return drawing.fitted(area, wish.widthPoints(), wish.heightPoints());
    }

    private static void sheet(Wish wish, DrawingCanvas canvas) {
        canvas.beginPath();
        canvas.moveTo(0, 0);
        canvas.lineTo(wish.widthPoints(), 0);
        canvas.lineTo(wish.widthPoints(), wish.heightPoints());
        canvas.lineTo(0, wish.heightPoints());
        canvas.closePath();
        canvas.fill(wish.theme().fill(Role.SHEET, 0, 1));
    }

    /** Where the wheels point. */
    private static void cross(Place place, View view, Theme theme, DrawingCanvas canvas) {
        double x = view.x(place.xMetres());
        double y = view.y(place.yMetres());
        canvas.beginPath();
        canvas.moveTo(x - CROSS_POINTS, y);
        canvas.lineTo(x + CROSS_POINTS, y);
        canvas.moveTo(x, y - CROSS_POINTS);
        canvas.lineTo(x, y + CROSS_POINTS);
        canvas.stroke(Pen.of(theme.ink(Role.TITLE).colour(), CROSS_WIDTH_POINTS));
    }
}

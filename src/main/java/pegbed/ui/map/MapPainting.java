package pegbed.ui.map;

import java.awt.image.BufferedImage;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Envelope;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.Place;
import pegbed.plan.Plan;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.View;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.report.paint.LetterOutlines;
import pegbed.report.paint.PngWriter;
import pegbed.session.BackgroundTask;
import pegbed.ui.controls.Pixels;

/**
 * Paints the map off the owner's thread. The newest wish wins; wishes that were overtaken are not painted. Asked for by
 * one thread, the owner's.
 */
final class MapPainting {
    /** What is painted over the picture, so that it can follow the target at once. */
    static final Set<Layer> QUICK = EnumSet.of(Layer.FLATS, Layer.DEEPEST, Layer.LINES);

    private static final double MARGIN_POINTS = 6;

    /**
     * All that a picture depends on, taken on the owner's thread.
     *
     * @param map the bottom
     * @param findings what was found on it
     * @param plan lines to fish on those findings; empty while there is none
     * @param layers what is drawn
     * @param joinedUp whether the bottom is drawn straight between readings
     * @param next where to read next, which letters keep off; empty where that is not shown
     * @param view how the water lies on the sheet
     * @param showAll whether all of the water is wanted; of the view, only its size counts then
     * @param theme colours and pens
     * @param pixelsPerPoint pixels of the screen for a point
     * @param whole whether letters are placed again about the findings and the next place, even where nothing else is
     *     new
     */
    record Wish(
            PegMap map,
            Findings findings,
            Optional<Plan> plan,
            Set<Layer> layers,
            boolean joinedUp,
            Optional<Place> next,
            View view,
            boolean showAll,
            Theme theme,
            double pixelsPerPoint,
            boolean whole) {
        /** Whether letters that were placed about the answers of one stand right about those of the other. */
        boolean sameAnswers(Wish other) {
            return findings == other.findings
                    && plan.equals(other.plan)
                    && layers.equals(other.layers)
                    && next.equals(other.next);
        }

        boolean sameGround(Wish other) {
            return map.differsInWishesOnly(other.map)
                    && without(QUICK).equals(other.without(QUICK))
                    && joinedUp == other.joinedUp
                    && showAll == other.showAll
                    && (showAll ? sameSize(other.view) : view.equals(other.view))
                    && theme == other.theme
                    && pixelsPerPoint == other.pixelsPerPoint;
        }

        private Set<Layer> without(Set<Layer> others) {
            Set<Layer> rest = EnumSet.noneOf(Layer.class);
            rest.addAll(layers);
            rest.removeAll(others);
            return rest;
        }

        private boolean sameSize(View other) {
            return view.widthPoints() == other.widthPoints() && view.heightPoints() == other.heightPoints();
        }
    }

    private final BackgroundDrawing ahead;
    private final Executor owner;
    private final BackgroundTask painting;
    private final Consumer<MapPicture> finished;
    private volatile Wish newest;
    private Wish delivered;
    private boolean failed;
    /** Belongs to the painter's thread. */
    private Wish painted;

    /**
     * @param ahead has the painter, and what it drew
     * @param owner runs what belongs to the owner's thread
     * @param finished gets each picture, on the owner's thread
     */
    MapPainting(BackgroundDrawing ahead, Executor owner, Consumer<MapPicture> finished) {
        this.ahead = ahead;
        this.owner = owner;
        this.finished = finished;
        painting = ahead.painting(owner);
    }

    /** Asks for a picture. */
    void paint(Wish wish) {
        newest = wish;
        failed = false;
        painting.latest(
                monitor -> {
                    work(wish);
                    return wish;
                },
                new BackgroundTask.Outcome<>(painted -> {}, why -> {
                    failed = true;
                    ahead.fail(why);
                }));
    }

    private void work(Wish wish) {
        MapOptions options = new MapOptions(wish.layers(), wish.joinedUp(), wish.next());
        MapDrawing drawing = ahead.drawing(wish.map(), wish.findings(), options);
        Envelope framed = drawing.framed(fitted(drawing, wish.view()));
        View view = wish.showAll() ? fitted(drawing, wish.view()) : wish.view();
        if (painted != null && painted.sameGround(wish) && wish.whole() && painted.sameAnswers(wish)) {
            owner.execute(() -> delivered = wish);
            return;
        }
        if (painted != null && painted.sameGround(wish) && !wish.whole()) {
            Drawing findings = planned(drawing, wish).answersAt(view, LetterOutlines.MEASURE);
            MapPicture picture = new MapPicture(Optional.empty(), findings, view, framed, Optional.empty());
            deliver(wish, picture);
            return;
        }
        Drawing whole = planned(drawing, wish).at(view, LetterOutlines.MEASURE);
        // A newer wish that wants other findings alone is quicker served from this picture than from another one.
        if (!newest.sameGround(wish)) {
            return;
        }
        BufferedImage image = PngWriter.image(
                whole.only(EnumSet.complementOf(EnumSet.copyOf(QUICK))), wish.theme(), wish.pixelsPerPoint());
        painted = wish;
        Drawing legend = planned(drawing, wish).legend(view.pointsPerMetre(), LetterOutlines.MEASURE);
        MapPicture picture =
                new MapPicture(Optional.of(Pixels.of(image)), whole.only(QUICK), view, framed, Optional.of(legend));
        deliver(wish, picture);
    }

    private static MapDrawing planned(MapDrawing drawing, Wish wish) {
        return wish.plan().isPresent() ? drawing.with(wish.plan().get()) : drawing;
    }

    /** Also what was overtaken meanwhile: while the map is dragged, each picture is overtaken. */
    private void deliver(Wish wish, MapPicture picture) {
        owner.execute(() -> {
            delivered = wish;
            finished.accept(picture);
        });
    }

    /** What is on the screen; empty before the first. */
    Optional<Findings> shown() {
        return Optional.ofNullable(delivered).map(Wish::findings);
    }

    /** Whether the newest wish has been painted and shown, or can't be. */
    boolean idle() {
        return failed || delivered == newest;
    }

    private static View fitted(MapDrawing drawing, View size) {
        Envelope area = new Envelope(
                MARGIN_POINTS, size.widthPoints() - MARGIN_POINTS, MARGIN_POINTS, size.heightPoints() - MARGIN_POINTS);
        return drawing.fitted(area, size.widthPoints(), size.heightPoints());
    }
}

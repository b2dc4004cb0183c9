package pegbed.ui.map;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.stage.Window;
import javafx.util.Duration;
import pegbed.findings.Findings;
import pegbed.guidance.NextReading;
import pegbed.model.Place;
import pegbed.plan.Plan;
import pegbed.report.drawing.Camera;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.Themes;
import pegbed.report.drawing.View;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.session.Answer;
import pegbed.ui.controls.PeriodicTask;
import pegbed.ui.findings.FindingsViewModel;
import pegbed.ui.plan.PlanViewModel;
import pegbed.ui.profile.ProfileViewModel;
import pegbed.ui.reading.NextReadingViewModel;
import pegbed.ui.reading.ReadingBoxViewModel;

/**
 * The map. What is to be painted is noted on the toolkit's thread, painted off it, and shown on it; while the person
 * moves the map, the old picture is moved.
 */
public final class MapPane extends Region {
    private static final double USUAL_WIDTH = 700;
    private static final double USUAL_HEIGHT = 480;
    private static final double HANDLE_POINTS = 14;
    private static final double DRAG_POINTS = 4;
    private static final long PULSE_MILLISECONDS = 700;
    private static final double CALM_MILLISECONDS = 250;

    private final MapViewModel model;
    private final ProfileViewModel profile;
    private final ReadingBoxViewModel box;
    private final FindingsViewModel findings;
    private final PlanViewModel plan;
    private final NextReadingViewModel guide;
    private final MapPainting painting;
    private final Camera camera = new Camera();
    private final Canvas ground = new Canvas();
    private final Canvas above = new Canvas();
    private final BooleanProperty dark = new SimpleBooleanProperty(false);
    private final Set<Layer> layers = new HashSet<>(MapOptions.USUAL.layers());
    private Optional<MapPicture> picture = Optional.empty();
    private double pressedX;
    private double pressedY;
    private double lastX;
    private double lastY;
    private boolean dragging;
    private final PeriodicTask pulse = new PeriodicTask(PULSE_MILLISECONDS, this::pulse);
    private boolean large;
    private boolean linesInstead;
    private boolean pointed;
    private boolean highContrast;
    /** Window points for a point of the map: more than 1 on a large map, so that its letters grow with it. */
    private double enlarged = 1;

    private final BooleanProperty joinedUp = new SimpleBooleanProperty(false);
    private final MapLegend legend = new MapLegend();
    /** Letters and soundings are placed again about the findings and the next place once these hold still. */
    private final PauseTransition calm = new PauseTransition(Duration.millis(CALM_MILLISECONDS));

    private Optional<Place> courseStart = Optional.empty();
    private Runnable filled = () -> {};
    private Runnable firstShown = () -> {};

    public MapPane(
            MapViewModel model,
            ProfileViewModel profile,
            ReadingBoxViewModel box,
            FindingsViewModel findings,
            PlanViewModel plan,
            NextReadingViewModel guide,
            BackgroundDrawing ahead) {
        this.model = model;
        this.profile = profile;
        this.box = box;
        this.findings = findings;
        this.plan = plan;
        this.guide = guide;
        painting = new MapPainting(ahead, Platform::runLater, this::show);
        getChildren().addAll(ground, above, legend);
        above.setMouseTransparent(true);
        calm.setOnFinished(event -> wish(true));
        setId("map");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setMinSize(0, 0);
        setPrefSize(USUAL_WIDTH, USUAL_HEIGHT);
        camera.size(USUAL_WIDTH, USUAL_HEIGHT);
        listen();
        wish();
    }

    /** Whether the map is dark. */
    public BooleanProperty darkProperty() {
        return dark;
    }

    /** Whether the bottom is drawn straight between the readings, without the model. */
    public BooleanProperty joinedUpProperty() {
        return joinedUp;
    }

    /** Whether the legend is shown. */
    public BooleanProperty legendProperty() {
        return legend.visibleProperty();
    }

    /** Whether colours are those for a screen in the sun. */
    public void setHighContrast(boolean high) {
        highContrast = high;
        wish();
    }

    /** Run after a click has filled the reading box. */
    public void onFilled(Runnable listener) {
        filled = listener;
    }

    /** Run when the next picture is shown, once. */
    public void onShown(Runnable listener) {
        firstShown = listener;
    }

    /** Switches what is drawn. */
    public void setLayer(Layer layer, boolean shown) {
        if (shown) {
            layers.add(layer);
        } else {
            layers.remove(layer);
        }
        wish();
    }

    /** Shows the lines to fish instead of the flat spots: both are numbered, and two numberings on one map confuse. */
    public void showLines(boolean instead) {
        linesInstead = instead;
        wish();
    }

    public boolean shows(Layer layer) {
        return layers.contains(layer);
    }

    /** The view that is shown, in points of the window, for tests and for what is laid over the map. */
    public View view() {
        View view = camera.view();
        return new View(
                view.widthPoints() * enlarged,
                view.heightPoints() * enlarged,
                view.pointsPerMetre() * enlarged,
                view.leftMetres(),
                view.topMetres());
    }

    /** Whether the picture is the newest that was asked for, and of the view that is shown. */
    public boolean settled() {
        return picture.isPresent() && painting.idle() && picture.get().view().equals(camera.view());
    }

    /** Whether letters and soundings are to be placed again as soon as the findings hold still, for tests. */
    public boolean awaitsCalm() {
        return calm.getStatus() == Animation.Status.RUNNING;
    }

    /** What is on the screen, for tests. */
    public Optional<Findings> shown() {
        return painting.shown();
    }

    /** Points of the window for a point of the map, 1 or more. */
    double enlarged() {
        return enlarged;
    }

    private void listen() {
        findings.pictureProperty().addListener((property, before, now) -> wish());
        dark.addListener((property, before, now) -> wish());
        plan.planProperty().addListener((property, before, now) -> wish());
        guide.nextProperty().addListener((property, before, now) -> {
            drawAbove();
            wish();
        });
        joinedUp.addListener((property, before, now) -> wish());
        legend.visibleProperty().addListener((property, before, now) -> requestLayout());
        hoverProperty().addListener((property, before, now) -> {
            pointed = now;
            drawAbove();
        });
        // What ticks keeps the map, so that it must end with the window.
        sceneProperty()
                .flatMap(Scene::windowProperty)
                .flatMap(Window::showingProperty)
                .orElse(false)
                .addListener((property, before, showing) -> {
                    if (showing) {
                        pulse.start();
                    } else {
                        pulse.stop();
                    }
                });
        model.toolProperty().addListener((property, before, now) -> {
            setCursor(now == Tool.READ ? Cursor.CROSSHAIR : Cursor.DEFAULT);
            drawAbove();
        });
        model.selectedProperty().addListener((property, before, now) -> drawAbove());
        model.pointerProperty().addListener((property, before, now) -> drawAbove());
        profile.profileProperty().addListener((property, before, now) -> drawAbove());
        model.pointerWordsProperty()
                .addListener((property, before, now) -> setAccessibleText("Map. Pointer at " + now));
        setAccessibleHelp(
                "Arrow keys move the pointer, Enter takes its place into the reading box, plus and minus zoom.");
        focusedProperty().addListener((property, before, now) -> drawAbove());
        setCursor(Cursor.CROSSHAIR);
        setOnMousePressed(this::press);
        setOnMouseDragged(this::drag);
        setOnMouseReleased(this::release);
        setOnMouseMoved(event -> model.point(place(event.getX(), event.getY())));
        setOnScroll(this::scroll);
        setOnZoom((ZoomEvent event) ->
                moved(() -> camera.zoom(event.getZoomFactor(), event.getX() / enlarged, event.getY() / enlarged)));
        setOnKeyPressed(new MapKeys(this, model)::press);
    }

    private void pulse() {
        large = !large;
        if (guide.nextProperty().get().isPresent()) {
            drawAbove();
        }
    }

    private Place place(double x, double y) {
        return new Place(camera.view().xMetres(x / enlarged), camera.view().yMetres(y / enlarged));
    }

    private double metres(double points) {
        return points / enlarged / camera.view().pointsPerMetre();
    }

    private void press(MouseEvent event) {
        requestFocus();
        pressedX = lastX = event.getX();
        pressedY = lastY = event.getY();
        dragging = false;
        if (event.getButton() == MouseButton.PRIMARY) {
            model.take(place(pressedX, pressedY), metres(HANDLE_POINTS));
            courseStart = model.toolProperty().get() == Tool.COURSE
                    ? Optional.of(place(pressedX, pressedY))
                    : Optional.empty();
        }
    }

    private void drag(MouseEvent event) {
        if (!dragging && Math.hypot(event.getX() - pressedX, event.getY() - pressedY) < DRAG_POINTS) {
            return;
        }
        dragging = true;
        if (courseStart.isPresent()) {
            profile.along(courseStart.get(), place(event.getX(), event.getY()));
        } else if (event.getButton() == MouseButton.PRIMARY
                && model.selectedProperty().get().isPresent()) {
            model.moveTo(place(event.getX(), event.getY()));
        } else {
            double dx = (event.getX() - lastX) / enlarged;
            double dy = (event.getY() - lastY) / enlarged;
            moved(() -> camera.pan(dx, dy));
        }
        lastX = event.getX();
        lastY = event.getY();
    }

    private void release(MouseEvent event) {
        if (dragging) {
            model.letGo();
            return;
        }
        if (event.getButton() == MouseButton.PRIMARY) {
            Place place = place(event.getX(), event.getY());
            model.point(place);
            useAt(place);
        }
    }

    /** What a click does, at the pointer's place. */
    void useAt(Place place) {
        if (model.toolProperty().get() == Tool.READ) {
            box.fillFrom(place);
            filled.run();
        } else if (model.selectedProperty().get().isEmpty()) {
            model.add(place);
        }
    }

    private void scroll(ScrollEvent event) {
        if (event.getTouchCount() > 0 || event.isInertia()) {
            moved(() -> camera.pan(event.getDeltaX() / enlarged, event.getDeltaY() / enlarged));
        } else {
            moved(() ->
                    camera.zoom(Math.pow(1.0018, event.getDeltaY()), event.getX() / enlarged, event.getY() / enlarged));
        }
        event.consume();
    }

    /** Moves the camera, and at once the old picture; then asks for a new one. */
    public void moved(Consumer<Camera> change) {
        change.accept(camera);
        draw();
        wish();
    }

    private void moved(Runnable change) {
        moved(camera -> change.run());
    }

    @Override
    protected void layoutChildren() {
        double width = Math.max(1, getWidth());
        double height = Math.max(1, getHeight());
        if (ground.getWidth() != width || ground.getHeight() != height) {
            for (Canvas canvas : new Canvas[] {ground, above}) {
                canvas.setWidth(width);
                canvas.setHeight(height);
            }
            enlarged = MapDrawing.pixelsPerPoint(width, height);
            camera.size(width / enlarged, height / enlarged);
            draw();
            wish();
        }
        legend.place(width, height);
    }

    private Theme theme() {
        return dark.get() ? Themes.DARK : highContrast ? Themes.HIGH_CONTRAST : Themes.LIGHT;
    }

    private void wish() {
        wish(false);
        calm.playFromStart();
    }

    /** @param whole whether the picture is painted again even where only the findings or the next place differ */
    private void wish(boolean whole) {
        Optional<Answer.Ready> shown = findings.pictureProperty().get();
        if (shown.isEmpty()) {
            if (picture.isPresent()) {
                picture = Optional.empty();
                draw();
            }
            return;
        }
        Answer.Ready ready = shown.get();
        Set<Layer> drawn = findings.placeAlone() ? Layer.ofPlaceAlone(layers) : new HashSet<>(layers);
        drawn.remove(linesInstead ? Layer.FLATS : Layer.LINES);
        painting.paint(new MapPainting.Wish(
                ready.map(),
                ready.findings(),
                planOn(ready),
                drawn,
                joinedUp.get(),
                next().map(NextReading::place),
                camera.view(),
                camera.showsAll(),
                theme(),
                pixels() * enlarged,
                whole));
    }

    /** The plan to draw: the one for these findings, and the one before while they are provisional. */
    private Optional<Plan> planOn(Answer.Ready ready) {
        return plan.planProperty()
                .get()
                .filter(made ->
                        made.findings() == ready.findings() || ready.map().isProvisional());
    }

    private Optional<NextReading> next() {
        return shows(Layer.NEXT) ? guide.nextProperty().get() : Optional.empty();
    }

    private double pixels() {
        return getScene() == null || getScene().getWindow() == null
                ? 1
                : getScene().getWindow().getRenderScaleX();
    }

    private void show(MapPicture made) {
        if (findings.pictureProperty().get().isEmpty()) {
            return;
        }
        picture = Optional.of(
                made.image().isPresent()
                        ? made
                        : new MapPicture(
                                picture.flatMap(MapPicture::image),
                                made.findings(),
                                made.view(),
                                made.bounds(),
                                made.legend()));
        camera.seen(made.view(), made.bounds());
        made.legend().ifPresent(drawing -> legend.show(drawing, theme(), enlarged));
        draw();
        Runnable callback = firstShown;
        firstShown = () -> {};
        callback.run();
    }

    private void draw() {
        GraphicsContext canvas = ground.getGraphicsContext2D();
        Theme theme = theme();
        canvas.setFill(CanvasPainter.colour(theme.fill(pegbed.report.drawing.Role.SHEET, 0, 1)));
        canvas.fillRect(0, 0, ground.getWidth(), ground.getHeight());
        View view = camera.view();
        canvas.save();
        canvas.scale(enlarged, enlarged);
        picture.ifPresent(made -> {
            View of = made.view();
            double scale = view.pointsPerMetre() / of.pointsPerMetre();
            made.image()
                    .ifPresent(image -> canvas.drawImage(
                            image,
                            view.x(of.leftMetres()),
                            view.y(of.topMetres()),
                            of.widthPoints() * scale,
                            of.heightPoints() * scale));
            CanvasPainter.paint(made.findings(), view, theme, canvas);
        });
        canvas.restore();
        drawAbove();
    }

    private void drawAbove() {
        GraphicsContext canvas = above.getGraphicsContext2D();
        canvas.clearRect(0, 0, above.getWidth(), above.getHeight());
        canvas.save();
        canvas.scale(enlarged, enlarged);
        new MapOverlay(canvas, camera.view(), dark.get() ? Color.web("#ffd27d") : Color.web("#7a2f00"), theme())
                .draw(model, profile, pointed || isFocused(), isFocused(), next(), large);
        canvas.restore();
    }
}

package pegbed.ui.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.report.drawing.View;
import pegbed.session.Answer;
import pegbed.session.Session;
import pegbed.ui.controls.FileChoice;
import pegbed.ui.document.WindowPreferences;
import pegbed.ui.map.MapPane;

/** A window in a test, driven as a person drives it. */
public final class Scenes implements FileChoice {
    private static final int PATIENCE_SECONDS = 60;

    /** Through less than this nobody scrolls to anything, points. */
    private static final double LEAST_ROOM = 60;

    private final FxRobot robot = new FxRobot();
    private final Path own;
    private final List<ExecutorService> threads = new ArrayList<>();
    private WindowViewModels desk;
    private Stage stage;
    private WindowFrame frame;
    private double heightWhenShown;

    /** The session's clock. */
    public Clock clock = Clock.systemUTC();

    /** What the person chooses when asked for a file. */
    public Optional<Path> chosen = Optional.empty();

    Scenes(Path own) {
        this.own = own;
    }

    public static void startToolkit() {
        Headless.set();
        try {
            FxToolkit.registerPrimaryStage();
        } catch (TimeoutException e) {
            throw new IllegalStateException(e);
        }
        Platform.setImplicitExit(false);
    }

    /** Opens a window on a peg, with the hint of the first start closed long ago. */
    public void open(Peg peg) {
        new WindowPreferences(own).closeHint();
        openFresh();
        on(() -> desk.document().begin(peg));
        waitUntil(() -> desk.session().peg().equals(peg));
    }

    /** Opens a window as on the first start. */
    public void openFresh() {
        ExecutorService disk = WindowViewModels.thread("disk");
        ExecutorService answers = WindowViewModels.thread("answers");
        ExecutorService painter = WindowViewModels.thread("painter");
        ExecutorService aside = WindowViewModels.thread("aside");
        threads.addAll(List.of(disk, answers, painter, aside));
        on(() -> {
            desk = WindowViewModels.of(
                    own, new Session.Executors(Platform::runLater, answers, disk), painter, aside, aside, clock);
            stage = new Stage();
            // Some window managers show a window at a size of their own.
            stage.setHeight(790);
            frame = PegbedApplication.show(stage, desk, this, false);
            heightWhenShown = stage.getHeight();
            stage.setWidth(1366);
            stage.setHeight(740);
        });
        settle();
    }

    public void close() {
        on(() -> {
            stage.hide();
            desk.session().close(false, () -> {});
        });
        settle();
        threads.forEach(ExecutorService::shutdown);
        try {
            for (ExecutorService thread : threads) {
                thread.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    Stage stage() {
        return stage;
    }

    /** How high the window was when the program had shown it, points. */
    double heightWhenShown() {
        return heightWhenShown;
    }

    public WindowViewModels desk() {
        return desk;
    }

    public WindowFrame frame() {
        return frame;
    }

    public Scene scene() {
        return stage.getScene();
    }

    public Peg peg() {
        return desk.session().peg();
    }

    public boolean isShowing() {
        return stage.isShowing();
    }

    public void on(Runnable work) {
        WaitForAsyncUtils.waitForAsyncFx(1000L * PATIENCE_SECONDS, work);
    }

    public void settle() {
        WaitForAsyncUtils.waitForFxEvents();
    }

    public void waitUntil(Callable<Boolean> condition) {
        try {
            WaitForAsyncUtils.waitFor(
                    PATIENCE_SECONDS,
                    TimeUnit.SECONDS,
                    () -> WaitForAsyncUtils.waitForAsyncFx(1000L * PATIENCE_SECONDS, condition));
        } catch (TimeoutException e) {
            throw new AssertionError("It did not come about in " + PATIENCE_SECONDS + " seconds.", e);
        }
    }

    public void waitForAnswers() {
        waitUntil(() -> desk.session().answer() instanceof Answer.Ready);
    }

    /** Types lines as a person does, Enter after each. */
    public long write(List<String> lines) {
        long keys = 0;
        for (String line : lines) {
            robot.write(line, 0);
            robot.type(KeyCode.ENTER);
            keys += line.length() + 1;
        }
        settle();
        return keys;
    }

    /**
     * Gives readings as {@link #write} does, each line put into the reading box at once, where typing is not the
     * matter.
     */
    public void give(List<String> lines) {
        for (String line : lines) {
            on(() -> this.<TextInputControl>find("#reading").setText(line));
            robot.type(KeyCode.ENTER);
        }
        settle();
    }

    public void press(KeyCode key) {
        robot.type(key);
        settle();
    }

    public void shortcut(KeyCode key) {
        robot.press(KeyCode.CONTROL).type(key).release(KeyCode.CONTROL);
        settle();
    }

    public void click(String query) {
        waitUntil(() -> stage.getScene().lookup(query) != null);
        robot.clickOn(query);
        settle();
    }

    private Point2D onScreen(Place place) {
        MapPane map = frame.main().map();
        View view = map.view();
        return map.localToScreen(view.x(place.xMetres()), view.y(place.yMetres()));
    }

    public void clickMap(Place place) {
        waitUntil(() -> frame.main().map().settled());
        robot.clickOn(onScreen(place));
        settle();
    }

    public void dragMap(Place from, Place to) {
        waitUntil(() -> frame.main().map().settled());
        robot.drag(onScreen(from)).moveTo(onScreen(to)).drop();
        settle();
    }

    public void askToClose() {
        on(() -> stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST)));
        settle();
    }

    public void resize(double width, double height) {
        size(width, height);
        waitUntil(() -> frame.main().map().settled());
    }

    /** Gives the window a size, and does not wait for a map. */
    public void size(double width, double height) {
        on(() -> {
            // As on a screen that is no larger than that.
            stage.setMinWidth(Math.min(width, stage.getMinWidth()));
            stage.setMinHeight(Math.min(height, stage.getMinHeight()));
            // What lies beyond the screen's edge can't be painted without a display.
            stage.setX(0);
            stage.setY(0);
            stage.setWidth(width);
            stage.setHeight(height);
        });
        settle();
    }

    /** Goes to a tab beside the map. */
    public void tab(String id) {
        on(() -> {
            TabPane tabs = find("#tabs");
            tabs.getSelectionModel()
                    .select(tabs.getTabs().stream()
                            .filter(tab -> id.equals(tab.getId()))
                            .findFirst()
                            .orElseThrow());
        });
        settle();
    }

    @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"}) // The caller knows the kind of the node.
    public <T extends Node> T find(String query) {
        Node node = stage.getScene().lookup(query);
        if (node == null) {
            throw new AssertionError("There is no " + query + ".");
        }
        return (T) node;
    }

    @SuppressWarnings("unchecked")
    public <T extends Node> List<T> all(String query) {
        return stage.getScene().getRoot().lookupAll(query).stream()
                .map(node -> (T) node)
                .toList();
    }

    public boolean there(String query) {
        Node node = stage.getScene().lookup(query);
        return node != null && node.isVisible();
    }

    /** The pixels of the map as it is shown. */
    public int[] mapPixels() {
        int[][] pixels = new int[1][];
        on(() -> {
            WritableImage image = frame.main().map().snapshot(null, null);
            int width = (int) image.getWidth();
            int height = (int) image.getHeight();
            pixels[0] = new int[width * height];
            image.getPixelReader()
                    .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels[0], 0, width);
        });
        return pixels[0];
    }

    /** Lightness of the map at a place on the water, 0 to 1, the mean of a few pixels. */
    public double lightness(Place place) {
        double[] sum = new double[1];
        on(() -> {
            MapPane map = frame.main().map();
            WritableImage image = map.snapshot(null, null);
            int x = (int) Math.round(map.view().x(place.xMetres()));
            int y = (int) Math.round(map.view().y(place.yMetres()));
            for (int dx = -3; dx <= 3; dx++) {
                for (int dy = -3; dy <= 3; dy++) {
                    Color colour = image.getPixelReader().getColor(x + dx, y + dy);
                    sum[0] += 0.2126 * colour.getRed() + 0.7152 * colour.getGreen() + 0.0722 * colour.getBlue();
                }
            }
        });
        return sum[0] / 49;
    }

    private List<Node> visible() {
        List<Node> nodes = new ArrayList<>();
        gather(stage.getScene().getRoot(), nodes);
        return nodes;
    }

    private static void gather(Node node, List<Node> nodes) {
        if (!node.isVisible()) {
            return;
        }
        nodes.add(node);
        if (node instanceof Parent parent && !(node instanceof TableView)) {
            parent.getChildrenUnmodifiable().forEach(child -> gather(child, nodes));
        }
    }

    /** Controls that can be focused but that a screen reader could not name. */
    public List<String> nameless() {
        List<String> found = new ArrayList<>();
        on(() -> {
            for (Node node : visible()) {
                boolean control = node instanceof ButtonBase
                        || node instanceof TextInputControl
                        || node instanceof ComboBoxBase
                        || node instanceof Slider
                        || node instanceof TableView;
                boolean words = node instanceof Labeled labeled
                        && labeled.getText() != null
                        && !labeled.getText().isBlank();
                boolean named = node.getAccessibleText() != null
                        && !node.getAccessibleText().isBlank();
                if (control && node.isFocusTraversable() && !words && !named) {
                    found.add(node + "");
                }
            }
        });
        return found;
    }

    /** Buttons and fields that do not lie wholly in the window, or whose words are cut. */
    public List<String> cutOff() {
        List<String> found = new ArrayList<>();
        on(() -> {
            for (Node node : visible()) {
                if (!(node instanceof ButtonBase || node instanceof TextInputControl || node instanceof Slider)) {
                    continue;
                }
                Bounds bounds = node.localToScene(node.getLayoutBounds());
                boolean outside = bounds.getMinX() < -0.5
                        || bounds.getMinY() < -0.5
                        || bounds.getMaxX() > scene().getWidth() + 0.5
                        || bounds.getMaxY() > scene().getHeight() + 0.5;
                boolean narrow = node instanceof ButtonBase button
                        && node.getId() != null
                        && button.getWidth() < button.prefWidth(-1) - 0.5;
                if (outside || narrow) {
                    found.add(node.getId() + " " + bounds);
                }
            }
        });
        return found;
    }

    /** Buttons and fields that lie outside the window and that no scrolling brings into it. */
    public List<String> unreachable() {
        List<String> found = new ArrayList<>();
        on(() -> {
            for (Node node : visible()) {
                boolean control = node instanceof ButtonBase
                        || node instanceof TextInputControl
                        || node instanceof Slider
                        || node instanceof ComboBoxBase;
                if (control && node.getId() != null && !isReachable(node)) {
                    found.add(node.getId() + " " + node.localToScene(node.getLayoutBounds()));
                }
            }
        });
        return found;
    }

    /** Through one scroll pane after the other, up to the window. */
    private boolean isReachable(Node node) {
        Node part = node;
        for (Node above = node.getParent(); above != null; above = above.getParent()) {
            if (above instanceof ScrollPane pane) {
                Bounds content = pane.getContent().getLayoutBounds();
                Bounds at = pane.getContent().sceneToLocal(part.localToScene(part.getLayoutBounds()));
                boolean wide = content.getWidth() <= pane.getViewportBounds().getWidth() + 1
                        || pane.getHbarPolicy() != ScrollPane.ScrollBarPolicy.NEVER;
                boolean high = content.getHeight() <= pane.getViewportBounds().getHeight() + 1
                        || pane.getVbarPolicy() != ScrollPane.ScrollBarPolicy.NEVER;
                boolean room = pane.getHeight() >= Math.min(LEAST_ROOM, at.getHeight());
                if (!wide || !high || !room || !within(at, content.getWidth(), content.getHeight())) {
                    return false;
                }
                part = pane;
            }
        }
        Bounds bounds = part.localToScene(part.getLayoutBounds());
        return within(bounds, scene().getWidth(), scene().getHeight());
    }

    private static boolean within(Bounds bounds, double width, double height) {
        return bounds.getMinX() > -1
                && bounds.getMinY() > -1
                && bounds.getMaxX() < width + 1
                && bounds.getMaxY() < height + 1;
    }

    /** Sentences that end in an ellipsis for want of room. */
    public List<String> cutSentences() {
        List<String> found = new ArrayList<>();
        on(() -> {
            for (Node node : visible()) {
                boolean sentence = node instanceof Label label
                        && label.isWrapText()
                        && label.lookup(".text") instanceof Text shown
                        && !shown.getText()
                                .replaceAll("\\s+", " ")
                                .equals(label.getText().replaceAll("\\s+", " "));
                if (sentence) {
                    found.add(((Label) node).getText());
                }
            }
        });
        return found;
    }

    @Override
    public Optional<Path> toOpen(Optional<Path> folder) {
        return chosen;
    }

    @Override
    public Optional<Path> toSave(String suggested, Optional<Path> folder) {
        return chosen;
    }

    @Override
    public Optional<Path> toSaveCard(String suggested, Optional<Path> folder) {
        return chosen;
    }

    @Override
    public Optional<Path> toFolder(String title) {
        return chosen;
    }

    @Override
    public Optional<Path> toExport(String suggested) {
        return chosen;
    }

    @Override
    public Optional<Path> toBringIn() {
        return chosen;
    }
}

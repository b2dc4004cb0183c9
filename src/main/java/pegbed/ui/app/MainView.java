package pegbed.ui.app;

import java.util.List;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import pegbed.model.Place;
import pegbed.report.drawing.Camera;
import pegbed.ui.controls.Controls;
import pegbed.ui.findings.FindingsView;
import pegbed.ui.findings.TargetView;
import pegbed.ui.fishing.FishingView;
import pegbed.ui.map.MapPane;
import pegbed.ui.map.MapTools;
import pegbed.ui.map.Tool;
import pegbed.ui.place.PlaceView;
import pegbed.ui.plan.PlanView;
import pegbed.ui.profile.ProfileView;
import pegbed.ui.reading.ReadingBoxView;
import pegbed.ui.reading.ReadingsView;
import pegbed.ui.visits.VisitsView;

/** The window's usual view: the map in the middle, the box below it, answers and tables beside it. */
final class MainView extends BorderPane {
    private static final String PLAN_TAB = "tab-plan";
    private static final String FISHING_TAB = "tab-fishing";

    /** How much of the window is left to the map, with the answers beside it or below it. */
    private static final double BESIDE = 0.71;

    private static final double BELOW = 0.6;
    private static final double MIDDLE_POINTS = 300;

    /** Lower than this, map, box and profile do not have the room that they need. */
    private static final double LOW_POINTS = 540;

    private final WindowViewModels desk;
    private final MapPane map;
    private final TabPane tabs = new TabPane();
    private final ProfileView profile;
    private final ReadingBoxView box;
    private final VBox middle = new Wrapping();
    private final SplitPane split = new SplitPane();
    private final ScrollPane scroll = scrolling();
    private final StackPane picture = new StackPane();
    private final BooleanProperty dark = new SimpleBooleanProperty(false);

    MainView(WindowViewModels desk) {
        this.desk = desk;
        map = new MapPane(
                desk.map(), desk.profile(), desk.box(), desk.findings(), desk.plan(), desk.guide(), desk.drawn());
        profile = new ProfileView(desk.profile());
        box = new ReadingBoxView(desk.box(), desk.guide());
        map.darkProperty().bind(dark);
        profile.darkProperty().bind(dark);
        map.onFilled(box::focusBox);
        getStyleClass().add("main");
        picture.getChildren().addAll(map, state(), pointer(), zoom());
        picture.getStyleClass().add("picture");
        picture.setMinHeight(180);
        VBox.setVgrow(picture, Priority.ALWAYS);
        profile.setPrefHeight(150);
        profile.setMinHeight(96);
        middle.getChildren().addAll(new MapTools(desk.map(), map::requestFocus), picture, box, profile);
        middle.getStyleClass().add("middle");
        VBox side = side();
        middle.setMinWidth(MIDDLE_POINTS);
        split.getItems().addAll(middle, side);
        SplitPane.setResizableWithParent(side, false);
        split.setDividerPositions(BESIDE);
        widthProperty().addListener((property, before, now) -> arrange());
        heightProperty().addListener((property, before, now) -> arrange());
        setCenter(split);
    }

    /** What is shown of map, box and profile where a window is too low for all of them. */
    private static ScrollPane scrolling() {
        ScrollPane pane = new ScrollPane();
        pane.setId("middle");
        pane.setFitToWidth(true);
        pane.setFitToHeight(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setFocusTraversable(false);
        pane.setMinWidth(MIDDLE_POINTS);
        pane.getStyleClass().add("edge-to-edge");
        return pane;
    }

    /**
     * Only a low window scrolls: the toolkit keeps a picture of what lies in a scroll pane and paints it anew with
     * every change of the map.
     */
    private void scrollWhereLow() {
        boolean low = getHeight() < LOW_POINTS;
        if (low == (split.getItems().get(0) == scroll)) {
            return;
        }
        double[] dividers = split.getDividerPositions();
        if (low) {
            split.getItems().set(0, scroll);
            // Beside the scroll bar there is less than that.
            middle.setMinWidth(0);
            scroll.setContent(middle);
        } else {
            scroll.setContent(null);
            middle.setMinWidth(MIDDLE_POINTS);
            split.getItems().set(0, middle);
        }
        split.setDividerPositions(dividers);
    }

    /** Answers and tables stand beside the map, or below it where the window is higher than wide. */
    private void arrange() {
        if (getWidth() <= 0 || getHeight() <= 0) {
            return;
        }
        scrollWhereLow();
        Orientation wanted = getHeight() > getWidth() ? Orientation.VERTICAL : Orientation.HORIZONTAL;
        if (split.getOrientation() != wanted) {
            split.setOrientation(wanted);
            split.setDividerPositions(wanted == Orientation.VERTICAL ? BELOW : BESIDE);
        }
    }

    /**
     * A column whose least height is that of its sentences wrapped to its width, which a scroll pane does not ask for.
     */
    private static final class Wrapping extends VBox {
        private Wrapping() {
            // What a width asks for is seen by the next layout only.
            widthProperty().addListener((property, before, now) -> Platform.runLater(this::requestLayout));
        }

        @Override
        protected double computeMinHeight(double width) {
            return super.computeMinHeight(width < 0 && getWidth() > 0 ? getWidth() : width);
        }
    }

    BooleanProperty darkProperty() {
        return dark;
    }

    MapPane map() {
        return map;
    }

    /** The large-button view borrows the map. */
    void takeMapBack() {
        map.setHighContrast(false);
        picture.getChildren().add(0, map);
        showLinesOrSpots();
    }

    /** Puts something above the map, such as the hint. */
    void addAbove(Node node) {
        middle.getChildren().add(0, node);
    }

    void focusBox() {
        box.focusBox();
    }

    /** Back to what is most often done: a click on the map takes a reading's place. */
    void leaveTool() {
        desk.map().toolProperty().set(Tool.READ);
    }

    private Node state() {
        Label words = new Label();
        words.setId("state");
        words.textProperty().bind(desk.findings().stateProperty());
        words.setWrapText(true);
        ObservableBooleanValue working = Controls.lasting(desk.findings().workingProperty());
        Button stop = Controls.button("stop", "Stop", "Stops working it out", desk.findings()::cancel);
        stop.getStyleClass().add("small");
        Controls.shownWhile(stop, working);
        ProgressBar bar = new ProgressBar();
        bar.setId("progress");
        bar.setAccessibleText("How far the work is");
        bar.setPrefWidth(90);
        bar.progressProperty().bind(desk.findings().progressProperty());
        Controls.shownWhile(bar, working);
        HBox chip = new HBox(words, bar, stop);
        chip.setAlignment(Pos.CENTER_LEFT);
        chip.getStyleClass().addAll("chip", "row");
        chip.setMaxSize(560, USE_PREF_SIZE);
        Controls.shownWhile(
                chip,
                Bindings.createBooleanBinding(
                        () -> !desk.findings().stateProperty().get().isEmpty()
                                && (working.get()
                                        || !desk.findings().workingProperty().get()),
                        desk.findings().stateProperty(),
                        desk.findings().workingProperty(),
                        working));
        StackPane.setAlignment(chip, Pos.TOP_LEFT);
        return chip;
    }

    private Node pointer() {
        Label words = new Label();
        words.setId("pointer");
        words.textProperty().bind(desk.map().pointerShortProperty());
        words.getStyleClass().addAll("chip", "pointer");
        words.setMouseTransparent(true);
        StackPane.setAlignment(words, Pos.BOTTOM_LEFT);
        return words;
    }

    private Node zoom() {
        Button in = Controls.button("zoom-in", "+", "Closer", () -> map.moved(camera -> camera.zoomMiddle(1.4)));
        Button out = Controls.button("zoom-out", "−", "Farther", () -> map.moved(camera -> camera.zoomMiddle(1 / 1.4)));
        Button all = Controls.button("show-all", "All", "Shows all of the peg", () -> map.moved(Camera::showAll));
        HBox row = new HBox(out, all, in);
        for (Node node : row.getChildren()) {
            node.getStyleClass().add("small");
            node.setFocusTraversable(false);
        }
        row.getStyleClass().add("zoom");
        row.setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
        StackPane.setAlignment(row, Pos.BOTTOM_RIGHT);
        return row;
    }

    private VBox side() {
        tabs.getTabs()
                .setAll(
                        tab("tab-findings", "Found", () -> new FindingsView(desk.findings(), this::show)),
                        tab(PLAN_TAB, "Lines", () -> new PlanView(desk.plan(), this::show, desk.rigs()::ask)),
                        tab(FISHING_TAB, "Fishing", () -> new FishingView(desk.fishing(), this::show)),
                        tab("tab-readings", "Readings", () -> new ReadingsView(desk.readings(), this::show)),
                        tab(
                                "tab-visits",
                                "Visits",
                                () -> new VisitsView(desk.visitsPanel(), this::show, this::focusBox)),
                        tab("tab-place", "Place", () -> new PlaceView(desk.place(), this::show)));
        tabs.setSide(Side.TOP);
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        tabs.setId("tabs");
        tabs.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> showLinesOrSpots());
        VBox.setVgrow(tabs, Priority.ALWAYS);
        VBox side = new VBox(new TargetView(desk.target()), tabs);
        side.getStyleClass().add("side");
        side.setMinWidth(380);
        side.setPrefWidth(390);
        return side;
    }

    /** The map shows what the tab in front speaks of. */
    private void showLinesOrSpots() {
        Tab front = tabs.getSelectionModel().getSelectedItem();
        map.showLines(front != null && List.of(PLAN_TAB, FISHING_TAB).contains(front.getId()));
    }

    /** A tab whose content is made when it is first looked at: the window is there sooner. */
    private static Tab tab(String id, String words, Supplier<Node> content) {
        Tab tab = new Tab(words);
        tab.setId(id);
        tab.selectedProperty().addListener((property, before, now) -> {
            if (now && tab.getContent() == null) {
                tab.setContent(content.get());
            }
        });
        return tab;
    }

    private void show(Place place) {
        desk.map().point(place);
    }
}

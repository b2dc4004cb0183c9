package pegbed.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.geometry.Pos;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import pegbed.model.Place;
import pegbed.ui.controls.Controls;
import pegbed.ui.findings.FindingsView;
import pegbed.ui.findings.TargetView;
import pegbed.ui.map.Camera;
import pegbed.ui.map.MapPane;
import pegbed.ui.map.Tool;
import pegbed.ui.place.PlaceView;
import pegbed.ui.plan.PlanView;
import pegbed.ui.profile.ProfileView;
import pegbed.ui.reading.ReadingBoxView;
import pegbed.ui.reading.ReadingsView;
import pegbed.ui.visits.VisitsView;

/** The window's usual view: the map in the middle, the box below it, answers and tables beside it. */
final class MainView extends BorderPane {
    private final WindowViewModels desk;
    private final MapPane map;
    private final ProfileView profile;
    private final ReadingBoxView box;
    private final VBox middle = new VBox();
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
        picture.setMinHeight(160);
        VBox.setVgrow(picture, Priority.ALWAYS);
        profile.setPrefHeight(150);
        profile.setMinHeight(96);
        middle.getChildren().addAll(tools(), picture, box, profile);
        middle.getStyleClass().add("middle");
        middle.setMinWidth(300);
        VBox side = side();
        SplitPane split = new SplitPane(middle, side);
        SplitPane.setResizableWithParent(side, false);
        split.setDividerPositions(0.71);
        setCenter(split);
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
    }

    /** Puts something above the map, such as the hint. */
    void addAbove(Node node) {
        middle.getChildren().add(0, node);
    }

    void focusBox() {
        box.focusBox();
    }

    private Node tools() {
        ToggleGroup group = new ToggleGroup();
        List<Node> buttons = new ArrayList<>();
        for (Tool tool : Tool.values()) {
            ToggleButton button = new ToggleButton(tool.words());
            button.setId(
                    "tool-" + tool.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
            button.setToggleGroup(group);
            button.setSelected(tool == desk.map().toolProperty().get());
            Controls.tip(button, new SimpleStringProperty(tool.help()));
            button.setAccessibleHelp(tool.help());
            button.setMinWidth(USE_PREF_SIZE);
            button.getStyleClass().add("small");
            button.setOnAction(event -> {
                desk.map().toolProperty().set(tool);
                button.setSelected(true);
            });
            buttons.add(button);
        }
        Label help = new Label();
        help.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> desk.map().errorProperty().get().isEmpty()
                                ? desk.map().toolProperty().get().help()
                                : "✗ " + desk.map().errorProperty().get(),
                        desk.map().toolProperty(),
                        desk.map().errorProperty()));
        help.getStyleClass().add("quiet");
        // An error is read to its end in any case; help stands in the tools' tips too.
        help.wrapTextProperty().bind(desk.map().errorProperty().isNotEmpty());
        Controls.whole(help);
        help.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(help, Priority.ALWAYS);
        HBox row = new HBox();
        row.getChildren().addAll(buttons);
        row.getChildren().add(help);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().addAll("row", "tools");
        return row;
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
        TabPane tabs = new TabPane(
                tab("tab-findings", "Found", () -> new FindingsView(desk.findings(), this::show)),
                tab("tab-plan", "Lines", () -> new PlanView(desk.plan(), this::show, desk.rigs()::ask)),
                tab("tab-readings", "Readings", () -> new ReadingsView(desk.readings())),
                tab("tab-visits", "Visits", () -> new VisitsView(desk.visitsPanel(), this::show, this::focusBox)),
                tab("tab-place", "Place", () -> new PlaceView(desk.place())));
        tabs.setSide(Side.TOP);
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        tabs.setId("tabs");
        tabs.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> {
            if (now != null) {
                map.showLines("tab-plan".equals(now.getId()));
            }
        });
        VBox.setVgrow(tabs, Priority.ALWAYS);
        VBox side = new VBox(new TargetView(desk.target()), tabs);
        side.getStyleClass().add("side");
        side.setMinWidth(320);
        side.setPrefWidth(390);
        return side;
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

package pegbed.ui.bankside;

import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.css.PseudoClass;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import pegbed.model.Place;
import pegbed.ui.bankside.BanksideViewModel.Wheel;
import pegbed.ui.controls.Controls;
import pegbed.ui.fishing.FishingViewModel;
import pegbed.ui.map.MapPane;
import pegbed.ui.map.MapViewModel;
import pegbed.ui.map.Tool;
import pegbed.ui.plan.PlanViewModel;

/**
 * The view for the bank: large buttons, high contrast, no keyboard. Every button is at least {@value #MIN_POINTS}
 * points each way, which is 12 mm on a tablet of 10 in with 1280 × 800 points (5.9 points a millimetre). The wheels lie
 * beside the map, below it on a screen that stands upright; where there is no room for all of them they scroll, the
 * buttons below them do not. On a screen of few points, whose points are larger ({@value #SMALL_SCREEN_POINTS} wide, at
 * least 7 in), buttons are {@value #SMALL_MIN_POINTS} points, which is 12 mm there, and those below go all across, so
 * that the map has room.
 */
public final class BanksideView extends BorderPane {
    /** 12 mm at 5.9 points a millimetre. */
    public static final double MIN_POINTS = 72;

    /** A screen that is less wide than this is small. */
    public static final double SMALL_SCREEN_POINTS = 900;

    /** 12 mm where 683 points are 7 in. */
    public static final double SMALL_MIN_POINTS = 52;

    private static final double SAID_POINTS = 48;
    private static final double MIDDLE_POINTS = 170;
    private static final double SMALL_MIDDLE_POINTS = 120;
    private static final double PANEL_POINTS = 560;
    private static final double SMALL_PANEL_POINTS = 370;
    private static final PseudoClass SMALL = PseudoClass.getPseudoClass("small");
    private static final PseudoClass WAITING = PseudoClass.getPseudoClass("waiting");

    private final BanksideViewModel model;
    private final MapViewModel pointer;
    private final MapPane map;
    private final Button enter;
    private final GridPane wheels = new GridPane();
    private final ScrollPane scroll = new ScrollPane(wheels);
    private final BanksideLines lines;
    private final BorderPane panel = new BorderPane(scroll);
    private final Label said = Controls.wrapped("said");
    private final HBox buttons;
    private boolean small;
    private double leastPoints = MIN_POINTS;
    private final BooleanProperty showsLines = new SimpleBooleanProperty(false);

    /** These follow the model; kept by the view alone, so that the model does not keep the view. */
    private final ObjectProperty<Place> place = new SimpleObjectProperty<>();

    private final BooleanProperty plumbed = new SimpleBooleanProperty(false);
    private final BooleanProperty hasMarks = new SimpleBooleanProperty(false);

    /**
     * @param model the wheels
     * @param plan the lines to fish
     * @param fishing what happens on them
     * @param pointer what the pointer does on the map
     * @param map the map, borrowed from the usual view
     * @param back goes back to the usual view
     */
    public BanksideView(
            BanksideViewModel model,
            PlanViewModel plan,
            FishingViewModel fishing,
            MapViewModel pointer,
            MapPane map,
            Runnable back) {
        this.model = model;
        this.pointer = pointer;
        this.map = map;
        setId("bankside-view");
        model.begin();
        map.setHighContrast(true);
        getStyleClass().add("bankside");
        lines = new BanksideLines(plan, fishing, pointer::point);
        wheels.getStyleClass().add("wheels");
        for (int column = 0; column < 5; column++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setHgrow(column == 2 ? Priority.ALWAYS : Priority.SOMETIMES);
            width.setHalignment(HPos.CENTER);
            wheels.getColumnConstraints().add(width);
        }
        sizeColumns();
        fill();
        hasMarks.addListener((property, before, now) -> fill());
        hasMarks.bind(model.hasMarksProperty());
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("edge-to-edge");
        scroll.setMinHeight(MIN_POINTS);
        enter = large("bank-enter", "Add reading", model::enter);
        enter.getStyleClass().add("enter");
        enter.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(enter, Priority.ALWAYS);
        enter.pseudoClassStateChanged(WAITING, true);
        plumbed.addListener((property, before, now) -> enter.pseudoClassStateChanged(WAITING, !now));
        plumbed.bind(model.plumbedProperty());
        said.setId("bank-said");
        said.textProperty().bind(model.saidProperty());
        said.setMinHeight(SAID_POINTS);
        said.setAlignment(Pos.CENTER_LEFT);
        buttons = buttons(back);
        panel.setBottom(foot());
        panel.getStyleClass().add("bankside-panel");
        panel.setPrefWidth(PANEL_POINTS);
        StackPane picture = picture();
        setCenter(picture);
        widthProperty().addListener((property, before, now) -> arrange());
        heightProperty().addListener((property, before, now) -> arrange());
        arrange();
        pointer.toolProperty().set(Tool.READ);
        place.addListener((property, before, now) -> pointer.point(now));
        place.bind(model.placeProperty());
        showsLines.addListener((property, before, now) -> show(now));
        map.showLines(false);
    }

    /** The panel stands beside the map, or below it where the screen is higher than wide. */
    private void arrange() {
        boolean upright = getHeight() > getWidth();
        boolean few = !upright && getWidth() > 0 && getWidth() < SMALL_SCREEN_POINTS;
        boolean below = getBottom() == panel;
        if (upright == below && few == small && (below || getRight() == panel)) {
            return;
        }
        if (few != small) {
            small = few;
            size();
        }
        setRight(null);
        setBottom(null);
        panel.setBottom(null);
        if (upright) {
            panel.setBottom(foot());
            setBottom(panel);
        } else if (small) {
            setRight(panel);
            setBottom(foot());
        } else {
            panel.setBottom(foot());
            setRight(panel);
        }
    }

    /** What was said, and the buttons below the wheels. */
    private Node foot() {
        VBox foot = new VBox(said, buttons);
        foot.getStyleClass().add("bankside-foot");
        return foot;
    }

    private void size() {
        pseudoClassStateChanged(SMALL, small);
        leastPoints = small ? SMALL_MIN_POINTS : MIN_POINTS;
        panel.setPrefWidth(small ? SMALL_PANEL_POINTS : PANEL_POINTS);
        for (Node node : buttons.getChildren()) {
            ((Region) node).setMinSize(leastPoints, leastPoints);
        }
        said.setMinHeight(small ? USE_PREF_SIZE : SAID_POINTS);
        sizeColumns();
        fill();
    }

    private void sizeColumns() {
        for (int column = 0; column < 5; column++) {
            ColumnConstraints width = wheels.getColumnConstraints().get(column);
            if (column == 2) {
                width.setPrefWidth(small ? SMALL_MIDDLE_POINTS : MIDDLE_POINTS);
            } else {
                width.setMinWidth(leastPoints);
                width.setPrefWidth(1.2 * leastPoints);
            }
        }
    }

    private StackPane picture() {
        Label here = new Label();
        here.setId("bank-here");
        here.textProperty().bind(pointer.pointerWordsProperty());
        here.getStyleClass().addAll("chip", "here");
        here.setWrapText(true);
        StackPane.setAlignment(here, Pos.BOTTOM_LEFT);
        StackPane picture = new StackPane(map, here);
        picture.setMinSize(0, 0);
        // Beside a narrow map it would cover it.
        Controls.shownWhile(here, picture.widthProperty().greaterThan(MIDDLE_POINTS));
        return picture;
    }

    private HBox buttons(Runnable back) {
        Button undo = large("bank-undo", "Undo", model::undo);
        Button leave = large("bank-back", "Back", back);
        Button other = large("bank-lines", "Lines", () -> showsLines.set(!showsLines.get()));
        other.textProperty().bind(Bindings.when(showsLines).then("Plumb").otherwise("Lines"));
        other.accessibleTextProperty()
                .bind(Bindings.when(showsLines).then("Back to the wheels").otherwise("The lines to fish"));
        Button next = large("bank-next", "Next\nplace", () -> {
            showsLines.set(false);
            model.toNext();
        });
        next.setAccessibleText("Next place");
        next.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> model.nextProperty().get().isEmpty(), model.nextProperty()));
        enter.disableProperty().bind(showsLines);
        HBox row = new HBox(leave, undo, other, next, enter);
        row.getStyleClass().add("row");
        return row;
    }

    /** The wheels, or the lines to fish in their place, on the map as well. */
    private void show(boolean asLines) {
        scroll.setFitToHeight(!asLines);
        scroll.setContent(asLines ? lines : wheels);
        map.showLines(asLines);
    }

    public void takeFocus() {
        enter.requestFocus();
    }

    private void fill() {
        wheels.getChildren().clear();
        wheels.getRowConstraints().clear();
        for (Wheel wheel : Wheel.values()) {
            if (wheel == Wheel.MARK && !model.hasMarksProperty().get()) {
                continue;
            }
            RowConstraints height = new RowConstraints();
            height.setMinHeight(leastPoints);
            height.setVgrow(Priority.ALWAYS);
            height.setValignment(VPos.CENTER);
            int row = wheels.getRowConstraints().size();
            wheels.getRowConstraints().add(height);
            wheel(wheel, row);
        }
    }

    private void wheel(Wheel wheel, int row) {
        boolean single = wheel == Wheel.BOTTOM || wheel == Wheel.MARK;
        for (boolean more : new boolean[] {false, true}) {
            if (!single) {
                wheels.add(step(wheel, more, true), more ? 4 : 0, row);
            }
            wheels.add(step(wheel, more, false), more ? 3 : 1, row);
        }
        wheels.add(wheel == Wheel.DEPTH ? depth() : value(wheel), 2, row);
    }

    private Label shown(Wheel wheel) {
        Label shown = new Label();
        shown.setId("bank-" + name(wheel));
        shown.textProperty().bind(model.shownProperty(wheel));
        shown.getStyleClass().add(wheel == Wheel.MARK ? "wheel-words" : "wheel-value");
        if (wheel == Wheel.MARK) {
            shown.setWrapText(true);
            shown.setTextAlignment(TextAlignment.CENTER);
        } else {
            // A depth whose end is cut off is another depth.
            shown.setMinWidth(USE_PREF_SIZE);
        }
        return shown;
    }

    private Node value(Wheel wheel) {
        Label shown = shown(wheel);
        Label title = new Label(wheel.words());
        if (wheel == Wheel.DIRECTION) {
            title.textProperty().bind(model.directionTitleProperty());
        }
        title.getStyleClass().add("wheel-name");
        title.setLabelFor(shown);
        VBox middle = new VBox(title, shown);
        middle.setAlignment(Pos.CENTER);
        return middle;
    }

    /** The depth is a button as long as it is only expected: a tap says that it was plumbed and is so. */
    private Node depth() {
        Label title = new Label();
        title.textProperty()
                .bind(Bindings.when(model.plumbedProperty())
                        .then(Wheel.DEPTH.words())
                        .otherwise(Bindings.when(model.expectedProperty())
                                .then("Tap if as expected")
                                .otherwise("Tap if so deep")));
        title.getStyleClass().add("wheel-name");
        Label shown = shown(Wheel.DEPTH);
        title.setMinWidth(USE_PREF_SIZE);
        VBox words = new VBox(title, shown);
        words.setAlignment(Pos.CENTER);
        Button confirm = large("bank-depth-confirm", "", model::confirmDepth);
        confirm.getStyleClass().add("confirm");
        confirm.setGraphic(words);
        confirm.setMinWidth(USE_PREF_SIZE);
        confirm.disableProperty().bind(model.plumbedProperty());
        confirm.accessibleTextProperty()
                .bind(Bindings.concat("Depth ", model.shownProperty(Wheel.DEPTH), ", as plumbed"));
        return confirm;
    }

    private static String name(Wheel wheel) {
        return wheel.name().toLowerCase(Locale.ROOT);
    }

    private Node step(Wheel wheel, boolean more, boolean far) {
        String id = "bank-" + name(wheel) + (far ? "-far" : "") + (more ? "-more" : "-less");
        Button button = large(id, model.stepWords(wheel, more, far), () -> {
            if (far) {
                model.turnFar(wheel, more ? 1 : -1);
            } else {
                model.turn(wheel, more ? 1 : -1);
            }
        });
        button.setAccessibleText(model.stepName(wheel, more, far));
        if (wheel == Wheel.DIRECTION) {
            button.textProperty()
                    .bind(Bindings.createStringBinding(
                            () -> model.stepWords(wheel, more, far), model.directionTitleProperty()));
            button.accessibleTextProperty()
                    .bind(Bindings.createStringBinding(
                            () -> model.stepName(wheel, more, far), model.directionTitleProperty()));
        }
        return button;
    }

    private Button large(String id, String words, Runnable action) {
        Button button = Controls.button(id, words, action);
        button.getStyleClass().add("large");
        button.setTextAlignment(TextAlignment.CENTER);
        button.setMinSize(leastPoints, leastPoints);
        button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        return button;
    }
}

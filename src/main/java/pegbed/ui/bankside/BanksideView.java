package pegbed.ui.bankside;

import javafx.beans.binding.Bindings;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import pegbed.ui.controls.Controls;
import pegbed.ui.map.MapPane;
import pegbed.ui.map.MapViewModel;
import pegbed.ui.map.Tool;

/**
 * The view for the bank: large buttons, high contrast, no keyboard. Every button is at least {@value #MIN_POINTS}
 * points each way, which is 12 mm on a tablet of 10 in with 1280 × 800 points (5.9 points a millimetre).
 */
public final class BanksideView extends BorderPane {
    /** 12 mm at 5.9 points a millimetre. */
    public static final double MIN_POINTS = 72;

    private static final double MIDDLE_POINTS = 170;

    private final Button enter;

    /**
     * @param model the wheels
     * @param pointer what the pointer does on the map
     * @param map the map, borrowed from the usual view
     * @param back goes back to the usual view
     */
    public BanksideView(BanksideViewModel model, MapViewModel pointer, MapPane map, Runnable back) {
        setId("bankside-view");
        model.toNext();
        map.setHighContrast(true);
        getStyleClass().add("bankside");
        GridPane wheels = new GridPane();
        wheels.getStyleClass().add("wheels");
        for (int column = 0; column < 5; column++) {
            ColumnConstraints width = new ColumnConstraints();
            if (column != 2) {
                width.setMinWidth(MIN_POINTS);
            }
            width.setPrefWidth(column == 2 ? MIDDLE_POINTS : 1.2 * MIN_POINTS);
            width.setHgrow(column == 2 ? Priority.ALWAYS : Priority.SOMETIMES);
            width.setHalignment(HPos.CENTER);
            wheels.getColumnConstraints().add(width);
        }
        for (BanksideViewModel.Wheel wheel : BanksideViewModel.Wheel.values()) {
            RowConstraints height = new RowConstraints();
            height.setMinHeight(MIN_POINTS);
            height.setVgrow(Priority.ALWAYS);
            height.setValignment(VPos.CENTER);
            wheels.getRowConstraints().add(height);
            wheel(wheels, model, pointer, wheel);
        }
        enter = large("bank-enter", "Add reading", () -> {
            model.enter();
            pointer.point(model.place());
        });
        enter.getStyleClass().add("enter");
        HBox.setHgrow(enter, Priority.ALWAYS);
        Button undo = large("bank-undo", "Undo", model::undo);
        Button leave = large("bank-back", "Back", back);
        Button next = large("bank-next", "Next place", () -> {
            model.toNext();
            pointer.point(model.place());
        });
        next.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> model.nextProperty().get().isEmpty(), model.nextProperty()));
        HBox foot = new HBox(leave, undo, next, enter);
        foot.getStyleClass().add("row");
        Label said = Controls.wrapped("said");
        said.setId("bank-said");
        said.textProperty().bind(model.saidProperty());
        said.setMinHeight(48);
        said.setAlignment(Pos.CENTER_LEFT);
        VBox.setVgrow(wheels, Priority.ALWAYS);
        VBox right = new VBox(wheels, said, foot);
        right.getStyleClass().add("bankside-right");
        right.setPrefWidth(560);
        right.setMinWidth(500);
        Label here = new Label();
        here.setId("bank-here");
        here.textProperty().bind(pointer.pointerWordsProperty());
        here.getStyleClass().addAll("chip", "here");
        here.setWrapText(true);
        StackPane.setAlignment(here, Pos.BOTTOM_LEFT);
        setCenter(new StackPane(map, here));
        setRight(right);
        pointer.toolProperty().set(Tool.READ);
        pointer.point(model.place());
    }

    public void takeFocus() {
        enter.requestFocus();
    }

    private static void wheel(
            GridPane grid, BanksideViewModel model, MapViewModel pointer, BanksideViewModel.Wheel wheel) {
        String name = wheel.words();
        String id = "bank-" + wheel.name().toLowerCase(java.util.Locale.ROOT);
        Label shown = new Label();
        shown.setId(id);
        shown.textProperty().bind(model.shownProperty(wheel));
        shown.getStyleClass().add("wheel-value");
        // A depth whose end is cut off is another depth.
        shown.setMinWidth(USE_PREF_SIZE);
        Label title = new Label(name);
        title.getStyleClass().add("wheel-name");
        title.setLabelFor(shown);
        VBox middle = new VBox(title, shown);
        middle.setAlignment(Pos.CENTER);
        int row = wheel.ordinal();
        boolean single = wheel == BanksideViewModel.Wheel.BOTTOM;
        for (boolean more : new boolean[] {false, true}) {
            if (!single) {
                grid.add(step(model, pointer, wheel, more, true), more ? 4 : 0, row);
            }
            grid.add(step(model, pointer, wheel, more, false), more ? 3 : 1, row);
        }
        grid.add(middle, 2, row);
    }

    private static Node step(
            BanksideViewModel model, MapViewModel pointer, BanksideViewModel.Wheel wheel, boolean more, boolean far) {
        String id = "bank-" + wheel.name().toLowerCase(java.util.Locale.ROOT) + (far ? "-far" : "")
                + (more ? "-more" : "-less");
        Button button = large(id, model.stepWords(wheel, more, far), () -> {
            if (far) {
                model.turnFar(wheel, more ? 1 : -1);
            } else {
                model.turn(wheel, more ? 1 : -1);
            }
            pointer.point(model.place());
        });
        button.setAccessibleText(model.stepName(wheel, more, far));
        return button;
    }

    private static Button large(String id, String words, Runnable action) {
        Button button = Controls.button(id, words, action);
        button.getStyleClass().add("large");
        button.setMinSize(MIN_POINTS, MIN_POINTS);
        button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        return button;
    }
}

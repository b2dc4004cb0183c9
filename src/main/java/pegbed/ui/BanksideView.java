package pegbed.ui;

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

/**
 * The view for the bank: large buttons, high contrast, no keyboard. Every button is at least {@value #LEAST_POINTS}
 * points each way, which is 12 mm on a tablet of 10 in with 1280 × 800 points (5.9 points a millimetre).
 */
final class BanksideView extends BorderPane {
    /** 12 mm at 5.9 points a millimetre. */
    static final double LEAST_POINTS = 72;

    private static final double MIDDLE_POINTS = 170;

    private final Button enter;

    /**
     * @param map the map, borrowed from the usual view
     * @param back goes back to the usual view
     */
    BanksideView(Desk desk, MapPane map, Runnable back) {
        BanksideModel model = desk.bankside();
        setId("bankside-view");
        getStyleClass().add("bankside");
        GridPane wheels = new GridPane();
        wheels.getStyleClass().add("wheels");
        for (int column = 0; column < 5; column++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setMinWidth(column == 2 ? MIDDLE_POINTS : LEAST_POINTS);
            width.setPrefWidth(column == 2 ? MIDDLE_POINTS : 1.2 * LEAST_POINTS);
            width.setHgrow(column == 2 ? Priority.ALWAYS : Priority.SOMETIMES);
            width.setHalignment(HPos.CENTER);
            wheels.getColumnConstraints().add(width);
        }
        for (BanksideModel.Wheel wheel : BanksideModel.Wheel.values()) {
            RowConstraints height = new RowConstraints();
            height.setMinHeight(LEAST_POINTS);
            height.setVgrow(Priority.ALWAYS);
            height.setValignment(VPos.CENTER);
            wheels.getRowConstraints().add(height);
            wheel(wheels, desk, wheel);
        }
        enter = large("bank-enter", "Add reading", () -> {
            model.enter();
            desk.map().point(model.place());
        });
        enter.getStyleClass().add("enter");
        HBox.setHgrow(enter, Priority.ALWAYS);
        Button undo = large("bank-undo", "Undo", model::undo);
        Button leave = large("bank-back", "Back", back);
        Button next = large("bank-next", "Next place", () -> {
            model.toNext();
            desk.map().point(model.place());
        });
        next.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> desk.guide().nextProperty().get().isEmpty(),
                        desk.guide().nextProperty()));
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
        here.textProperty().bind(desk.map().pointerWordsProperty());
        here.getStyleClass().addAll("chip", "here");
        here.setWrapText(true);
        StackPane.setAlignment(here, Pos.BOTTOM_LEFT);
        setCenter(new StackPane(map, here));
        setRight(right);
        desk.map().toolProperty().set(Tool.READ);
        desk.map().point(model.place());
    }

    void takeFocus() {
        enter.requestFocus();
    }

    private static void wheel(GridPane grid, Desk desk, BanksideModel.Wheel wheel) {
        String name = wheel.words();
        String id = "bank-" + wheel.name().toLowerCase(java.util.Locale.ROOT);
        Label shown = new Label();
        shown.setId(id);
        shown.textProperty().bind(desk.bankside().shownProperty(wheel));
        shown.getStyleClass().add("wheel-value");
        Label title = new Label(name);
        title.getStyleClass().add("wheel-name");
        title.setLabelFor(shown);
        VBox middle = new VBox(title, shown);
        middle.setAlignment(Pos.CENTER);
        int row = wheel.ordinal();
        boolean single = wheel == BanksideModel.Wheel.BOTTOM;
        for (boolean more : new boolean[] {false, true}) {
            if (!single) {
                grid.add(step(desk, wheel, more, true), more ? 4 : 0, row);
            }
            grid.add(step(desk, wheel, more, false), more ? 3 : 1, row);
        }
        grid.add(middle, 2, row);
    }

    private static Node step(Desk desk, BanksideModel.Wheel wheel, boolean more, boolean far) {
        BanksideModel model = desk.bankside();
        String id = "bank-" + wheel.name().toLowerCase(java.util.Locale.ROOT) + (far ? "-far" : "")
                + (more ? "-more" : "-less");
        Button button = large(id, model.stepWords(wheel, more, far), () -> {
            if (far) {
                model.turnFar(wheel, more ? 1 : -1);
            } else {
                model.turn(wheel, more ? 1 : -1);
            }
            desk.map().point(model.place());
        });
        button.setAccessibleText(wheel.words() + (far ? " much" : "") + (more ? " more" : " less"));
        return button;
    }

    private static Button large(String id, String words, Runnable action) {
        Button button = Controls.button(id, words, action);
        button.getStyleClass().add("large");
        button.setMinSize(LEAST_POINTS, LEAST_POINTS);
        button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        return button;
    }
}

package pegbed.ui;

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
            wheel(wheels, model, map, desk, wheel);
        }
        enter = large("bank-enter", "Add reading", () -> {
            model.enter();
            desk.map().point(model.place());
        });
        enter.getStyleClass().add("enter");
        HBox.setHgrow(enter, Priority.ALWAYS);
        Button undo = large("bank-undo", "Undo", model::undo);
        Button leave = large("bank-back", "Back", back);
        HBox foot = new HBox(leave, undo, enter);
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
        setCenter(map);
        setRight(right);
        desk.map().toolProperty().set(Tool.READ);
        desk.map().point(model.place());
    }

    void takeFocus() {
        enter.requestFocus();
    }

    private void wheel(GridPane grid, BanksideModel model, MapPane map, Desk desk, BanksideModel.Wheel wheel) {
        String name = wheel.words();
        String id = "bank-" + wheel.name().toLowerCase(java.util.Locale.ROOT);
        Label shown = new Label();
        shown.setId(id);
        shown.textProperty().bind(model.shownProperty(wheel));
        shown.getStyleClass().add("wheel-value");
        Label title = new Label(name);
        title.getStyleClass().add("wheel-name");
        title.setLabelFor(shown);
        VBox middle = new VBox(title, shown);
        middle.setAlignment(Pos.CENTER);
        int row = wheel.ordinal();
        boolean single = wheel == BanksideModel.Wheel.BOTTOM;
        if (!single) {
            grid.add(
                    step(id + "-far-less", "«", name + " much less", () -> turn(model, desk, wheel, -1, true)), 0, row);
            grid.add(step(id + "-far-more", "»", name + " much more", () -> turn(model, desk, wheel, 1, true)), 4, row);
        }
        grid.add(step(id + "-less", "‹", name + " less", () -> turn(model, desk, wheel, -1, false)), 1, row);
        grid.add(middle, 2, row);
        grid.add(step(id + "-more", "›", name + " more", () -> turn(model, desk, wheel, 1, false)), 3, row);
    }

    private static void turn(BanksideModel model, Desk desk, BanksideModel.Wheel wheel, int step, boolean far) {
        if (far) {
            model.turnFar(wheel, step);
        } else {
            model.turn(wheel, step);
        }
        desk.map().point(model.place());
    }

    private static Node step(String id, String words, String name, Runnable action) {
        Button button = large(id, words, action);
        button.setAccessibleText(name);
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

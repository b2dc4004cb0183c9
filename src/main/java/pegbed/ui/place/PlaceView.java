package pegbed.ui.place;

import java.util.Arrays;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.cell.TextFieldTableCell;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import pegbed.model.Hazard;
import pegbed.model.PegName;
import pegbed.model.Place;
import pegbed.model.Units;
import pegbed.ui.controls.Controls;
import pegbed.ui.controls.Keys;

/** The place in forms. */
public final class PlaceView extends VBox {
    /** Lower than this, the panel has no room for the position. */
    private static final double LOW_POINTS = 300;

    private final PlaceViewModel model;
    private final TableView<PlaceViewModel.Row> table = new TableView<>();

    /** @param show points at a place on the map */
    public PlaceView(PlaceViewModel model, Consumer<Place> show) {
        this.model = model;
        table.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> {
            // What is chosen anew after an edit elsewhere is no choice of the person's.
            if (now != null && table.isFocused()) {
                model.place(now).ifPresent(show);
            }
        });
        getStyleClass().add("place");
        getChildren()
                .addAll(peg(), list(), Controls.message("place-error", "error-words", model.errorProperty()), adding());
    }

    private Node peg() {
        TextField venue = Controls.field("venue", "Venue", 10);
        TextField water = Controls.field("water", "Water", 10);
        TextField number = Controls.field("number", "Peg", 4);
        Runnable name = () -> model.setName(new PegName(
                venue.getText().strip(),
                water.getText().strip(),
                number.getText().strip()));
        TextField joints = Controls.field("joints", "Pole joints in metres", 14);
        TextField left = Controls.field("left-limit", "Own water to the left, metres", 4);
        TextField right = Controls.field("right-limit", "Own water to the right, metres", 4);
        Runnable limits = () -> model.setLimits(left.getText(), right.getText());
        TextField seat = Controls.field("seat", "Latitude and longitude of the seat, or marks with theirs", 12);
        seat.setPromptText("52.1234,-1.2345");
        TextField bearing = Controls.field("bearing", "True bearing of straight out, degrees", 4);
        bearing.setPromptText("312");
        Label accuracy = new Label();
        accuracy.setId("accuracy");
        accuracy.getStyleClass().add("quiet");
        Runnable position = () -> model.setPosition(seat.getText(), bearing.getText());
        // The one that is typed first is not refused before the other can be.
        commit(seat, () -> {
            if (seat.getText().isBlank()
                    || !bearing.getText().isBlank()
                    || seat.getText().contains("=")) {
                position.run();
            }
        });
        commit(bearing, () -> {
            if (bearing.getText().isBlank() || !seat.getText().isBlank()) {
                position.run();
            }
        });
        commit(venue, name);
        commit(water, name);
        commit(number, name);
        commit(joints, () -> model.setJoints(joints.getText()));
        commit(left, limits);
        commit(right, limits);
        ComboBox<Units.Depth> depth = units("depth-unit", "Unit of depths", Units.Depth.values());
        ComboBox<Units.Distance> distance = units("distance-unit", "Unit of distances", Units.Distance.values());
        depth.setOnAction(event -> setUnits(depth, distance));
        distance.setOnAction(event -> setUnits(depth, distance));
        model.onChange(() -> {
            show(venue, model.name().venue());
            show(water, model.name().water());
            show(number, model.name().number());
            show(joints, model.joints());
            show(seat, model.seat());
            show(bearing, model.bearing());
            accuracy.setText(model.accuracy());
            show(left, model.leftLimit());
            show(right, model.rightLimit());
            depth.setValue(model.units().depth());
            distance.setValue(model.units().distance());
        });
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        for (int column = 0; column < 4; column++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setHgrow(column % 2 == 1 ? Priority.ALWAYS : Priority.NEVER);
            grid.getColumnConstraints().add(width);
        }
        grid.addRow(0, Controls.named("Venue", venue), venue, Controls.named("Water", water), water);
        grid.addRow(1, Controls.named("Peg", number), number, Controls.named("Depths", depth), depth);
        grid.add(Controls.named("Joints, m", joints), 0, 2);
        grid.add(joints, 1, 2, 3, 1);
        HBox own = new HBox(left, Controls.named("m left,", left), right, Controls.named("m right", right));
        own.setAlignment(Pos.CENTER_LEFT);
        own.getStyleClass().add("row");
        grid.add(Controls.named("Own water", left), 0, 3);
        grid.add(own, 1, 3, 3, 1);
        HBox earth = new HBox(
                seat, Controls.named("looking", bearing), bearing, Controls.named("° true", bearing), accuracy);
        HBox.setHgrow(seat, Priority.ALWAYS);
        earth.setAlignment(Pos.CENTER_LEFT);
        earth.getStyleClass().add("row");
        Label seatAt = Controls.named("Seat at", seat);
        // A low window needs its room for the table; the command line takes the position too.
        Controls.shownWhile(seatAt, heightProperty().greaterThan(LOW_POINTS));
        Controls.shownWhile(earth, heightProperty().greaterThan(LOW_POINTS));
        grid.add(seatAt, 0, 5);
        grid.add(earth, 1, 5, 3, 1);
        grid.add(Controls.named("Distances", distance), 0, 4);
        grid.add(distance, 1, 4);
        return grid;
    }

    private void setUnits(ComboBox<Units.Depth> depth, ComboBox<Units.Distance> distance) {
        if (depth.getValue() != null && distance.getValue() != null) {
            model.setUnits(new Units(depth.getValue(), distance.getValue()));
        }
    }

    private static <T extends Enum<T>> ComboBox<T> units(String id, String name, T[] values) {
        ComboBox<T> box = new ComboBox<>();
        box.getItems().addAll(values);
        box.setId(id);
        box.setAccessibleText(name);
        box.setMaxWidth(Double.MAX_VALUE);
        box.setConverter(Controls.chosenBy(PlaceView::unitWords));
        return box;
    }

    private static String unitWords(Enum<?> unit) {
        return switch (unit.name()) {
            case "FEET" -> "feet, inches";
            case "SECTIONS" -> "sections";
            default -> unit.name().toLowerCase(java.util.Locale.ROOT);
        };
    }

    private static void show(TextField field, String words) {
        if (!field.isFocused()) {
            field.setText(words);
        }
    }

    /** Takes what was typed when Enter is pressed or the field is left. */
    private static void commit(TextField field, Runnable take) {
        field.setOnAction(event -> take.run());
        field.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                take.run();
            }
        });
    }

    private Node list() {
        table.setId("places");
        table.setAccessibleText("Banks, marks and hazards");
        table.setEditable(true);
        table.setItems(model.rows());
        table.setPlaceholder(new Label("No banks, marks or hazards yet."));
        table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        table.getColumns().add(column("What", 84, row -> row.kind().words()));
        TableColumn<PlaceViewModel.Row, String> name = column("Name", 110, PlaceViewModel.Row::name);
        name.setCellFactory(TextFieldTableCell.forTableColumn());
        name.setOnEditCommit(event -> taken(model.rename(event.getRowValue(), event.getNewValue())));
        TableColumn<PlaceViewModel.Row, String> where = column("Where", 150, PlaceViewModel.Row::where);
        where.setCellFactory(TextFieldTableCell.forTableColumn());
        where.setOnEditCommit(event -> taken(model.change(event.getRowValue(), event.getNewValue())));
        table.getColumns().add(name);
        table.getColumns().add(where);
        table.setOnKeyPressed(event -> {
            if (Keys.DELETE_ROW.matches(event) && table.getEditingCell() == null) {
                deleteSelected();
                event.consume();
            }
        });
        VBox.setVgrow(table, Priority.ALWAYS);
        return table;
    }

    private void taken(boolean done) {
        if (!done) {
            table.refresh();
        }
    }

    private void deleteSelected() {
        PlaceViewModel.Row row = table.getSelectionModel().getSelectedItem();
        if (row != null) {
            model.delete(row);
        }
    }

    private static TableColumn<PlaceViewModel.Row, String> column(
            String title, double width, java.util.function.Function<PlaceViewModel.Row, String> words) {
        TableColumn<PlaceViewModel.Row, String> column = new TableColumn<>(title);
        column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(words.apply(cell.getValue())));
        column.setPrefWidth(width);
        column.setMinWidth(60);
        return column;
    }

    private Node adding() {
        ComboBox<String> kind = new ComboBox<>();
        kind.setId("new-kind");
        kind.setAccessibleText("What to add");
        kind.getItems().addAll("near bank", "far bank", "mark");
        Arrays.stream(Hazard.Kind.values()).map(Hazard.Kind::word).forEach(kind.getItems()::add);
        kind.setValue("near bank");
        TextField name = Controls.field("new-name", "Name of the mark", 7);
        name.setPromptText("name");
        name.disableProperty().bind(kind.valueProperty().isNotEqualTo("mark"));
        TextField where = Controls.field("new-where", "Distance and direction", 7);
        where.setPromptText("13 20L");
        Runnable add = () -> {
            if (add(kind.getValue(), name.getText(), where.getText())) {
                name.clear();
                where.clear();
            }
        };
        where.setOnAction(event -> add.run());
        Button button = Controls.button("add-place", "Add", add);
        Button delete = Controls.button("delete-place", "Delete", "Deletes the chosen line", this::deleteSelected);
        delete.disableProperty()
                .bind(table.getSelectionModel().selectedItemProperty().isNull());
        HBox.setHgrow(where, Priority.ALWAYS);
        HBox row = new HBox(kind, name, where, button, delete);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        return row;
    }

    private boolean add(String kind, String name, String where) {
        return switch (kind) {
            case "near bank" -> model.add(PlaceViewModel.Kind.NEAR_BANK, "", where);
            case "far bank" -> model.add(PlaceViewModel.Kind.FAR_BANK, "", where);
            case "mark" -> model.add(PlaceViewModel.Kind.MARK, name, where);
            default -> model.add(PlaceViewModel.Kind.HAZARD, kind, where);
        };
    }
}

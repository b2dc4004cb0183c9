package pegbed.ui.reading;

import java.util.Comparator;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.transformation.SortedList;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import javafx.scene.control.cell.ComboBoxTableCell;
import javafx.scene.control.cell.TextFieldTableCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import pegbed.model.Bottom;
import pegbed.model.Place;
import pegbed.ui.controls.Controls;
import pegbed.ui.controls.Keys;

/** The readings, to look over, change and delete. */
public final class ReadingsView extends VBox {
    private static final PseudoClass SUSPICIOUS = PseudoClass.getPseudoClass("suspicious");

    private final ReadingsViewModel model;
    private final TableView<ReadingRow> table = new TableView<>();

    /** @param show points at a place on the map */
    public ReadingsView(ReadingsViewModel model, Consumer<Place> show) {
        this.model = model;
        getStyleClass().add("readings");
        SortedList<ReadingRow> sorted = new SortedList<>(model.rows());
        sorted.comparatorProperty().bind(table.comparatorProperty());
        table.setId("readings");
        table.setAccessibleText("Readings");
        table.setItems(sorted);
        table.setEditable(true);
        table.setPlaceholder(new Label("No readings yet."));
        table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        table.getColumns().add(numberColumn());
        table.getColumns()
                .add(pieceColumn(
                        "Distance",
                        76,
                        ReadingRow::distance,
                        ReadingRow::distanceMetres,
                        ReadingsViewModel.Piece.DISTANCE));
        table.getColumns()
                .add(pieceColumn(
                        "Direction",
                        84,
                        ReadingRow::direction,
                        ReadingRow::angleDegrees,
                        ReadingsViewModel.Piece.DIRECTION));
        table.getColumns()
                .add(pieceColumn(
                        "Depth", 58, ReadingRow::depth, ReadingRow::depthMetres, ReadingsViewModel.Piece.DEPTH));
        table.getColumns().add(bottomColumn());
        table.getColumns().add(noteColumn());
        table.setRowFactory(view -> row());
        table.setOnKeyPressed(event -> {
            if (Keys.DELETE_ROW.matches(event) && table.getEditingCell() == null) {
                deleteSelected();
                event.consume();
            }
        });
        VBox.setVgrow(table, Priority.ALWAYS);
        Button delete = Controls.button("delete-reading", "Delete", "Deletes the chosen reading", this::deleteSelected);
        delete.disableProperty()
                .bind(table.getSelectionModel().selectedItemProperty().isNull());
        Label count = new Label();
        count.textProperty().bind(model.countProperty());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox foot = new HBox(count, gap, delete);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("row");
        Label doubt = Controls.wrapped("warning-words");
        doubt.setId("doubt");
        table.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> {
            boolean suspicious = now != null && now.suspicious();
            doubt.setText(suspicious ? "⚠ " + now.doubt() : "");
            doubt.setManaged(suspicious);
            // What is chosen anew after an edit elsewhere is no choice of the person's.
            if (now != null && table.isFocused()) {
                show.accept(Place.polar(now.distanceMetres(), now.angleDegrees()));
            }
        });
        doubt.setManaged(false);
        getChildren()
                .addAll(table, doubt, Controls.message("readings-error", "error-words", model.errorProperty()), foot);
    }

    private void deleteSelected() {
        ReadingRow row = table.getSelectionModel().getSelectedItem();
        if (row != null) {
            model.delete(row);
        }
    }

    private TableColumn<ReadingRow, Number> numberColumn() {
        TableColumn<ReadingRow, Number> column = new TableColumn<>("#");
        column.setCellValueFactory(
                cell -> new ReadOnlyObjectWrapper<>(cell.getValue().number()));
        column.setCellFactory(view -> new javafx.scene.control.TableCell<>() {
            @Override
            protected void updateItem(Number number, boolean empty) {
                super.updateItem(number, empty);
                ReadingRow row =
                        empty || getTableRow() == null ? null : getTableRow().getItem();
                setText(empty || number == null ? "" : (row != null && row.suspicious() ? "⚠ " : "") + number);
            }
        });
        column.setPrefWidth(40);
        column.setMinWidth(36);
        return column;
    }

    private TableColumn<ReadingRow, String> pieceColumn(
            String title,
            double width,
            Function<ReadingRow, String> words,
            ToDoubleFunction<ReadingRow> order,
            ReadingsViewModel.Piece piece) {
        TableColumn<ReadingRow, String> column = new TableColumn<>(title);
        column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(words.apply(cell.getValue())));
        column.setCellFactory(TextFieldTableCell.forTableColumn());
        column.setOnEditCommit(event -> {
            if (!model.change(event.getRowValue(), piece, event.getNewValue())) {
                table.refresh();
            }
            table.requestFocus();
        });
        column.setComparator(Comparator.comparingDouble(said -> order(said, words, order)));
        column.setPrefWidth(width);
        column.setMinWidth(width);
        return column;
    }

    /** What was said is sorted by what it means. */
    private double order(String said, Function<ReadingRow, String> words, ToDoubleFunction<ReadingRow> order) {
        return model.rows().stream()
                .filter(row -> words.apply(row).equals(said))
                .mapToDouble(order)
                .findFirst()
                .orElse(0);
    }

    private TableColumn<ReadingRow, String> bottomColumn() {
        TableColumn<ReadingRow, String> column = new TableColumn<>("Bottom");
        column.setCellValueFactory(
                cell -> new ReadOnlyStringWrapper(cell.getValue().bottom()));
        column.setCellFactory(ComboBoxTableCell.forTableColumn(FXCollections.observableArrayList(
                java.util.Arrays.stream(Bottom.values()).map(Bottom::word).toList())));
        column.setOnEditCommit(event -> model.changeBottom(
                event.getRowValue(), Bottom.valueOf(event.getNewValue().toUpperCase(java.util.Locale.ROOT))));
        column.setPrefWidth(68);
        column.setMinWidth(66);
        return column;
    }

    private TableColumn<ReadingRow, String> noteColumn() {
        TableColumn<ReadingRow, String> column = new TableColumn<>("Note");
        column.setCellValueFactory(
                cell -> new ReadOnlyStringWrapper(cell.getValue().note()));
        column.setCellFactory(TextFieldTableCell.forTableColumn());
        column.setOnEditCommit(event -> model.changeNote(event.getRowValue(), event.getNewValue()));
        column.setPrefWidth(60);
        column.setMinWidth(40);
        return column;
    }

    private static TableRow<ReadingRow> row() {
        return new TableRow<>() {
            @Override
            protected void updateItem(ReadingRow row, boolean empty) {
                super.updateItem(row, empty);
                boolean suspicious = !empty && row != null && row.suspicious();
                pseudoClassStateChanged(SUSPICIOUS, suspicious);
                setTooltip(suspicious ? new Tooltip(row.doubt()) : null);
                setAccessibleText(
                        empty || row == null
                                ? ""
                                : "Reading " + row.number() + ", " + row.distance() + ", " + row.direction() + ", "
                                        + row.depth() + " " + row.bottom() + " " + row.note()
                                        + (suspicious ? ". To check: " + row.doubt() : ""));
            }
        };
    }
}

package pegbed.ui.shelf;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import pegbed.ui.controls.Controls;
import pegbed.ui.controls.FileChoice;

/** The person's own pegs in a folder: found while typing, opened with Enter, and put in order. */
public final class ShelfSheet {
    private final ShelfViewModel model;
    private final FileChoice files;
    private final Consumer<Path> open;
    private final TableView<ShelfViewModel.Row> table = new TableView<>();
    private final TextField search = new TextField();
    private final ShelfQuestion question = new ShelfQuestion();
    private final VBox content = new VBox();

    /** The file of the peg that the person chose. */
    private Optional<Path> chosen = Optional.empty();

    /**
     * @param files asks for folders
     * @param open opens a peg file
     */
    public ShelfSheet(ShelfViewModel model, FileChoice files, Consumer<Path> open) {
        this.model = model;
        this.files = files;
        this.open = open;
        content.getStyleClass().add("shelf");
        content.getChildren()
                .addAll(
                        folder(),
                        searching(),
                        table(),
                        count(),
                        trouble(),
                        question,
                        deeds(),
                        Controls.message("shelf-said", "plain", model.saidProperty()),
                        Controls.message("shelf-error", "error-words", model.errorProperty()));
    }

    public Node content() {
        return content;
    }

    public List<Button> buttons(Runnable close) {
        Button opening = Controls.button("shelf-open", "Open", "Opens the chosen peg (Enter)", this::openChosen);
        opening.disableProperty().bind(noneReadable().or(question.visibleProperty()));
        return List.of(opening, Controls.button("shelf-close", "Close", close));
    }

    /** Puts the cursor into the search field. */
    public void focus() {
        search.requestFocus();
    }

    private Node folder() {
        Label words = Controls.wrapped("quiet");
        words.setId("shelf-folder");
        words.textProperty().bind(model.folderProperty());
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        Button choose = Controls.button(
                "shelf-choose",
                "Folder…",
                "Chooses the folder that your peg files are in",
                () -> files.toFolder("The folder that your peg files are in").ifPresent(model::choose));
        HBox row = new HBox(words, choose);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        return row;
    }

    private Node searching() {
        search.setId("shelf-search");
        search.setAccessibleText("Find: any part of venue, water, number or file name");
        search.setPromptText("any part of venue, water, number or file name");
        search.textProperty().bindBidirectional(model.textProperty());
        search.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.DOWN && !model.rows().isEmpty()) {
                table.requestFocus();
                event.consume();
            }
        });
        HBox.setHgrow(search, Priority.ALWAYS);
        Label name = new Label("Find");
        name.setLabelFor(search);
        HBox row = new HBox(name, search);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        return row;
    }

    private Node table() {
        table.setId("shelf-pegs");
        table.setAccessibleText("Pegs on the shelf");
        table.setItems(model.rows());
        table.setPlaceholder(new Label("No peg to show."));
        table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        table.setPrefHeight(290);
        table.setMinHeight(120);
        column("Venue", 150, row -> (row.trouble().isEmpty() ? "" : "⚠ ") + row.venue());
        column("Water", 120, ShelfViewModel.Row::water);
        column("Peg", 50, ShelfViewModel.Row::number);
        column("Last visit", 96, ShelfViewModel.Row::lastVisit);
        column("Deepest", 80, ShelfViewModel.Row::deepest);
        column("Readings", 76, ShelfViewModel.Row::readings);
        column("Board to water", 112, ShelfViewModel.Row::level);
        column("File", 190, ShelfViewModel.Row::file);
        table.setRowFactory(view -> row());
        table.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                openChosen();
                event.consume();
            } else if (event.getCode() == KeyCode.DELETE) {
                askToDelete();
                event.consume();
            }
        });
        table.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> {
            if (now != null && !model.isListing()) {
                chosen = Optional.of(now.peg().file());
            }
        });
        model.rows().addListener((ListChangeListener<ShelfViewModel.Row>) change -> chooseAgain());
        chooseAgain();
        return table;
    }

    /** The peg that was chosen stays so; where it is gone, Enter in the search field opens the first that is found. */
    private void chooseAgain() {
        question.close();
        model.rows().stream()
                .filter(row -> chosen.filter(row.peg().file()::equals).isPresent())
                .findFirst()
                .ifPresentOrElse(
                        row -> {
                            table.getSelectionModel().select(row);
                            table.scrollTo(row);
                        },
                        table.getSelectionModel()::selectFirst);
    }

    private void column(String title, double width, Function<ShelfViewModel.Row, String> words) {
        TableColumn<ShelfViewModel.Row, String> column = new TableColumn<>(title);
        column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(words.apply(cell.getValue())));
        column.setPrefWidth(width);
        column.setMinWidth(width * 0.7);
        column.setSortable(false);
        table.getColumns().add(column);
    }

    private TableRow<ShelfViewModel.Row> row() {
        TableRow<ShelfViewModel.Row> made = new TableRow<>() {
            @Override
            protected void updateItem(ShelfViewModel.Row row, boolean empty) {
                super.updateItem(row, empty);
                setAccessibleText(
                        empty || row == null
                                ? ""
                                : ShelfViewModel.title(row) + ", " + row.venue() + ", last visit " + row.lastVisit()
                                        + ", deepest " + row.deepest() + ", " + row.readings() + " readings. "
                                        + row.trouble());
            }
        };
        made.setOnMouseClicked(event -> {
            if (event.getClickCount() == 2 && !made.isEmpty()) {
                openChosen();
            }
        });
        return made;
    }

    /** Takes its room from the start, so that nothing below it moves when the folder has been looked at. */
    private Node count() {
        Label words = Controls.wrapped("quiet");
        words.setId("shelf-count");
        words.textProperty().bind(model.countProperty());
        return words;
    }

    private Node trouble() {
        Label words = Controls.wrapped("warning-words");
        words.setId("shelf-trouble");
        words.setManaged(false);
        table.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> {
            boolean odd = now != null && !now.trouble().isEmpty();
            words.setText(odd ? "⚠ " + now.trouble() : "");
            words.setManaged(odd);
            question.close();
        });
        return words;
    }

    private Node deeds() {
        Button duplicate = Controls.button(
                "shelf-duplicate",
                "Duplicate",
                "Copies the peg file beside itself",
                () -> withChosen(model::duplicate));
        Button rename = Controls.button(
                "shelf-rename", "Rename…", "Gives the peg another venue, water or number", this::askForName);
        Button move = Controls.button(
                "shelf-move",
                "Move…",
                "Moves the peg file to another folder",
                () -> withChosen(row -> files.toFolder("The folder to move " + ShelfViewModel.title(row) + " to")
                        .ifPresent(to -> model.move(row, to))));
        Button delete = Controls.button(
                "shelf-delete", "Delete…", "Puts the peg file into a folder for deleted ones", this::askToDelete);
        duplicate.disableProperty().bind(none());
        rename.disableProperty().bind(noneReadable());
        move.disableProperty().bind(none());
        delete.disableProperty().bind(none());
        HBox row = new HBox(duplicate, rename, move, delete);
        row.getStyleClass().add("row");
        row.getChildren().forEach(button -> button.getStyleClass().add("small"));
        row.setMinWidth(Region.USE_PREF_SIZE);
        return row;
    }

    private BooleanBinding none() {
        return table.getSelectionModel().selectedItemProperty().isNull();
    }

    private BooleanBinding noneReadable() {
        return javafx.beans.binding.Bindings.createBooleanBinding(
                () -> table.getSelectionModel().getSelectedItem() == null
                        || !table.getSelectionModel().getSelectedItem().canBeRead(),
                table.getSelectionModel().selectedItemProperty());
    }

    private void withChosen(Consumer<ShelfViewModel.Row> deed) {
        ShelfViewModel.Row row = table.getSelectionModel().getSelectedItem();
        if (row != null) {
            deed.accept(row);
        }
    }

    private void openChosen() {
        withChosen(row -> {
            if (row.canBeRead()) {
                open.accept(row.peg().file());
            }
        });
    }

    private void askForName() {
        withChosen(row -> question.askForName(row.peg().name(), name -> model.rename(row, name)));
    }

    private void askToDelete() {
        withChosen(row -> question.askToDelete(ShelfViewModel.title(row), () -> model.delete(row)));
    }
}

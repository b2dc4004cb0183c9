package pegbed.ui.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.collections.ListChangeListener;
import javafx.collections.MapChangeListener;
import javafx.collections.WeakListChangeListener;
import javafx.collections.WeakMapChangeListener;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import pegbed.model.RigTemplate.Ground;
import pegbed.ui.controls.Controls;
import pegbed.ui.plan.RigRow.Cell;
import pegbed.wording.Sentences;

/** How rigs are tied: a row a template, changed in place. */
public final class RigsSheet {
    /** As wide as all columns want, points. */
    public static final double WIDTH = 1180;

    private static final double GROUND_WIDTH = 92;
    private static final double LEAST_SHOTS_WIDTH = 180;
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final List<Cell> BEFORE_GROUND = List.of(Cell.NAME, Cell.UP_TO);
    private static final List<Cell> AFTER_GROUND =
            List.of(Cell.FLOAT, Cell.CARRIES, Cell.TIP_TO_BODY, Cell.HOOK_LENGTH, Cell.SHOTS);
    private static final List<String> HEADS = List.of(
            "Rig",
            "Up to",
            "Ground",
            "Float",
            "Carries, g",
            "Tip to body",
            "Hook length",
            "Shot, from the hook up",
            "Weighs");

    private final RigsViewModel model;
    private final GridPane grid = new GridPane();
    private final VBox content = new VBox(10);
    private final Label message;
    private final List<Map<Cell, TextField>> fields = new ArrayList<>();
    // Rows live longer than the sheet, so that they hold its listeners weakly, and the sheet holds them itself.
    private final ListChangeListener<RigRow> onRows = change -> fill();
    private final List<MapChangeListener<Cell, String>> onErrors = new ArrayList<>();

    public RigsSheet(RigsViewModel model) {
        this.model = model;
        model.open();
        message = Controls.message("rigs-message", "plain", model.messageProperty());
        grid.getStyleClass().addAll("form", "rigs");
        for (int column = 0; column <= HEADS.size(); column++) {
            ColumnConstraints width = new ColumnConstraints();
            boolean shots = column == HEADS.indexOf("Shot, from the hook up");
            width.setHgrow(shots ? Priority.ALWAYS : Priority.NEVER);
            grid.getColumnConstraints().add(width);
        }
        Label help = Controls.wrapped("quiet");
        help.setText(
                "A rig is tied like the first of these that is deep enough for its lines, and for their ground. Shot: "
                        + model.example() + ".");
        content.getChildren().addAll(help, grid);
        fill();
        model.rows().addListener(new WeakListChangeListener<>(onRows));
    }

    public Node content() {
        return content;
    }

    public List<Label> said() {
        return List.of(message);
    }

    public List<Button> buttons(Runnable close) {
        return List.of(
                Controls.button("rigs-use", "Use for this peg", "One edit, which Undo takes back", () -> {
                    if (!model.useForPeg()) {
                        focusWrong();
                    }
                }),
                Controls.button(
                        "rigs-use-new",
                        "Use for new pegs too",
                        "This peg, and every peg that you begin from now on",
                        () -> {
                            model.useForNewPegs();
                            focusWrong();
                        }),
                Controls.button("rigs-add", "Add a rig", "Another row, tied like the last", this::add),
                Controls.button("rigs-usual", "The usual ones", "Shows the rigs to start from", model::showUsual),
                Controls.button("rigs-close", "Close", close));
    }

    /** Puts the cursor into the first field. */
    public void focus() {
        focus(0);
    }

    private void focus(int row) {
        if (row >= 0 && row < fields.size()) {
            fields.get(row).get(Cell.NAME).requestFocus();
        }
    }

    private void focusWrong() {
        for (int i = 0; i < fields.size(); i++) {
            for (Cell cell : Cell.values()) {
                if (model.rows().get(i).errors().containsKey(cell)) {
                    fields.get(i).get(cell).requestFocus();
                    return;
                }
            }
        }
    }

    private void add() {
        model.add();
        focus(fields.size() - 1);
        fields.get(fields.size() - 1).get(Cell.NAME).selectAll();
    }

    private void delete(RigRow row) {
        int index = model.rows().indexOf(row);
        model.delete(row);
        focus(Math.min(index, fields.size() - 1));
    }

    private void fill() {
        grid.getChildren().clear();
        fields.clear();
        onErrors.clear();
        for (int column = 0; column < HEADS.size(); column++) {
            Label head = new Label(HEADS.get(column));
            head.getStyleClass().add("heading");
            head.setMinWidth(Region.USE_PREF_SIZE);
            grid.add(head, column, 0);
        }
        for (int i = 0; i < model.rows().size(); i++) {
            row(model.rows().get(i), i);
        }
    }

    private void row(RigRow row, int index) {
        String id = "rig-" + (index + 1) + "-";
        Map<Cell, TextField> cells = new EnumMap<>(Cell.class);
        for (Cell cell : Cell.values()) {
            cells.put(cell, field(row, cell, id, index + 1));
        }
        fields.add(cells);
        List<Node> nodes = new ArrayList<>();
        BEFORE_GROUND.forEach(cell -> nodes.add(cells.get(cell)));
        nodes.add(ground(row, id, index + 1));
        AFTER_GROUND.forEach(cell -> nodes.add(cells.get(cell)));
        Label weight = new Label();
        weight.setId(id + "weight");
        weight.textProperty().bind(row.weightProperty());
        weight.getStyleClass().add("quiet");
        weight.setMinWidth(Region.USE_PREF_SIZE);
        nodes.add(weight);
        Button delete = Controls.button(id + "delete", "✕", "Takes this rig away", () -> delete(row));
        delete.setAccessibleText("Delete rig " + (index + 1));
        delete.getStyleClass().add("small");
        nodes.add(delete);
        int line = 1 + 2 * index;
        grid.addRow(line, nodes.toArray(Node[]::new));
        Label error = Controls.message(id + "error", "error-words", row.errorProperty());
        Label note = Controls.message(id + "note", "quiet", row.noteProperty());
        grid.add(new VBox(error, note), 0, line + 1, nodes.size(), 1);
    }

    private TextField field(RigRow row, Cell cell, String id, int number) {
        TextField field = Controls.field(
                id + cell.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                Sentences.capital(cell.words()) + " of rig " + number,
                switch (cell) {
                    case NAME -> 7;
                    case SHOTS -> 26;
                    default -> 4;
                });
        // What a narrow window has no room for is scrolled to.
        field.setMinWidth(cell == Cell.SHOTS ? LEAST_SHOTS_WIDTH : Region.USE_PREF_SIZE);
        field.textProperty().bindBidirectional(row.text(cell));
        field.setOnAction(event -> row.take(cell));
        field.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                row.take(cell);
            }
        });
        field.pseudoClassStateChanged(WRONG, row.errors().containsKey(cell));
        MapChangeListener<Cell, String> onError =
                change -> field.pseudoClassStateChanged(WRONG, row.errors().containsKey(cell));
        onErrors.add(onError);
        row.errors().addListener(new WeakMapChangeListener<>(onError));
        return field;
    }

    private static Node ground(RigRow row, String id, int number) {
        ChoiceBox<Ground> choice = new ChoiceBox<>();
        choice.setId(id + "ground");
        choice.setAccessibleText("Ground of rig " + number);
        choice.getItems().setAll(Ground.values());
        choice.setConverter(Controls.chosenBy(Ground::word));
        choice.setValue(row.ground());
        choice.setOnAction(event -> row.setGround(choice.getValue()));
        choice.setPrefWidth(GROUND_WIDTH);
        choice.setMinWidth(GROUND_WIDTH);
        return choice;
    }
}

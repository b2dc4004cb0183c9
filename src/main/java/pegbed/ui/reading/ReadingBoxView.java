package pegbed.ui.reading;

import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import pegbed.ui.controls.Controls;
import pegbed.ui.controls.Keys;

/** The reading box with its echo and its error beside it. */
public final class ReadingBoxView extends VBox {
    private final TextField field;

    public ReadingBoxView(ReadingBoxViewModel model, NextReadingViewModel guide) {
        getStyleClass().add("reading-box");
        field = new LineField(model::enterRows);
        field.setId("reading");
        field.setPromptText("distance direction depth, such as 11 20L 4'6 silt");
        field.setAccessibleText("Reading: distance, direction, depth, then bottom and note");
        field.textProperty().bindBidirectional(model.textProperty());
        field.addEventFilter(
                KeyEvent.KEY_PRESSED,
                event -> Keys.pressed(Keys.Where.BOX, event).ifPresent(key -> {
                    if (key == Keys.ADD_LINE) {
                        model.enter();
                    } else if (key == Keys.OLDER_LINE) {
                        model.recallOlder();
                    } else {
                        model.recallNewer();
                    }
                    event.consume();
                }));
        model.onFilled(field::end);
        HBox.setHgrow(field, Priority.ALWAYS);
        Label name = new Label("Reading");
        name.setLabelFor(field);
        name.setMinWidth(Region.USE_PREF_SIZE);
        Button add = Controls.button("add", "Add", "Adds the line, as Enter does", model::enter);
        add.setFocusTraversable(false);
        HBox row = new HBox(name, field, add);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        Label echo = new Label();
        echo.setId("echo");
        echo.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> says(model),
                        model.echoProperty(),
                        model.addedProperty(),
                        model.keptProperty(),
                        model.errorProperty(),
                        model.textProperty()));
        echo.setWrapText(true);
        echo.getStyleClass().add("echo");
        model.errorProperty()
                .addListener((property, before, now) ->
                        echo.pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("wrong"), !now.isEmpty()));
        Label next = Controls.message("next", "next", guide.wordsProperty());
        Label question = Controls.message("question", "error-words", model.questionProperty());
        echo.setMinHeight(USE_PREF_SIZE);
        Node nextRoom = room(next, "two-lines");
        nextRoom.managedProperty().bind(next.managedProperty());
        Node echoRoom = room(echo, "one-line");
        getChildren().addAll(nextRoom, row, echoRoom, question);
    }

    /**
     * Room that is kept from the start, so that what lies below does not move while one types; more where it is needed.
     */
    private static Node room(Label label, String least) {
        Region lines = new Region();
        lines.getStyleClass().add(least);
        StackPane room = new StackPane(lines, label);
        room.setAlignment(Pos.CENTER_LEFT);
        return room;
    }

    private static String says(ReadingBoxViewModel model) {
        if (!model.errorProperty().get().isEmpty()) {
            return "✗ " + model.errorProperty().get();
        }
        if (!model.echoProperty().get().isEmpty()) {
            return (model.addedProperty().get() ? (model.keptProperty().get() ? "✓ Added: " : "… Adding: ") : "→ ")
                    + model.echoProperty().get();
        }
        return model.textProperty().get().isBlank()
                ? "Type how far, which way, how deep, then Enter. Enter alone takes up the next place, Up the line before."
                : "…";
    }

    /** Puts the cursor behind what stands in the box. */
    public void focusBox() {
        field.requestFocus();
        field.end();
    }
}

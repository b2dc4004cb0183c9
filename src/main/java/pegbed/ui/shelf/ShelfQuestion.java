package pegbed.ui.shelf;

import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import pegbed.model.PegName;
import pegbed.storage.shelf.ShelfFiles;
import pegbed.ui.controls.Controls;

/** What the shelf asks before it changes a file, on the sheet itself; takes no room while nothing is asked. */
final class ShelfQuestion extends VBox {
    private Runnable yes = () -> {};

    ShelfQuestion() {
        getStyleClass().addAll("shelf-question");
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.ESCAPE) {
                boolean keep = event.getCode() == KeyCode.ESCAPE
                        || (event.getTarget() instanceof Node node && "shelf-keep".equals(node.getId()));
                event.consume();
                if (keep) {
                    close();
                } else {
                    answerYes();
                }
            }
        });
        close();
    }

    /** Does what was asked about, as Enter does. */
    private void answerYes() {
        Runnable deed = yes;
        close();
        deed.run();
    }

    void close() {
        yes = () -> {};
        getChildren().clear();
        Controls.setShown(this, false);
    }

    /** Asks before a peg is deleted. */
    void askToDelete(String title, Runnable delete) {
        open(
                "Delete " + title + "? Its file goes to the folder \"" + ShelfFiles.DELETED_FOLDER
                        + "\" beside it; moved back by hand, it is on the shelf again.",
                "shelf-delete-yes",
                "Delete",
                delete);
        getChildren().get(1).lookup("#shelf-delete-yes").requestFocus();
    }

    /** Asks for another name. */
    void askForName(PegName name, Consumer<PegName> rename) {
        TextField venue = field("shelf-venue", "Venue", name.venue(), 12);
        TextField water = field("shelf-water", "Water", name.water(), 10);
        TextField number = field("shelf-number", "Peg", name.number(), 4);
        open(
                "What is this peg called?",
                "shelf-rename-yes",
                "Rename",
                () -> rename.accept(new PegName(
                        venue.getText().strip(),
                        water.getText().strip(),
                        number.getText().strip())),
                named("Venue", venue),
                named("Water", water),
                named("Peg", number));
        venue.requestFocus();
        venue.selectAll();
    }

    private void open(String words, String id, String deedWords, Runnable deed, Node... fields) {
        yes = deed;
        Label label = Controls.wrapped("plain");
        label.setId("shelf-asked");
        label.setText(words);
        FlowPane row = new FlowPane(8, 6);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getChildren().addAll(fields);
        row.getChildren()
                .addAll(
                        Controls.button(id, deedWords, this::answerYes),
                        Controls.button("shelf-keep", "Leave it as it is", this::close));
        getChildren().setAll(label, row);
        Controls.setShown(this, true);
    }

    private static TextField field(String id, String name, String words, int columns) {
        TextField field = Controls.field(id, name, columns);
        field.setText(words);
        return field;
    }

    private static Node named(String words, TextField field) {
        HBox box = new HBox(Controls.named(words, field), field);
        box.setAlignment(Pos.CENTER_LEFT);
        box.getStyleClass().add("row");
        return box;
    }
}

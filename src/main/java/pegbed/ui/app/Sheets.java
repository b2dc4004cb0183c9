package pegbed.ui.app;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import pegbed.ui.controls.Controls;
import pegbed.wording.Caution;

/**
 * Sheets that lie over the window, one at a time: questions, cautions, the new peg. They keep inside the window,
 * whatever its size, and Escape puts them away.
 */
final class Sheets extends StackPane {
    private final ReadOnlyBooleanWrapper covering = new ReadOnlyBooleanWrapper(false);
    private Optional<Sheet> open = Optional.empty();
    private Runnable closed = () -> {};

    Sheets() {
        getStyleClass().add("sheets");
        setVisible(false);
        setManaged(false);
    }

    /** Run when the last sheet is put away. */
    void onClosed(Runnable listener) {
        closed = listener;
    }

    /** Whether a sheet is open and ready to be used. */
    ReadOnlyBooleanProperty coveringProperty() {
        return covering.getReadOnlyProperty();
    }

    boolean isOpen() {
        return open.isPresent();
    }

    /**
     * Opens a sheet, unless one is open: then nothing happens and the other is not even made, for keys that are held
     * down repeat and buttons are tapped twice.
     *
     * @param wanted makes the sheet
     */
    void open(Supplier<Sheet> wanted) {
        if (isOpen()) {
            return;
        }
        open = Optional.of(wanted.get());
        open.ifPresent(this::show);
    }

    private void show(Sheet wanted) {
        Label heading = new Label(wanted.title());
        heading.getStyleClass().add("sheet-title");
        heading.setWrapText(true);
        StackPane inside = new StackPane(wanted.content());
        inside.getStyleClass().add("sheet-content");
        ScrollPane scroll = new ScrollPane(inside);
        scroll.setFitToWidth(true);
        // Wrapped words are as high as the width makes them, which a scroll pane does not ask for by itself.
        scroll.prefViewportHeightProperty().bind(inside.heightProperty().add(2));
        // What grows while the sheet is laid out, such as a sentence beside a field, is seen by the next layout only.
        inside.heightProperty().addListener((property, before, now) -> Platform.runLater(scroll::requestLayout));
        scroll.getStyleClass().add("edge-to-edge");
        VBox.setVgrow(scroll, Priority.SOMETIMES);
        FlowPane foot = new FlowPane(10, 8);
        foot.setAlignment(Pos.CENTER_RIGHT);
        foot.getChildren().addAll(wanted.buttons());
        Button first = wanted.buttons().get(0);
        first.setDefaultButton(true);
        first.getStyleClass().add("accent");
        VBox sheet = new VBox(heading, scroll);
        sheet.getChildren().addAll(wanted.said());
        sheet.getChildren().add(foot);
        sheet.setId(wanted.id());
        sheet.getStyleClass().add("sheet");
        sheet.setMaxWidth(wanted.maxWidth());
        sheet.setMaxHeight(USE_PREF_SIZE);
        sheet.setAccessibleRole(javafx.scene.AccessibleRole.DIALOG);
        sheet.setAccessibleText(wanted.title());
        sheet.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                close();
                event.consume();
            }
        });
        getChildren().setAll(sheet);
        setVisible(true);
        setManaged(true);
        // What stands in a scroll pane is in the window, and can be focused, only once the pane has its skin.
        sheet.applyCss();
        first.requestFocus();
        wanted.opened().run();
        // Last, so that the look of what lies under the sheet is not reckoned together with the sheet's own above.
        covering.set(true);
    }

    /** Puts the open sheet away; nothing if none is open. */
    void close() {
        if (!isOpen()) {
            return;
        }
        Sheet away = open.orElseThrow();
        open = Optional.empty();
        covering.set(false);
        getChildren().clear();
        setVisible(false);
        setManaged(false);
        away.closed().run();
        closed.run();
    }

    /** A question in words. */
    void ask(String id, String title, String words, List<Button> buttons) {
        Label label = Controls.wrapped("plain");
        label.setText(words);
        open(() -> Sheet.of(id, title, label, buttons));
    }

    /** The cautions, to be read. */
    void showCautions() {
        open(() -> {
            VBox list = new VBox(10);
            for (Caution caution : Caution.values()) {
                Label title = Controls.wrapped("heading");
                title.setText(caution.title());
                Label words = Controls.wrapped("plain");
                words.setText(caution.longForm());
                list.getChildren().add(new VBox(2, title, words));
            }
            return Sheet.of(
                    "cautions",
                    "Before you plumb",
                    list,
                    List.of(Controls.button("cautions-read", "I have read them", this::close)));
        });
    }
}

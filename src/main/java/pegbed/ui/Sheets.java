package pegbed.ui;

import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * Sheets that lie over the window: questions, cautions, the new peg. They keep inside the window, whatever its size,
 * and Escape puts them away.
 */
final class Sheets extends StackPane {
    private static final double WIDTH = 660;

    private Runnable closed = () -> {};

    Sheets() {
        getStyleClass().add("sheets");
        setVisible(false);
        setManaged(false);
    }

    /** Told when the last sheet is put away. */
    void onClosed(Runnable listener) {
        closed = listener;
    }

    boolean isOpen() {
        return isVisible();
    }

    /**
     * Shows a sheet.
     *
     * @param id of the sheet
     * @param title its heading
     * @param content what stands on it; scrolls where the window is too small
     * @param buttons its foot; the first one takes Enter
     */
    void open(String id, String title, Node content, List<Button> buttons) {
        open(id, title, content, buttons, WIDTH);
    }

    /** Shows a sheet that may be wider than others. */
    void open(String id, String title, Node content, List<Button> buttons, double mostWidth) {
        open(id, title, content, List.of(), buttons, mostWidth);
    }

    /**
     * As {@link #open(String, String, Node, List, double)}, with words above the buttons.
     *
     * @param said what stands above the buttons and does not scroll
     * @param mostWidth as wide as this where the window is, points
     */
    void open(String id, String title, Node content, List<Label> said, List<Button> buttons, double mostWidth) {
        Label heading = new Label(title);
        heading.getStyleClass().add("sheet-title");
        heading.setWrapText(true);
        StackPane inside = new StackPane(content);
        inside.getStyleClass().add("sheet-content");
        ScrollPane scroll = new ScrollPane(inside);
        scroll.setFitToWidth(true);
        // Wrapped words are as high as the width makes them, which a scroll pane does not ask for by itself.
        scroll.prefViewportHeightProperty().bind(inside.heightProperty().add(2));
        // What grows while the sheet is laid out, such as a sentence beside a field, is seen by the next layout only.
        inside.heightProperty().addListener((property, before, now) -> Platform.runLater(scroll::requestLayout));
        scroll.getStyleClass().add("edge-to-edge");
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.SOMETIMES);
        FlowPane foot = new FlowPane(10, 8);
        foot.setAlignment(Pos.CENTER_RIGHT);
        foot.getChildren().addAll(buttons);
        buttons.get(0).setDefaultButton(true);
        buttons.get(0).getStyleClass().add("accent");
        VBox sheet = new VBox(heading, scroll);
        sheet.getChildren().addAll(said);
        sheet.getChildren().add(foot);
        sheet.setId(id);
        sheet.getStyleClass().add("sheet");
        sheet.setMaxWidth(mostWidth);
        sheet.setMaxHeight(USE_PREF_SIZE);
        sheet.setAccessibleRole(javafx.scene.AccessibleRole.DIALOG);
        sheet.setAccessibleText(title);
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
        buttons.get(0).requestFocus();
    }

    void close() {
        getChildren().clear();
        setVisible(false);
        setManaged(false);
        closed.run();
    }

    /** A question in words. */
    void ask(String id, String title, String words, List<Button> buttons) {
        Label label = Controls.wrapped("plain");
        label.setText(words);
        open(id, title, label, buttons);
    }

    /** The cautions; the first start says so in the heading. */
    void showCautions(Runnable read) {
        VBox list = new VBox(10);
        for (Cautions.Caution caution : Cautions.ALL) {
            Label title = Controls.wrapped("heading");
            title.setText(caution.title());
            Label words = Controls.wrapped("plain");
            words.setText(caution.words());
            list.getChildren().add(new VBox(2, title, words));
        }
        open("cautions", "Before you plumb", list, List.of(Controls.button("cautions-read", "I have read them", () -> {
            close();
            read.run();
        })));
    }
}

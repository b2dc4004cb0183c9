package pegbed.ui.app;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import pegbed.ui.controls.Controls;

/** The hint of the first start: three steps, and never again once it was closed. */
final class FirstStartHint extends VBox {
    /** Where there is less room than this, the buttons stand below the words, points. */
    private static final double ROOM_BESIDE = 420;

    /** A reading that agrees with the others of the peg that is shown first. */
    static final String LINE = "s6 @post 2'10";

    static final List<String> STEPS = List.of(
            "1 of 3. Type a reading in the box below the map, such as " + LINE
                    + ", and press Enter: the bottom moves. The sample peg is made up.",
            "2 of 3. Drag the target depth on the right: the flat spots across and in the margins follow it.",
            "3 of 3. Point at the map to see the bottom that way. Peg, New peg, at the top, begins your own.");

    private final Label words = Controls.wrapped("hint-words");
    private final Button next = Controls.button("hint-next", "Next", this::next);
    private final HBox buttons = new HBox(next);
    private final HBox row = new HBox();
    private final Runnable closed;
    private int step;

    FirstStartHint(Runnable closed) {
        this.closed = closed;
        setId("hint");
        getStyleClass().add("hint");
        words.setText(STEPS.get(0));
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        Button close = Controls.button("hint-close", "Close", this::close);
        close.setMinWidth(Region.USE_PREF_SIZE);
        next.setMinWidth(Region.USE_PREF_SIZE);
        buttons.getStyleClass().add("hint-row");
        buttons.getChildren().add(close);
        row.getStyleClass().add("hint-row");
        row.setAlignment(Pos.CENTER_LEFT);
        row.getChildren().addAll(words, buttons);
        getChildren().add(row);
        widthProperty().addListener((width, was, now) -> arrange(now.doubleValue() >= ROOM_BESIDE));
    }

    private void arrange(boolean beside) {
        if (beside == row.getChildren().contains(buttons)) {
            return;
        }
        if (beside) {
            getChildren().remove(buttons);
            row.getChildren().add(buttons);
        } else {
            row.getChildren().remove(buttons);
            getChildren().add(buttons);
        }
    }

    private void next() {
        step++;
        words.setText(STEPS.get(step));
        if (step == STEPS.size() - 1) {
            next.setVisible(false);
            next.setManaged(false);
        }
    }

    private void close() {
        setVisible(false);
        setManaged(false);
        closed.run();
    }
}

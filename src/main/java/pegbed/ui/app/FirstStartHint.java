package pegbed.ui.app;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import pegbed.ui.controls.Controls;

/** The hint of the first start: three steps, and never again once it was closed. */
final class FirstStartHint extends HBox {
    /** A reading that agrees with the others of the peg that is shown first. */
    static final String LINE = "s6 @post 2'10";

    static final List<String> STEPS = List.of(
            "1 of 3. Type a reading in the box below the map, such as " + LINE
                    + ", and press Enter: the bottom moves. The sample peg is made up.",
            "2 of 3. Drag the target depth on the right: the flat spots across and in the margins follow it.",
            "3 of 3. Point at the map to see the bottom that way. Peg, New peg, at the top, begins your own.");

    private final Label words = Controls.wrapped("hint-words");
    private final Button next = Controls.button("hint-next", "Next", this::next);
    private final Runnable closed;
    private int step;

    FirstStartHint(Runnable closed) {
        this.closed = closed;
        setId("hint");
        getStyleClass().add("hint");
        setAlignment(Pos.CENTER_LEFT);
        words.setText(STEPS.get(0));
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        Button close = Controls.button("hint-close", "Close", this::close);
        close.setMinWidth(Region.USE_PREF_SIZE);
        getChildren().addAll(words, next, close);
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

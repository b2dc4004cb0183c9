package pegbed.ui.controls;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * A card that is clicked, or taken with Enter or Space. What it says may change, which is quicker than another card.
 */
public class Card extends HBox {
    private final Label badge = new Label();

    /**
     * A card.
     *
     * @param words what stands on it
     */
    public Card(Node... words) {
        badge.getStyleClass().add("badge");
        badge.setMinWidth(USE_PREF_SIZE);
        VBox box = new VBox(words);
        HBox.setHgrow(box, Priority.ALWAYS);
        getChildren().addAll(badge, box);
        setAlignment(Pos.TOP_LEFT);
        getStyleClass().add("card");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
    }

    /**
     * Names the card.
     *
     * @param sign its number or sign
     * @param spoken what a screen reader says
     */
    public final void name(String sign, String spoken) {
        badge.setText(sign);
        setAccessibleText(spoken);
    }

    /** What a click, Enter or Space does. */
    public final void onTaken(Runnable action) {
        setOnMouseClicked(event -> action.run());
        setOnKeyPressed(event -> {
            boolean onCard = event.getTarget() == this;
            if (onCard && (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE)) {
                action.run();
                event.consume();
            }
        });
    }
}

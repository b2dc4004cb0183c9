package pegbed.ui;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import pegbed.model.Place;

/** Cards that are clicked, or taken with Enter or Space. */
final class Cards {
    private Cards() {}

    /**
     * A card.
     *
     * @param badge its number or sign
     * @param words what stands on it
     * @param spoken what a screen reader says
     * @param action what a click, Enter or Space does
     */
    static Node card(String badge, List<Node> words, String spoken, Runnable action) {
        Label sign = new Label(badge);
        sign.getStyleClass().add("badge");
        sign.setMinWidth(Region.USE_PREF_SIZE);
        VBox box = new VBox();
        box.getChildren().addAll(words);
        HBox.setHgrow(box, Priority.ALWAYS);
        HBox card = new HBox(sign, box);
        card.setAlignment(Pos.TOP_LEFT);
        card.getStyleClass().add("card");
        card.setFocusTraversable(true);
        card.setAccessibleRole(AccessibleRole.BUTTON);
        card.setAccessibleText(spoken);
        card.setOnMouseClicked(event -> action.run());
        card.setOnKeyPressed(event -> {
            boolean onCard = event.getTarget() == card;
            if (onCard && (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE)) {
                action.run();
                event.consume();
            }
        });
        return card;
    }

    /** A place where the bottom has changed; a click points at it on the map. */
    static Node changed(VisitsModel.Changed changed, Consumer<Place> show) {
        Label words = Controls.wrapped("plain");
        words.setText(changed.words());
        return card("±", List.of(words), changed.words(), () -> show.accept(changed.place()));
    }
}

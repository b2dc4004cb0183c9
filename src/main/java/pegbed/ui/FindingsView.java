package pegbed.ui;

import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import pegbed.model.Place;

/** The deepest place and the flat spots, numbered as on the map. */
final class FindingsView extends ScrollPane {
    private final VBox list = new VBox();
    private final FindingsModel model;
    private final Consumer<Place> show;

    /** @param show points at a place on the map */
    FindingsView(FindingsModel model, Consumer<Place> show) {
        this.model = model;
        this.show = show;
        setId("findings");
        setAccessibleText("Deepest place and flat spots");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setContent(list);
        list.getStyleClass().add("findings");
        getStyleClass().add("edge-to-edge");
        model.found().addListener((ListChangeListener<FindingsModel.Found>) change -> refresh());
        list.opacityProperty()
                .bind(Bindings.when(Controls.lasting(model.outdatedProperty()))
                        .then(0.6)
                        .otherwise(1));
        refresh();
    }

    private void refresh() {
        list.getChildren().setAll(model.found().stream().map(this::card).toList());
        if (model.found().isEmpty()) {
            Label none = Controls.wrapped("quiet");
            none.setText("The deepest place and the flat spots will stand here.");
            list.getChildren().add(none);
        }
    }

    private Node card(FindingsModel.Found found) {
        Label badge = new Label(found.badge());
        badge.getStyleClass().add("badge");
        badge.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        Label title = Controls.wrapped("heading");
        title.setText(found.title());
        VBox words = new VBox(title);
        if (!found.where().isEmpty()) {
            Label where = Controls.wrapped("plain");
            where.setText(found.where());
            words.getChildren().add(where);
        }
        Label what = Controls.wrapped("quiet");
        what.setText(found.what());
        words.getChildren().add(what);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox card = new HBox(badge, words);
        card.setAlignment(Pos.TOP_LEFT);
        card.getStyleClass().add("card");
        card.setFocusTraversable(true);
        card.setAccessibleRole(javafx.scene.AccessibleRole.BUTTON);
        card.setAccessibleText(found.title() + ". " + found.where() + ". " + found.what());
        card.setOnMouseClicked(event -> show.accept(found.place()));
        card.setOnKeyPressed(event -> {
            if (event.getCode() == javafx.scene.input.KeyCode.ENTER
                    || event.getCode() == javafx.scene.input.KeyCode.SPACE) {
                show.accept(found.place());
                event.consume();
            }
        });
        return card;
    }
}

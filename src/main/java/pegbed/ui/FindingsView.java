package pegbed.ui;

import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
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
        Listed.show(list.getChildren(), model.found(), Card.class, Card::new, Card::tell);
        if (model.found().isEmpty()) {
            Label none = Controls.wrapped("quiet");
            none.setText("The deepest place and the flat spots will stand here.");
            list.getChildren().add(none);
        }
    }

    /** One spot; what it says may change, which is much quicker than a new one. */
    private final class Card extends HBox {
        private final Label badge = new Label();
        private final Label title = Controls.wrapped("heading");
        private final Label where = Controls.wrapped("plain");
        private final Label what = Controls.wrapped("quiet");
        private Place place = new Place(0, 0);

        Card() {
            badge.getStyleClass().add("badge");
            badge.setMinWidth(USE_PREF_SIZE);
            Controls.shownWhile(where, Bindings.isNotEmpty(where.textProperty()));
            VBox words = new VBox(title, where, what);
            HBox.setHgrow(words, Priority.ALWAYS);
            getChildren().addAll(badge, words);
            setAlignment(Pos.TOP_LEFT);
            getStyleClass().add("card");
            setFocusTraversable(true);
            setAccessibleRole(javafx.scene.AccessibleRole.BUTTON);
            setOnMouseClicked(event -> show.accept(place));
            setOnKeyPressed(event -> {
                if (event.getCode() == javafx.scene.input.KeyCode.ENTER
                        || event.getCode() == javafx.scene.input.KeyCode.SPACE) {
                    show.accept(place);
                    event.consume();
                }
            });
        }

        void tell(FindingsModel.Found found) {
            badge.setText(found.badge());
            title.setText(found.title());
            where.setText(found.where());
            what.setText(found.what());
            place = found.place();
            setAccessibleText(found.title() + ". " + found.where() + ". " + found.what());
        }
    }
}

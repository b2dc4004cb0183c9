package pegbed.ui.findings;

import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import pegbed.model.Place;
import pegbed.ui.controls.Card;
import pegbed.ui.controls.CardList;
import pegbed.ui.controls.Controls;

/** The deepest place and the flat spots, numbered as on the map. */
public final class FindingsView extends ScrollPane {
    private final VBox list = new VBox();
    private final FindingsViewModel model;
    private final Consumer<Place> show;

    /** @param show points at a place on the map */
    public FindingsView(FindingsViewModel model, Consumer<Place> show) {
        this.model = model;
        this.show = show;
        setId("findings");
        setAccessibleText("Deepest place and flat spots");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setContent(list);
        list.getStyleClass().add("findings");
        getStyleClass().add("edge-to-edge");
        model.found().addListener((ListChangeListener<FindingsViewModel.Found>) change -> refresh());
        list.opacityProperty()
                .bind(Bindings.when(Controls.lasting(model.outdatedProperty()))
                        .then(0.6)
                        .otherwise(1));
        refresh();
    }

    private void refresh() {
        CardList.show(list.getChildren(), model.found(), SpotCard.class, SpotCard::new, SpotCard::show);
        if (model.found().isEmpty()) {
            Label none = Controls.wrapped("quiet");
            none.setText("The deepest place and the flat spots will stand here.");
            list.getChildren().add(none);
        }
    }

    private final class SpotCard extends Card {
        private final Label title;
        private final Label where;
        private final Label what;
        private Place place = new Place(0, 0);

        SpotCard() {
            this(Controls.wrapped("heading"), Controls.wrapped("plain"), Controls.wrapped("quiet"));
        }

        private SpotCard(Label title, Label where, Label what) {
            super(title, where, what);
            this.title = title;
            this.where = where;
            this.what = what;
            Controls.shownWhile(where, Bindings.isNotEmpty(where.textProperty()));
            onTaken(() -> show.accept(place));
        }

        void show(FindingsViewModel.Found found) {
            title.setText(found.title());
            where.setText(found.where());
            what.setText(found.what());
            place = found.place();
            name(found.badge(), found.title() + ". " + found.where() + ". " + found.what());
        }
    }
}

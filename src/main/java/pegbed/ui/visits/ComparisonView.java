package pegbed.ui.visits;

import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.property.IntegerProperty;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import pegbed.model.Place;
import pegbed.ui.controls.Controls;

/** Chooses two visits and shows what changed between them; takes no room while there is only one. */
final class ComparisonView extends VBox {
    private final ComparisonViewModel model;

    /** @param show points at a place on the map */
    ComparisonView(ComparisonViewModel model, Consumer<Place> show) {
        this.model = model;
        ComboBox<String> earlier = visits("compare-from", "The earlier visit", model.earlierProperty());
        ComboBox<String> later = visits("compare-to", "The later visit", model.laterProperty());
        Button compare = Controls.button(
                "compare", "Compare", "Tells what silted up and what was dug out between the two", model::compare);
        Label and = new Label("and");
        and.setMinWidth(USE_PREF_SIZE);
        HBox row = new HBox(earlier, and, later);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        Label title = new Label("Compare two visits");
        title.getStyleClass().add("section");
        VBox places = new VBox();
        places.setId("compared");
        model.places().addListener((ListChangeListener<VisitsViewModel.Changed>) change -> places.getChildren()
                .setAll(model.places().stream()
                        .map(changed -> new ChangedCard(changed, show))
                        .toList()));
        getChildren()
                .addAll(
                        title,
                        row,
                        compare,
                        Controls.message("compare-heading", "plain", model.headingProperty()),
                        Controls.message("compare-error", "error-words", model.errorProperty()),
                        places,
                        Controls.message("compare-note", "quiet", model.noteProperty()));
        getStyleClass().add("comparison");
        Controls.shownWhile(this, Bindings.size(model.visits()).greaterThan(1));
    }

    private ComboBox<String> visits(String id, String name, IntegerProperty chosen) {
        ComboBox<String> box = new ComboBox<>();
        box.setId(id);
        box.setAccessibleText(name);
        box.setMaxWidth(Double.MAX_VALUE);
        box.setMinWidth(60);
        HBox.setHgrow(box, Priority.ALWAYS);
        box.getItems().setAll(model.visits());
        box.getSelectionModel().select(chosen.get());
        model.visits().addListener((ListChangeListener<String>) change -> {
            int before = chosen.get();
            box.getItems().setAll(model.visits());
            box.getSelectionModel().select(before);
        });
        chosen.addListener((property, before, now) -> box.getSelectionModel().select(now.intValue()));
        box.getSelectionModel().selectedIndexProperty().addListener((property, before, now) -> {
            if (now.intValue() >= 0) {
                chosen.set(now.intValue());
            }
        });
        return box;
    }
}

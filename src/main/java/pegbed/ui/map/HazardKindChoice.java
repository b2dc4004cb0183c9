package pegbed.ui.map;

import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import pegbed.model.Hazard;
import pegbed.wording.Sentences;

/** What kind of hazard a click puts on the map; there while the tool is in hand. */
final class HazardKindChoice extends ComboBox<Hazard.Kind> {
    private static final double GAP = 8;

    HazardKindChoice(MapViewModel model) {
        setId("hazard-kind");
        setAccessibleText("Kind of the hazard");
        getItems().setAll(Hazard.Kind.values());
        setConverter(new StringConverter<>() {
            @Override
            public String toString(Hazard.Kind kind) {
                return kind == null ? "" : Sentences.capital(kind.word());
            }

            @Override
            public Hazard.Kind fromString(String words) {
                throw new UnsupportedOperationException("Kinds are chosen, not typed.");
            }
        });
        valueProperty().bindBidirectional(model.hazardKindProperty());
        setManaged(false);
        visibleProperty().bind(model.toolProperty().isEqualTo(Tool.HAZARD));
    }

    /** Lies at the top right of a map of a width. */
    void place(double mapWidth) {
        double width = prefWidth(-1);
        resizeRelocate(mapWidth - width - GAP, GAP, width, prefHeight(-1));
    }
}

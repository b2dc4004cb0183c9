package pegbed.ui.fishing;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.collections.WeakListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import pegbed.ui.controls.Controls;

/** The kinds of fish that were noted before, the latest first: the one that is pressed is what a tap notes. */
public final class FishKinds extends FlowPane {
    private final FishingViewModel model;
    private final ObservableList<String> kinds;
    private final String id;
    private final String style;

    /** Kept here alone, so that the model does not keep the view. */
    private final ListChangeListener<String> listener = change -> fill();

    private final ChangeListener<Optional<String>> pressed = (property, before, now) -> press();

    /**
     * @param id what the buttons' ids begin with
     * @param style of the buttons
     */
    public FishKinds(FishingViewModel model, String id, String style) {
        this.model = model;
        this.id = id;
        this.style = style;
        getStyleClass().add("row");
        setId(id + "-kinds");
        kinds = model.kinds();
        kinds.addListener(new WeakListChangeListener<>(listener));
        model.kindProperty().addListener(new WeakChangeListener<>(pressed));
        setHgap(6);
        setVgap(6);
        fill();
    }

    private void fill() {
        getChildren().clear();
        Controls.setShown(this, !kinds.isEmpty());
        if (kinds.isEmpty()) {
            return;
        }
        Label name = new Label("Fish");
        name.getStyleClass().add("quiet");
        getChildren().add(name);
        for (String kind : List.copyOf(kinds)) {
            ToggleButton button = new ToggleButton(kind);
            button.setId(id + "-kind-" + getChildren().size());
            button.setUserData(kind);
            button.setAccessibleText("A tap on Fish notes " + kind);
            button.getStyleClass().add(style);
            button.setOnAction(event -> model.chooseKind(button.isSelected() ? Optional.of(kind) : Optional.empty()));
            getChildren().add(button);
        }
        press();
    }

    private void press() {
        for (Node node : getChildren()) {
            if (node instanceof ToggleButton button) {
                button.setSelected(model.kindProperty()
                        .get()
                        .filter(button.getUserData()::equals)
                        .isPresent());
            }
        }
    }
}

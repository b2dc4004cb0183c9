package pegbed.ui.findings;

import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import pegbed.notation.FeetAndInches;
import pegbed.ui.controls.Controls;

/** The target depth: a slider, a field in the person's unit, and the way back to half the deepest. */
public final class TargetView extends VBox {
    public TargetView(TargetViewModel model) {
        getStyleClass().add("target");
        Slider slider = new Slider(TargetViewModel.shallowestMetres(), 2, 1);
        slider.setId("target");
        slider.setAccessibleText("Target depth");
        slider.maxProperty().bind(model.deepestProperty());
        slider.setBlockIncrement(FeetAndInches.INCH_METRES);
        slider.valueProperty().bindBidirectional(model.metresProperty());
        slider.valueChangingProperty().addListener((property, before, now) -> {
            if (!now) {
                model.settled();
            }
        });
        slider.disableProperty().bind(model.knownProperty().not());
        HBox.setHgrow(slider, Priority.ALWAYS);
        TextField field = new TextField();
        field.setId("target-field");
        field.setAccessibleText("Target depth, typed");
        field.setPrefColumnCount(6);
        field.setText(model.typedProperty().get());
        model.typedProperty().addListener((property, before, now) -> {
            if (!field.isFocused() || field.getText().equals(before)) {
                field.setText(now);
            }
        });
        field.setOnAction(event -> {
            model.enter(field.getText());
            if (model.errorProperty().get().isEmpty()) {
                field.setText(model.typedProperty().get());
            }
        });
        Button follow = Controls.button(
                "follow", "½ deepest", "Makes the target half the deepest again, following it", model::follow);
        follow.disableProperty().bind(model.followsProperty());
        Label title = new Label("Target depth");
        title.setMinWidth(Region.USE_PREF_SIZE);
        title.getStyleClass().add("heading");
        title.setLabelFor(field);
        Label how = new Label();
        how.textProperty()
                .bind(Bindings.when(model.followsProperty())
                        .then("half the deepest")
                        .otherwise("set by you"));
        how.getStyleClass().add("quiet");
        HBox head = new HBox(title, how);
        head.setAlignment(Pos.BASELINE_LEFT);
        head.getStyleClass().add("row");
        HBox row = new HBox(slider, field, follow);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        getChildren()
                .addAll(
                        head,
                        row,
                        Controls.message("target-error", "error-words", model.errorProperty()),
                        offer(model));
    }

    /** What earlier visits speak for, and the tap that takes it. */
    private static HBox offer(TargetViewModel model) {
        Label lesson = Controls.message("target-lesson", "quiet", model.lessonProperty());
        HBox.setHgrow(lesson, Priority.ALWAYS);
        Button take = Controls.button(
                "take-target", "", "Makes it the target depth; nothing changes by itself", model::takeOffer);
        take.textProperty().bind(model.offerProperty());
        take.setMinWidth(Region.USE_PREF_SIZE);
        Controls.shownWhile(take, Bindings.isNotEmpty(model.offerProperty()));
        HBox row = new HBox(lesson, take);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        Controls.shownWhile(row, Bindings.isNotEmpty(model.lessonProperty()));
        return row;
    }
}

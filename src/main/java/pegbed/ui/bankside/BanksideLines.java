package pegbed.ui.bankside;

import java.util.function.Consumer;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.collections.WeakListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import pegbed.model.Place;
import pegbed.ui.controls.Controls;
import pegbed.ui.plan.PlanViewModel;

/** The lines to fish in large letters; a tap points at one on the map. */
final class BanksideLines extends VBox {
    private final ObservableList<PlanViewModel.LineCard> lines;
    private final Consumer<Place> show;

    /** Kept here alone, so that the model does not keep the view. */
    private final ListChangeListener<PlanViewModel.LineCard> listener = change -> fill();

    BanksideLines(PlanViewModel plan, Consumer<Place> show) {
        this.show = show;
        lines = plan.lines();
        lines.addListener(new WeakListChangeListener<>(listener));
        getStyleClass().add("bankside-lines");
        setId("bank-lines-list");
        fill();
    }

    private void fill() {
        getChildren().clear();
        for (PlanViewModel.LineCard line : lines) {
            Button button = Controls.button(
                    "bank-line-" + line.number(),
                    line.number() + ". " + line.title() + "\n" + line.where(),
                    () -> show.accept(line.place()));
            button.getStyleClass().addAll("large", "line");
            button.setWrapText(true);
            button.setMinWidth(0);
            button.setMinHeight(BanksideView.MIN_POINTS);
            button.setMaxWidth(Double.MAX_VALUE);
            button.setAlignment(Pos.CENTER_LEFT);
            getChildren().add(button);
        }
        if (lines.isEmpty()) {
            Label none = Controls.wrapped("said");
            none.setText("There are no lines yet; they come with the banks and some readings.");
            getChildren().add(none);
        }
    }
}

package pegbed.ui.bankside;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.collections.WeakListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import pegbed.model.Place;
import pegbed.ui.controls.Controls;
import pegbed.ui.fishing.FishKinds;
import pegbed.ui.fishing.FishingViewModel;
import pegbed.ui.fishing.FishingViewModel.FishingLine;
import pegbed.ui.fishing.LineTaps;
import pegbed.ui.fishing.LinesInStep;
import pegbed.ui.plan.PlanViewModel;
import pegbed.wording.PlanCards;

/** The lines to fish in large letters: a tap on one points at it on the map, those below it note what happens there. */
final class BanksideLines extends VBox {
    private final ObservableList<PlanCards.LineCard> lines;
    private final Consumer<Place> show;

    /** Kept here alone, so that the model does not keep the view. */
    private final ListChangeListener<PlanCards.LineCard> listener = change -> fill();

    private final FishingViewModel fishing;
    private final ListChangeListener<FishingLine> fishingListener = change -> showStates();
    private final FishKinds kinds;
    private final LinesInStep fished = new LinesInStep();

    BanksideLines(PlanViewModel plan, FishingViewModel fishing, Consumer<Place> show) {
        this.show = show;
        this.fishing = fishing;
        kinds = new FishKinds(fishing, "bank-fishing", "large");
        fishing.lines().addListener(new WeakListChangeListener<>(fishingListener));
        lines = plan.lines();
        lines.addListener(new WeakListChangeListener<>(listener));
        getStyleClass().add("bankside-lines");
        setId("bank-lines-list");
        fill();
    }

    private void showStates() {
        List<FishingLine> known =
                lines.stream().flatMap(line -> at(line.place()).stream()).toList();
        if (!fished.show(known)) {
            fill();
        }
    }

    private Optional<FishingLine> at(Place place) {
        return fishing.lines().stream()
                .filter(known -> known.place().equals(place))
                .findFirst();
    }

    private void fill() {
        getChildren().clear();
        fished.clear();
        getChildren().add(kinds);
        for (PlanCards.LineCard line : lines) {
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
            at(line.place()).ifPresent(known -> addTaps(known, line.number()));
        }
        if (!lines.isEmpty()) {
            Label said = Controls.wrapped("said");
            said.setId("bank-fishing-said");
            said.textProperty().bind(fishing.saidProperty());
            getChildren().add(said);
        }
        if (lines.isEmpty()) {
            Label none = Controls.wrapped("said");
            none.setText("There are no lines yet; they come with the banks and some readings.");
            getChildren().add(none);
        }
    }

    private void addTaps(FishingLine line, int number) {
        Label state = Controls.wrapped("said");
        LineTaps taps = new LineTaps(fishing, line, "bank-fishing", number);
        for (Node tap : taps.getChildren()) {
            tap.getStyleClass().add("large");
            ((Button) tap).setMinHeight(BanksideView.MIN_POINTS);
        }
        getChildren().addAll(state, taps);
        fished.add(line, now -> {
            state.setText(now.state());
            taps.show(now);
        });
    }
}

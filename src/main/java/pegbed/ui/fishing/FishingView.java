package pegbed.ui.fishing;

import java.lang.ref.WeakReference;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.collections.WeakListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import pegbed.model.Place;
import pegbed.ui.controls.Controls;
import pegbed.ui.controls.PeriodicTask;
import pegbed.ui.fishing.FishingViewModel.FishingLine;

/**
 * The lines as they are fished: a tap notes a start, a fish, a bite or a feed with its time. What is not tapped can be
 * typed.
 */
public final class FishingView extends ScrollPane {
    /** Minutes are shown; so often the clock is looked at, milliseconds. */
    private static final long TICK_MILLISECONDS = 20_000;

    private final FishingViewModel model;
    private final Consumer<Place> show;
    private final ObservableList<FishingLine> lines;
    private final VBox list = new VBox();
    private final VBox blocks = new VBox();

    /** Kept here alone, so that the model does not keep the view. */
    private final ListChangeListener<FishingLine> listener = change -> fill();

    /** @param show points at a place on the map */
    public FishingView(FishingViewModel model, Consumer<Place> show) {
        this.model = model;
        this.show = show;
        setId("fishing");
        setAccessibleText("The day's fishing");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        getStyleClass().addAll("edge-to-edge", "fishing");
        lines = model.lines();
        lines.addListener(new WeakListChangeListener<>(listener));
        blocks.getStyleClass().add("findings-part");
        list.getStyleClass().add("findings");
        list.getChildren().addAll(blocks, said(), typed());
        setContent(list);
        // The clock outlives the window, and must not keep it.
        WeakReference<FishingViewModel> known = new WeakReference<>(model);
        PeriodicTask clock = new PeriodicTask(
                TICK_MILLISECONDS, () -> Optional.ofNullable(known.get()).ifPresent(FishingViewModel::refresh));
        sceneProperty().addListener((property, before, now) -> {
            if (now == null) {
                clock.stop();
            } else {
                model.refresh();
                clock.start();
            }
        });
        fill();
    }

    private void fill() {
        blocks.getChildren().clear();
        for (int i = 0; i < lines.size(); i++) {
            blocks.getChildren().add(block(lines.get(i), i + 1));
        }
        if (lines.isEmpty()) {
            Label none = Controls.wrapped("quiet");
            none.setText("The lines of the day will stand here; they come with the banks and some readings.");
            blocks.getChildren().add(none);
        }
    }

    private VBox block(FishingLine line, int number) {
        Label title = Controls.wrapped("card-title");
        title.setText(line.title() + (line.fished() ? " ●" : ""));
        title.setOnMouseClicked(event -> show.accept(line.place()));
        Label state = Controls.wrapped("quiet");
        state.setId("fishing-state-" + number);
        state.setText(line.state());
        VBox block = new VBox(title, state, new LineTaps(model, line, "fishing", number));
        block.getStyleClass().add("card");
        return block;
    }

    private Label said() {
        Label said = Controls.wrapped("said");
        said.setId("fishing-said");
        said.textProperty().bind(model.saidProperty());
        return said;
    }

    private VBox typed() {
        TextField field = Controls.field("fishing-typed", "What happened, such as 14:20 line 2 fish F1 1lb8", 20);
        field.setPromptText("14:20 line 2 fish F1 1lb8");
        field.setOnAction(event -> {
            if (model.note(field.getText())) {
                field.clear();
            }
        });
        HBox.setHgrow(field, Priority.ALWAYS);
        Button stop = Controls.button("fishing-stop", "Stop", "Nothing is fished from now on", model::stop);
        HBox row = new HBox(field, stop);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        return new VBox(row);
    }
}

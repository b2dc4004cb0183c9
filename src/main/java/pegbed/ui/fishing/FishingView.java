package pegbed.ui.fishing;

import java.lang.ref.WeakReference;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.beans.value.WeakChangeListener;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.collections.WeakListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import pegbed.model.Place;
import pegbed.notation.DayNotation;
import pegbed.ui.controls.Controls;
import pegbed.ui.controls.PeriodicTask;
import pegbed.ui.fishing.FishingViewModel.FishingLine;
import pegbed.wording.DayLogWords;

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
    private final LinesInStep shown = new LinesInStep();

    /** Kept here alone, so that the model does not keep the view. */
    private final ListChangeListener<FishingLine> listener = change -> fill();

    private final FishingPictures pictures;
    private final BooleanProperty dark = new SimpleBooleanProperty(false);

    /**
     * @param pictures of the day and of earlier visits
     * @param show points at a place on the map
     */
    public FishingView(FishingViewModel model, FishingPictures pictures, Consumer<Place> show) {
        this.model = model;
        this.pictures = pictures;
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
        list.getChildren()
                .addAll(
                        outlook(),
                        new FishKinds(model, "fishing", "small"),
                        blocks,
                        said(),
                        typed(),
                        picture("fishing-strip", DayLogWords.STRIP, pictures.stripProperty()),
                        picture("fishing-bars", "Fish an hour by depth", pictures.barsProperty()));
        list.widthProperty().addListener((property, before, now) -> paint());
        dark.addListener((property, before, now) -> paint());
        setContent(list);
        // The clock outlives the window, and must not keep it.
        WeakReference<FishingViewModel> known = new WeakReference<>(model);
        PeriodicTask clock = new PeriodicTask(
                TICK_MILLISECONDS, () -> Optional.ofNullable(known.get()).ifPresent(FishingViewModel::tick));
        sceneProperty().addListener((property, before, now) -> {
            if (now == null) {
                clock.stop();
            } else {
                model.tick();
                clock.start();
            }
        });
        fill();
    }

    private void fill() {
        if (shown.show(lines)) {
            return;
        }
        shown.clear();
        blocks.getChildren().clear();
        for (FishingLine line : lines) {
            Block block = new Block(line, blocks.getChildren().size() + 1);
            blocks.getChildren().add(block);
            shown.add(line, block::show);
        }
        if (lines.isEmpty()) {
            Label none = Controls.wrapped("quiet");
            none.setText(DayLogWords.NO_LINES);
            blocks.getChildren().add(none);
        }
    }

    /** One line with its buttons. */
    private final class Block extends VBox {
        private final Label title = Controls.wrapped("card-title");
        private final Label state = Controls.wrapped("quiet");
        private final LineTaps taps;

        Block(FishingLine line, int number) {
            title.setOnMouseClicked(event -> show.accept(line.place()));
            state.setId("fishing-state-" + number);
            taps = new LineTaps(model, line, "fishing", number);
            getChildren().addAll(title, state, taps);
            getStyleClass().add("card");
        }

        void show(FishingLine now) {
            title.setText(now.title() + (now.fished() ? " ●" : ""));
            state.setText(now.state());
            taps.show(now);
        }
    }

    /** Whether the pictures are for a dark window. */
    public BooleanProperty darkProperty() {
        return dark;
    }

    private void paint() {
        pictures.show(list.getWidth() - list.snappedLeftInset() - list.snappedRightInset(), dark.get());
    }

    private static VBox picture(String id, String words, ObservableValue<Optional<Image>> shown) {
        Label title = Controls.wrapped("heading");
        title.setText(words);
        ImageView view = new ImageView();
        view.setId(id);
        view.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        view.setAccessibleText(words);
        // The picture is as wide as the panel, never the other way round.
        Pane holder = new Pane(view);
        holder.setMinWidth(0);
        holder.setPrefWidth(0);
        VBox box = new VBox(title, holder);
        box.getStyleClass().add("findings-part");
        ChangeListener<Optional<Image>> listener = (property, before, now) -> put(box, view, now);
        box.setUserData(listener);
        shown.addListener(new WeakChangeListener<>(listener));
        put(box, view, shown.getValue());
        return box;
    }

    private static void put(VBox box, ImageView view, Optional<Image> image) {
        view.setImage(image.orElse(null));
        view.setFitWidth(image.map(Image::getWidth).orElse(0.0) / FishingPictures.PIXELS_PER_POINT);
        view.setPreserveRatio(true);
        ((Pane) view.getParent())
                .setMinHeight(image.map(Image::getHeight).orElse(0.0) / FishingPictures.PIXELS_PER_POINT);
        Controls.setShown(box, image.isPresent());
    }

    private Label outlook() {
        return Controls.message("fishing-outlook", "quiet", model.outlookProperty());
    }

    private Label said() {
        Label said = Controls.wrapped("quiet");
        said.setId("fishing-said");
        said.textProperty().bind(model.saidProperty());
        return said;
    }

    private VBox typed() {
        TextField field = Controls.field("fishing-typed", "What happened, such as " + DayNotation.EXAMPLE, 20);
        field.setPromptText(DayNotation.EXAMPLE);
        field.setOnAction(event -> {
            if (model.note(field.getText())) {
                field.clear();
            }
        });
        HBox.setHgrow(field, Priority.ALWAYS);
        Button stop = Controls.button("fishing-stop", "Stop", DayLogWords.STOP, model::stop);
        HBox row = new HBox(field, stop);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        return new VBox(row);
    }
}

package pegbed.ui.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import pegbed.model.Place;
import pegbed.model.StartLine;
import pegbed.ui.controls.CardList;
import pegbed.ui.controls.Controls;
import pegbed.wording.PlanCards;

/** The lines to fish, each to be fixed, forbidden and asked why, and their rigs. */
public final class PlanView extends ScrollPane {
    private final PlanViewModel model;
    private final Consumer<Place> show;
    private final VBox list = new VBox();
    private final Label none = Controls.wrapped("quiet");
    private final VBox lines = new VBox();
    private final VBox rigs = new VBox();
    private final VBox shortfalls = new VBox();
    private final VBox foot = new VBox();
    private final Button free;
    private final Label error;
    private final Set<Integer> explained = new HashSet<>();

    /**
     * @param show points at a place on the map
     * @param changeRigs opens the sheet on which rigs are changed
     */
    public PlanView(PlanViewModel model, Consumer<Place> show, Runnable changeRigs) {
        this.model = model;
        this.show = show;
        setId("plan");
        setAccessibleText("Lines and rigs");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setContent(list);
        list.getStyleClass().add("findings");
        for (VBox part : List.of(lines, rigs, shortfalls)) {
            part.getStyleClass().add("findings-part");
        }
        none.setText("The lines to fish and their rigs will stand here.");
        getStyleClass().add("edge-to-edge");
        free = Controls.button(
                "free-lines", "Let all free", "No place is fixed or forbidden any more", model::releaseAll);
        free.disableProperty().bind(model.wishedProperty().not());
        error = Controls.message("plan-error", "error-words", model.errorProperty());
        HBox buttons = new HBox(
                Controls.button("edit-rigs", "Change rigs", "Floats, hook lengths and shotting (Ctrl+R)", changeRigs),
                free);
        buttons.getStyleClass().add("row");
        foot.getChildren().addAll(error, buttons);
        list.getChildren().addAll(start(), none, lines, rigs, shortfalls, foot);
        model.planProperty().addListener((property, before, now) -> refresh());
        refresh();
    }

    /** Where the person likes to start. */
    private HBox start() {
        ChoiceBox<Optional<StartLine>> box = new ChoiceBox<>();
        box.setId("start-line");
        box.setAccessibleText("Start");
        box.getItems().add(Optional.empty());
        for (StartLine part : StartLine.values()) {
            box.getItems().add(Optional.of(part));
        }
        box.setConverter(Controls.chosenBy(PlanViewModel::startWords));
        box.setValue(model.startProperty().get());
        model.startProperty().addListener((property, before, now) -> box.setValue(now));
        box.valueProperty().addListener((property, before, now) -> model.startOn(now));
        HBox row = new HBox(Controls.named("Start", box), box);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        return row;
    }

    private void refresh() {
        boolean nothing = model.lines().isEmpty() && model.shortfalls().isEmpty();
        Controls.setShown(none, nothing);
        CardList.show(lines.getChildren(), model.lines(), LineView.class, LineView::new, LineView::show);
        CardList.show(rigs.getChildren(), model.rigs(), RigView.class, RigView::new, RigView::show);
        CardList.show(
                shortfalls.getChildren(),
                model.shortfalls(),
                Label.class,
                () -> Controls.wrapped("warning-words"),
                (label, sentence) -> label.setText("⚠ " + sentence));
    }

    /** A rig; what it says may change. */
    private static final class RigView extends VBox {
        private final Label title = Controls.wrapped("heading");
        private final Label what = Controls.wrapped("quiet");

        RigView() {
            getChildren().addAll(title, what);
        }

        void show(PlanCards.RigCard rig) {
            title.setText(rig.title());
            what.setText(rig.what());
        }
    }

    /** A line with its buttons; what it says may change. */
    private final class LineView extends HBox {
        private final Label badge = new Label();
        private final Label title = Controls.wrapped("heading");
        private final Label where = Controls.wrapped("plain");
        private final Label what = Controls.wrapped("quiet");
        private final Label why = Controls.wrapped("plain");
        private final ToggleButton ask = new ToggleButton("Why");
        private final Button look = Controls.button("", "Show", () -> show.accept(line().place()));
        private final Button fix = Controls.button(
                "", "Fix here", "Keeps a line at this place until it is let free", () -> model.fixOrRelease(line()));
        private final Button forbid = Controls.button(
                "", "Not here", "Keeps lines at least 1 m away from this place", () -> model.forbid(line()));
        private PlanCards.LineCard shown;

        LineView() {
            badge.getStyleClass().addAll("badge", "line-badge");
            badge.setMinWidth(USE_PREF_SIZE);
            why.visibleProperty().bind(ask.selectedProperty());
            why.managedProperty().bind(why.visibleProperty());
            ask.selectedProperty().addListener((property, before, now) -> {
                if (now) {
                    explained.add(line().number());
                } else {
                    explained.remove(line().number());
                }
            });
            HBox buttons = new HBox(look, fix, forbid, ask);
            buttons.getStyleClass().add("row");
            buttons.getChildren().forEach(button -> button.getStyleClass().add("small"));
            VBox words = new VBox(title, where, what, buttons, why);
            words.setSpacing(2);
            HBox.setHgrow(words, Priority.ALWAYS);
            getChildren().addAll(badge, words);
            setAlignment(Pos.TOP_LEFT);
            getStyleClass().add("card");
        }

        private PlanCards.LineCard line() {
            return shown;
        }

        void show(PlanCards.LineCard line) {
            shown = line;
            badge.setText(String.valueOf(line.number()));
            title.setText(line.title());
            where.setText(line.where());
            what.setText(line.what());
            why.setText(line.why());
            why.setId("why-" + line.number());
            ask.setSelected(explained.contains(line.number()));
            fix.setText(line.fixed() ? "Fixed: let free" : "Fix here");
            named(look, "show", line);
            named(fix, "fix", line);
            named(forbid, "forbid", line);
            named(ask, "ask", line);
        }

        private static void named(Labeled button, String name, PlanCards.LineCard line) {
            button.setId(name + "-" + line.number());
            button.setAccessibleText(button.getText() + ", line " + line.number());
        }
    }
}

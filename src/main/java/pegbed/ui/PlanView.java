package pegbed.ui;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import pegbed.model.Place;

/** The lines to fish, each to be pinned, forbidden and asked why, and their rigs. */
final class PlanView extends ScrollPane {
    private final PlanModel model;
    private final Consumer<Place> show;
    private final VBox list = new VBox();
    private final Button free;
    private final Label error;
    private final Set<Integer> explained = new HashSet<>();

    /** @param show points at a place on the map */
    PlanView(PlanModel model, Consumer<Place> show) {
        this.model = model;
        this.show = show;
        setId("plan");
        setAccessibleText("Lines and rigs");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setContent(list);
        list.getStyleClass().add("findings");
        getStyleClass().add("edge-to-edge");
        free = Controls.button(
                "free-lines", "Let all free", "Nothing is pinned or forbidden any more", model::releaseAll);
        free.disableProperty().bind(model.pinnedProperty().not());
        error = Controls.telling("plan-error", "error-words", model.errorProperty());
        model.planProperty().addListener((property, before, now) -> refresh());
        refresh();
    }

    private void refresh() {
        list.getChildren().clear();
        if (model.lines().isEmpty() && model.shortfalls().isEmpty()) {
            list.getChildren().add(words("quiet", "The lines to fish and their rigs will stand here."));
            return;
        }
        model.lines().forEach(line -> list.getChildren().add(line(line)));
        model.rigs()
                .forEach(rig ->
                        list.getChildren().add(new VBox(words("heading", rig.title()), words("quiet", rig.what()))));
        model.shortfalls().forEach(sentence -> list.getChildren().add(words("warning-words", "⚠ " + sentence)));
        list.getChildren().addAll(error, free);
    }

    private static Label words(String style, String text) {
        Label label = Controls.wrapped(style);
        label.setText(text);
        return label;
    }

    private Node line(PlanModel.LineCard line) {
        Label badge = new Label(String.valueOf(line.number()));
        badge.getStyleClass().addAll("badge", "line-badge");
        badge.setMinWidth(USE_PREF_SIZE);
        Label why = words("plain", line.why());
        why.setId("why-" + line.number());
        ToggleButton ask = new ToggleButton("Why");
        ask.setId("ask-" + line.number());
        ask.setSelected(explained.contains(line.number()));
        why.visibleProperty().bind(ask.selectedProperty());
        why.managedProperty().bind(why.visibleProperty());
        ask.selectedProperty().addListener((property, before, now) -> {
            if (now) {
                explained.add(line.number());
            } else {
                explained.remove(line.number());
            }
        });
        Button look = Controls.button("show-" + line.number(), "Show", () -> show.accept(line.place()));
        Button pin =
                Controls.button("pin-" + line.number(), line.pinned() ? "📌 Let free" : "Pin", () -> model.pin(line));
        Button forbid = Controls.button("forbid-" + line.number(), "Not here", () -> model.forbid(line));
        HBox buttons = new HBox(look, pin, forbid, ask);
        buttons.getStyleClass().add("row");
        for (Node button : buttons.getChildren()) {
            button.getStyleClass().add("small");
            button.setAccessibleText(((javafx.scene.control.Labeled) button).getText() + ", line " + line.number());
        }
        VBox words = new VBox(
                words("heading", line.title()),
                words("plain", line.where()),
                words("quiet", line.what()),
                buttons,
                why);
        words.setSpacing(2);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox card = new HBox(badge, words);
        card.setAlignment(Pos.TOP_LEFT);
        card.getStyleClass().add("card");
        return card;
    }
}

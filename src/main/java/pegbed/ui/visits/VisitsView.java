package pegbed.ui.visits;

import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import pegbed.model.Place;
import pegbed.ui.controls.Card;
import pegbed.ui.controls.Controls;
import pegbed.wording.Sentences;

/** Today's visit, what to plumb for its level, where the bottom has changed, and all visits. */
public final class VisitsView extends ScrollPane {
    private final VisitsViewModel model;
    private final Consumer<Place> show;
    private final Runnable toBox;

    /**
     * What the panel shows.
     *
     * @param visits visits and today's level
     * @param board today's board measure
     * @param others what neighbouring pegs of the water teach
     * @param comparison two visits beside each other
     */
    public record ViewModels(
            VisitsViewModel visits,
            BoardViewModel board,
            NeighbouringPegsViewModel others,
            ComparisonViewModel comparison) {}

    /**
     * @param show points at a place on the map
     * @param toBox puts the cursor into the reading box
     */
    public VisitsView(ViewModels models, Consumer<Place> show, Runnable toBox) {
        model = models.visits();
        this.show = show;
        this.toBox = toBox;
        setId("visits");
        setAccessibleText("Visits and the water's level");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        getStyleClass().add("edge-to-edge");
        VBox content = new VBox(
                today(),
                board(models.board()),
                dugOut(),
                Controls.message("visits-error", "error-words", model.errorProperty()),
                Controls.message("level", "heading", model.levelProperty()),
                list("The bottom has changed", model.changes(), changed -> new ChangedCard(changed, show)),
                list("To know it better, plumb here", model.checks(), this::check),
                list("After each of today's readings", model.steps(), VisitsView::step),
                list("Visits", model.rows(), VisitsView::visit),
                others(models.others()),
                new ComparisonView(models.comparison(), show));
        content.getStyleClass().add("visits");
        setContent(content);
        models.comparison().headingProperty().addListener((property, before, now) -> showCompared(models.comparison()));
        models.comparison().errorProperty().addListener((property, before, now) -> showCompared(models.comparison()));
    }

    /** A comparison stands lowest, and is scrolled to once all of it is laid out. */
    private void showCompared(ComparisonViewModel comparison) {
        if (comparison.isDone()) {
            Platform.runLater(() -> {
                applyCss();
                layout();
                setVvalue(getVmax());
            });
        }
    }

    private Node today() {
        Button begin =
                Controls.button("begin-visit", "Begin today's visit", "What you read from now on belongs to it", () -> {
                    model.begin();
                    toBox.run();
                });
        begin.disableProperty().bind(model.whyNotProperty().isNotEmpty());
        return new VBox(begin, Controls.message("why-not", "quiet", model.whyNotProperty()));
    }

    private static Node board(BoardViewModel board) {
        TextField field = new TextField();
        field.setId("board");
        field.setAccessibleText("From the board down to today's water");
        field.setPromptText("1'3, 15in or 38cm");
        field.setPrefColumnCount(8);
        field.textProperty().bindBidirectional(board.textProperty());
        field.setOnAction(event -> board.enter());
        field.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                board.enter();
            }
        });
        Label name = Controls.named("Board to water", field);
        HBox.setHgrow(field, Priority.ALWAYS);
        HBox row = new HBox(name, field);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        Label error = Controls.message(
                "board-error",
                "error-words",
                Bindings.createStringBinding(
                        () -> board.errorProperty().get().isEmpty()
                                ? ""
                                : "✗ " + board.errorProperty().get(),
                        board.errorProperty()));
        return new VBox(row, Controls.message("board-echo", "quiet", board.echoProperty()), error);
    }

    /** Takes no room where there is nobody to learn from. */
    private static Node others(NeighbouringPegsViewModel others) {
        Label heading = Controls.wrapped("section");
        heading.setText("Other pegs of this water");
        Controls.shownWhile(heading, others.offeredProperty());
        CheckBox box = new CheckBox("Take this peg by itself");
        box.setId("by-itself");
        box.setAccessibleHelp("The bottom starts from nothing, not from other pegs of the same water");
        box.setSelected(others.byItselfProperty().get());
        others.byItselfProperty().addListener((property, before, now) -> box.setSelected(now));
        box.setOnAction(event -> others.setByItself(box.isSelected()));
        Controls.shownWhile(box, others.offeredProperty());
        return new VBox(
                heading,
                Controls.message("others", "plain", others.wordsProperty()),
                Controls.message("others-passed-over", "quiet", others.passedOverProperty()),
                box);
    }

    private Node dugOut() {
        CheckBox box = new CheckBox("The bottom was dug out before today");
        box.setId("dug-out");
        box.setAccessibleHelp("Earlier readings stay in the file and are not used");
        box.setSelected(model.dugOutProperty().get());
        model.dugOutProperty().addListener((property, before, now) -> box.setSelected(now));
        box.setOnAction(event -> {
            model.setDugOut(box.isSelected());
            box.setSelected(model.dugOutProperty().get());
        });
        Controls.shownWhile(box, model.laterProperty());
        return box;
    }

    /** A list that takes no room while it is empty. */
    private static <T> Node list(String title, ObservableList<T> items, Function<T, Node> row) {
        VBox box = new VBox();
        Runnable fill = () -> {
            box.getChildren().clear();
            Label heading = Controls.wrapped("section");
            heading.setText(title);
            box.getChildren().add(heading);
            items.forEach(item -> box.getChildren().add(row.apply(item)));
            Controls.setShown(box, !items.isEmpty());
        };
        items.addListener((ListChangeListener<T>) change -> fill.run());
        fill.run();
        return box;
    }

    private Node check(VisitsViewModel.Check check) {
        Label where = Controls.wrapped("plain");
        where.setText(check.where());
        Label why = Controls.wrapped("quiet");
        why.setText(check.why());
        Button take = Controls.button(
                "take-check-" + check.number(),
                "Into the box",
                "Puts this place into the reading box; the depth is all that is left to type",
                () -> take(check));
        take.setFocusTraversable(false);
        take.getStyleClass().add("small");
        Card card = new Card(where, why, take);
        card.name(String.valueOf(check.number()), check.where());
        card.onTaken(() -> take(check));
        return card;
    }

    private void take(VisitsViewModel.Check check) {
        show.accept(check.place());
        model.take(check);
        toBox.run();
    }

    private static Node step(String words) {
        Label label = Controls.wrapped("quiet");
        label.setText(words);
        return label;
    }

    private static Node visit(VisitsViewModel.Row row) {
        Label number = new Label(row.number() + ".");
        number.setMinWidth(Region.USE_PREF_SIZE);
        Label day = new Label(row.day());
        day.getStyleClass().add("heading");
        Label readings = new Label(row.readings() + (row.afresh() ? ", dug out before" : ""));
        HBox first = new HBox(number, day, readings);
        first.getStyleClass().add("row");
        Label level = Controls.wrapped("quiet");
        level.setText(Sentences.capital(row.level()));
        VBox box = new VBox(first, level);
        box.setId("visit-" + row.number());
        box.setFocusTraversable(true);
        box.getStyleClass().add("visit");
        box.setAccessibleRole(javafx.scene.AccessibleRole.TEXT);
        box.setAccessibleText(
                "Visit " + row.number() + ", " + row.day() + ", " + readings.getText() + ", " + row.level());
        return box;
    }
}

package pegbed.ui.map;

import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import pegbed.model.Hazard;
import pegbed.ui.controls.Controls;

/** The tools of the map, what the one in hand does, and what the mark or hazard that is taken hold of is called. */
public final class MapTools extends FlowPane {
    private final MapViewModel model;
    private final Runnable toMap;
    private final ToggleGroup group = new ToggleGroup();

    /** @param toMap puts the focus on the map */
    public MapTools(MapViewModel model, Runnable toMap) {
        this.model = model;
        this.toMap = toMap;
        getStyleClass().add("tools");
        setRowValignment(VPos.CENTER);
        for (Tool tool : Tool.values()) {
            getChildren().add(button(tool));
        }
        group.selectedToggleProperty().addListener((property, before, now) -> {
            if (now == null) {
                before.setSelected(true);
            } else {
                model.toolProperty().set((Tool) now.getUserData());
            }
        });
        model.toolProperty().addListener((property, before, now) -> select(now));
        getChildren().addAll(markName(), hazardKind(), help());
    }

    private ToggleButton button(Tool tool) {
        ToggleButton button = new ToggleButton(tool.words());
        button.setId("tool-" + tool.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        button.setUserData(tool);
        button.setToggleGroup(group);
        button.setSelected(tool == model.toolProperty().get());
        Controls.tip(button, new SimpleStringProperty(tool.help()));
        button.setAccessibleHelp(tool.help());
        button.setMinWidth(USE_PREF_SIZE);
        button.getStyleClass().add("small");
        return button;
    }

    private void select(Tool tool) {
        for (Toggle toggle : group.getToggles()) {
            if (toggle.getUserData() == tool) {
                group.selectToggle(toggle);
            }
        }
    }

    /** A new mark asks what it is called; one that is taken hold of can be renamed. */
    private Node markName() {
        TextField name = Controls.field("mark-name", "Name of the mark", 9);
        model.heldMarkProperty().addListener((property, before, now) -> name.setText(now));
        model.onMarkAdded(() -> {
            name.requestFocus();
            name.selectAll();
        });
        name.setOnAction(event -> {
            if (model.renameHeld(name.getText())) {
                toMap.run();
            }
        });
        name.focusedProperty().addListener((property, before, now) -> {
            if (!now && !name.getText().equals(model.heldMarkProperty().get())) {
                model.renameHeld(name.getText());
            }
        });
        HBox row = new HBox(Controls.named("Name", name), name);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        Controls.shownWhile(row, model.heldMarkProperty().isNotEmpty());
        return row;
    }

    /** What the next hazard is, or the one that is taken hold of. */
    private Node hazardKind() {
        ComboBox<Hazard.Kind> kind = new ComboBox<>();
        kind.setId("hazard-kind");
        kind.setAccessibleText("Kind of hazard");
        kind.getItems().setAll(Hazard.Kind.values());
        kind.setConverter(Controls.chosenBy(Hazard.Kind::word));
        kind.valueProperty().bindBidirectional(model.hazardKindProperty());
        Controls.shownWhile(kind, model.toolProperty().isEqualTo(Tool.HAZARD));
        return kind;
    }

    private Node help() {
        Label help = new Help();
        help.setId("tool-help");
        help.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> model.errorProperty().get().isEmpty()
                                ? model.toolProperty().get().help()
                                : "✗ " + model.errorProperty().get(),
                        model.toolProperty(),
                        model.errorProperty()));
        help.getStyleClass().add("quiet");
        help.setWrapText(true);
        help.maxWidthProperty().bind(widthProperty());
        return help;
    }

    /** As wide as the widest button: the help wraps. */
    @Override
    protected double computeMinWidth(double height) {
        return group.getToggles().stream()
                .mapToDouble(toggle -> ((ToggleButton) toggle).prefWidth(-1))
                .max()
                .orElse(0);
    }

    /** A flow pane asks its children how high they are without saying how wide they may be. */
    private static final class Help extends Label {
        @Override
        protected double computePrefHeight(double width) {
            return super.computePrefHeight(width < 0 && getMaxWidth() > 0 ? getMaxWidth() : width);
        }
    }
}

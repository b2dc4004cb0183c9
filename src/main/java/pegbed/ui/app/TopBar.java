package pegbed.ui.app;

import java.nio.file.Path;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import pegbed.report.drawing.Layer;
import pegbed.ui.controls.Controls;
import pegbed.ui.controls.Keys;
import pegbed.ui.map.MapPane;
import pegbed.wording.Sentences;

/** What is done to the peg as a whole. */
final class TopBar extends HBox {
    private static final double NARROW_POINTS = 760;

    private final WindowFrame frame;
    private final WindowViewModels desk;

    TopBar(WindowFrame frame, WindowViewModels desk, MapPane map) {
        this.frame = frame;
        this.desk = desk;
        getStyleClass().addAll("row", "top-bar");
        setAlignment(Pos.CENTER_LEFT);
        Label title = new Label();
        title.setId("title");
        title.textProperty().bind(desk.document().titleProperty());
        title.getStyleClass().add("title");
        title.setMinWidth(60);
        // Two lines of it where the bar is narrow, and all of it under the pointer.
        title.setWrapText(true);
        Controls.tip(title, desk.document().titleProperty());
        Label keeping = new Label();
        keeping.setId("keeping");
        keeping.textProperty().bind(desk.document().keepingProperty());
        keeping.getStyleClass().add("quiet");
        keeping.setMinWidth(USE_PREF_SIZE);
        Button save = Controls.button("save", "Save", "Saves the peg (" + Keys.SAVE.words() + ")", frame::save);
        // A narrow bar keeps its room for the title: the menu saves as well.
        Controls.shownWhile(save, widthProperty().greaterThanOrEqualTo(NARROW_POINTS));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        getChildren()
                .addAll(
                        file(),
                        save,
                        undo(),
                        redo(),
                        title,
                        keeping,
                        gap,
                        view(map),
                        Controls.button(
                                "bankside",
                                "At the bank",
                                "Large buttons for wet hands (" + Keys.LARGE_BUTTONS.words() + ")",
                                frame::toBankside),
                        Controls.button(
                                "cautions-open", "⚠ Cautions", "Power lines, lightning, water", frame::showCautions));
    }

    private MenuButton file() {
        MenuButton menu = new MenuButton("Peg");
        menu.setId("peg-menu");
        menu.setMinWidth(USE_PREF_SIZE);
        menu.setOnShowing(event -> fill(menu));
        fill(menu);
        return menu;
    }

    private void fill(MenuButton menu) {
        menu.getItems()
                .setAll(
                        item("New peg", Keys.NEW_PEG, frame::newPeg),
                        item("Open", Keys.OPEN, frame::chooseAndOpen),
                        item("Shelf", Keys.SHELF, frame::showShelf),
                        item("Open the sample peg", frame::openSample),
                        new SeparatorMenuItem(),
                        item("Save", Keys.SAVE, frame::save),
                        item("Save as", Keys.SAVE_AS, frame::saveAs),
                        item("Bring in readings from a file", frame::bringIn),
                        new SeparatorMenuItem(),
                        item("Rigs", Keys.RIGS, frame::showRigs),
                        item("Card", Keys.CARD, frame::showCard),
                        item("Export", frame::export));
        if (!desk.document().recent().isEmpty()) {
            menu.getItems().add(new SeparatorMenuItem());
            for (Path path : desk.document().recent()) {
                MenuItem item = item(path.getFileName().toString(), () -> frame.open(path));
                item.setMnemonicParsing(false);
                menu.getItems().add(item);
            }
        }
    }

    private MenuItem item(String words, Keys keys, Runnable action) {
        MenuItem item = item(words, action);
        item.setAccelerator(keys.accelerator());
        return item;
    }

    private MenuItem item(String words, Runnable action) {
        MenuItem item = new MenuItem(words);
        item.setOnAction(event -> action.run());
        // The keys of a menu work wherever the cursor is; under a sheet they must not.
        item.disableProperty().bind(frame.sheetOpenProperty());
        return item;
    }

    private Button undo() {
        Button button = Controls.button("undo", "Undo", desk.document()::undo);
        Controls.tip(button, desk.document().undoProperty().concat(" (" + Keys.UNDO.words() + ")"));
        button.disableProperty().bind(desk.document().undoProperty().isEmpty());
        button.accessibleTextProperty()
                .bind(javafx.beans.binding.Bindings.concat(
                        "Undo ", desk.document().undoProperty()));
        return button;
    }

    private Button redo() {
        Button button = Controls.button("redo", "Redo", desk.document()::redo);
        Controls.tip(button, desk.document().redoProperty().concat(" (" + Keys.REDO.words() + ")"));
        button.disableProperty().bind(desk.document().redoProperty().isEmpty());
        button.accessibleTextProperty()
                .bind(javafx.beans.binding.Bindings.concat(
                        "Redo ", desk.document().redoProperty()));
        return button;
    }

    private MenuButton view(MapPane map) {
        MenuButton menu = new MenuButton("Show");
        menu.setId("show-menu");
        menu.setMinWidth(USE_PREF_SIZE);
        for (Layer layer : Layer.values()) {
            if (layer == Layer.GROUND || layer == Layer.SEAT || layer == Layer.FURNITURE || layer == Layer.CAUTION) {
                continue;
            }
            CheckMenuItem item = new CheckMenuItem(Sentences.capital(layer.words()));
            item.setId("layer-" + layer.name().toLowerCase(java.util.Locale.ROOT));
            item.setSelected(map.shows(layer));
            item.selectedProperty().addListener((property, before, now) -> map.setLayer(layer, now));
            menu.getItems().add(item);
        }
        CheckMenuItem dark = new CheckMenuItem("Dark window");
        dark.setId("dark");
        dark.selectedProperty().bindBidirectional(frame.darkProperty());
        CheckMenuItem joinedUp = new CheckMenuItem("Joined up: readings alone, no model");
        joinedUp.setId("joined-up");
        joinedUp.setAccelerator(Keys.JOINED_UP.accelerator());
        joinedUp.selectedProperty().bindBidirectional(map.joinedUpProperty());
        CheckMenuItem legend = new CheckMenuItem("Legend");
        legend.setId("legend");
        legend.setAccelerator(Keys.LEGEND.accelerator());
        legend.selectedProperty().bindBidirectional(map.legendProperty());
        menu.getItems().addAll(new SeparatorMenuItem(), joinedUp, legend, new SeparatorMenuItem(), dark);
        return menu;
    }
}

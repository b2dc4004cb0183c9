package pegbed.ui.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import pegbed.exchange.ReadingsImport;
import pegbed.geometry.Doubts;
import pegbed.model.InputException;
import pegbed.session.ReadingEdits;
import pegbed.ui.bankside.BanksideView;
import pegbed.ui.card.CardSheet;
import pegbed.ui.card.CardViewModel;
import pegbed.ui.controls.Controls;
import pegbed.ui.controls.FileChoice;
import pegbed.ui.controls.Keys;
import pegbed.ui.exchange.ExportViewModel;
import pegbed.ui.exchange.ImportSheet;
import pegbed.ui.place.NewPegSheet;
import pegbed.ui.plan.RigsSheet;
import pegbed.ui.shelf.ShelfSheet;
import pegbed.ui.shelf.ShelfViewModel;

/** All of the window: bar, news, the view in use, and the sheets over it. */
public final class WindowFrame extends StackPane {
    private static final double SHELF_WIDTH = 1000;

    private final WindowViewModels desk;
    private final FileChoice files;
    private final MainView main;
    private final Sheets sheets = new Sheets();
    private final ShelfViewModel shelf;
    private Optional<ShelfSheet> shelfSheet = Optional.empty();
    private final CardViewModel.Helpers cardHelpers;
    private final ExportViewModel exporting;
    private final BorderPane page = new BorderPane();
    private final VBox top = new VBox();
    private final TopBar bar;
    private final BooleanProperty dark;
    private Optional<BanksideView> bankside = Optional.empty();

    /**
     * @param desk the session and its view models
     * @param files asks for file names
     * @param beginsDark whether the window is dark at first; what the person switches to is remembered
     */
    WindowFrame(WindowViewModels desk, FileChoice files, boolean beginsDark) {
        dark = new SimpleBooleanProperty(beginsDark);
        this.desk = desk;
        this.files = files;
        shelf = new ShelfViewModel(
                desk.session(), desk.remembered(), WindowViewModels.thread("shelf"), Platform::runLater);
        cardHelpers = new CardViewModel.Helpers(
                WindowViewModels.thread("card"),
                WindowViewModels.thread("printers"),
                Platform::runLater,
                CardViewModel.Printers::find,
                desk.session().log());
        exporting = new ExportViewModel(
                WindowViewModels.thread("export"),
                Platform::runLater,
                desk.session().log(),
                desk.document()::refuse);
        main = new MainView(desk);
        main.darkProperty().bind(dark);
        bar = new TopBar(this, desk, main.map());
        top.getChildren().addAll(bar, news());
        page.setTop(top);
        page.setCenter(main);
        getStyleClass().add("window");
        getChildren().addAll(page, sheets);
        sheets.onClosed(this::focusBox);
        desk.rigs().onAsked(this::showRigs);
        page.disableProperty().bind(sheets.coveringProperty());
        addEventFilter(KeyEvent.KEY_PRESSED, this::shortcut);
        dark.addListener((property, before, now) -> desk.remembered().setDark(now));
    }

    BooleanProperty darkProperty() {
        return dark;
    }

    WindowViewModels desk() {
        return desk;
    }

    /** Whether a sheet lies over the window. */
    ReadOnlyBooleanProperty sheetOpenProperty() {
        return sheets.coveringProperty();
    }

    ShelfViewModel shelf() {
        return shelf;
    }

    MainView main() {
        return main;
    }

    private Node news() {
        Label words = Controls.wrapped("plain");
        words.setId("news");
        words.textProperty().bind(desk.document().newsProperty());
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        Button again = Controls.button("open-again", "Open again", this::openAgain);
        Controls.shownWhile(again, desk.document().changedByAnotherProperty());
        Button close = Controls.button("news-close", "Close", desk.document()::dismissNews);
        HBox row = new HBox(words, again, close);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().addAll("row", "news");
        Controls.shownWhile(row, desk.document().newsProperty().isNotEmpty());
        return row;
    }

    private void shortcut(KeyEvent event) {
        if (sheets.isOpen()) {
            return;
        }
        Keys.pressed(Keys.Where.WINDOW, event)
                .flatMap(key -> action(key, event))
                .ifPresent(action -> {
                    action.run();
                    event.consume();
                });
    }

    private Optional<Runnable> action(Keys key, KeyEvent event) {
        Runnable action = switch (key) {
            case UNDO -> desk.document()::undo;
            case REDO -> desk.document()::redo;
            case SAVE -> this::save;
            case SAVE_AS -> this::saveAs;
            case OPEN -> this::chooseAndOpen;
            case SHELF -> this::showShelf;
            case NEW_PEG -> this::newPeg;
            case CARD -> this::showCard;
            case RIGS -> this::showRigs;
            case LARGE_BUTTONS -> bankside.isPresent() ? this::toMain : this::toBankside;
            case BACK_TO_BOX -> bankside.isPresent() && event.getCode() == KeyCode.ESCAPE ? null : this::backToBox;
            default -> null;
        };
        return Optional.ofNullable(action);
    }

    void focusBox() {
        if (bankside.isEmpty() && !sheets.isOpen()) {
            main.focusBox();
        }
    }

    /** Leaves the tool in hand, and puts the cursor into the box. */
    private void backToBox() {
        main.leaveTool();
        focusBox();
    }

    void save() {
        saveThen(() -> {});
    }

    /** Saves, asking for a name where there is none yet; goes on only when it is saved. */
    private void saveThen(Runnable next) {
        if (desk.document().file().isPresent()) {
            desk.document().save(next);
        } else {
            saveAsThen(next);
        }
    }

    void saveAs() {
        saveAsThen(() -> {});
    }

    private void saveAsThen(Runnable next) {
        files.toSave(desk.document().suggestedName(), desk.document().folder())
                .ifPresent(path -> desk.document().saveAs(path, next));
    }

    void chooseAndOpen() {
        settleUnsaved(() -> files.toOpen(desk.document().folder()).ifPresent(desk.document()::open));
    }

    void open(Path path) {
        settleUnsaved(() -> desk.document().open(path));
    }

    /** The person's own pegs in a folder, looked at afresh. */
    public void showShelf() {
        sheets.open(() -> {
            ShelfSheet sheet = shelfSheet.orElseGet(() -> new ShelfSheet(shelf, files, this::openFromShelf));
            shelfSheet = Optional.of(sheet);
            return Sheet.of("shelf", "Shelf", sheet.content(), sheet.buttons(sheets::close))
                    .withMaxWidth(SHELF_WIDTH)
                    .onOpened(() -> {
                        sheet.focus();
                        shelf.look();
                    });
        });
    }

    private void openFromShelf(Path path) {
        sheets.close();
        open(path);
    }

    private void openAgain() {
        Button again = Controls.button("again-yes", "Open again", () -> {
            sheets.close();
            desk.document().file().ifPresent(desk.document()::open);
        });
        if (desk.document().unsaved()) {
            sheets.ask(
                    "ask-again",
                    "Open the changed file?",
                    "Your own edits since the last save would be given up. Save under another name first to keep both.",
                    List.of(again, Controls.button("again-no", "Stay here", sheets::close)));
        } else {
            again.fire();
        }
    }

    void openSample() {
        settleUnsaved(() -> {
            try {
                desk.document().begin(SamplePegFiles.first());
            } catch (InputException e) {
                desk.document().refuse(e.getMessage());
            }
        });
    }

    void newPeg() {
        settleUnsaved(() -> sheets.open(() -> {
            NewPegSheet sheet = new NewPegSheet(desk.session().peg().pole());
            return Sheet.of(
                            "new-peg",
                            "New peg",
                            sheet.content(),
                            sheet.buttons(
                                    () -> sheet.peg().ifPresent(peg -> {
                                        sheets.close();
                                        desk.rigs().begin(peg, desk.document());
                                    }),
                                    sheets::close))
                    .onOpened(sheet::focus);
        }));
    }

    /** Exports the peg with its lines as they stand. */
    void export() {
        desk.plan()
                .planProperty()
                .get()
                .ifPresentOrElse(
                        plan -> files.toExport(ExportViewModel.suggestedName(
                                        desk.session().peg()))
                                .ifPresent(path -> exporting.export(plan, path)),
                        () -> desk.document().refuse("There is no map yet to export; add banks and readings first."));
    }

    /** Shows how the readings of a file were understood; taken, they are one edit of today's visit. */
    private void ask(Path path, ReadingsImport read) {
        sheets.open(() -> {
            ImportSheet sheet = new ImportSheet(desk.session().peg(), read);
            return Sheet.of(
                    "import",
                    "Readings from " + path.getFileName(),
                    sheet.content(),
                    sheet.buttons(
                            () -> {
                                sheets.close();
                                take(read);
                            },
                            sheets::close));
        });
    }

    private void take(ReadingsImport read) {
        try {
            desk.session().edit(ReadingEdits.bringIn(read.readings()));
        } catch (InputException e) {
            desk.document().refuse(e.getMessage());
        }
    }

    /** Looks at the readings of a table or of points; the person then takes or leaves them. */
    void bringIn() {
        files.toBringIn().ifPresent(path -> {
            try {
                ReadingsImport read = ReadingsImport.of(path, desk.session().peg(), Optional.empty());
                Doubts.refuseBeyondPole(
                        desk.session().peg(),
                        read.readings(),
                        path.getFileName().toString(),
                        "give the peg a longer pole under Place first");
                desk.document().forgetRefusal();
                ask(path, read);
            } catch (InputException e) {
                desk.document().refuse(e.getMessage());
            }
        });
    }

    /** The card of the lines as they stand. */
    void showCard() {
        desk.plan()
                .planProperty()
                .get()
                .ifPresentOrElse(
                        plan -> sheets.open(() -> {
                            CardViewModel card = new CardViewModel(
                                    plan, desk.fishingPage(plan), cardHelpers, desk.document()::refuse);
                            CardSheet sheet =
                                    new CardSheet(card, files, desk.document().folder());
                            return Sheet.of("card", "Card", sheet.content(), sheet.buttons(sheets::close))
                                    .withSaid(sheet.said())
                                    .onClosed(card::close);
                        }),
                        () -> desk.document()
                                .refuse("There are no lines yet to make a card of; add banks and readings first."));
    }

    /** How rigs are tied. */
    void showRigs() {
        sheets.open(() -> {
            RigsSheet sheet = new RigsSheet(desk.rigs());
            return Sheet.of("rigs", "Rigs", sheet.content(), sheet.buttons(sheets::close))
                    .withSaid(sheet.said())
                    .withMaxWidth(RigsSheet.WIDTH)
                    .onOpened(sheet::focus);
        });
    }

    void showCautions() {
        sheets.showCautions();
    }

    /** What the first start shows: the cautions, and the hint until it is closed. */
    WindowFrame welcomeUnless(boolean hintClosed) {
        if (!hintClosed) {
            main.addAbove(new FirstStartHint(desk.remembered()::closeHint));
            sheets.showCautions();
        }
        return this;
    }

    /**
     * Goes on at once if all is saved; else asks what to do with the edits. A sheet that is open is put away first: the
     * window's own close button works while one is.
     */
    void askAboutUnsaved(Runnable next) {
        sheets.close();
        settleUnsaved(next);
    }

    /** As {@link #askAboutUnsaved}, but nothing while a sheet is open. */
    private void settleUnsaved(Runnable next) {
        if (sheets.isOpen()) {
            return;
        }
        if (!desk.document().unsaved()) {
            next.run();
            return;
        }
        sheets.ask(
                "ask-unsaved",
                "Save your edits?",
                desk.session().peg().name().title() + " has edits that no file holds yet.",
                List.of(
                        Controls.button("unsaved-save", "Save", () -> {
                            sheets.close();
                            saveThen(next);
                        }),
                        Controls.button("unsaved-drop", "Give them up", () -> {
                            sheets.close();
                            next.run();
                        }),
                        Controls.button("unsaved-stay", "Stay here", sheets::close)));
    }

    /** The large-button view. */
    void toBankside() {
        BanksideView view =
                new BanksideView(desk.bankside(), desk.plan(), desk.fishing(), desk.map(), main.map(), this::toMain);
        bankside = Optional.of(view);
        page.setTop(null);
        page.setCenter(view);
        view.takeFocus();
    }

    /** Back to the usual view. */
    void toMain() {
        bankside = Optional.empty();
        main.takeMapBack();
        page.setTop(top);
        page.setCenter(main);
        focusBox();
    }
}

package pegbed.ui.card;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.print.Printer;
import javafx.scene.image.Image;
import pegbed.plan.Plan;
import pegbed.report.card.Card;
import pegbed.report.card.DayPage;
import pegbed.report.drawing.Themes;
import pegbed.session.BackgroundTask;
import pegbed.storage.disk.ProgramLog;
import pegbed.storage.disk.WholeFile;
import pegbed.ui.controls.Pixels;
import pegbed.ui.controls.Texts;

/**
 * A card that is looked at: its picture is drawn, its file written and the printers are looked for aside, as each of
 * these can take long.
 */
public final class CardViewModel {
    /**
     * The printers of this computer.
     *
     * @param all of them
     * @param usual the one that the system takes if nothing is said
     */
    public record Printers(List<Printer> all, Optional<Printer> usual) {
        /** Asks the system, which may take seconds where printers lie on a network. */
        public static Printers find() {
            return new Printers(
                    List.copyOf(Printer.getAllPrinters()), Optional.ofNullable(Printer.getDefaultPrinter()));
        }
    }

    /**
     * Who does what takes time.
     *
     * @param worker draws and writes, one piece of work after the other
     * @param seeker looks for printers
     * @param owner runs what belongs to the owner's thread
     * @param finding finds the printers
     * @param log keeps errors that nobody expected
     */
    public record Helpers(
            Executor worker, Executor seeker, Executor owner, Supplier<Printers> finding, ProgramLog log) {
        private BackgroundTask task(String failure, Executor executor) {
            return new BackgroundTask(failure, executor, owner, log);
        }
    }

    /** What Java hands printed pages to on Linux; where it is missing they vanish without a word. */
    static final Path LINUX_SPOOLER = Path.of("/usr/bin/lpr");

    private final Plan plan;
    private final Supplier<Optional<DayPage>> fishing;
    private final BackgroundTask drawer;
    private final BackgroundTask seeking;
    private final BackgroundTask saving;
    private final Consumer<String> news;
    private final ReadOnlyObjectWrapper<Optional<Image>> picture = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Printers>> printers = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper drawing = new ReadOnlyBooleanWrapper(true);
    private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
    private boolean closed;

    /**
     * Begins to draw.
     *
     * @param plan what the card shows
     * @param fishing makes its second page, if the peg was fished
     * @param news gets the reason why a card was not saved, if its sheet is no longer there to say it
     */
    public CardViewModel(Plan plan, Supplier<Optional<DayPage>> fishing, Helpers helpers, Consumer<String> news) {
        this.plan = plan;
        this.fishing = fishing;
        this.news = news;
        drawer = helpers.task("The card could not be drawn", helpers.worker());
        seeking = helpers.task("The printers could not be found", helpers.seeker());
        saving = helpers.task("The card could not be saved", helpers.worker());
        drawer.latest(
                monitor -> Pixels.of(Card.picture(plan, Themes.LIGHT)),
                new BackgroundTask.Outcome<Image>(drawn -> show(Optional.of(drawn)), why -> {
                    show(Optional.empty());
                    message.set(why);
                }));
        seeking.latest(monitor -> helpers.finding().get(), new BackgroundTask.Outcome<Printers>(this::found, why -> {
            found(new Printers(List.of(), Optional.empty()));
            message.set(why);
        }));
    }

    /** The card, to be looked at; empty while it is being drawn. */
    ReadOnlyObjectProperty<Optional<Image>> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    /** The printers; empty while they are looked for. */
    ReadOnlyObjectProperty<Optional<Printers>> printersProperty() {
        return printers.getReadOnlyProperty();
    }

    /** Whether the card is being drawn. */
    ReadOnlyBooleanProperty drawingProperty() {
        return drawing.getReadOnlyProperty();
    }

    /** A name for the card's file: the peg's. */
    String suggestedName() {
        return Texts.fileName(plan.findings().map().peg().name().title()) + "-card.pdf";
    }

    /**
     * Why nothing can be printed on this computer though it has a printer; empty if nothing is in the way.
     *
     * @param system the operating system's name
     * @param spooler what pages are handed to on Linux
     */
    static Optional<String> hindrance(String system, Path spooler) {
        return system.equals("Linux") && !Files.isExecutable(spooler)
                ? Optional.of("Printing needs the program " + spooler
                        + ", which many systems have in a package cups-bsd; add it, or save the card as a PDF and print"
                        + " that.")
                : Optional.empty();
    }

    /** What was done last, or why it was not, one sentence; empty if nothing. */
    ReadOnlyStringProperty messageProperty() {
        return message.getReadOnlyProperty();
    }

    /** Says something about the card. */
    void show(String sentence) {
        message.set(sentence);
    }

    /** The card is put away: work on it that has not begun is dropped, and what comes of the rest as well. */
    public void close() {
        closed = true;
        drawer.cancel();
        seeking.cancel();
    }

    private void show(Optional<Image> drawn) {
        drawing.set(false);
        picture.set(drawn);
    }

    private void found(Printers some) {
        printers.set(Optional.of(some));
    }

    /** Saves the card as the kind of file that its name asks for, though the card be put away meanwhile. */
    void save(Path path) {
        message.set("Saving " + path.getFileName() + " …");
        saving.run(
                monitor -> {
                    WholeFile.write(path, Card.file(path.getFileName().toString(), plan, fishing.get(), Themes.LIGHT));
                    return "Saved " + path.getFileName() + ".";
                },
                new BackgroundTask.Outcome<>(message::set, this::refuse));
    }

    private void refuse(String why) {
        if (closed) {
            news.accept(why);
        } else {
            message.set(why);
        }
    }
}

package pegbed.ui.card;

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
import pegbed.model.InputException;
import pegbed.plan.Plan;
import pegbed.report.card.Card;
import pegbed.report.drawing.Themes;
import pegbed.storage.disk.WholeFile;
import pegbed.ui.controls.Pixels;

/**
 * A card that is looked at: its picture is drawn, its file written and the printers are looked for aside, as each of these
 * can take long.
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
     */
    public record Helpers(Executor worker, Executor seeker, Executor owner, Supplier<Printers> finding) {}

    private final Plan plan;
    private final Helpers helpers;
    private final Consumer<String> news;
    private final ReadOnlyObjectWrapper<Optional<Image>> picture = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Printers>> printers = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper drawing = new ReadOnlyBooleanWrapper(true);
    private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
    private volatile boolean closed;

    /**
     * Begins to draw.
     *
     * @param plan what the card shows
     * @param news gets the reason why a card was not saved, if its sheet is no longer there to say it
     */
    public CardViewModel(Plan plan, Helpers helpers, Consumer<String> news) {
        this.plan = plan;
        this.helpers = helpers;
        this.news = news;
        helpers.worker().execute(this::draw);
        helpers.seeker().execute(this::seek);
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
    }

    private void draw() {
        if (closed) {
            return;
        }
        try {
            Image drawn = Pixels.of(Card.picture(plan, Themes.LIGHT));
            whileOpen(() -> {
                drawing.set(false);
                picture.set(Optional.of(drawn));
            });
        } catch (RuntimeException e) {
            whileOpen(() -> {
                drawing.set(false);
                message.set("The card could not be drawn (" + e + ").");
            });
        }
    }

    private void seek() {
        if (!closed) {
            Printers found = helpers.finding().get();
            whileOpen(() -> printers.set(Optional.of(found)));
        }
    }

    /** Saves the card as the kind of file that its name asks for, though the card be put away meanwhile. */
    void save(Path path) {
        message.set("Saving " + path.getFileName() + " …");
        helpers.worker().execute(() -> {
            try {
                WholeFile.write(path, Card.file(path.getFileName().toString(), plan, Themes.LIGHT));
                whileOpen(() -> message.set("Saved " + path.getFileName() + "."));
            } catch (InputException e) {
                helpers.owner().execute(() -> refuse(e.getMessage()));
            }
        });
    }

    private void refuse(String why) {
        if (closed) {
            news.accept(why);
        } else {
            message.set(why);
        }
    }

    private void whileOpen(Runnable work) {
        helpers.owner().execute(() -> {
            if (!closed) {
                work.run();
            }
        });
    }
}

package pegbed.ui.shelf;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.session.BackgroundTask;
import pegbed.session.Session;
import pegbed.storage.shelf.Shelf;
import pegbed.storage.shelf.ShelfFiles;
import pegbed.storage.shelf.ShelfPeg;
import pegbed.ui.document.WindowPreferences;
import pegbed.wording.Quantities;

/** The person's own pegs in a folder: listed, found, and put in order. Nothing of the disk is waited for here. */
public final class ShelfViewModel {
    /**
     * A peg on the shelf.
     *
     * @param peg as its file has it
     * @param venue where it is; the file's name where the file can't be read
     * @param water the water
     * @param number the peg's number
     * @param lastVisit day of the latest visit; empty if not known
     * @param readings how many of all visits
     * @param deepest the deepest reading of the latest visit that has any
     * @param level the latest visit's board measure; empty if not measured
     * @param file the file's name, with the folder that it lies in where that is not the shelf's own
     * @param trouble what is wrong with the file, one sentence; empty if nothing is
     */
    public record Row(
            ShelfPeg peg,
            String venue,
            String water,
            String number,
            String lastVisit,
            String readings,
            String deepest,
            String level,
            String file,
            String trouble) {
        boolean canBeRead() {
            return peg.visits() > 0;
        }
    }

    private final Session session;
    private final WindowPreferences remembered;
    private final BackgroundTask looking;
    private final BackgroundTask acting;
    private final StringProperty text = new SimpleStringProperty("");
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper folderWords = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper count = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper(false);
    private Optional<Path> folder;
    private Optional<Shelf> shelf = Optional.empty();
    private boolean listing;

    /**
     * @param remembered keeps the folder between runs
     * @param worker looks at the disk, one piece of work after the other
     * @param owner runs what belongs to the owner's thread
     */
    public ShelfViewModel(Session session, WindowPreferences remembered, Executor worker, Executor owner) {
        this.session = session;
        this.remembered = remembered;
        looking = new BackgroundTask("The folder could not be looked at", worker, owner, session.log());
        acting = new BackgroundTask("That could not be done", worker, owner, session.log());
        folder = remembered.shelf();
        text.addListener((property, before, now) -> list());
        tellFolder();
    }

    /** What is searched for; every word must be part of venue, water, number or file name. */
    StringProperty textProperty() {
        return text;
    }

    /** The pegs that are found, by venue, water and number. */
    ObservableList<Row> rows() {
        return rows;
    }

    /** Whether the list is being made anew just now, so that what is chosen in it changes by itself. */
    boolean isListing() {
        return listing;
    }

    /** Which folder is looked at, in words. */
    ReadOnlyStringProperty folderProperty() {
        return folderWords.getReadOnlyProperty();
    }

    /** How many pegs are shown, and what is odd about them. */
    ReadOnlyStringProperty countProperty() {
        return count.getReadOnlyProperty();
    }

    /** What was done last, one sentence; empty if nothing. */
    ReadOnlyStringProperty saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** Why something was not done, one sentence; empty if all was. */
    ReadOnlyStringProperty errorProperty() {
        return error.getReadOnlyProperty();
    }

    /** Whether the folder is being looked at. */
    ReadOnlyBooleanProperty lookingProperty() {
        return busy.getReadOnlyProperty();
    }

    /** Looks at another folder, and remembers it. */
    public void choose(Path chosen) {
        folder = Optional.of(chosen.toAbsolutePath().normalize());
        folder.ifPresent(remembered::setShelf);
        shelf = Optional.empty();
        tellFolder();
        list();
        look();
    }

    /** Looks at the folder again; only files that have changed since are read. */
    public void look() {
        if (folder.isEmpty()) {
            // Nobody chose one yet: most likely it is where the open peg lies.
            folder = session.file().map(file -> file.toAbsolutePath().getParent());
            tellFolder();
        }
        said.set("");
        error.set("");
        refresh();
    }

    private void refresh() {
        if (folder.isEmpty()) {
            return;
        }
        Path wanted = folder.get();
        Optional<Shelf> known = shelf;
        busy.set(true);
        tellFolder();
        looking.latest(
                monitor -> known.isPresent() ? known.get().refreshed() : Shelf.of(wanted),
                new BackgroundTask.Outcome<>(found -> looked(Optional.of(found)), why -> {
                    looked(Optional.empty());
                    error.set(why);
                }));
    }

    private void looked(Optional<Shelf> found) {
        shelf = found;
        busy.set(false);
        tellFolder();
        list();
    }

    private void tellFolder() {
        folderWords.set(folder.map(path -> (busy.get() ? "Looking at " : "") + path)
                .orElse("Choose the folder that your peg files are in."));
    }

    private void list() {
        List<Row> now = shelf.map(
                        all -> all.find(text.get()).stream().map(this::row).toList())
                .orElse(List.of());
        if (!now.equals(rows)) {
            listing = true;
            rows.setAll(now);
            listing = false;
        }
        count.set(shelf.map(all -> counted(all, now.size())).orElse(""));
    }

    private static String counted(Shelf all, int shown) {
        int whole = all.pegs().size();
        if (whole == 0) {
            return "No peg file lies in this folder or in the folders in it.";
        }
        int twins = all.twins().size();
        return (shown == whole ? String.valueOf(whole) : shown + " of " + whole)
                + (whole == 1 ? " peg" : " pegs")
                + (twins == 0 ? "" : "; ⚠ " + twins + " files share their peg's name with another, as copies do");
    }

    private Row row(ShelfPeg peg) {
        Quantities quantities = Quantities.of(Peg.EMPTY.withUnits(peg.units()));
        boolean read = peg.visits() > 0;
        return new Row(
                peg,
                read ? peg.name().venue() : peg.file().getFileName().toString(),
                peg.name().water(),
                peg.name().number(),
                peg.lastVisit().map(Quantities::day).orElse(""),
                read ? String.valueOf(peg.readings()) : "",
                peg.deepestReadingMetres().isPresent()
                        ? quantities.depth(peg.deepestReadingMetres().getAsDouble())
                        : "",
                peg.boardToWaterMetres().isPresent()
                        ? quantities.depthToHalfInch(peg.boardToWaterMetres().getAsDouble())
                        : "",
                fileName(peg.file()),
                peg.trouble().orElse(""));
    }

    private String fileName(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        return folder.filter(whole::startsWith)
                .map(path -> path.relativize(whole))
                .orElse(whole.getFileName())
                .toString();
    }

    /** Copies a peg file beside itself. */
    void duplicate(Row row) {
        act(() -> title(row) + " has a copy, " + ShelfFiles.duplicate(row.peg()).getFileName() + ".");
    }

    /** Gives a peg another name; its file keeps its own. */
    void rename(Row row, PegName name) {
        if (isFree(row, "change its name under Place")) {
            act(() -> {
                ShelfFiles.rename(row.peg(), name);
                return title(row) + " is now " + name.title() + ".";
            });
        }
    }

    /** Moves a peg file, and its earlier versions, to another folder. */
    void move(Row row, Path to) {
        if (isFree(row, "open another peg before you move this one")) {
            act(() ->
                    title(row) + " is now in " + ShelfFiles.move(row.peg(), to).getParent() + ".");
        }
    }

    /** Puts a peg file, and its earlier versions, into the folder for deleted pegs beside it. */
    void delete(Row row) {
        if (isFree(row, "open another peg before you delete this one")) {
            act(() -> title(row) + " is deleted; it lies in "
                    + ShelfFiles.delete(row.peg()).getParent() + ".");
        }
    }

    /** A peg in words: its name, or its file's where it can't be read. */
    static String title(Row row) {
        return row.canBeRead()
                ? row.peg().name().title()
                : row.peg().file().getFileName().toString();
    }

    /** The file of the open peg is the session's own. */
    private boolean isFree(Row row, String instead) {
        boolean open = session.file()
                .map(file -> file.toAbsolutePath().normalize())
                .filter(row.peg().file().toAbsolutePath().normalize()::equals)
                .isPresent();
        if (open) {
            said.set("");
            error.set("That peg is open in this window; " + instead + ".");
        }
        return !open;
    }

    /** What is done to a file; returns what came of it. */
    private interface Deed {
        String done() throws InputException;
    }

    private void act(Deed deed) {
        said.set("");
        error.set("");
        acting.run(
                monitor -> deed.done(),
                new BackgroundTask.Outcome<>(
                        sentence -> {
                            said.set(sentence);
                            refresh();
                        },
                        why -> {
                            error.set(why);
                            refresh();
                        }));
    }
}

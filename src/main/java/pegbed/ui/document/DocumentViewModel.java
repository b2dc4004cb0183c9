package pegbed.ui.document;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import pegbed.model.Peg;
import pegbed.session.Session;
import pegbed.storage.disk.PegFile;
import pegbed.ui.controls.Texts;

/** The open peg as a document: its title, its file, undo, and what the person should hear about them. */
public final class DocumentViewModel {
    /** What a system's own dialog or a person makes of a peg file's ending. */
    private static final Pattern INCOMPLETE_ENDING = Pattern.compile("(?i)(?:(?:\\.peg)?\\.json|\\.peg)$");

    private final Session session;
    private final WindowPreferences remembered;
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper windowTitle = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper keeping = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper news = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper undo = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper redo = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper changedByAnother = new ReadOnlyBooleanWrapper(false);
    private String refusal = "";
    private String dismissed = "";

    public DocumentViewModel(Session session, WindowPreferences remembered) {
        this.session = session;
        this.remembered = remembered;
        session.onChange(this::refresh);
        refresh();
    }

    /** What the peg is called. */
    public ReadOnlyStringProperty titleProperty() {
        return title.getReadOnlyProperty();
    }

    /** The title with the file's name, a star before it if there are edits that the file does not hold. */
    public ReadOnlyStringProperty windowTitleProperty() {
        return windowTitle.getReadOnlyProperty();
    }

    /** Whether edits are saved, or kept until they are. */
    public ReadOnlyStringProperty keepingProperty() {
        return keeping.getReadOnlyProperty();
    }

    /** What the person should hear, one sentence; empty if nothing. */
    public ReadOnlyStringProperty newsProperty() {
        return news.getReadOnlyProperty();
    }

    /** What Undo would undo; empty if nothing. */
    public ReadOnlyStringProperty undoProperty() {
        return undo.getReadOnlyProperty();
    }

    /** What Redo would make again; empty if nothing. */
    public ReadOnlyStringProperty redoProperty() {
        return redo.getReadOnlyProperty();
    }

    /** Whether another window or program has changed the file. */
    public ReadOnlyBooleanProperty changedByAnotherProperty() {
        return changedByAnother.getReadOnlyProperty();
    }

    /** The news was read. */
    public void dismissNews() {
        // The same failure, should it come again, is said again.
        dismissed = session.failure().isEmpty() ? news.get() : "";
        refusal = "";
        session.dismissFailure();
        refresh();
    }

    public void undo() {
        session.undo();
    }

    public void redo() {
        session.redo();
    }

    public boolean unsaved() {
        return session.unsaved();
    }

    public Optional<Path> file() {
        return session.file();
    }

    /** The files that were open last, the latest first. */
    public List<Path> recent() {
        return remembered.recent();
    }

    /** A name for a file of this peg. */
    public String suggestedName() {
        return Texts.fileName(session.peg().name().title()) + PegFile.ENDING;
    }

    /** The folder of the peg's file, else of the file that was last open: where people look for the next one. */
    public Optional<Path> folder() {
        return session.file()
                .or(() -> remembered.recent().stream().findFirst())
                .map(file -> file.toAbsolutePath().getParent());
    }

    public void open(Path path) {
        remembered.addRecent(path);
        refusal = "";
        dismissed = "";
        session.open(path, sentence -> {
            remembered.forgetRecent(path);
            refuse(sentence);
        });
    }

    public void begin(Peg peg) {
        refusal = "";
        session.begin(peg);
    }

    /** Saves to the peg's own file. */
    public void save(Runnable done) {
        session.save(
                () -> {
                    refusal = "";
                    done.run();
                },
                this::refuse);
    }

    /** Saves under a name; the ending is completed, but then nothing is written over, which nobody has agreed to. */
    public void saveAs(Path chosen, Runnable done) {
        Path path = completed(chosen);
        if (!path.equals(chosen) && Files.exists(path)) {
            refuse(path.getFileName() + " is there already; choose that file itself to write over it, or type another"
                    + " name.");
            return;
        }
        session.saveAs(
                path,
                () -> {
                    refusal = "";
                    remembered.addRecent(path);
                    done.run();
                },
                this::refuse);
    }

    /** What is called otherwise is found neither by Open nor by the shelf. */
    private static Path completed(Path chosen) {
        String name = chosen.getFileName().toString();
        return name.endsWith(PegFile.ENDING)
                ? chosen
                : chosen.resolveSibling(INCOMPLETE_ENDING.matcher(name).replaceFirst("") + PegFile.ENDING);
    }

    /** What was refused before is over. */
    public void forgetRefusal() {
        refusal = "";
        refresh();
    }

    public void refuse(String sentence) {
        refusal = sentence;
        refresh();
    }

    private void refresh() {
        title.set(session.peg().name().title());
        String file = session.file().map(path -> path.getFileName().toString()).orElse("not saved yet");
        windowTitle.set((session.unsaved() ? "*" : "") + session.peg().name().title() + " (" + file + ") – Pegbed");
        keeping.set(keeping());
        undo.set(session.undoLabel().orElse(""));
        redo.set(session.redoLabel().orElse(""));
        changedByAnother.set(session.changedByAnother());
        String sentence = sentence();
        news.set(sentence.equals(dismissed) ? "" : sentence);
        if (sentence.isEmpty()) {
            dismissed = "";
        }
    }

    private String keeping() {
        if (!session.trouble().isEmpty()) {
            return "Not kept";
        }
        if (!session.unsaved()) {
            return session.file().isPresent() ? "Saved" : "";
        }
        return session.kept() ? "Kept, not saved yet" : "Keeping";
    }

    private String sentence() {
        if (!refusal.isEmpty()) {
            return refusal;
        }
        if (!session.trouble().isEmpty()) {
            return session.trouble();
        }
        if (!session.failure().isEmpty()) {
            return session.failure();
        }
        if (session.changedByAnother()) {
            return "Another window or program has changed this peg's file; open it again, or save under another name.";
        }
        return session.news();
    }
}

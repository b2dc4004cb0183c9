package pegbed.ui.plan;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.RigTemplate;
import pegbed.model.Units;
import pegbed.notation.Shotting;
import pegbed.session.BackgroundTask;
import pegbed.session.PlanEdits;
import pegbed.session.Session;
import pegbed.storage.shelf.OwnRigs;
import pegbed.ui.document.DocumentViewModel;

/** How rigs are tied: the templates of this peg and those with which new pegs begin, to be changed. */
public final class RigsViewModel {
    private static final String WRONG = "Put right what is marked first.";

    /** What was loaded when the rows were made. */
    private record Loaded(List<RigTemplate> templates, Units.Depth unit) {}

    private final Session session;
    private final OwnRigs own;
    private final BackgroundTask disk;
    private final ObservableList<RigRow> rows = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
    private Optional<Loaded> loaded = Optional.empty();
    private Runnable asked = () -> {};

    /**
     * @param own the person's own rigs
     * @param disk reads and keeps them
     * @param owner runs what belongs to the owner's thread
     */
    public RigsViewModel(Session session, OwnRigs own, Executor disk, Executor owner) {
        this.session = session;
        this.own = own;
        this.disk = new BackgroundTask("Your own rigs could not be reached", disk, owner, session.log());
    }

    /** Run when the person asks for the sheet. */
    public void onAsked(Runnable listener) {
        asked = listener;
    }

    public void ask() {
        asked.run();
    }

    /** A row a template. */
    ObservableList<RigRow> rows() {
        return rows;
    }

    /** What came of the last thing that was done, one sentence; empty if nothing is to be said. */
    ReadOnlyStringProperty messageProperty() {
        return message.getReadOnlyProperty();
    }

    /** Shotting as it can be typed. */
    String example() {
        return new Shotting(unit()).example();
    }

    /** Shows this peg's templates; what was typed before and not used yet stays. */
    void open() {
        Loaded now = new Loaded(session.peg().wishes().rigs().templatesOrUsual(), unit());
        boolean unused = loaded.filter(now::equals).isPresent() && changed(now.templates());
        message.set(unused ? "These are your changes from before; this peg does not use them yet." : "");
        if (!unused) {
            loaded = Optional.of(now);
            show(now.templates());
        }
    }

    private boolean changed(List<RigTemplate> before) {
        return rows.stream().anyMatch(RigRow::hasUntaken) || !taken().equals(before);
    }

    private List<RigTemplate> taken() {
        return rows.stream().map(RigRow::template).toList();
    }

    private Units.Depth unit() {
        return session.peg().units().depth();
    }

    private void show(List<RigTemplate> templates) {
        Units.Depth unit = unit();
        rows.setAll(
                templates.stream().map(template -> new RigRow(template, unit)).toList());
    }

    /** Another rig, tied like the last. */
    RigRow add() {
        RigTemplate last = rows.isEmpty()
                ? RigTemplate.USUAL.get(0)
                : rows.get(rows.size() - 1).template();
        RigTemplate more = new RigTemplate(
                "rig " + (rows.size() + 1),
                last.upToMetres(),
                last.ground(),
                last.floatSize(),
                last.floatGrams(),
                last.tipToBodyMetres(),
                last.hookLengthMetres(),
                last.shots(),
                pegbed.model.Extras.NONE);
        RigRow row = new RigRow(more, unit());
        rows.add(row);
        message.set("");
        return row;
    }

    void delete(RigRow row) {
        rows.remove(row);
        message.set("");
    }

    /** Shows the usual templates; nothing uses them until that is asked for. */
    void showUsual() {
        show(RigTemplate.USUAL);
        message.set("These are the usual rigs; nothing uses them yet.");
    }

    /** This peg's rigs are tied so: one edit. */
    boolean useForPeg() {
        Optional<List<RigTemplate>> wanted = wanted();
        if (wanted.isEmpty()) {
            return false;
        }
        try {
            boolean changed = session.edit(PlanEdits.rigs(wanted.get()));
            loaded = Optional.of(new Loaded(taken(), unit()));
            message.set(changed ? "This peg uses them now; Undo takes that back." : "This peg uses them already.");
            return true;
        } catch (InputException e) {
            message.set(e.getMessage());
            return false;
        }
    }

    /** This peg's rigs are tied so, and new pegs begin with them. */
    void useForNewPegs() {
        if (!useForPeg()) {
            return;
        }
        List<RigTemplate> kept = session.peg().wishes().rigs().templates();
        disk.run(
                monitor -> {
                    own.save(kept);
                    return "This peg uses them now, and new pegs begin with them.";
                },
                new BackgroundTask.Outcome<>(
                        message::set, why -> message.set("This peg uses them now. New pegs don't: " + why)));
    }

    /** What was typed, the usual ones as an empty list; empty if something is wrong, which is then said. */
    private Optional<List<RigTemplate>> wanted() {
        boolean right = true;
        for (RigRow row : rows) {
            right &= row.takeAll();
        }
        if (!right) {
            message.set(WRONG);
            return Optional.empty();
        }
        if (rows.isEmpty()) {
            message.set("Add a rig, or take the usual ones.");
            return Optional.empty();
        }
        List<RigTemplate> templates = taken();
        return Optional.of(templates.equals(RigTemplate.USUAL) ? List.of() : templates);
    }

    /** Begins a new peg with the person's own rigs; where these can't be read that is said, and it begins without. */
    public void begin(Peg peg, DocumentViewModel document) {
        disk.run(monitor -> own.into(peg), new BackgroundTask.Outcome<>(document::begin, why -> {
            document.begin(peg);
            document.refuse(why + " This peg begins with the usual rigs.");
        }));
    }
}

package pegbed.ui.visits;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Visit;
import pegbed.session.Answer;
import pegbed.session.BackgroundTask;
import pegbed.session.Edit;
import pegbed.session.Session;
import pegbed.session.VisitEdits;
import pegbed.wording.LevelWords;
import pegbed.wording.Quantities;

/** The visits, today's level of the water, what would determine it better, and where the bottom has changed. */
public final class VisitsViewModel {
    /**
     * A visit.
     *
     * @param number 1 for the first
     * @param day when it was, or {@code visit 2} where that is not known
     * @param readings how many were taken, in words
     * @param level how its water stands to the first visit's, and the board measure where there is one; empty while the
     *     level is being worked out
     * @param afresh whether the bottom was dug out before it
     */
    record Row(int number, String day, String readings, String level, boolean afresh) {}

    /**
     * A reading to take for the level.
     *
     * @param number 1 for the best
     * @param where where to plumb and what to expect, one sentence
     * @param why why there, one sentence
     * @param place the place
     */
    record Check(int number, String where, String why, Place place) {}

    /**
     * A place where the bottom has changed.
     *
     * @param words place, amount and odds or doubt, one sentence
     * @param place the place
     */
    record Changed(String words, Place place) {}

    private final Session session;
    private final Clock clock;
    private final LevelDescriber teller;
    private final Consumer<Place> fill;
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final ObservableList<Check> checks = FXCollections.observableArrayList();
    private final ObservableList<String> steps = FXCollections.observableArrayList();
    private final ObservableList<Changed> changes = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper level = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper whyNot = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper dugOut = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper later = new ReadOnlyBooleanWrapper(false);
    private Optional<PegMap> asked = Optional.empty();
    private Optional<LevelDescriber.Description> description = Optional.empty();
    private Peg shownPeg;

    /**
     * @param clock gives the time at which a visit begins
     * @param worker works out levels
     * @param owner runs what belongs to the owner's thread
     * @param fill puts a place into the reading box
     */
    public VisitsViewModel(Session session, Clock clock, Executor worker, Executor owner, Consumer<Place> fill) {
        this.session = session;
        this.clock = clock;
        this.fill = fill;
        teller = new LevelDescriber(worker, owner, session.log());
        session.onChange(this::refresh);
        refresh();
    }

    /** In order of time. */
    ObservableList<Row> rows() {
        return rows;
    }

    /** The readings that would determine today's level best; none where it is known well enough. */
    ObservableList<Check> checks() {
        return checks;
    }

    /** The level after each of today's first readings, in words. */
    ObservableList<String> steps() {
        return steps;
    }

    /** Where the bottom has changed between visits, the surest first. */
    ObservableList<Changed> changes() {
        return changes;
    }

    /** How today's water stands, one sentence; empty while it is being worked out. */
    ReadOnlyStringProperty levelProperty() {
        return level.getReadOnlyProperty();
    }

    /** Why no visit can be begun now, one sentence; empty if one can. */
    ReadOnlyStringProperty whyNotProperty() {
        return whyNot.getReadOnlyProperty();
    }

    /** Why the last change was refused, or why no levels are known, in words; empty if all is well. */
    public ReadOnlyStringProperty errorProperty() {
        return error.getReadOnlyProperty();
    }

    /** Whether the bottom was dug out before today. */
    ReadOnlyBooleanProperty dugOutProperty() {
        return dugOut.getReadOnlyProperty();
    }

    /** Whether today's is not the first visit. */
    ReadOnlyBooleanProperty laterProperty() {
        return later.getReadOnlyProperty();
    }

    /** Begins today's visit. */
    public void begin() {
        tried(() -> VisitEdits.begin(session.peg(), now()));
    }

    /** Whether the bottom was dug out before today. */
    void setDugOut(boolean afresh) {
        tried(() -> VisitEdits.dugOut(afresh));
        dugOut.set(session.peg().today().afresh());
    }

    /** Puts a check's place into the reading box; the depth is all that is left to type. */
    void take(Check check) {
        fill.accept(check.place());
    }

    private OffsetDateTime now() {
        return OffsetDateTime.now(clock).withNano(0);
    }

    private interface Change {
        Edit edit() throws InputException;
    }

    private void tried(Change change) {
        try {
            session.edit(change.edit());
            error.set("");
        } catch (InputException e) {
            error.set(e.getMessage());
        }
    }

    private void refresh() {
        Peg peg = session.peg();
        if (peg != shownPeg) {
            boolean otherVisits =
                    shownPeg == null || shownPeg.visits().size() != peg.visits().size();
            shownPeg = peg;
            description = description.filter(answer -> !otherVisits);
            error.set("");
        }
        Optional<PegMap> map =
                session.answer() instanceof Answer.Ready ready ? Optional.of(ready.map()) : Optional.empty();
        if (map.isPresent()
                && asked.filter(before -> before.differsInWishesOnly(map.get())).isEmpty()) {
            asked = map;
            teller.ask(map.get(), new BackgroundTask.Outcome<>(this::show, this::fail));
        } else if (map.isEmpty()
                && !(session.answer() instanceof Answer.Computing going
                        && going.before().isPresent())) {
            asked = Optional.empty();
            teller.forget();
            description = Optional.empty();
        }
        whyNot.set(VisitEdits.whyNot(peg, now()).orElse(""));
        dugOut.set(peg.today().afresh());
        later.set(peg.visits().size() > 1);
        show();
    }

    private void fail(String why) {
        description = Optional.empty();
        show();
        error.set(why);
    }

    private void show(LevelDescriber.Description answer) {
        description = Optional.of(answer)
                .filter(fresh -> fresh.rows().size() == session.peg().visits().size());
        show();
    }

    private void show() {
        replace(rows, rows(session.peg()));
        replace(checks, description.map(LevelDescriber.Description::checks).orElse(List.of()));
        replace(steps, description.map(LevelDescriber.Description::steps).orElse(List.of()));
        replace(changes, description.map(LevelDescriber.Description::changes).orElse(List.of()));
        level.set(description.map(LevelDescriber.Description::level).orElse(""));
    }

    private static <T> void replace(ObservableList<T> list, List<T> now) {
        if (!list.equals(now)) {
            list.setAll(now);
        }
    }

    private List<Row> rows(Peg peg) {
        LevelWords words = new LevelWords(peg);
        Quantities quantities = Quantities.of(peg);
        List<Row> made = new ArrayList<>();
        for (int v = 0; v < peg.visits().size(); v++) {
            int index = v;
            Visit visit = peg.visits().get(v);
            String stands = description.map(answer -> answer.rows().get(index)).orElse("");
            String board = visit.boardToWaterMetres().isPresent()
                    ? "board to water "
                            + quantities.depthToHalfInch(
                                    visit.boardToWaterMetres().getAsDouble())
                    : "";
            int count = visit.readings().size();
            made.add(new Row(
                    v + 1,
                    words.visit(v),
                    Quantities.readings(count),
                    stands + (stands.isEmpty() || board.isEmpty() ? "" : "; ") + board,
                    visit.afresh()));
        }
        return made;
    }
}

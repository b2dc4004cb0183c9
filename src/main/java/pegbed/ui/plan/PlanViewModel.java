package pegbed.ui.plan;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import pegbed.findings.Findings;
import pegbed.model.InputException;
import pegbed.model.Wishes;
import pegbed.plan.Plan;
import pegbed.session.Answer;
import pegbed.session.BackgroundTask;
import pegbed.session.Edit;
import pegbed.session.PlanEdits;
import pegbed.session.Session;
import pegbed.wording.PlanCards;
import pegbed.wording.PlanCards.LineCard;
import pegbed.wording.PlanCards.RigCard;
import pegbed.wording.PlanWords;

/** The lines to fish and their rigs. */
public final class PlanViewModel {
    /** A fixed place within this distance of a line is that line's, metres. */
    private static final double SAME_METRES = 0.5;

    /** What a plan depends on. */
    private record Question(Findings findings, Wishes wishes) {}

    /** A plan with its words. */
    private record Made(Plan plan, List<LineCard> lines, List<RigCard> rigs, List<String> shortfalls) {}

    private final Session session;
    private final BackgroundTask planning;
    private final ObservableList<LineCard> lines = FXCollections.observableArrayList();
    private final ObservableList<RigCard> rigs = FXCollections.observableArrayList();
    private final ObservableList<String> shortfalls = FXCollections.observableArrayList();
    private final ReadOnlyBooleanWrapper wished = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<Plan>> plan = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Question> asked = Optional.empty();
    private String failure = "";

    /**
     * @param worker makes plans
     * @param owner runs what belongs to the owner's thread
     */
    public PlanViewModel(Session session, Executor worker, Executor owner) {
        this.session = session;
        planning = new BackgroundTask("The lines could not be worked out", worker, owner, session.log());
        session.onChange(this::refresh);
        refresh();
    }

    /** The plan itself, to be drawn; empty while there is none. */
    public ReadOnlyObjectProperty<Optional<Plan>> planProperty() {
        return plan.getReadOnlyProperty();
    }

    /** In the order in which they are fished. */
    public ObservableList<LineCard> lines() {
        return lines;
    }

    /** The shallowest first. */
    ObservableList<RigCard> rigs() {
        return rigs;
    }

    /** What was wanted and could not be had, one or two sentences each. */
    ObservableList<String> shortfalls() {
        return shortfalls;
    }

    /** Whether any line is fixed or forbidden. */
    ReadOnlyBooleanProperty wishedProperty() {
        return wished.getReadOnlyProperty();
    }

    /** Why the last wish was refused, or why there are no lines, in words; empty if all is well. */
    public ReadOnlyStringProperty errorProperty() {
        return error.getReadOnlyProperty();
    }

    /** Fixes a line where it is, or lets it free again. */
    void fixOrRelease(LineCard line) {
        make(line.fixed() ? PlanEdits.release(line.place(), SAME_METRES) : PlanEdits.fix(line.place()));
    }

    /** No line here. */
    void forbid(LineCard line) {
        make(PlanEdits.forbid(line.place()));
    }

    /** Nothing is fixed or forbidden any more. */
    void releaseAll() {
        make(PlanEdits.releaseAll());
    }

    private void make(Edit edit) {
        try {
            session.edit(edit);
            error.set("");
        } catch (InputException e) {
            error.set(e.getMessage());
        }
    }

    private void refresh() {
        Wishes wishes = session.peg().wishes();
        wished.set(
                !wishes.lines().fixed().isEmpty() || !wishes.lines().forbidden().isEmpty());
        Optional<Question> question =
                session.answer().shown().map(Answer.Ready::findings).map(findings -> new Question(findings, wishes));
        if (question.isEmpty()) {
            asked = question;
            planning.cancel();
            clear();
            return;
        }
        // Findings that are being replaced need no plan of their own.
        if (!(session.answer() instanceof Answer.Ready) || same(question.get())) {
            return;
        }
        asked = question;
        Question wanted = question.get();
        planning.latest(
                monitor -> {
                    Plan made = Plan.of(wanted.findings(), wanted.wishes());
                    return new Made(
                            made,
                            PlanCards.lines(made),
                            PlanCards.rigs(made),
                            PlanWords.of(made).shortfalls());
                },
                new BackgroundTask.Outcome<>(this::show, this::fail));
    }

    private void show(Made made) {
        lines.setAll(made.lines());
        rigs.setAll(made.rigs());
        shortfalls.setAll(made.shortfalls());
        plan.set(Optional.of(made.plan()));
        if (error.get().equals(failure)) {
            error.set("");
        }
    }

    private void fail(String why) {
        clear();
        failure = why;
        error.set(why);
    }

    private void clear() {
        lines.clear();
        rigs.clear();
        shortfalls.clear();
        plan.set(Optional.empty());
    }

    private boolean same(Question question) {
        return asked.filter(before -> before.findings() == question.findings()
                        && before.wishes().equals(question.wishes()))
                .isPresent();
    }
}

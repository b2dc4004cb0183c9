package pegbed.ui.findings;

import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.value.ObservableValue;
import pegbed.day.TargetLesson;
import pegbed.model.InputException;
import pegbed.model.Units;
import pegbed.notation.FeetAndInches;
import pegbed.notation.Notation;
import pegbed.notation.ShortForm;
import pegbed.session.Answer;
import pegbed.session.ReadingEdits;
import pegbed.session.Session;
import pegbed.session.VisitLessons;
import pegbed.wording.LessonWords;
import pegbed.wording.Quantities;

/** The depth sought across and in the margins: half the deepest until the person sets it. */
public final class TargetViewModel {
    private static final double SHALLOWEST_METRES = 0.10;
    private static final double USUAL_DEEPEST_METRES = 2;

    private final Session session;
    private final ObservableValue<Optional<VisitLessons>> lessons;
    private final DoubleProperty metres = new SimpleDoubleProperty(0.8);
    private final ReadOnlyDoubleWrapper deepest = new ReadOnlyDoubleWrapper(USUAL_DEEPEST_METRES);
    private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper typed = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper follows = new ReadOnlyBooleanWrapper(true);
    private final ReadOnlyBooleanWrapper known = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyStringWrapper lesson = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper offer = new ReadOnlyStringWrapper("");
    private boolean refreshing;

    /** @param lessons what earlier visits teach */
    public TargetViewModel(Session session, ObservableValue<Optional<VisitLessons>> lessons) {
        this.session = session;
        this.lessons = lessons;
        lessons.addListener((property, before, now) -> refresh());
        metres.addListener((property, before, now) -> moved(now.doubleValue()));
        session.onChange(this::refresh);
        refresh();
    }

    /** The target, metres; setting it is an edit, a drag one edit in all. */
    public DoubleProperty metresProperty() {
        return metres;
    }

    /** The deepest that the slider goes, metres. */
    ReadOnlyDoubleProperty deepestProperty() {
        return deepest.getReadOnlyProperty();
    }

    static double shallowestMetres() {
        return SHALLOWEST_METRES;
    }

    /** The target in the person's words. */
    ReadOnlyStringProperty wordsProperty() {
        return words.getReadOnlyProperty();
    }

    /** The target as it would be typed. */
    ReadOnlyStringProperty typedProperty() {
        return typed.getReadOnlyProperty();
    }

    /** Why what was typed was refused, one sentence; empty if it was not. */
    ReadOnlyStringProperty errorProperty() {
        return error.getReadOnlyProperty();
    }

    /** Whether the target is half the deepest. */
    ReadOnlyBooleanProperty followsProperty() {
        return follows.getReadOnlyProperty();
    }

    /** The target that earlier visits speak for, one sentence; empty if there is none. */
    ReadOnlyStringProperty lessonProperty() {
        return lesson.getReadOnlyProperty();
    }

    /** What the button says that takes it, such as {@code Take 2 ft 6 in}; empty if it is the target already. */
    ReadOnlyStringProperty offerProperty() {
        return offer.getReadOnlyProperty();
    }

    /** Whether there is anything to seek a depth on. */
    ReadOnlyBooleanProperty knownProperty() {
        return known.getReadOnlyProperty();
    }

    private void moved(double now) {
        if (!refreshing) {
            set(OptionalDouble.of(Math.round(now * 200) / 200.0));
        }
    }

    /** Sets the target from what was typed; empty follows half the deepest. */
    void enter(String text) {
        if (text.isBlank()) {
            follow();
            return;
        }
        try {
            double depth = Notation.of(session.peg()).depth(text);
            error.set("");
            set(OptionalDouble.of(depth));
            session.endBurst();
        } catch (InputException e) {
            error.set(e.getMessage());
        }
    }

    /** Takes the target that earlier visits speak for. */
    void takeOffer() {
        error.set("");
        offered().ifPresent(offered -> set(OptionalDouble.of(offered.depthMetres())));
        session.endBurst();
    }

    private Optional<TargetLesson> offered() {
        return lessons.getValue().flatMap(VisitLessons::target);
    }

    /** Goes back to half the deepest. */
    void follow() {
        error.set("");
        set(OptionalDouble.empty());
    }

    /** The slider was let go of. */
    void settled() {
        session.endBurst();
    }

    private void set(OptionalDouble target) {
        try {
            session.edit(ReadingEdits.target(target));
        } catch (InputException e) {
            error.set(e.getMessage());
        }
    }

    private void refresh() {
        OptionalDouble wished = session.peg().wishes().targetMetres();
        follows.set(wished.isEmpty());
        known.set(session.answer().shown().isPresent());
        double now = wished.orElse(
                session.answer().shown().map(TargetViewModel::half).orElse(metres.get()));
        refreshing = true;
        // A slider that stands beyond its new end goes there, which is no wish of the person's.
        session.answer()
                .shown()
                .ifPresent(ready ->
                        deepest.set(Math.max(0.5, ready.map().deepest().spot().depthMetres())));
        metres.set(now);
        refreshing = false;
        refreshOffer(wished);
        words.set(Quantities.of(session.peg()).target(now));
        typed.set(new ShortForm(session.peg().units(), session.peg().pole(), '.').printDepth(rounded(now)));
    }

    private void refreshOffer(OptionalDouble wished) {
        Quantities quantities = Quantities.of(session.peg());
        lesson.set(lessons.getValue()
                .flatMap(known -> known.target()
                        .map(target -> LessonWords.of(session.peg()).target(target, known.halfDeepestMetres())))
                .orElse(""));
        offer.set(offered()
                .map(TargetLesson::depthMetres)
                .filter(depth -> wished.isEmpty() || rounded(wished.getAsDouble()) != rounded(depth))
                .map(depth -> "Take " + quantities.depth(depth))
                .orElse(""));
    }

    /** To the half inch or the centimetre, whichever the person says. */
    private double rounded(double depthMetres) {
        double step = session.peg().units().depth() == Units.Depth.FEET ? FeetAndInches.INCH_METRES / 2 : 0.01;
        return Math.round(depthMetres / step) * step;
    }

    private static double half(Answer.Ready ready) {
        return ready.map().deepest().spot().depthMetres() / 2;
    }
}

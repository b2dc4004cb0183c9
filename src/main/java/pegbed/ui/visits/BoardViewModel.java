package pegbed.ui.visits;

import java.util.OptionalDouble;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.notation.Notation;
import pegbed.notation.ShortForm;
import pegbed.session.Session;
import pegbed.session.VisitEdits;
import pegbed.ui.controls.Texts;
import pegbed.wording.Quantities;

/** The field for today's measure from the board on the platform down to the water. */
public final class BoardViewModel {
    private final Session session;
    private final StringProperty text = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper echo = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");
    private Peg shown = Peg.EMPTY;

    public BoardViewModel(Session session) {
        this.session = session;
        text.addListener((property, before, now) -> understand());
        session.onChange(this::refresh);
        refresh();
    }

    /** What stands in the field. */
    StringProperty textProperty() {
        return text;
    }

    /** How it was understood and what it is good for; empty while it can't be read. */
    ReadOnlyStringProperty echoProperty() {
        return echo.getReadOnlyProperty();
    }

    /** What is wrong with what was entered, one sentence; empty if nothing. */
    ReadOnlyStringProperty errorProperty() {
        return error.getReadOnlyProperty();
    }

    /**
     * Takes what stands in the field; nothing there takes the measure away. What can't be read stays in the field.
     *
     * @return whether it was taken
     */
    boolean enter() {
        try {
            OptionalDouble typed = typed();
            if (isNew(typed)) {
                session.edit(VisitEdits.board(typed));
            }
            error.set("");
            understand();
            return true;
        } catch (InputException e) {
            echo.set("");
            error.set(e.getMessage());
            return false;
        }
    }

    private OptionalDouble typed() throws InputException {
        return text.get().isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Notation.of(session.peg()).height(text.get()));
    }

    /** Leaving the field untouched must not take the digits away that the printed measure has not. */
    private boolean isNew(OptionalDouble typed) {
        return typed.isPresent() != board().isPresent() || !text.get().strip().equals(printed());
    }

    private OptionalDouble board() {
        return session.peg().today().boardToWaterMetres();
    }

    private String printed() {
        Peg peg = session.peg();
        return board().isPresent() ? new ShortForm(peg.units(), peg.pole(), '.').printDepth(board().getAsDouble()) : "";
    }

    private void understand() {
        error.set("");
        try {
            OptionalDouble typed = typed();
            echo.set(typed.isEmpty() ? "" : understood(typed.getAsDouble()));
        } catch (InputException unfinished) {
            echo.set("");
        }
    }

    private String understood(double metres) {
        Peg peg = session.peg();
        boolean earlier = peg.visits().stream()
                .limit(peg.visits().size() - 1)
                .anyMatch(visit -> visit.boardToWaterMetres().isPresent());
        return Quantities.of(peg).depthToHalfInch(metres) + " (" + Texts.number(metres, 2) + " m)"
                + (earlier
                        ? ", against the earlier measure."
                        : "; no earlier visit was measured, so it tells the level from the next visit on.");
    }

    private void refresh() {
        Peg peg = session.peg();
        if (peg == shown) {
            return;
        }
        boolean same = peg.visits().size() == shown.visits().size()
                && peg.today().boardToWaterMetres().equals(shown.today().boardToWaterMetres())
                && peg.units().equals(shown.units());
        shown = peg;
        if (!same) {
            text.set(printed());
        }
        understand();
    }
}

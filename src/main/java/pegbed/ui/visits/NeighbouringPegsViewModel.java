package pegbed.ui.visits;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.session.Answer;
import pegbed.session.PlanEdits;
import pegbed.session.Session;
import pegbed.wording.MapWords;

/** What the open peg has from other pegs of the same water, and whether it starts from them. */
public final class NeighbouringPegsViewModel {
    private final Session session;
    private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper passedOver = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper byItself = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper offered = new ReadOnlyBooleanWrapper(false);

    public NeighbouringPegsViewModel(Session session) {
        this.session = session;
        session.onChange(this::refresh);
        refresh();
    }

    /** From whom the bottom started, one sentence; empty where it stands by itself. */
    ReadOnlyStringProperty wordsProperty() {
        return words.getReadOnlyProperty();
    }

    /** Files that could not be used, a sentence each; empty if there are none. */
    ReadOnlyStringProperty passedOverProperty() {
        return passedOver.getReadOnlyProperty();
    }

    /** Whether the peg is taken by itself. */
    ReadOnlyBooleanProperty byItselfProperty() {
        return byItself.getReadOnlyProperty();
    }

    /** Whether there is anything to switch: other pegs that teach, or a peg that was taken by itself. */
    ReadOnlyBooleanProperty offeredProperty() {
        return offered.getReadOnlyProperty();
    }

    /** Takes the peg by itself, or not. */
    void setByItself(boolean alone) {
        try {
            session.edit(PlanEdits.byItself(alone));
        } catch (InputException e) {
            // The wish is a flag: there is no value of it that could be refused.
            throw new IllegalStateException(e);
        }
    }

    private void refresh() {
        boolean alone = session.peg().wishes().byItself();
        Optional<PegMap> map = session.answer().shown().map(Answer.Ready::map);
        words.set(alone ? "" : map.flatMap(MapWords::neighbours).orElse(""));
        List<String> broken = alone ? List.of() : session.passedOver();
        passedOver.set(String.join(" ", broken));
        byItself.set(alone);
        offered.set(alone || !words.get().isEmpty());
    }
}

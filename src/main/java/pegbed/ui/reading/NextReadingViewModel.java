package pegbed.ui.reading;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import pegbed.findings.PegMap;
import pegbed.guidance.Guidance;
import pegbed.guidance.NextReading;
import pegbed.model.InputException;
import pegbed.session.Answer;
import pegbed.session.Session;
import pegbed.wording.GuidanceWords;

/** Where to plumb next, and why. */
public final class NextReadingViewModel {
    private final Session session;
    private final Executor worker;
    private final Executor owner;
    private final ReadOnlyObjectWrapper<Optional<NextReading>> next = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper("");
    private volatile Optional<PegMap> asked = Optional.empty();

    /**
     * @param worker reckons
     * @param owner runs what belongs to the owner's thread
     */
    public NextReadingViewModel(Session session, Executor worker, Executor owner) {
        this.session = session;
        this.worker = worker;
        this.owner = owner;
        session.onChange(this::refresh);
        refresh();
    }

    /** The reading to take next; empty while it is not known. */
    public ReadOnlyObjectProperty<Optional<NextReading>> nextProperty() {
        return next.getReadOnlyProperty();
    }

    /** Where it is and why, or why there is none; empty while it is not known. */
    public ReadOnlyStringProperty wordsProperty() {
        return words.getReadOnlyProperty();
    }

    private void refresh() {
        boolean settled = session.answer() instanceof Answer.Ready || session.answer() instanceof Answer.TooLittle;
        Optional<PegMap> map = settled ? usable() : Optional.empty();
        if (map.isEmpty()) {
            if (!(session.answer() instanceof Answer.Computing)) {
                asked = Optional.empty();
                show(Optional.empty(), "");
            }
            return;
        }
        if (asked.filter(before -> before == map.get()).isPresent()) {
            return;
        }
        asked = map;
        PegMap wanted = map.get();
        worker.execute(() -> reckon(wanted));
    }

    /** A map that shows the person's own banks. */
    private Optional<PegMap> usable() {
        return session.answer()
                .picture()
                .map(Answer.Ready::map)
                .filter(map -> map.peg().banks().equals(session.peg().banks()));
    }

    private void reckon(PegMap map) {
        if (asked.filter(now -> now == map).isEmpty()) {
            return;
        }
        try {
            NextReading found = Guidance.next(map);
            String sentence = GuidanceWords.of(map.peg()).line(found);
            owner.execute(() -> answer(map, Optional.of(found), sentence));
        } catch (InputException nowhereLeft) {
            owner.execute(() -> answer(map, Optional.empty(), nowhereLeft.getMessage()));
        }
    }

    private void answer(PegMap map, Optional<NextReading> found, String sentence) {
        if (asked.filter(now -> now == map).isPresent()) {
            show(found, sentence);
        }
    }

    private void show(Optional<NextReading> found, String sentence) {
        next.set(found);
        words.set(sentence);
    }
}

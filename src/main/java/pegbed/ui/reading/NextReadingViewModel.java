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
import pegbed.session.BackgroundTask;
import pegbed.session.Session;
import pegbed.wording.GuidanceWords;

/** Where to plumb next, and why. */
public final class NextReadingViewModel {
    private final Session session;
    private final BackgroundTask reckoning;
    private final ReadOnlyObjectWrapper<Optional<NextReading>> next = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper("");
    private Optional<PegMap> asked = Optional.empty();

    /**
     * @param worker reckons
     * @param owner runs what belongs to the owner's thread
     */
    public NextReadingViewModel(Session session, Executor worker, Executor owner) {
        this.session = session;
        reckoning = new BackgroundTask("The next reading could not be worked out", worker, owner, session.log());
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
                reckoning.cancel();
                show(Optional.empty(), "");
            }
            return;
        }
        if (asked.filter(before -> before == map.get()).isPresent()) {
            return;
        }
        asked = map;
        PegMap wanted = map.get();
        reckoning.latest(
                monitor -> reckon(wanted),
                new BackgroundTask.Outcome<>(
                        found -> show(Optional.of(found.reading()), found.words()),
                        why -> show(Optional.empty(), why)));
    }

    /** A map that shows the person's own banks. */
    private Optional<PegMap> usable() {
        return session.answer()
                .picture()
                .map(Answer.Ready::map)
                .filter(map -> map.peg().banks().equals(session.peg().banks()));
    }

    /** A reading to take, and where it is and why. */
    private record Found(NextReading reading, String words) {}

    /** @throws InputException if there is nowhere left to plumb */
    private static Found reckon(PegMap map) throws InputException {
        NextReading found = Guidance.next(map);
        return new Found(found, GuidanceWords.of(map.peg()).line(found));
    }

    private void show(Optional<NextReading> found, String sentence) {
        next.set(found);
        words.set(sentence);
    }
}

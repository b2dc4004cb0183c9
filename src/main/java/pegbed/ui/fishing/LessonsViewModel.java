package pegbed.ui.fishing;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import pegbed.findings.PegMap;
import pegbed.model.Day;
import pegbed.model.Peg;
import pegbed.model.Visit;
import pegbed.session.Answer;
import pegbed.session.BackgroundTask;
import pegbed.session.Session;
import pegbed.session.VisitLessons;

/** What the open peg's earlier visits teach. */
public final class LessonsViewModel {
    private final Session session;
    private final Clock clock;
    private final BackgroundTask reckoning;
    private final ReadOnlyObjectWrapper<Optional<VisitLessons>> lessons = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Question> asked = Optional.empty();

    /** What the lessons depend on, the clock aside. */
    private record Question(PegMap map, List<Day> days) {
        boolean isAsked(Optional<Question> before) {
            return before.filter(other -> other.map.differsInWishesOnly(map) && other.days.equals(days))
                    .isPresent();
        }
    }

    /**
     * @param clock tells which visit still goes on
     * @param worker reckons
     * @param owner runs what belongs to the owner's thread
     */
    public LessonsViewModel(Session session, Clock clock, Executor worker, Executor owner) {
        this.session = session;
        this.clock = clock;
        reckoning =
                new BackgroundTask("What earlier visits teach could not be worked out", worker, owner, session.log());
        session.onChange(this::refresh);
        refresh();
    }

    /** What they teach; empty while no visit was fished, or nothing is known of the bottom. */
    public ReadOnlyObjectProperty<Optional<VisitLessons>> lessonsProperty() {
        return lessons.getReadOnlyProperty();
    }

    private void refresh() {
        Peg peg = session.peg();
        List<Day> days = VisitLessons.finished(peg, OffsetDateTime.now(clock)).stream()
                .map(Visit::day)
                .toList();
        boolean fished = days.stream().anyMatch(day -> !day.events().isEmpty());
        Optional<Question> question =
                session.answer().shown().filter(ready -> fished).map(ready -> new Question(ready.map(), days));
        if (question.isEmpty()) {
            asked = question;
            reckoning.cancel();
            lessons.set(Optional.empty());
            return;
        }
        if (!(session.answer() instanceof Answer.Ready) || question.get().isAsked(asked)) {
            return;
        }
        asked = question;
        PegMap map = question.get().map();
        reckoning.latest(
                monitor -> VisitLessons.of(map, peg, OffsetDateTime.now(clock)),
                new BackgroundTask.Outcome<>(
                        found -> lessons.set(Optional.of(found).filter(some -> some.visits() > 0)),
                        why -> lessons.set(Optional.empty())));
    }
}

package pegbed.ui.visits;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Wishes;
import pegbed.session.BackgroundTask;
import pegbed.session.Session;
import pegbed.surface.posterior.BottomChange;
import pegbed.visits.VisitComparison;
import pegbed.wording.LevelWords;

/** Two visits beside each other: what silted up and what was dug out. */
public final class ComparisonViewModel {
    private static final String COMPARING = "Comparing …";

    /** A ring and a compared place no farther apart speak of one change, metres. */
    private static final double SAME_PLACE_METRES = 2 * BottomChange.HALF_FELT_METRES;

    private final Session session;
    private final BackgroundTask comparing;
    private final IntegerProperty earlier = new SimpleIntegerProperty(-1);
    private final IntegerProperty later = new SimpleIntegerProperty(-1);
    private final ObservableList<String> visits = FXCollections.observableArrayList();
    private final ObservableList<VisitsViewModel.Changed> places = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper heading = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper note = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");
    private Peg seen;
    private Peg shown = Peg.EMPTY;

    /**
     * @param worker compares
     * @param owner runs what belongs to the owner's thread
     */
    public ComparisonViewModel(Session session, Executor worker, Executor owner) {
        this.session = session;
        comparing = new BackgroundTask("The visits could not be compared", worker, owner, session.log());
        earlier.addListener((property, before, now) -> clear());
        later.addListener((property, before, now) -> clear());
        session.onChange(this::refresh);
        refresh();
    }

    /** The days of the visits, in order of time. */
    ObservableList<String> visits() {
        return visits;
    }

    /** Index of the earlier visit; -1 while none is chosen. */
    IntegerProperty earlierProperty() {
        return earlier;
    }

    /** Index of the later visit; -1 while none is chosen. */
    IntegerProperty laterProperty() {
        return later;
    }

    /** What the comparison shows, one sentence; empty while nothing was compared. */
    public ReadOnlyStringProperty headingProperty() {
        return heading.getReadOnlyProperty();
    }

    /** Why the map tells another figure for a place that was found; empty where it does not. */
    public ReadOnlyStringProperty noteProperty() {
        return note.getReadOnlyProperty();
    }

    /** Why the visits can't be compared, one sentence; empty if nothing is wrong. */
    public ReadOnlyStringProperty errorProperty() {
        return error.getReadOnlyProperty();
    }

    /** Where the bottom differs, the largest change first. */
    public ObservableList<VisitsViewModel.Changed> places() {
        return places;
    }

    /** Compares the two visits chosen. */
    public void compare() {
        clear();
        Peg peg = session.peg();
        int from = earlier.get();
        int to = later.get();
        if (from < 0 || to <= from) {
            error.set("Choose an earlier visit first and a later one second.");
            return;
        }
        heading.set(COMPARING);
        List<BottomChange> rings = session.answer()
                .shown()
                .map(ready -> ready.map().bottom().changes())
                .orElse(List.of());
        comparing.latest(
                monitor -> {
                    VisitComparison comparison = VisitComparison.of(peg, from, to, monitor);
                    LevelWords words = new LevelWords(peg);
                    List<VisitsViewModel.Changed> found = comparison.places().stream()
                            .map(place -> new VisitsViewModel.Changed(words.changed(place), place.middle()))
                            .toList();
                    return new Compared(
                            words.compared(comparison),
                            found,
                            bothTell(found, rings) ? LevelWords.WHY_TWO_FIGURES : "");
                },
                new BackgroundTask.Outcome<>(
                        found -> show(found, ""), why -> show(new Compared("", List.of(), ""), why)));
    }

    private static boolean bothTell(List<VisitsViewModel.Changed> found, List<BottomChange> rings) {
        return found.stream()
                .anyMatch(changed -> rings.stream()
                        .map(ring -> new Place(ring.xMetres(), ring.yMetres()))
                        .anyMatch(ring -> ring.distanceTo(changed.place()) < SAME_PLACE_METRES));
    }

    /** Whether a comparison has been made and is shown. */
    boolean isDone() {
        boolean compared = !heading.get().isEmpty() && !heading.get().equals(COMPARING);
        return compared || !error.get().isEmpty();
    }

    /** What a comparison shows, where the bottom differs, and why the map tells other figures. */
    private record Compared(String words, List<VisitsViewModel.Changed> places, String note) {}

    private void show(Compared compared, String why) {
        heading.set(compared.words());
        places.setAll(compared.places());
        note.set(compared.note());
        error.set(why);
    }

    /** What was compared holds no more. */
    private void clear() {
        comparing.cancel();
        heading.set("");
        note.set("");
        error.set("");
        places.clear();
    }

    private void refresh() {
        if (session.peg() == seen) {
            return;
        }
        seen = session.peg();
        Peg peg = seen.withWishes(Wishes.NONE);
        if (peg.equals(shown)) {
            return;
        }
        int before = visits.size();
        shown = peg;
        LevelWords words = new LevelWords(peg);
        List<String> now = new ArrayList<>();
        for (int v = 0; v < peg.visits().size(); v++) {
            now.add((v + 1) + ": " + words.visit(v));
        }
        clear();
        if (!now.equals(visits)) {
            visits.setAll(now);
        }
        if (before != now.size()) {
            earlier.set(now.size() > 1 ? 0 : -1);
            later.set(now.size() > 1 ? now.size() - 1 : -1);
        }
    }
}

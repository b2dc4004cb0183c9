package pegbed.ui.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import pegbed.findings.Confidence;
import pegbed.findings.Deepest;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.Spot;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.session.Answer;
import pegbed.session.Session;
import pegbed.wording.FindingWords;

/** The deepest place and the flat spots, in words, and how far the answers are. */
public final class FindingsViewModel {
    /**
     * One found place.
     *
     * @param badge what it is called on the map: its number, or a letter for the deepest
     * @param title such as {@code Across, likely flat}
     * @param where distance, direction and aim
     * @param what depth, doubt, slope, area
     * @param place where
     */
    record Found(String badge, String title, String where, String what, Place place) {}

    private final Session session;
    private final ObservableList<Found> found = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper state = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper outdated = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper(0);
    private final ReadOnlyBooleanWrapper trouble = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyObjectWrapper<Optional<Answer.Ready>> shown = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Answer.Ready>> picture = new ReadOnlyObjectWrapper<>(Optional.empty());

    public FindingsViewModel(Session session) {
        this.session = session;
        session.onChange(this::refresh);
        session.onProgress(() -> progress.set(session.progress()));
        refresh();
    }

    /** How much of the running work is done, 0 to 1. */
    public ReadOnlyDoubleProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }

    /** The deepest first, then the flat spots. */
    ObservableList<Found> found() {
        return found;
    }

    /** How far the answers are, one sentence; empty when they are there. */
    public ReadOnlyStringProperty stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** Whether what is shown is of an older state of the peg. */
    ReadOnlyBooleanProperty outdatedProperty() {
        return outdated.getReadOnlyProperty();
    }

    /** Whether answers are being worked out. */
    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    /** Whether answers could not be had. */
    ReadOnlyBooleanProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    /** What to draw: answers, current or old, or the place alone. */
    public ReadOnlyObjectProperty<Optional<Answer.Ready>> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    /** Whether what is drawn is the place alone, on which nothing was found. */
    public boolean placeAlone() {
        return shown.get().isEmpty();
    }

    /** The answers, current or old. */
    ReadOnlyObjectProperty<Optional<Answer.Ready>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** Gives up the work. */
    public void cancel() {
        session.cancelComputing();
    }

    private void refresh() {
        Answer answer = session.answer();
        Optional<Answer.Ready> before = shown.get();
        Optional<Answer.Ready> now = answer.shown();
        boolean same = before.isPresent() && now.isPresent() && before.get() == now.get();
        if (!same) {
            found.setAll(
                    now.map(ready -> found(session.peg(), ready.findings())).orElse(List.of()));
            shown.set(now);
        }
        if (picture.get().orElse(null) != answer.picture().orElse(null)) {
            picture.set(answer.picture());
        }
        working.set(answer instanceof Answer.Computing);
        trouble.set(answer instanceof Answer.Failed);
        outdated.set(!(answer instanceof Answer.Ready) && now.isPresent());
        state.set(sentence(answer));
    }

    private static String sentence(Answer answer) {
        if (answer instanceof Answer.NothingYet) {
            return "Nothing is known of this peg yet: give its banks and a reading.";
        }
        if (answer instanceof Answer.TooLittle little) {
            return little.missing();
        }
        if (answer instanceof Answer.Computing computing) {
            return computing
                    .before()
                    .map(old -> old.map().isProvisional()
                            ? "Working it out; the reading is on the map already."
                            : "Working it out; the map is the one before.")
                    .orElse("Working it out.");
        }
        if (answer instanceof Answer.Failed failed) {
            return failed.why() + (failed.before().isPresent() ? " The map is the one before." : "");
        }
        return "";
    }

    static List<Found> found(Peg peg, Findings findings) {
        FindingWords words = FindingWords.of(peg);
        List<Found> found = new ArrayList<>();
        Deepest deepest = findings.deepest();
        found.add(found("D", words.deepestCard(deepest), deepest.spot()));
        int number = 1;
        for (FlatSpot flat : findings.flats()) {
            String badge = flat.confidence() == Confidence.NONE ? "–" : String.valueOf(number);
            found.add(found(badge, words.flatCard(flat), flat.spot()));
            number++;
        }
        return found;
    }

    private static Found found(String badge, FindingWords.Card card, Spot spot) {
        return new Found(badge, card.title(), card.where(), card.what(), spot.place());
    }
}

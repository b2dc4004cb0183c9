package pegbed.ui.profile;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import pegbed.findings.DepthProfile;
import pegbed.findings.PegMap;
import pegbed.model.Place;
import pegbed.session.Answer;
import pegbed.session.BackgroundTask;
import pegbed.session.Session;
import pegbed.surface.FittedBottom;
import pegbed.wording.ProfileWords;
import pegbed.wording.Quantities;

/** The bottom along the pointer's direction, or along a line that was drawn. */
public final class ProfileViewModel {
    /**
     * A straight line over the water.
     *
     * @param from its start
     * @param to its end
     */
    public record Course(Place from, Place to) {}

    /** What a profile depends on; not on the target, which moves without it. */
    private record Question(FittedBottom bottom, double angleDegrees, Optional<Course> drawn) {}

    private final Session session;
    private final BackgroundTask tracing;
    private final ReadOnlyObjectWrapper<Optional<DepthProfile>> profile = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper slopes = new ReadOnlyStringWrapper("");
    private double angleDegrees;
    private Optional<Course> drawn = Optional.empty();
    private Optional<Question> asked = Optional.empty();

    /**
     * @param worker works profiles out
     * @param owner runs what belongs to the owner's thread
     */
    public ProfileViewModel(Session session, Executor worker, Executor owner) {
        this.session = session;
        tracing = new BackgroundTask("The profile could not be worked out", worker, owner, session.log());
        session.onChange(this::refresh);
        refresh();
    }

    public ReadOnlyObjectProperty<Optional<DepthProfile>> profileProperty() {
        return profile.getReadOnlyProperty();
    }

    /** Which way the profile goes, in words. */
    ReadOnlyStringProperty titleProperty() {
        return title.getReadOnlyProperty();
    }

    /** The slopes that it meets, or why there is no profile, in words. */
    public ReadOnlyStringProperty slopesProperty() {
        return slopes.getReadOnlyProperty();
    }

    double angleDegrees() {
        return angleDegrees;
    }

    /** The line that was drawn; empty while the pointer's direction is followed. */
    public Optional<Course> drawn() {
        return drawn;
    }

    /** Looks in a direction, unless a line was drawn. */
    public void towards(double degrees) {
        if (drawn.isEmpty() && degrees != angleDegrees) {
            angleDegrees = degrees;
            refresh();
        }
    }

    /** Follows a line that was drawn. */
    public void along(Place from, Place to) {
        drawn = Optional.of(new Course(from, to));
        refresh();
    }

    /** Goes back to the pointer's direction. */
    void followPointer() {
        drawn = Optional.empty();
        refresh();
    }

    /** The depths in the person's words. */
    Quantities quantities() {
        return Quantities.of(session.peg());
    }

    private void refresh() {
        Optional<PegMap> map = session.answer().shown().map(Answer.Ready::map);
        ProfileWords words = ProfileWords.of(session.peg());
        title.set(drawn.map(course -> words.between(course.from(), course.to()))
                .orElseGet(() -> words.towards(angleDegrees)));
        if (map.isEmpty()) {
            asked = Optional.empty();
            tracing.cancel();
            show(Optional.empty(), "");
            return;
        }
        Question question = new Question(map.get().bottom(), angleDegrees, drawn);
        if (asked.filter(question::equals).isPresent()) {
            return;
        }
        asked = Optional.of(question);
        double angle = angleDegrees;
        Optional<Course> line = drawn;
        tracing.latest(
                monitor -> line.map(course -> DepthProfile.between(map.get(), course.from(), course.to()))
                        .orElseGet(() -> DepthProfile.towards(map.get(), angle)),
                new BackgroundTask.Outcome<DepthProfile>(
                        found -> show(Optional.of(found), words.slopes(found)), why -> show(Optional.empty(), why)));
    }

    private void show(Optional<DepthProfile> found, String words) {
        profile.set(found);
        slopes.set(words);
    }
}

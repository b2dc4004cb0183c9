package pegbed.ui.bankside;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import pegbed.guidance.NextReading;
import pegbed.model.Bottom;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.Units;
import pegbed.notation.Clock;
import pegbed.notation.FeetAndInches;
import pegbed.notation.ShortForm;
import pegbed.session.Answer;
import pegbed.session.Session;
import pegbed.ui.reading.NextReadingViewModel;
import pegbed.ui.reading.ReadingBoxViewModel;
import pegbed.wording.Quantities;

/** The large-button view: section, clock, depth and bottom by wheels, no keyboard needed. */
public final class BanksideViewModel {
    /** What the wheels are for. */
    enum Wheel {
        SECTION("Section"),
        CLOCK("Clock"),
        DEPTH("Depth"),
        BOTTOM("Bottom");

        private final String words;

        Wheel(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    private static final double PART_METRES = 0.5;

    /** What is no farther from the next joint is left to it. */
    private static final double NEAR_JOINT_METRES = 0.25;

    private static final double ALIKE_METRES = 1e-6;

    /** Next places are said to this many minutes. */
    private static final int CLOCK_SAID_MINUTES = 5;

    private static final int CLOCK_STEP_MINUTES = 10;
    private static final int CLOCK_MAX_MINUTES = 180;
    private static final List<Bottom> BOTTOMS = List.of(Bottom.values());

    private final Session session;
    private final ReadingBoxViewModel box;
    private final NextReadingViewModel guide;
    private final ReadOnlyStringWrapper section = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper clock = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper depth = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper bottom = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper wrong = new ReadOnlyBooleanWrapper(false);
    /** The revision that what is said belongs to. */
    private long saidRevision;

    /** From the seat; not a number until the pole is known. */
    private double distanceMetres = Double.NaN;

    private int minutes;
    private int depthSteps = -1;

    /** Whether the depth is the person's own; else it is what is expected at the place. */
    private boolean depthTurned;

    private int bottomIndex;

    public BanksideViewModel(Session session, ReadingBoxViewModel box, NextReadingViewModel guide) {
        this.session = session;
        this.guide = guide;
        this.box = box;
        session.onChange(this::refresh);
        refresh();
    }

    /** Where to plumb next; empty while it is not known. */
    ReadOnlyObjectProperty<Optional<NextReading>> nextProperty() {
        return guide.nextProperty();
    }

    /** What a wheel shows. */
    ReadOnlyStringProperty shownProperty(Wheel wheel) {
        return switch (wheel) {
            case SECTION -> section.getReadOnlyProperty();
            case CLOCK -> clock.getReadOnlyProperty();
            case DEPTH -> depth.getReadOnlyProperty();
            case BOTTOM -> bottom.getReadOnlyProperty();
        };
    }

    /** What became of the last reading, in words. */
    ReadOnlyStringProperty saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** Whether the last reading was refused. */
    ReadOnlyBooleanProperty wrongProperty() {
        return wrong.getReadOnlyProperty();
    }

    /** Turns a wheel by steps: a part of a section, ten minutes, an inch or 2 cm, the next bottom. */
    void turn(Wheel wheel, int steps) {
        switch (wheel) {
            case SECTION -> {
                for (int i = 0; i < Math.abs(steps); i++) {
                    distanceMetres = nextStop(steps > 0);
                }
            }
            case CLOCK ->
                minutes =
                        Math.max(-CLOCK_MAX_MINUTES, Math.min(CLOCK_MAX_MINUTES, minutes + steps * CLOCK_STEP_MINUTES));
            case DEPTH -> {
                depthSteps = Math.max(0, Math.min(maxDepthSteps(), depthSteps + steps));
                depthTurned = true;
            }
            case BOTTOM -> bottomIndex = Math.floorMod(bottomIndex + steps, BOTTOMS.size());
        }
        expectDepth();
        refresh();
    }

    /** The next joint, or half metre on from one, outwards or inwards; the same where there is none. */
    private double nextStop(boolean out) {
        List<Double> joints = joints();
        List<Double> stops = new ArrayList<>();
        for (double stop = joints.get(0) - PART_METRES; stop >= PART_METRES; stop -= PART_METRES) {
            stops.add(0, stop);
        }
        for (int i = 0; i < joints.size(); i++) {
            double end = i + 1 < joints.size() ? joints.get(i + 1) - NEAR_JOINT_METRES : joints.get(i) + ALIKE_METRES;
            for (double stop = joints.get(i); stop < end || stop == joints.get(i); stop += PART_METRES) {
                stops.add(stop);
            }
        }
        return out
                ? stops.stream()
                        .filter(stop -> stop > distanceMetres + ALIKE_METRES)
                        .findFirst()
                        .orElse(distanceMetres)
                : stops.stream()
                        .filter(stop -> stop < distanceMetres - ALIKE_METRES)
                        .reduce((nearer, farther) -> farther)
                        .orElse(distanceMetres);
    }

    /** So many whole sections on, as far beyond the joint as before. */
    private double sectionsOn(int sections) {
        List<Double> joints = joints();
        int at = 0;
        while (at < joints.size() - 1 && joints.get(at + 1) <= distanceMetres + ALIKE_METRES) {
            at++;
        }
        int to = Math.max(0, Math.min(joints.size() - 1, at + sections));
        double metres = joints.get(to) + distanceMetres - joints.get(at);
        return Math.min(metres, joints.get(joints.size() - 1));
    }

    /** Shows the depth that is expected where the wheels point, unless the person has turned to another. */
    private void expectDepth() {
        if (depthTurned) {
            return;
        }
        Place place = place();
        session.answer().shown().map(Answer.Ready::map).ifPresent(map -> {
            double depth = map.grid().depth().sample(place.xMetres(), place.yMetres());
            if (Double.isFinite(depth)) {
                depthSteps = (int) Math.max(0, Math.min(maxDepthSteps(), Math.round(depth / stepMetres())));
            }
        });
    }

    /** Turns a wheel by a large step: a whole section, half an hour, a foot or 20 cm. */
    void turnFar(Wheel wheel, int steps) {
        switch (wheel) {
            case SECTION -> {
                distanceMetres = sectionsOn(steps);
                turn(wheel, 0);
            }
            case CLOCK -> turn(wheel, steps * 3);
            case DEPTH -> turn(wheel, steps * (feet() ? 12 : 10));
            case BOTTOM -> turn(wheel, steps);
        }
    }

    /** Turns section, clock and depth to the reading to take next; does nothing while none is known. */
    void toNext() {
        guide.nextProperty().get().ifPresent(next -> {
            distanceMetres = next.place().distanceMetres();
            long said = Math.round(next.place().angleDegrees() * 2 / CLOCK_SAID_MINUTES) * CLOCK_SAID_MINUTES;
            minutes = (int) Math.max(-CLOCK_MAX_MINUTES, Math.min(CLOCK_MAX_MINUTES, said));
            depthTurned = false;
            expectDepth();
            refresh();
            wrong.set(false);
            say(guide.wordsProperty().get());
        });
    }

    /** What a screen reader says of a button of a wheel. */
    String stepName(Wheel wheel, boolean more, boolean far) {
        return wheel.words() + ", "
                + switch (wheel) {
                    case SECTION -> (far ? "one section " : "half a metre ") + (more ? "further out" : "nearer");
                    case CLOCK -> (far ? "30" : "10") + " minutes " + (more ? "later" : "earlier");
                    case DEPTH ->
                        (feet() ? (far ? "1 foot" : "1 inch") : (far ? "20 centimetres" : "2 centimetres"))
                                + (more ? " deeper" : " shallower");
                    case BOTTOM -> more ? "the next" : "the one before";
                };
    }

    /** What a button of a wheel says: how far it turns it. */
    String stepWords(Wheel wheel, boolean more, boolean far) {
        String sign = more ? "+" : "−";
        return switch (wheel) {
            case SECTION -> sign + (far ? "1" : "½ m");
            case CLOCK -> more ? (far ? "30 ▶" : "10 ▶") : (far ? "◀ 30" : "◀ 10");
            case DEPTH -> sign + (feet() ? (far ? "1 ft" : "1 in") : (far ? "20" : "2"));
            case BOTTOM -> more ? "▶" : "◀";
        };
    }

    private List<Double> joints() {
        return session.peg().pole().jointMetres();
    }

    private boolean feet() {
        return session.peg().units().depth() == Units.Depth.FEET;
    }

    private int maxDepthSteps() {
        return (int) Math.floor(Reading.DEEPEST_METRES / stepMetres());
    }

    private double stepMetres() {
        return feet() ? FeetAndInches.INCH_METRES : 0.02;
    }

    /** The line that the wheels stand for, as it would be typed. */
    String line() {
        String felt = BOTTOMS.get(bottomIndex) == Bottom.UNKNOWN
                ? ""
                : " " + BOTTOMS.get(bottomIndex).word();
        return ShortForm.section(session.peg().pole(), distanceMetres) + " "
                + Clock.print(minutes / 2.0, CLOCK_SAID_MINUTES) + " " + depthTyped()
                + felt;
    }

    private String depthTyped() {
        return new ShortForm(session.peg().units(), session.peg().pole(), '.').printDepth(depthSteps * stepMetres());
    }

    /** Where the wheels point. */
    Place place() {
        return Place.polar(distanceMetres, minutes / 2.0);
    }

    /** Adds the reading that the wheels stand for; the bottom goes back to unknown. */
    void enter() {
        box.textProperty().set(line());
        boolean added = box.enter();
        wrong.set(!added);
        say(added ? "Added: " + box.echoProperty().get() : box.errorProperty().get());
        if (added) {
            bottomIndex = 0;
            depthTurned = false;
        }
        refresh();
    }

    /** Takes the last edit back. */
    void undo() {
        String label = session.undoLabel().orElse("");
        if (session.undo()) {
            wrong.set(false);
            say("Undone: " + label);
        }
    }

    private void say(String sentence) {
        saidRevision = session.revision();
        said.set(sentence);
    }

    private void refresh() {
        Peg peg = session.peg();
        if (session.revision() != saidRevision) {
            say("");
            wrong.set(false);
        }
        if (depthSteps < 0) {
            depthSteps = feet() ? 36 : 50;
        }
        distanceMetres = Double.isNaN(distanceMetres)
                ? joints().get(Math.min(3, joints().size() - 1))
                : Math.min(distanceMetres, peg.pole().reachMetres());
        depthSteps = Math.min(depthSteps, maxDepthSteps());
        section.set(ShortForm.section(peg.pole(), distanceMetres)
                .replaceFirst("^s(\\d+)([+-])(.*)$", "$1 $2 $3 m")
                .replaceFirst("^s", ""));
        clock.set(Clock.print(minutes / 2.0, CLOCK_SAID_MINUTES));
        depth.set(Quantities.of(peg).depth(depthSteps * stepMetres()));
        bottom.set(
                BOTTOMS.get(bottomIndex) == Bottom.UNKNOWN
                        ? "not felt"
                        : BOTTOMS.get(bottomIndex).word());
    }
}

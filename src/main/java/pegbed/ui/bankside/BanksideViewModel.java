package pegbed.ui.bankside;

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
import pegbed.session.Session;
import pegbed.ui.controls.Texts;
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

    /** Half a metre on from a joint at most: what lies beyond is nearer to the next joint. */
    private static final double PART_METRES = 0.5;

    private static final int PARTS = 3;
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

    private int joint = 3;
    private int part;
    private int minutes;
    private int depthSteps = -1;
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
                int all = Math.max(0, Math.min(lastPart(), joint * PARTS + part + steps));
                joint = all / PARTS;
                part = all % PARTS;
            }
            case CLOCK ->
                minutes =
                        Math.max(-CLOCK_MAX_MINUTES, Math.min(CLOCK_MAX_MINUTES, minutes + steps * CLOCK_STEP_MINUTES));
            case DEPTH -> depthSteps = Math.max(0, Math.min(maxDepthSteps(), depthSteps + steps));
            case BOTTOM -> bottomIndex = Math.floorMod(bottomIndex + steps, BOTTOMS.size());
        }
        refresh();
    }

    /** Turns a wheel by a large step: a whole section, half an hour, a foot or 20 cm. */
    void turnFar(Wheel wheel, int steps) {
        turn(
                wheel,
                switch (wheel) {
                    case SECTION -> steps * PARTS;
                    case CLOCK -> steps * 3;
                    case DEPTH -> steps * (feet() ? 12 : 10);
                    case BOTTOM -> steps;
                });
    }

    /** Turns section and clock to the reading to take next, as near as the wheels go; does nothing while none is known. */
    void toNext() {
        guide.nextProperty().get().ifPresent(next -> {
            List<Double> joints = session.peg().pole().jointMetres();
            int best = 0;
            for (int i = 0; i <= lastPart(); i++) {
                if (off(i, next.place(), joints) < off(best, next.place(), joints)) {
                    best = i;
                }
            }
            joint = best / PARTS;
            part = best % PARTS;
            minutes = 0;
            turn(Wheel.CLOCK, (int) Math.round(next.place().angleDegrees() * 2 / CLOCK_STEP_MINUTES));
            wrong.set(false);
            say(guide.wordsProperty().get());
        });
    }

    private static double off(int parts, Place place, List<Double> joints) {
        return Math.abs(joints.get(parts / PARTS) + parts % PARTS * PART_METRES - place.distanceMetres());
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

    private int lastPart() {
        return (session.peg().pole().jointMetres().size() - 1) * PARTS;
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
        String offset = part == 0 ? "" : "+" + Texts.number(part * PART_METRES, 1);
        String felt = BOTTOMS.get(bottomIndex) == Bottom.UNKNOWN
                ? ""
                : " " + BOTTOMS.get(bottomIndex).word();
        return "s" + (joint + 1) + offset + " " + Clock.print(minutes / 2.0, CLOCK_STEP_MINUTES) + " " + depthTyped()
                + felt;
    }

    private String depthTyped() {
        return new ShortForm(session.peg().units(), session.peg().pole(), '.').printDepth(depthSteps * stepMetres());
    }

    /** Where the wheels point. */
    Place place() {
        List<Double> joints = session.peg().pole().jointMetres();
        return Place.polar(joints.get(Math.min(joint, joints.size() - 1)) + part * PART_METRES, minutes / 2.0);
    }

    /** Adds the reading that the wheels stand for; the bottom goes back to unknown. */
    void enter() {
        box.textProperty().set(line());
        boolean added = box.enter();
        wrong.set(!added);
        say(
                added
                        ? "Added: " + box.echoProperty().get()
                        : box.errorProperty().get());
        if (added) {
            bottomIndex = 0;
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
        joint = Math.min(joint, peg.pole().jointMetres().size() - 1);
        depthSteps = Math.min(depthSteps, maxDepthSteps());
        section.set((joint + 1) + (part == 0 ? "" : " + " + Texts.number(part * PART_METRES, 1) + " m"));
        clock.set(Clock.print(minutes / 2.0, CLOCK_STEP_MINUTES));
        depth.set(Quantities.of(peg).depth(depthSteps * stepMetres()));
        bottom.set(
                BOTTOMS.get(bottomIndex) == Bottom.UNKNOWN
                        ? "not felt"
                        : BOTTOMS.get(bottomIndex).word());
    }
}

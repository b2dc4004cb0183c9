package pegbed.ui.bankside;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import pegbed.guidance.NextReading;
import pegbed.model.Bottom;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.Line;
import pegbed.notation.Notation;
import pegbed.notation.ShortForm;
import pegbed.session.Answer;
import pegbed.session.ReadingWheels;
import pegbed.session.SectionStops;
import pegbed.session.Session;
import pegbed.ui.reading.NextReadingViewModel;
import pegbed.ui.reading.ReadingBoxViewModel;
import pegbed.wording.Quantities;

/**
 * The large-button view: section, mark, direction, depth and bottom by wheels, no keyboard needed. The depth begins at
 * the one expected, so that a reading is added only once the person has turned it or said that it is as expected:
 * nothing is kept that nobody plumbed.
 */
public final class BanksideViewModel {
    /** What the wheels are for. */
    enum Wheel {
        SECTION("Section"),
        MARK("Mark"),
        DIRECTION("Clock"),
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

    /** What is said where a reading was to be added whose depth is only expected. */
    static final String NOT_PLUMBED =
            "Nothing was added: turn the depth to what you plumbed, or tap it if it is as it stands.";

    private static final int CLOCK_FAR_STEPS = 6;
    private static final int BESIDE_FAR_STEPS = 4;
    private static final int NO_MARK = -1;

    /**
     * With steps of 1 and 4 in. two turns reach what is up to 5 in. off, as most proposed places of the samples are.
     */
    private static final int FAR_INCHES = 4;

    private static final int FAR_CENTIMETRE_STEPS = 5;
    private static final List<Bottom> BOTTOMS = List.of(Bottom.values());

    private final Session session;
    private final ReadingBoxViewModel box;
    private final NextReadingViewModel guide;
    private final ReadOnlyStringWrapper section = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper mark = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper direction = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper directionTitle = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper depth = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper bottom = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper wrong = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper hasMarks = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper plumbed = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper expected = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyObjectWrapper<Place> place = new ReadOnlyObjectWrapper<>(new Place(0, 0));

    /** The revision that what is said belongs to. */
    private long saidRevision;

    /** From the seat; not a number until the pole is known. */
    private double distanceMetres = Double.NaN;

    private int minutes;
    private int markIndex = NO_MARK;

    /** To the right of the mark, along the far bank. */
    private double besideMetres;

    private int depthSteps = -1;
    private int bottomIndex;

    /** Whether the wheels stand where the next reading was proposed. */
    private boolean atNext;

    /** The proposal that was plumbed last; the wheels go on when another comes. */
    private Optional<NextReading> served = Optional.empty();

    public BanksideViewModel(Session session, ReadingBoxViewModel box, NextReadingViewModel guide) {
        this.session = session;
        this.guide = guide;
        this.box = box;
        session.onChange(this::refresh);
        guide.nextProperty().addListener((property, before, now) -> goOn());
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
            case MARK -> mark.getReadOnlyProperty();
            case DIRECTION -> direction.getReadOnlyProperty();
            case DEPTH -> depth.getReadOnlyProperty();
            case BOTTOM -> bottom.getReadOnlyProperty();
        };
    }

    /** What the direction is told by: the clock, or the mark that is chosen. */
    ReadOnlyStringProperty directionTitleProperty() {
        return directionTitle.getReadOnlyProperty();
    }

    /** Whether the peg has marks to aim at. */
    ReadOnlyBooleanProperty hasMarksProperty() {
        return hasMarks.getReadOnlyProperty();
    }

    /** Whether the depth is what the person plumbed, turned to or confirmed; only then is a reading added. */
    ReadOnlyBooleanProperty plumbedProperty() {
        return plumbed.getReadOnlyProperty();
    }

    /** Whether the depth shown is the one that the map expects. */
    ReadOnlyBooleanProperty expectedProperty() {
        return expected.getReadOnlyProperty();
    }

    /** Where the wheels point. */
    ReadOnlyObjectProperty<Place> placeProperty() {
        return place.getReadOnlyProperty();
    }

    /** What became of the last reading, in words. */
    ReadOnlyStringProperty saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** Whether the last reading was refused. */
    ReadOnlyBooleanProperty wrongProperty() {
        return wrong.getReadOnlyProperty();
    }

    /**
     * Turns a wheel by steps: a part of a section, a mark, five minutes or half a metre beside the mark, an inch or 2
     * cm, the next bottom.
     */
    void turn(Wheel wheel, int steps) {
        switch (wheel) {
            case SECTION -> {
                SectionStops stops = new SectionStops(joints());
                for (int i = 0; i < Math.abs(steps); i++) {
                    distanceMetres = stops.next(distanceMetres, steps > 0);
                }
            }
            case MARK -> turnMark(steps);
            case DIRECTION -> turnDirection(steps);
            case DEPTH -> {
                depthSteps = Math.max(0, Math.min(wheels().deepestStep(), depthSteps + steps));
                plumbed.set(true);
            }
            case BOTTOM -> bottomIndex = Math.floorMod(bottomIndex + steps, BOTTOMS.size());
        }
        if (wheel != Wheel.DEPTH && wheel != Wheel.BOTTOM) {
            atNext = false;
            served = Optional.empty();
        }
        refresh();
    }

    /** Turns a wheel by a large step: a whole section, half an hour or two metres, 4 in or 10 cm. */
    void turnFar(Wheel wheel, int steps) {
        switch (wheel) {
            case SECTION -> {
                distanceMetres = new SectionStops(joints()).sectionsOn(distanceMetres, steps);
                turn(wheel, 0);
            }
            case DIRECTION -> turn(wheel, steps * (isBesideMark() ? BESIDE_FAR_STEPS : CLOCK_FAR_STEPS));
            case DEPTH -> turn(wheel, steps * (feet() ? FAR_INCHES : FAR_CENTIMETRE_STEPS));
            case MARK, BOTTOM -> turn(wheel, steps);
        }
    }

    /** The clock comes before the first mark and after the last; it keeps the direction that was sighted. */
    private void turnMark(int steps) {
        int choices = session.peg().marks().size() + 1;
        double angle = place().angleDegrees();
        markIndex = Math.floorMod(markIndex + 1 + steps, choices) - 1;
        besideMetres = 0;
        if (!isBesideMark()) {
            minutes = ReadingWheels.clockMinutes(angle);
        }
    }

    private void turnDirection(int steps) {
        if (!isBesideMark()) {
            minutes = Math.max(
                    -ReadingWheels.CLOCK_MAX_MINUTES,
                    Math.min(ReadingWheels.CLOCK_MAX_MINUTES, minutes + steps * ReadingWheels.CLOCK_STEP_MINUTES));
            return;
        }
        besideMetres = Math.max(
                -ReadingWheels.BESIDE_MAX_METRES,
                Math.min(ReadingWheels.BESIDE_MAX_METRES, besideMetres + steps * ReadingWheels.BESIDE_STEP_METRES));
    }

    private boolean isBesideMark() {
        return markIndex != NO_MARK;
    }

    /** Shows the depth that is expected where the wheels point, unless the person has plumbed another. */
    private void expectDepth() {
        if (plumbed.get()) {
            expected.set(false);
            return;
        }
        Place at = place.get();
        Optional<Double> known = session.answer()
                .shown()
                .map(Answer.Ready::map)
                .map(map -> map.grid().depth().sample(at.xMetres(), at.yMetres()))
                .filter(Double::isFinite);
        known.ifPresent(metres -> depthSteps = wheels().depthStep(metres));
        expected.set(known.isPresent());
    }

    /** The depth was plumbed and is as it stands. */
    void confirmDepth() {
        plumbed.set(true);
        refresh();
    }

    /** The view is shown: nothing has been plumbed yet, and the wheels stand at the next place if it is known. */
    void begin() {
        plumbed.set(false);
        markIndex = NO_MARK;
        bottomIndex = 0;
        refresh();
        toNext();
    }

    /** Turns section, clock and depth to the reading to take next; does nothing while none is known. */
    void toNext() {
        guide.nextProperty().get().ifPresent(next -> {
            turnTo(next);
            wrong.set(false);
            say(guide.wordsProperty().get());
        });
    }

    private void turnTo(NextReading next) {
        distanceMetres = next.place().distanceMetres();
        minutes = ReadingWheels.clockMinutes(next.place().angleDegrees());
        markIndex = NO_MARK;
        plumbed.set(false);
        atNext = true;
        served = Optional.empty();
        refresh();
    }

    /** Who plumbs where it is proposed is brought to the next place as soon as it is known. */
    private void goOn() {
        Optional<NextReading> next = guide.nextProperty().get();
        if (served.isPresent() && next.isPresent() && next.get() != served.get()) {
            String before = said.get();
            turnTo(next.get());
            say((before + " " + guide.wordsProperty().get()).strip());
        }
    }

    /** What a screen reader says of a button of a wheel. */
    String stepName(Wheel wheel, boolean more, boolean far) {
        return (wheel == Wheel.DIRECTION ? directionTitle.get() : wheel.words()) + ", "
                + switch (wheel) {
                    case SECTION -> (far ? "one section " : "half a metre ") + (more ? "further out" : "nearer");
                    case DIRECTION ->
                        isBesideMark()
                                ? (far ? "2 metres" : "half a metre") + (more ? " to the right" : " to the left")
                                : (far ? "30" : "5") + " minutes " + (more ? "later" : "earlier");
                    case DEPTH ->
                        (feet() ? (far ? "4 inches" : "1 inch") : (far ? "10 centimetres" : "2 centimetres"))
                                + (more ? " deeper" : " shallower");
                    case MARK, BOTTOM -> more ? "the next" : "the one before";
                };
    }

    /** What a button of a wheel says: how far it turns it. */
    String stepWords(Wheel wheel, boolean more, boolean far) {
        String sign = more ? "+" : "−";
        return switch (wheel) {
            case SECTION -> sign + (far ? "1" : "½ m");
            case DIRECTION -> {
                String step = isBesideMark() ? (far ? "2 m" : "½ m") : far ? "30" : "5";
                yield more ? step + " ▶" : "◀ " + step;
            }
            case DEPTH -> sign + (feet() ? (far ? "4 in" : "1 in") : (far ? "10" : "2"));
            case MARK, BOTTOM -> more ? "▶" : "◀";
        };
    }

    private List<Double> joints() {
        return session.peg().pole().jointMetres();
    }

    private ReadingWheels wheels() {
        return new ReadingWheels(session.peg());
    }

    private boolean feet() {
        return wheels().feet();
    }

    /** The line that the wheels stand for, as it would be typed. */
    String line() {
        return ShortForm.section(session.peg().pole(), distanceMetres) + " " + directionTyped() + " "
                + wheels().depthTyped(depthSteps) + ReadingWheels.bottomTyped(BOTTOMS.get(bottomIndex));
    }

    private String directionTyped() {
        return isBesideMark()
                ? ReadingWheels.besideTyped(session.peg().marks().get(markIndex), besideMetres)
                : ReadingWheels.clock(minutes);
    }

    /** What the wheel of depths stands at, metres. */
    double depthMetres() {
        return depthSteps * wheels().depthStepMetres();
    }

    /** Where the wheels point. */
    Place place() {
        if (!isBesideMark()) {
            return Place.polar(distanceMetres, minutes / 2.0);
        }
        try {
            Line line = Notation.of(session.peg()).parse(line());
            return Place.polar(
                    distanceMetres, ((Line.ReadingLine) line).reading().place().angleDegrees());
        } catch (InputException e) {
            // A name that can't be typed, which adding the reading says.
            return Place.polar(
                    distanceMetres, session.peg().marks().get(markIndex).place().angleDegrees());
        }
    }

    /**
     * Adds the reading that the wheels stand for if its depth was plumbed; the bottom goes back to unknown, and the
     * wheels go on to the next place if they stood at a proposed one.
     */
    void enter() {
        if (!plumbed.get()) {
            wrong.set(true);
            say(NOT_PLUMBED);
            return;
        }
        Optional<NextReading> proposed = atNext ? guide.nextProperty().get() : Optional.empty();
        box.textProperty().set(line());
        boolean added = box.enter();
        wrong.set(!added);
        say(
                added
                        ? "Added: " + box.echoProperty().get() + "."
                        : box.errorProperty().get());
        if (added) {
            bottomIndex = 0;
            plumbed.set(false);
            served = proposed;
        }
        refresh();
        goOn();
    }

    /** Takes the last edit back. */
    void undo() {
        String label = session.undoLabel().orElse("");
        if (session.undo()) {
            served = Optional.empty();
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
            depthSteps = wheels().usualDepthStep();
        }
        if (markIndex >= peg.marks().size()) {
            markIndex = NO_MARK;
        }
        distanceMetres = Double.isNaN(distanceMetres)
                ? wheels().usualDistance()
                : Math.min(distanceMetres, peg.pole().reachMetres());
        depthSteps = Math.min(depthSteps, wheels().deepestStep());
        place.set(place());
        expectDepth();
        hasMarks.set(!peg.marks().isEmpty());
        section.set(wheels().section(distanceMetres));
        mark.set(isBesideMark() ? peg.marks().get(markIndex).name() : "none, by the clock");
        directionTitle.set(
                isBesideMark() ? "Beside " + peg.marks().get(markIndex).name() : Wheel.DIRECTION.words());
        direction.set(isBesideMark() ? ReadingWheels.beside(besideMetres) : ReadingWheels.clock(minutes));
        depth.set(Quantities.of(peg).depth(depthMetres()));
        bottom.set(
                BOTTOMS.get(bottomIndex) == Bottom.UNKNOWN
                        ? "not felt"
                        : BOTTOMS.get(bottomIndex).word());
    }
}

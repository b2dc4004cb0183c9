package pegbed.notation;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import pegbed.model.BankPoint;
import pegbed.model.Bottom;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.model.Units;

/**
 * The short way in which people say readings, read: one line a reading, {@code DISTANCE DIRECTION DEPTH [bottom]
 * [note]}, and lines that begin with {@code edge} or {@code snag}. What each piece may look like is described in
 * {@code docs/notation.md}. Immutable.
 */
public final class Notation {
    private static final double WIDEST_SNAG_METRES = 100;

    private static final Pattern EDGE = Pattern.compile("edge" + Text.END);
    private static final Pattern SNAG = Pattern.compile("snag" + Text.END);
    private static final Pattern BOTTOM = Pattern.compile("(\\p{L}+)(?:[.:,]+" + Text.END + "|" + Text.END + ")");
    private static final Pattern NUMBER_ALONE = Pattern.compile("(" + Numbers.FRACTIONAL + ")" + Text.END);
    private static final Pattern NUMBER_AHEAD = Pattern.compile("[+-]?[.,]?[\\d½¼¾⅛⅜⅝⅞]");
    /** Feet and inches, as a second depth: a note may begin with another number. */
    private static final Pattern FEET_BEHIND = Pattern.compile(" +\\d{1,2} *(?:'|ft) *\\d{1,2}\"?" + Text.END);

    private static final Pattern LINE_BREAK = Pattern.compile(Text.LINE_BREAK);

    private final Units units;
    private final Pole pole;
    private final List<Mark> marks;
    private final Sights sights;
    private final Precisions precisions;

    private Notation(Peg peg, Precisions precisions) {
        this.units = peg.units();
        this.pole = peg.pole();
        this.marks = peg.marks();
        this.sights = new Sights(peg.banks().far());
        this.precisions = precisions;
    }

    /** The notation at a peg: its pole, units, marks and far bank give the words their meaning. */
    public static Notation of(Peg peg) {
        return of(peg, Precisions.USUAL);
    }

    /** The notation at a peg, with the person's own figures of how well places are known. */
    public static Notation of(Peg peg, Precisions precisions) {
        return new Notation(peg, precisions);
    }

    /**
     * Reads one line. Reach is not looked at here.
     *
     * @throws NotationException when a piece can't be read, is missing, out of range, or could mean two things
     */
    public Line parse(String typed) throws NotationException {
        Text text = new Text(typed);
        if (text.atEnd()) {
            throw NotationException.missing("reading", "", "11 20L 4'6 silt");
        }
        String[] lines = LINE_BREAK.split(text.rest(), 2);
        if (lines.length > 1) {
            throw NotationException.saying(
                    lines[1],
                    "One line holds one reading, like 11 20L 4'6; type " + NotationException.quoted(lines[1])
                            + " on a line of its own.");
        }
        if (text.take(EDGE).isPresent()) {
            return edge(text);
        }
        if (text.take(SNAG).isPresent()) {
            return snag(text);
        }
        return reading(text);
    }

    /** The mark that was meant; empty where none was, or where it is no longer there. */
    public Optional<Aim> aim(Typed typed) {
        try {
            return typed.direction().isEmpty()
                    ? Optional.empty()
                    : Direction.take(new Text(typed.direction()), marks, sights, precisions)
                            .aim();
        } catch (NotationException markIsGone) {
            return Optional.empty();
        }
    }

    /**
     * Reads a height alone, such as the board's above the water: {@code 15in}, {@code 38cm}, a bare number in the peg's
     * unit of depths.
     *
     * @return metres, 0 to 30
     * @throws NotationException when it can't be read, or something follows it
     */
    public double height(String typed) throws NotationException {
        return alone(typed, "height", "15in, 1'3 or 38cm");
    }

    /**
     * Reads a depth alone, such as one that is sought: {@code 2'9}, {@code 84cm}, a bare number in the peg's unit of
     * depths.
     *
     * @return metres, 0 to 30
     * @throws NotationException when it can't be read, or something follows it
     */
    public double depth(String typed) throws NotationException {
        return alone(typed, "depth", "2'9, 33in or 84cm");
    }

    private double alone(String typed, String what, String examples) throws NotationException {
        Text text = new Text(typed);
        if (text.atEnd()) {
            throw NotationException.saying("", "The " + what + " is missing; type it like " + examples + ".");
        }
        double metres = depth(text);
        text.skipSeparators();
        if (!text.atEnd()) {
            throw NotationException.about(
                    text.rest(), "has no place behind a " + what + ", which is like " + examples + ".");
        }
        return metres;
    }

    private Line reading(Text text) throws NotationException {
        Spot spot = spot(text, "11 20L 4'6");
        if (text.atEnd()) {
            throw NotationException.missing("depth", text.before(), "11 20L 4'6");
        }
        int from = text.at();
        double depthMetres = depth(text);
        Typed typed = new Typed(spot.distance.typed(), spot.direction.typed(), text.since(from));
        refuseSecondDepth(text, from, spot.direction);
        text.skipSeparators();
        Bottom bottom = bottom(text).orElse(Bottom.UNKNOWN);
        text.skipSeparators();
        String note = text.rest();
        return new Line.ReadingLine(new Reading(
                typed, spot.place(), spot.precision(), depthMetres, bottom, note, Optional.empty(), Extras.NONE));
    }

    /** Behind a mark, the first of two depths is most likely how far beside it, with the side left out. */
    private static void refuseSecondDepth(Text text, int from, Direction direction) throws NotationException {
        boolean atMark = direction.aim().map(aim -> aim.unit() == Aim.Unit.NONE).orElse(false);
        if (!atMark || !text.sees(FEET_BEHIND)) {
            return;
        }
        String offset = text.since(from);
        text.take(FEET_BEHIND);
        throw NotationException.about(
                text.since(from),
                "could be two depths, or a place beside the mark; type that like " + direction.typed() + "+" + offset
                        + " or " + direction.typed() + "-" + offset + ", or leave one depth out.");
    }

    private Line edge(Text text) throws NotationException {
        Spot spot = spot(text, "edge 13 20L");
        int from = text.at();
        OptionalDouble depthMetres = text.atEnd() ? OptionalDouble.empty() : OptionalDouble.of(depth(text));
        Typed typed = new Typed(spot.distance.typed(), spot.direction.typed(), text.since(from));
        text.skipSeparators();
        if (!text.atEnd()) {
            throw NotationException.about(
                    text.rest(), "has no place in an edge line, which ends with its depth, like edge 13 20L 1'6.");
        }
        return new Line.EdgeLine(new BankPoint(spot.place(), depthMetres, typed, Extras.NONE));
    }

    private Line snag(Text text) throws NotationException {
        Spot spot = spot(text, "snag 9 20R 0.5");
        int from = text.at();
        double radiusMetres = Line.SnagLine.USUAL_RADIUS_METRES;
        if (text.sees(NUMBER_AHEAD)) {
            Length radius = Length.take(text, 1)
                    .orElseThrow(() -> NotationException.about(
                            text.piece(from), "is not the radius of a snag; type metres like snag 9 20R 0.5."));
            radiusMetres = radius.metres();
            if (!(radiusMetres <= WIDEST_SNAG_METRES)) {
                throw NotationException.about(
                        text.since(from),
                        "is too wide for a snag; type a radius of 100 m at most like snag 9 20R 0.5.");
            }
        }
        Typed typed = new Typed(spot.distance.typed(), spot.direction.typed(), text.since(from));
        text.skipSeparators();
        return new Line.SnagLine(
                new Hazard(Hazard.Kind.SNAG, List.of(spot.place()), radiusMetres, text.rest(), typed, Extras.NONE));
    }

    /** Reads a place alone: its distance and direction. */
    Place place(Text text, String example) throws NotationException {
        return spot(text, example).place();
    }

    private Spot spot(Text text, String example) throws NotationException {
        text.skipSeparators();
        if (text.atEnd()) {
            throw NotationException.missing("distance", text.before(), example);
        }
        Distance distance = Distance.take(text, pole, precisions);
        text.skipSeparators();
        if (text.atEnd()) {
            throw NotationException.missing("direction", text.before(), example);
        }
        Direction direction = Direction.take(text, marks, sights, precisions);
        text.skipSeparators();
        return new Spot(distance, direction);
    }

    private double depth(Text text) throws NotationException {
        int from = text.at();
        if (text.plainRest().startsWith("-")) {
            throw NotationException.about(
                    text.piece(from), "is negative; a depth counts down from the water, like 4'6 or 1.37m.");
        }
        Length length = Length.take(text, bareMetres())
                .orElseThrow(() -> NotationException.about(
                        text.piece(from), "is not a depth; type feet and inches like 4'6, or 137cm or 1.37m."));
        double metres = length.metres() + inchesApart(text, from, length);
        if (!(metres <= Reading.DEEPEST_METRES)) {
            String read = length.form() == Length.Form.BARE
                    ? "read as " + units.depth().name().toLowerCase(Locale.ROOT) + " "
                    : "";
            throw NotationException.about(
                    text.since(from), read + "is deeper than 30 m; type a depth like 4'6, 137cm or 1.37m.");
        }
        return metres;
    }

    /**
     * Metres of the inches in {@code 5' 6}, where nothing but a bottom word follows; 0 where no inches stand apart.
     * Refuses what could mean two things: {@code 5 6}, {@code 5' 6 carp}, {@code 5 in silt}.
     */
    private double inchesApart(Text text, int from, Length length) throws NotationException {
        int end = text.at();
        text.skipSeparators();
        if (length.form() == Length.Form.APART_INCHES && !text.atEnd()) {
            text.goTo(end);
            throw NotationException.about(
                    text.since(from),
                    "could be inches or a depth \"in\" something; type the unit without a blank, like 66in or 5'6.");
        }
        boolean open = length.form() == Length.Form.FEET || length.form() == Length.Form.BARE;
        Optional<MatchResult> number = open ? text.take(NUMBER_ALONE) : Optional.empty();
        if (number.isEmpty()) {
            text.goTo(end);
            return 0;
        }
        int inchesEnd = text.at();
        text.skipSeparators();
        boolean nothingElse = text.atEnd() || bottom(text).isPresent();
        text.goTo(inchesEnd);
        if (length.form() == Length.Form.BARE || !nothingElse) {
            throw NotationException.about(
                    text.since(from),
                    "could be one depth or a depth and a note; type feet and inches like 5'6, and begin the note with"
                            + " a word.");
        }
        return Length.feetAndInches(0, Numbers.parse(number.get().group(1)), text.since(from));
    }

    private static Optional<Bottom> bottom(Text text) {
        int from = text.at();
        Optional<MatchResult> word = text.take(BOTTOM);
        for (Bottom bottom : Bottom.values()) {
            if (word.isPresent() && bottom.word().equals(word.get().group(1))) {
                return Optional.of(bottom);
            }
        }
        text.goTo(from);
        return Optional.empty();
    }

    private double bareMetres() {
        return switch (units.depth()) {
            case FEET -> FeetAndInches.FOOT_METRES;
            case CENTIMETRES -> 0.01;
            case METRES -> 1;
        };
    }

    private record Spot(Distance distance, Direction direction) {
        Place place() {
            return Place.polar(distance.metres(), direction.angleDegrees());
        }

        Precision precision() {
            return new Precision(distance.sdMetres(), direction.sdDegrees());
        }
    }
}

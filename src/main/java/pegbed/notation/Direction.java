package pegbed.notation;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import pegbed.model.Mark;

/**
 * A direction as typed.
 *
 * @param angleDegrees degrees from straight out, positive to the right, -180 to 180
 * @param sdDegrees how well it is known
 * @param typed what was typed
 * @param aim the mark that it was sighted on; empty for degrees and clock
 */
record Direction(double angleDegrees, double sdDegrees, String typed, Optional<Aim> aim) {
    /** A longer walk along the far bank is taken for a slip of the pen, metres. */
    private static final double LONGEST_OFFSET_METRES = 100;

    private static final double WIDEST_OFFSET_DEGREES = 90;

    private static final String O_CLOCK = " *o ?'? ?clock";
    private static final Pattern CLOCK =
            Pattern.compile("(\\d{1,2})(?::(\\d{2})(?:" + O_CLOCK + ")?|" + O_CLOCK + ")" + Text.END);

    /** What a clock time looks like where its hours and minutes are parted by a point. */
    private static final Pattern CLOCK_OR_DEGREES = Pattern.compile("(9|1[0-2]|[1-3])[.,]([0-5]\\d)" + Text.END);

    private static final String DEGREE_SIGN = " *(?:°|deg(?:rees?)?)";
    private static final Pattern DEGREES = Pattern.compile(
            "([+-]?)(" + Numbers.DECIMAL + ")(?:" + DEGREE_SIGN + ")?(?: *(l|left|r|right))?" + Text.END);
    /** An offset as it is spoken, which would be read as a depth and a note. */
    static final Pattern SPOKEN_OFFSET = Pattern.compile(" +(" + Numbers.FRACTIONAL
            + ")( *(?:m|metres?|meters?|cm|ft|foot|feet|'|°|deg|degrees?))? +(?:to +(?:the|its) +)?(left|right|l|r)"
            + Text.END);

    private static final Pattern SIGN = Pattern.compile(" *([+-]) *");
    private static final Pattern OFFSET_DEGREES = Pattern.compile("(" + Numbers.DECIMAL + ")" + DEGREE_SIGN + Text.END);

    /** Reads a direction: {@code -20}, {@code 20L}, {@code 11:30}, {@code @post+1}, {@code @post+3deg}. */
    static Direction take(Text text, List<Mark> marks, Sights sights, Precisions precisions) throws NotationException {
        int from = text.at();
        if (text.plainRest().startsWith("@")) {
            return mark(text, marks, sights, precisions.sdMarkDegrees());
        }
        Optional<MatchResult> clock = text.take(CLOCK);
        if (clock.isPresent()) {
            double angle = clock(clock.get(), text.since(from));
            return new Direction(angle, precisions.sdClockDegrees(), text.since(from), Optional.empty());
        }
        Optional<MatchResult> either = text.take(CLOCK_OR_DEGREES);
        if (either.isPresent()) {
            throw NotationException.about(text.since(from), "could be a clock time or degrees; " + meant(either.get()));
        }
        MatchResult degrees = text.take(DEGREES)
                .orElseThrow(() -> NotationException.about(
                        text.piece(from),
                        "is not a direction; type degrees like 20L, a clock time like 11:30 or a mark like "
                                + MarkNames.example(marks) + "."));
        double angle = degrees(degrees, text.since(from));
        return new Direction(angle, precisions.sdAngleDegrees(), text.since(from), Optional.empty());
    }

    private static String meant(MatchResult found) {
        String hour = found.group(1);
        String minutes = found.group(2);
        return "type the time like " + hour + ":" + minutes + ", degrees to the right like " + hour + "." + minutes
                + "R.";
    }

    private static double clock(MatchResult found, String typed) throws NotationException {
        int hour = Integer.parseInt(found.group(1));
        int minute = found.group(2) == null ? 0 : Integer.parseInt(found.group(2));
        double angle = Clock.angleDegrees(hour, minute);
        if (hour < 1 || hour > 12 || minute > 59 || Math.abs(angle) > 90) {
            throw NotationException.about(
                    typed,
                    "does not point over the water; a clock time goes from 9:00 (left) over 12:00 (straight out) to"
                            + " 3:00 (right), like 11:30.");
        }
        return angle;
    }

    private static double degrees(MatchResult found, String typed) throws NotationException {
        String side = found.group(3);
        if (side != null && !found.group(1).isEmpty()) {
            throw NotationException.about(
                    typed, "says its side twice; type degrees to the left like 20L or like -20, not both.");
        }
        double angle = Numbers.parse(found.group(2));
        if (!(angle <= 180)) {
            throw NotationException.about(
                    typed, "is more than half a turn; type degrees from straight out like 20L or 20R.");
        }
        boolean left = "-".equals(found.group(1)) || (side != null && side.startsWith("l"));
        return left && angle != 0 ? -angle : angle;
    }

    private static void refuseSpokenOffset(Text text, int from) throws NotationException {
        String mark = text.since(from);
        Optional<MatchResult> spoken = text.take(SPOKEN_OFFSET);
        if (spoken.isPresent()) {
            String unit =
                    spoken.get().group(2) == null ? "" : spoken.get().group(2).strip();
            String sign = spoken.get().group(3).startsWith("l") ? "-" : "+";
            throw NotationException.about(
                    text.since(from),
                    "could be a place beside the mark, or a depth and a note; type the place like " + mark + sign
                            + spoken.get().group(1) + unit + ", or begin the note with another word.");
        }
    }

    private static Direction mark(Text text, List<Mark> marks, Sights sights, double sdDegrees)
            throws NotationException {
        int from = text.at();
        Mark mark = MarkNames.take(text, marks);
        Optional<MatchResult> sign = text.take(SIGN);
        double straight = mark.place().angleDegrees();
        if (sign.isEmpty()) {
            refuseSpokenOffset(text, from);
            Aim aim = new Aim(mark.name(), 0, Aim.Unit.NONE, false);
            return new Direction(straight, sdDegrees, text.since(from), Optional.of(aim));
        }
        boolean toLeft = "-".equals(sign.get().group(1));
        int toRight = toLeft ? -1 : 1;
        Optional<MatchResult> degrees = text.take(OFFSET_DEGREES);
        if (degrees.isPresent()) {
            double offset = Numbers.parse(degrees.get().group(1));
            if (!(offset <= WIDEST_OFFSET_DEGREES)) {
                throw NotationException.about(
                        text.since(from), "is more than 90 degrees from its mark; type fewer, like @post+3deg.");
            }
            return new Direction(
                    Sights.halfTurn(straight + toRight * offset),
                    sdDegrees,
                    text.since(from),
                    Optional.of(new Aim(mark.name(), offset, Aim.Unit.DEGREES, toLeft)));
        }
        double offset = Length.take(text, 1)
                .orElseThrow(() -> NotationException.about(
                        text.sinceThroughPiece(from),
                        "has no offset behind its sign; type metres along the far bank like @post+1, or degrees like"
                                + " @post+3deg."))
                .metres();
        if (!(offset <= LONGEST_OFFSET_METRES)) {
            throw NotationException.about(
                    text.since(from), "is more than 100 m from its mark; type metres along the far bank like @post+1.");
        }
        return new Direction(
                sights.angleBeside(mark.place(), toRight * offset),
                sdDegrees,
                text.since(from),
                Optional.of(new Aim(mark.name(), offset, Aim.Unit.METRES, toLeft)));
    }
}

package pegbed.notation;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pegbed.model.DayEvent;
import pegbed.model.Peg;
import pegbed.model.Place;

/**
 * The short way in which a day's events are typed, read: {@code [14:20] [line 2 | at DISTANCE DIRECTION] EVENT ...}, as
 * {@code docs/notation.md} tells. Immutable.
 */
public final class DayNotation {
    /** What an event may look like when it is typed. */
    public static final String EXAMPLE = "14:20 line 2 fish F1 1lb8";

    private static final Pattern TIME = Pattern.compile("(\\d{1,2}):(\\d{2})" + Text.END);
    private static final Pattern TIME_OR_NUMBER = Pattern.compile("(\\d{1,2})[.,](\\d{2})" + Text.END);
    private static final Pattern LINE = Pattern.compile("line *(\\d{1,3})" + Text.END);
    private static final Pattern AT = Pattern.compile("at" + Text.END);
    private static final Pattern COUNT = Pattern.compile("(\\d{1,9}) ?x?" + Text.END);

    private final Notation places;

    private DayNotation(Peg peg) {
        places = Notation.of(peg);
    }

    /** The notation at a peg: its pole, units, marks and far bank give the words for places their meaning. */
    public static DayNotation of(Peg peg) {
        return new DayNotation(peg);
    }

    /**
     * Reads one line.
     *
     * @throws NotationException when a piece can't be read, is missing, out of range, or could mean two things
     */
    public DayLine parse(String typed) throws NotationException {
        Text text = new Text(typed);
        if (text.atEnd()) {
            throw NotationException.missing("event", "", EXAMPLE);
        }
        Optional<LocalTime> time = time(text);
        text.skipSeparators();
        OptionalInt number = number(text);
        Optional<Place> place = Optional.empty();
        if (number.isEmpty() && text.take(AT).isPresent()) {
            place = Optional.of(places.place(text, "at s6 11:30 fish"));
        }
        text.skipSeparators();
        DayEvent.Kind kind = kind(text);
        text.skipSeparators();
        if (kind == DayEvent.Kind.NOTE && text.atEnd()) {
            throw NotationException.missing("note", text.before(), "14:20 note wind went round");
        }
        return switch (kind) {
            case FISH, LOST -> fish(text, time, number, place, kind);
            case FEED -> feed(text, time, number, place);
            case START, STOP, BITE, SNAG, NOTE ->
                new DayLine(time, number, place, kind, "", "", 1, OptionalDouble.empty(), text.rest());
        };
    }

    private static Optional<LocalTime> time(Text text) throws NotationException {
        int from = text.at();
        if (text.sees(TIME_OR_NUMBER)) {
            throw NotationException.about(
                    text.piece(from), "could be a time or a number; type a time with a colon, like 14:20.");
        }
        Optional<MatchResult> found = text.take(TIME);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        int hour = Integer.parseInt(found.get().group(1));
        int minute = Integer.parseInt(found.get().group(2));
        if (hour > 23 || minute > 59) {
            throw NotationException.about(text.since(from), "is no time of a day; type it like 14:20.");
        }
        return Optional.of(LocalTime.of(hour, minute));
    }

    private static OptionalInt number(Text text) {
        return text.take(LINE)
                .map(found -> OptionalInt.of(Integer.parseInt(found.group(1))))
                .orElse(OptionalInt.empty());
    }

    private static DayEvent.Kind kind(Text text) throws NotationException {
        if (text.atEnd()) {
            throw NotationException.missing("event", text.before(), EXAMPLE);
        }
        for (DayEvent.Kind kind : DayEvent.Kind.values()) {
            if (text.take(Pattern.compile(kind.word() + Text.END)).isPresent()) {
                return kind;
            }
        }
        throw NotationException.about(
                text.piece(text.at()),
                "is none of "
                        + Arrays.stream(DayEvent.Kind.values())
                                .map(DayEvent.Kind::word)
                                .collect(Collectors.joining(", "))
                        + "; type a line like " + EXAMPLE + ".");
    }

    private static DayLine fish(
            Text text, Optional<LocalTime> time, OptionalInt number, Optional<Place> place, DayEvent.Kind kind)
            throws NotationException {
        int count = count(text);
        List<String> name = new ArrayList<>();
        OptionalDouble kilograms = OptionalDouble.empty();
        for (text.skipSeparators(); !text.atEnd(); text.skipSeparators()) {
            int from = text.at();
            OptionalDouble weight = Weight.take(text);
            if (weight.isEmpty()) {
                String piece = text.piece(from);
                name.add(piece);
                text.goTo(from + piece.length());
            } else if (kind == DayEvent.Kind.LOST) {
                throw NotationException.about(text.since(from), "is a weight, and a lost fish was not weighed.");
            } else if (kilograms.isPresent()) {
                throw NotationException.about(
                        text.since(from),
                        "is a second weight; type one for all the fish together, like fish 3 F1 4lb.");
            } else {
                kilograms = weight;
            }
        }
        return new DayLine(time, number, place, kind, String.join(" ", name), "", count, kilograms, "");
    }

    /** How many; a number that is the beginning of a weight is none. */
    private static int count(Text text) throws NotationException {
        int from = text.at();
        if (Weight.take(text).isPresent()) {
            text.goTo(from);
            return 1;
        }
        Optional<MatchResult> found = text.take(COUNT);
        if (found.isEmpty()) {
            return 1;
        }
        int count = Integer.parseInt(found.get().group(1));
        if (count < 1 || count > DayEvent.MOST_FISH) {
            throw NotationException.about(
                    text.since(from), "can't be how many fish; type 1 to " + DayEvent.MOST_FISH + ", like fish 3 F1.");
        }
        return count;
    }

    /** What was fed, and behind a comma how much. */
    private static DayLine feed(Text text, Optional<LocalTime> time, OptionalInt number, Optional<Place> place) {
        String words = text.rest();
        int comma = words.lastIndexOf(',');
        String name = comma < 0 ? words : words.substring(0, comma);
        String amount = comma < 0 ? "" : words.substring(comma + 1);
        return new DayLine(
                time, number, place, DayEvent.Kind.FEED, name.strip(), amount.strip(), 1, OptionalDouble.empty(), "");
    }
}

package pegbed.model;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that happened while fishing, as the person noted it.
 *
 * @param time when
 * @param kind what happened
 * @param line the place of the line it belongs to: lines are known by their place, since their numbers change with
 *     every plan; empty for what belongs to none, such as a note or a break
 * @param name for a feed what was fed, for a fish its kind: the person's own words, may be empty
 * @param amount for a feed how much: the person's own words such as {@code pot} or {@code pinch}, may be empty
 * @param count for a fish or a lost fish how many; 1 for anything else
 * @param weightKilograms of all the fish together, kilograms, above 0; empty if not weighed, and for anything else
 * @param note the person's own words, may be empty
 * @param extras fields of a later version
 */
public record DayEvent(
        OffsetDateTime time,
        Kind kind,
        Optional<Place> line,
        String name,
        String amount,
        int count,
        OptionalDouble weightKilograms,
        String note,
        Extras extras) {
    /** More fish than this at once are taken for a slip of the pen. */
    public static final int MOST_FISH = 999;

    /** Heavier than this is taken for a slip of the pen, kilograms. */
    public static final double HEAVIEST_KILOGRAMS = 1000;

    /** What can happen. */
    public enum Kind {
        /** A line is fished from now on. */
        START("start", true),
        /** Nothing is fished from now on: a break, or the end of the day. */
        STOP("stop", false),
        /** Feed goes in on a line. */
        FEED("feed", true),
        /** A bite that gave no fish. */
        BITE("bite", true),
        /** One or more fish are in the net. */
        FISH("fish", true),
        /** A hooked fish came off. */
        LOST("lost", true),
        /** The hook caught the bottom or something on it. */
        SNAG("snag", true),
        /** Anything else that is worth a word. */
        NOTE("note", false);

        private final String word;
        private final boolean onLine;

        Kind(String word, boolean onLine) {
            this.word = word;
            this.onLine = onLine;
        }

        /** As it is written and typed. */
        public String word() {
            return word;
        }

        /** Whether it must be told on which line. */
        public boolean onLine() {
            return onLine;
        }

        /** Whether it counts fish. */
        public boolean countsFish() {
            return this == FISH || this == LOST;
        }
    }

    public DayEvent {
        if (kind.onLine() && line.isEmpty()) {
            throw new IllegalArgumentException("A " + kind.word() + " belongs to a line; say which, such as line 2.");
        }
        Check.within(count, 1, kind.countsFish() ? MOST_FISH : 1, "How many fish");
        if (weightKilograms.isPresent()) {
            if (kind != Kind.FISH) {
                throw new IllegalArgumentException("Only a fish has a weight, not a " + kind.word() + ".");
            }
            double kilograms = weightKilograms.getAsDouble();
            if (!(kilograms > 0 && kilograms <= HEAVIEST_KILOGRAMS)) {
                throw new IllegalArgumentException("The weight in kilograms must be above 0 and at most "
                        + (int) HEAVIEST_KILOGRAMS + ", not " + kilograms + ".");
            }
        }
        if (kind == Kind.NOTE && note.isBlank()) {
            throw new IllegalArgumentException("A note needs a word or more.");
        }
    }

    /** An event with neither name, amount, weight nor note. */
    public static DayEvent of(OffsetDateTime time, Kind kind, Optional<Place> line) {
        return new DayEvent(time, kind, line, "", "", 1, OptionalDouble.empty(), "", Extras.NONE);
    }

    /** This event at another time. */
    public DayEvent at(OffsetDateTime other) {
        return new DayEvent(other, kind, line, name, amount, count, weightKilograms, note, extras);
    }

    /** This event with other words for what was fed or caught, and how much. */
    public DayEvent named(String otherName, String otherAmount) {
        return new DayEvent(time, kind, line, otherName, otherAmount, count, weightKilograms, note, extras);
    }

    /** This event with another number of fish and another weight of them together, kilograms. */
    public DayEvent with(int otherCount, OptionalDouble otherKilograms) {
        return new DayEvent(time, kind, line, name, amount, otherCount, otherKilograms, note, extras);
    }

    /** This event with another note. */
    public DayEvent noted(String other) {
        return new DayEvent(time, kind, line, name, amount, count, weightKilograms, other, extras);
    }
}

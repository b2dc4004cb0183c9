package pegbed.wording;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.day.LineHistories;
import pegbed.day.LineHistory;
import pegbed.day.LineRate;
import pegbed.model.Conditions;
import pegbed.model.DayEvent;
import pegbed.model.Peg;
import pegbed.notation.Numbers;

/** A day's log in the person's words and units. */
public final class DayLogWords {
    /** What is said of a line on which nothing happened. */
    public static final String NOTHING_YET = "Not fished or fed yet";

    /** What stands where the lines of the day will be. */
    public static final String NO_LINES =
            "The lines of the day will stand here; they come with the banks and some readings.";

    /** What {@link DayEvent.Kind#STOP} means. */
    public static final String STOP = "Nothing is fished from now on";

    /** What the picture of a day is called. */
    public static final String STRIP = "The day as a strip";

    private final Peg peg;
    private final Quantities quantities;

    private DayLogWords(Peg peg) {
        this.peg = peg;
        quantities = Quantities.of(peg);
    }

    /** The words at a peg. */
    public static DayLogWords of(Peg peg) {
        return new DayLogWords(peg);
    }

    /** A time of the day: {@code 14:20}. */
    public static String clock(OffsetDateTime time) {
        return two(time.getHour()) + ":" + two(time.getMinute());
    }

    private static String two(int number) {
        return (number < 10 ? "0" : "") + number;
    }

    /** What was just noted: {@code 14:20 line 2, across: fish}. */
    public String noted(LineHistories lines, DayEvent event) {
        String line = event.line()
                .flatMap(lines::at)
                .map(history -> DayWords.of(peg).line(history) + ": ")
                .orElse("");
        return clock(event.time()) + " " + line + what(event);
    }

    /**
     * How a line stands, in parts: how long it is fished or rested, when it was fed, what it gave; none where nothing.
     */
    public List<String> parts(LineHistory line) {
        List<String> parts = new ArrayList<>();
        if (line.fishedNow()) {
            parts.add("fished now, " + DayWords.minutes(line.fishedMinutes()));
        } else if (line.minutesSinceFished().isPresent()) {
            parts.add("rested " + DayWords.minutes(line.minutesSinceFished().getAsDouble()));
        }
        if (line.minutesSinceFed().isPresent()) {
            parts.add(DayWords.ago("fed", line.minutesSinceFed()));
        }
        if (line.fishedMinutes() > 0) {
            parts.add(given(line));
        }
        return parts;
    }

    /** What a line is called above its buttons: as on the plan's card, or by where it is if it is not planned. */
    public String title(LineHistory line, Optional<PlanCards.LineCard> planned) {
        return planned.map(card -> card.number() + ". " + card.title())
                .orElseGet(() -> Sentences.capital(DayWords.of(peg).line(line)));
    }

    /** How a line stands, as one text, with its rate where that is known. */
    public String state(LineHistory line, Optional<LineRate> rate) {
        List<String> all = new ArrayList<>(parts(line));
        rate.flatMap(DayWords.of(peg)::rate).ifPresent(all::add);
        return all.isEmpty() ? NOTHING_YET : Sentences.capital(String.join("; ", all));
    }

    /** What an event's line is called; empty where it belongs to none. */
    public String line(LineHistories lines, DayEvent event) {
        return event.line().flatMap(lines::at).map(DayWords.of(peg)::line).orElse("");
    }

    /** What happened, without its time and line: {@code 2 fish, F1, 3 lb}, {@code feed, pellets, pinch}. */
    public String what(DayEvent event) {
        StringBuilder words = new StringBuilder(
                event.count() > 1
                        ? event.count() + " " + event.kind().word()
                        : event.kind().word());
        add(words, event.name());
        add(words, event.amount());
        event.weightKilograms().ifPresent(kilograms -> add(words, quantities.weight(kilograms)));
        add(words, event.note());
        return words.toString();
    }

    private static void add(StringBuilder words, String more) {
        if (!more.isBlank()) {
            words.append(", ").append(more.strip());
        }
    }

    /** What the day is like; empty where nothing was noted. */
    public Optional<String> conditions(Conditions conditions) {
        StringBuilder words = new StringBuilder();
        celsius(words, "air", conditions.airCelsius());
        celsius(words, "water", conditions.waterCelsius());
        add(words, conditions.wind().isBlank() ? "" : "wind " + conditions.wind());
        add(words, conditions.colour().isBlank() ? "" : "colour " + conditions.colour());
        return words.isEmpty() ? Optional.empty() : Optional.of(Sentences.whole(words.substring(2)));
    }

    private static void celsius(StringBuilder words, String what, OptionalDouble degrees) {
        if (degrees.isPresent()) {
            add(words, what + " " + Numbers.print(degrees.getAsDouble(), 0, 1) + " °C");
        }
    }

    /** How many fish a line gave: {@code 4 fish}. */
    public String fish(LineHistory line) {
        return line.fish() + " fish";
    }

    /** What a line gave: {@code 4 fish in 50 min, 6 lb}. */
    public String given(LineHistory line) {
        return fish(line) + " in " + DayWords.minutes(line.fishedMinutes())
                + (line.weighed() > 0 ? ", " + quantities.weight(line.kilograms()) : "");
    }
}

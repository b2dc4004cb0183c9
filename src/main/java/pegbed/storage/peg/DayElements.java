package pegbed.storage.peg;

import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pegbed.model.Conditions;
import pegbed.model.DayEvent;
import pegbed.model.Place;

/** The fishing of a visit in the peg file: its conditions, and what happened, an event each. */
final class DayElements {
    private static final Map<String, DayEvent.Kind> KINDS =
            ElementParser.words(DayEvent.Kind.values(), DayEvent.Kind::word);

    private DayElements() {}

    static Conditions conditions(Fields fields) {
        return new Conditions(
                fields.number("air_c", Conditions.COLDEST_AIR, Conditions.WARMEST_AIR),
                fields.number("water_c", Conditions.COLDEST_WATER, Conditions.WARMEST_WATER),
                fields.words("wind"),
                fields.words("colour"),
                fields.extras());
    }

    /**
     * One event.
     *
     * @throws IllegalArgumentException if its time or kind is missing, or it can't be
     */
    static DayEvent event(Fields fields) {
        OffsetDateTime time = fields.time("time").orElseThrow(() -> new IllegalArgumentException("time is missing."));
        DayEvent.Kind kind =
                fields.oneOf("event", KINDS).orElseThrow(() -> new IllegalArgumentException("event is missing."));
        Optional<Place> line = fields.has("x_m") || fields.has("distance_m") || kind.onLine()
                ? Optional.of(fields.place())
                : Optional.empty();
        String name = fields.words("what");
        String amount = fields.words("amount");
        OptionalInt count = fields.whole("count", 1, DayEvent.MOST_FISH);
        OptionalDouble kilograms = fields.number("weight_kg", 0, DayEvent.HEAVIEST_KILOGRAMS);
        return new DayEvent(
                time, kind, line, name, amount, count.orElse(1), kilograms, fields.words("note"), fields.extras());
    }

    static String json(DayEvent event) {
        Members members = new Members()
                .time("time", Optional.of(event.time()))
                .text("event", event.kind().word());
        event.line().ifPresent(place -> members.number("x_m", place.xMetres()).number("y_m", place.yMetres()));
        return members.words("what", event.name())
                .words("amount", event.amount())
                .numberUnless(1, "count", event.count())
                .number("weight_kg", event.weightKilograms())
                .words("note", event.note())
                .extras(event.extras())
                .onOneLine();
    }

    static String json(Conditions conditions) {
        return new Members()
                .number("air_c", conditions.airCelsius())
                .number("water_c", conditions.waterCelsius())
                .words("wind", conditions.wind())
                .words("colour", conditions.colour())
                .extras(conditions.extras())
                .onOneLine();
    }
}

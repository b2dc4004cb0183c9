package pegbed.storage.peg;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pegbed.model.Extras;
import pegbed.model.Place;
import pegbed.model.Typed;

/**
 * The members of one JSON object that was read. Taking a member by name removes it, so that what is left over are the
 * fields of a later version. A member that is not what it should be is noted as damage and taken for missing; a member
 * without which the object makes no sense throws {@link IllegalArgumentException} with a sentence.
 */
public final class Fields {
    private final Damage damage;
    private final String what;
    private final int offset;
    private final Map<String, Value> values = new LinkedHashMap<>();
    private final Map<String, Integer> repeats = new LinkedHashMap<>();

    /**
     * @param damage where trouble is noted
     * @param what this object in a sentence, such as {@code reading 7 of visit 1}
     * @param offset where it starts
     */
    Fields(Damage damage, String what, int offset) {
        this.damage = damage;
        this.what = what;
        this.offset = offset;
    }

    /**
     * A member's value.
     *
     * @param kind its first token
     * @param words its text where it is a text, else empty
     * @param json how it stands in the file
     * @param offset where it starts in the file
     */
    record Value(JsonToken kind, String words, String json, int offset) {}

    void put(String name, Value value) {
        values.put(name, value);
    }

    /** Notes that a member of this name came a second time, and was left out. */
    void repeat(String name, int at) {
        repeats.put(name, at);
    }

    /** Which members came twice, and where. */
    Map<String, Integer> repeats() {
        return repeats;
    }

    String what() {
        return what;
    }

    /** The same members under another name. */
    Fields named(String other) {
        Fields named = new Fields(damage, other, offset);
        named.values.putAll(values);
        named.repeats.putAll(repeats);
        return named;
    }

    /** Names of the members that nobody has taken. */
    List<String> names() {
        return List.copyOf(values.keySet());
    }

    Value value(String name) {
        return values.get(name);
    }

    /** Puts a member in, or notes it as repeated if it is there. */
    void add(String name, Value value) {
        if (values.containsKey(name)) {
            repeat(name, value.offset());
        } else {
            put(name, value);
        }
    }

    /** Notes something wrong with the whole object. */
    void trouble(String sentence) {
        damage.add(offset, Damage.capital(what) + ": " + sentence);
    }

    boolean has(String name) {
        return values.containsKey(name);
    }

    String words(String name) {
        Value value = values.remove(name);
        if (value == null) {
            return "";
        }
        if (value.kind() != JsonToken.VALUE_STRING) {
            wrong(name, value, "a text in quotes");
            return "";
        }
        return value.words();
    }

    /** One of some words, missing where it is none of them. */
    <T> Optional<T> oneOf(String name, T[] all, Function<T, String> word) {
        Value value = values.remove(name);
        if (value == null) {
            return Optional.empty();
        }
        for (T each : all) {
            if (value.kind() == JsonToken.VALUE_STRING && word.apply(each).equals(value.words())) {
                return Optional.of(each);
            }
        }
        wrong(name, value, "one of " + Stream.of(all).map(word).collect(Collectors.joining(", ")));
        return Optional.empty();
    }

    OptionalDouble number(String name) {
        Value value = values.remove(name);
        if (value == null) {
            return OptionalDouble.empty();
        }
        if (value.kind().isNumeric()) {
            double number = Double.parseDouble(value.json());
            if (Double.isFinite(number)) {
                return OptionalDouble.of(number);
            }
        }
        wrong(name, value, "a number");
        return OptionalDouble.empty();
    }

    /** A number within bounds, missing where it is not. */
    OptionalDouble number(String name, double least, double most) {
        Value value = values.get(name);
        OptionalDouble number = number(name);
        if (number.isPresent() && !(number.getAsDouble() >= least && number.getAsDouble() <= most)) {
            wrong(name, value, "between " + NumberText.text(least) + " and " + NumberText.text(most));
            return OptionalDouble.empty();
        }
        return number;
    }

    /** A whole number within bounds, missing where it is not. */
    OptionalInt whole(String name, int least, int most) {
        Value value = values.get(name);
        OptionalDouble number = number(name, least, most);
        if (number.isPresent() && number.getAsDouble() != Math.rint(number.getAsDouble())) {
            wrong(name, value, "a whole number");
            return OptionalInt.empty();
        }
        return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
    }

    /** A number without which the object makes no sense. */
    double needed(String name, double least, double most) {
        Value value = values.remove(name);
        if (value == null) {
            throw new IllegalArgumentException(name + " is missing.");
        }
        double number = value.kind().isNumeric() ? Double.parseDouble(value.json()) : Double.NaN;
        if (!(number >= least && number <= most)) {
            throw new IllegalArgumentException(name + " must be a number between " + NumberText.text(least) + " and "
                    + NumberText.text(most) + ", not " + shortened(value.json()) + ".");
        }
        return number;
    }

    Optional<OffsetDateTime> time(String name) {
        Value value = values.get(name);
        String words = words(name);
        if (words.isEmpty()) {
            return Optional.empty();
        }
        Optional<OffsetDateTime> moment = Moments.read(words);
        if (moment.isEmpty()) {
            wrong(name, value, "a time such as 2026-05-02T07:30:00+01:00");
        }
        return moment;
    }

    /** A flag; false where it is missing. */
    boolean flag(String name) {
        Value value = values.remove(name);
        if (value == null || value.kind() == JsonToken.VALUE_FALSE) {
            return false;
        }
        if (value.kind() != JsonToken.VALUE_TRUE) {
            wrong(name, value, "true or false");
        }
        return value.kind() == JsonToken.VALUE_TRUE;
    }

    /** A word out of a few; missing where it is none of them. */
    <T> Optional<T> oneOf(String name, Map<String, T> meanings) {
        Value value = values.get(name);
        String word = words(name);
        if (word.isEmpty()) {
            return Optional.empty();
        }
        if (!meanings.containsKey(word)) {
            wrong(name, value, "one of " + String.join(", ", meanings.keySet()));
        }
        return Optional.ofNullable(meanings.get(word));
    }

    Typed typed() {
        String distance = words("typed_distance");
        String direction = words("typed_direction");
        String depth = words("typed_depth");
        return distance.isEmpty() && direction.isEmpty() && depth.isEmpty()
                ? Typed.NOTHING
                : new Typed(distance, direction, depth);
    }

    /** Drops members that make no sense together. */
    void drop(String... names) {
        for (String name : names) {
            values.remove(name);
        }
    }

    /** Where the object is: {@code x_m} and {@code y_m}, or {@code distance_m} and {@code angle_deg}. */
    Place place() {
        double most = NumberText.FARTHEST_METRES;
        boolean plane = has("x_m") || has("y_m");
        if (plane && (has("distance_m") || has("angle_deg"))) {
            throw new IllegalArgumentException("a place is x_m and y_m, or distance_m and angle_deg, not both.");
        }
        return plane
                ? new Place(needed("x_m", -most, most), needed("y_m", -most, most))
                : Place.polar(needed("distance_m", 0, most), needed("angle_deg", -360, 360));
    }

    /** A list of numbers without which the object makes no sense. */
    List<Double> numbers(String name) {
        return items(name, "a list of numbers").map(item -> number(name, item)).toList();
    }

    /** A list of places, each {@code [x, y]}, without which the object makes no sense. */
    List<Place> places(String name) {
        return items(name, "a list of [x, y]")
                .map(item -> {
                    if (item.items().size() != 2) {
                        throw new IllegalArgumentException(name + " must be a list of [x, y].");
                    }
                    return new Place(
                            number(name, item.items().get(0)),
                            number(name, item.items().get(1)));
                })
                .toList();
    }

    /** The object that a member is, empty where it is missing. */
    Optional<Fields> object(String name) {
        Value value = values.remove(name);
        if (value == null) {
            return Optional.empty();
        }
        Optional<Fields> object = value.kind() == JsonToken.START_OBJECT
                ? PegParser.alone(value.json(), value.offset(), name + " of " + what, damage)
                : Optional.empty();
        if (object.isEmpty()) {
            wrong(name, value, "an object {...}");
        }
        return object;
    }

    /** The objects of a list, none where it is missing. */
    List<Fields> objects(String name) {
        Value value = values.remove(name);
        if (value == null) {
            return List.of();
        }
        if (value.kind() != JsonToken.START_ARRAY) {
            wrong(name, value, "a list of {...}");
            return List.of();
        }
        return PegParser.list(value.json(), value.offset(), i -> name + " " + i + " of " + what, damage);
    }

    private Stream<ListItem> items(String name, String right) {
        Value value = values.remove(name);
        if (value == null) {
            throw new IllegalArgumentException(name + " is missing.");
        }
        try {
            if (value.kind() == JsonToken.START_ARRAY) {
                return ListItem.read(value.json()).stream();
            }
        } catch (IOException e) {
            throw new IllegalArgumentException(name + " can't be read.", e);
        }
        throw new IllegalArgumentException(name + " must be " + right + ", not " + shortened(value.json()) + ".");
    }

    private static double number(String name, ListItem item) {
        double number = item.number();
        if (!(Math.abs(number) <= NumberText.FARTHEST_METRES)) {
            throw new IllegalArgumentException(
                    name + " holds " + shortened(item.json()) + " where a number of metres should stand.");
        }
        return number;
    }

    /** Everything that nobody took. */
    Extras extras() {
        if (values.isEmpty()) {
            return Extras.NONE;
        }
        Map<String, String> raw = new LinkedHashMap<>();
        values.forEach((name, value) -> raw.put(name, value.json()));
        values.clear();
        return new Extras(raw);
    }

    private void wrong(String name, Value value, String right) {
        damage.add(
                value.offset(),
                Damage.capital(what) + ": " + name + " must be " + right + ", not " + shortened(value.json()) + ".");
    }

    private static String shortened(String json) {
        return shortened(json, 60);
    }

    /** A piece of the file on one line, cut to a length. */
    public static String shortened(String json, int length) {
        String line = json.length() > 10 * length ? json.substring(0, 10 * length) : json;
        line = line.strip().replaceAll("\\s+", " ");
        return line.length() <= length ? line : line.substring(0, length - 3) + "...";
    }
}

package pegbed.storage.peg;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import pegbed.model.Extras;
import pegbed.model.Typed;

/** The members of one JSON object that is being written, in order. */
final class Members {
    private final List<String> members = new ArrayList<>();

    Members json(String name, String json) {
        members.add(quoted(name) + ": " + json);
        return this;
    }

    Members text(String name, String value) {
        return json(name, quoted(value));
    }

    /** A text that is left out when it is empty. */
    Members words(String name, String value) {
        return value.isEmpty() ? this : text(name, value);
    }

    Members number(String name, double value) {
        return json(name, NumberText.text(value));
    }

    Members number(String name, OptionalDouble value) {
        return value.isPresent() ? number(name, value.getAsDouble()) : this;
    }

    /** A number that is left out when it is what a reader assumes anyway. */
    Members numberUnless(double assumed, String name, double value) {
        return value == assumed ? this : number(name, value);
    }

    /** A flag that is left out when it is not set. */
    Members flag(String name, boolean value) {
        return value ? json(name, "true") : this;
    }

    Members numbers(String name, DoubleStream values) {
        return json(name, values.mapToObj(NumberText::text).collect(Collectors.joining(", ", "[", "]")));
    }

    Members time(String name, Optional<OffsetDateTime> time) {
        return time.isPresent() ? text(name, Moments.text(time.get())) : this;
    }

    Members typed(Typed typed) {
        return words("typed_distance", typed.distance())
                .words("typed_direction", typed.direction())
                .words("typed_depth", typed.depth());
    }

    Members extras(Extras extras) {
        extras.rawJson().forEach(this::json);
        return this;
    }

    /** The object on one line. */
    String onOneLine() {
        return "{" + String.join(", ", members) + "}";
    }

    /** The object with a line for each member, its braces standing at an indent. */
    String onLines(String indent) {
        return block("{", members, "}", indent);
    }

    /** A list with a line for each item, its brackets standing at an indent. */
    static String list(List<String> items, String indent) {
        return block("[", items, "]", indent);
    }

    private static String block(String open, List<String> items, String close, String indent) {
        if (items.isEmpty()) {
            return open + close;
        }
        String between = "\n" + indent + "  ";
        return items.stream().collect(Collectors.joining("," + between, open + between, "\n" + indent + close));
    }

    private static String quoted(String text) {
        return "\"" + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + "\"";
    }
}

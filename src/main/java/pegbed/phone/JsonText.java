package pegbed.phone;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A JSON object (RFC 8259) that is being written. */
final class JsonText {
    private final List<String> members = new ArrayList<>();

    /** A member whose value is JSON already. */
    private JsonText member(String name, String json) {
        members.add(quoted(name) + ":" + json);
        return this;
    }

    JsonText put(String name, String words) {
        return member(name, quoted(words));
    }

    /** A text that is left out where there is none. */
    JsonText put(String name, Optional<String> words) {
        return words.isPresent() ? put(name, words.get()) : this;
    }

    /** A number; must be finite. */
    JsonText put(String name, double number) {
        return member(name, number == Math.rint(number) && Math.abs(number) < 1e9 ? "" + (long) number : "" + number);
    }

    JsonText put(String name, boolean flag) {
        return member(name, flag ? "true" : "false");
    }

    JsonText put(String name, JsonText object) {
        return member(name, object.toString());
    }

    JsonText put(String name, List<JsonText> objects) {
        return member(name, list(objects.stream().map(JsonText::toString).toList()));
    }

    JsonText putWords(String name, List<String> words) {
        return member(name, list(words.stream().map(JsonText::quoted).toList()));
    }

    private static String list(List<String> items) {
        return "[" + String.join(",", items) + "]";
    }

    private static String quoted(String words) {
        return "\"" + new String(JsonStringEncoder.getInstance().quoteAsString(words)) + "\"";
    }

    /** The object's text. */
    @Override
    public String toString() {
        return "{" + String.join(",", members) + "}";
    }
}

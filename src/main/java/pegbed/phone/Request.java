package pegbed.phone;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.model.InputException;

/** What the page asks: the members of a JSON object, whose values are texts, numbers, flags, lists or objects. */
final class Request {
    private static final JsonFactory JSON = new JsonFactory();

    private final Map<String, Object> members;

    private Request(Map<String, Object> members) {
        this.members = members;
    }

    /** @throws InputException if it is no JSON object */
    static Request of(String json) throws InputException {
        try (JsonParser parser = JSON.createParser(json)) {
            parser.nextToken();
            if (value(parser) instanceof Request request) {
                return request;
            }
        } catch (IOException broken) {
            // Said below.
        }
        throw new InputException("The page asked for something that can't be read; load it again.");
    }

    private static Object value(JsonParser parser) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            Map<String, Object> members = new HashMap<>();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                parser.nextToken();
                members.put(name, value(parser));
            }
            return new Request(members);
        }
        if (token == JsonToken.START_ARRAY) {
            List<Object> items = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(value(parser));
            }
            return items;
        }
        if (token == JsonToken.VALUE_STRING) {
            return parser.getText();
        }
        if (token == JsonToken.VALUE_NUMBER_INT || token == JsonToken.VALUE_NUMBER_FLOAT) {
            return Double.parseDouble(parser.getText());
        }
        return token == JsonToken.VALUE_TRUE;
    }

    /** A text; empty where there is none. */
    String words(String name) {
        return members.get(name) instanceof String words ? words : "";
    }

    /** A number; empty where there is none, or {@code null}. */
    OptionalDouble number(String name) {
        return members.get(name) instanceof Double number ? OptionalDouble.of(number) : OptionalDouble.empty();
    }

    /** A number that must be there. */
    double needed(String name) throws InputException {
        return number(name)
                .orElseThrow(() -> new InputException("The page did not say '" + name + "'; load it again."));
    }

    /** A flag; not set where there is none. */
    boolean flag(String name) {
        return Boolean.TRUE.equals(members.get(name));
    }

    /** An object; empty where there is none. */
    Optional<Request> object(String name) {
        return members.get(name) instanceof Request object ? Optional.of(object) : Optional.empty();
    }

    /** The texts of a list. */
    List<String> texts(String name) {
        List<String> texts = new ArrayList<>();
        if (members.get(name) instanceof List<?> list) {
            list.forEach(each -> texts.add(each instanceof String text ? text : ""));
        }
        return texts;
    }

    /** The objects of a list. */
    List<Request> objects(String name) {
        List<Request> objects = new ArrayList<>();
        if (members.get(name) instanceof List<?> list) {
            for (Object each : list) {
                if (each instanceof Request object) {
                    objects.add(object);
                }
            }
        }
        return objects;
    }
}

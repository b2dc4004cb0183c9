package pegbed.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Fields of the peg file that this version does not know, kept so that a later version finds them again.
 *
 * @param rawJson name of the field to its JSON text, in the order of the file
 */
public record Extras(Map<String, String> rawJson) {
    public static final Extras NONE = new Extras(Map.of());

    public Extras {
        rawJson = Collections.unmodifiableMap(new LinkedHashMap<>(rawJson));
    }
}

package pegbed.storage.peg;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import pegbed.model.PegName;

/** What a peg file's peg is called, read from its first members only. */
public final class NameOnly {
    private NameOnly() {}

    /**
     * The name in a file's bytes, once venue, water and number have stood in the file, whatever follows; a missing one
     * is empty.
     *
     * @return empty for a file that is not a peg file
     * @throws IOException if it can't be read, or is not JSON so far
     */
    public static Optional<PegName> of(InputStream in) throws IOException {
        String[] name = {null, null, null};
        boolean peg = false;
        try (JsonParser parser = Json.STRICT.createParser(in)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return Optional.empty();
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME && (!peg || !whole(name))) {
                String member = parser.currentName();
                JsonToken value = parser.nextToken();
                int at = member.equals("venue") ? 0 : member.equals("water") ? 1 : member.equals("number") ? 2 : -1;
                if (value == JsonToken.VALUE_STRING && at >= 0 && name[at] == null) {
                    name[at] = parser.getText();
                } else if (member.equals("format")) {
                    peg |= value == JsonToken.VALUE_STRING && parser.getText().equals(PegWriter.FORMAT);
                }
                parser.skipChildren();
            }
        }
        return peg ? Optional.of(new PegName(known(name[0]), known(name[1]), known(name[2]))) : Optional.empty();
    }

    private static boolean whole(String[] name) {
        return name[0] != null && name[1] != null && name[2] != null;
    }

    private static String known(String text) {
        return text == null ? "" : text;
    }
}

package pegbed.storage.peg;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * One item of a list in a peg file.
 *
 * @param number its value, NaN where it is no number
 * @param items its own items, none where it is no list
 * @param json how it stands in the file
 */
record ListItem(double number, List<ListItem> items, String json) {
    /** The items of a list as it stands in the file. */
    static List<ListItem> read(String list) throws IOException {
        try (JsonParser parser = Json.STRICT.createParser(list)) {
            parser.nextToken();
            return items(parser, list);
        }
    }

    private static List<ListItem> items(JsonParser parser, String text) throws IOException {
        List<ListItem> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            int start = (int) parser.currentTokenLocation().getCharOffset();
            double number = parser.currentToken().isNumeric() ? Double.parseDouble(parser.getText()) : Double.NaN;
            List<ListItem> own = List.of();
            if (parser.currentToken() == JsonToken.START_ARRAY) {
                own = items(parser, text);
            } else {
                parser.getTextLength();
                parser.skipChildren();
            }
            int end = (int) parser.currentLocation().getCharOffset();
            items.add(new ListItem(number, own, text.substring(start, end)));
        }
        return items;
    }
}

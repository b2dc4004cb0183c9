package pegbed.notation;

import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One typed line, read from left to right. Patterns see a plain copy, of the same length: small letters, plain quotes
 * and minus signs, a blank for every kind of white space. What is handed out is what was typed.
 *
 * <p>Pieces are separated by blanks, semicolons, or a comma with a blank behind it.
 */
final class Text {
    /** Ends every pattern of a whole piece: what follows is a separator or the end. */
    static final String END = "(?=[ ;]|,(?:[ ;]|$)|$)";

    /** A line break of any kind, as in java.util.regex's linebreak matcher, which not every platform knows. */
    static final String LINE_BREAK = "(?:\\r\\n|[\\n\\u000B\\f\\r\\u0085\\u2028\\u2029])";

    /** Blanks within a line, of any width. */
    static final String BLANKS = "[ \\t\\u00A0\\u1680\\u180E\\u2000-\\u200A\\u202F\\u205F\\u3000]+";

    private final String raw;
    private final String plain;
    private int at;

    Text(String typed) {
        String copy = plain(typed);
        int from = 0;
        int to = typed.length();
        while (from < to && " ;".indexOf(copy.charAt(from)) >= 0) {
            from++;
        }
        while (to > from && " ;".indexOf(copy.charAt(to - 1)) >= 0) {
            to--;
        }
        raw = typed.substring(from, to);
        plain = copy.substring(from, to);
    }

    /** The plain copy of a text, as long as the text itself. */
    static String plain(String text) {
        StringBuilder copy = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            copy.append(plain(text.charAt(i)));
        }
        return copy.toString();
    }

    private static char plain(char c) {
        return switch (c) {
            case '’', '‘', '′', '`', '´' -> '\'';
            case '”', '“', '″' -> '"';
            case '−', '–' -> '-';
            case 'º' -> '°';
            default ->
                Character.isWhitespace(c)
                                || Character.isSpaceChar(c)
                                || Character.isISOControl(c)
                                || Character.getType(c) == Character.FORMAT
                        ? ' '
                        : Character.toLowerCase(c);
        };
    }

    boolean atEnd() {
        return at >= plain.length();
    }

    /** Where reading has come to. */
    int at() {
        return at;
    }

    /** Goes to a place that {@link #at()} gave. */
    void goTo(int place) {
        at = place;
    }

    /** What is still to be read, plain. */
    String plainRest() {
        return plain.substring(at);
    }

    /** What is still to be read, as typed. */
    String rest() {
        return raw.substring(at);
    }

    /** What was read since a place, as typed. */
    String since(int from) {
        return raw.substring(from, at);
    }

    /** What was read since a place, and the piece that can't be read, as typed. */
    String sinceThroughPiece(int from) {
        return since(from) + piece(at);
    }

    /** What was read so far, as typed. */
    String before() {
        int to = at;
        while (to > 0 && separates(to - 1)) {
            to--;
        }
        return raw.substring(0, to);
    }

    /** Reads what matches here, or nothing. */
    Optional<MatchResult> take(Pattern pattern) {
        Matcher matcher = matcher(pattern);
        if (!matcher.lookingAt()) {
            return Optional.empty();
        }
        at = matcher.end();
        return Optional.of(matcher.toMatchResult());
    }

    /** Whether the pattern matches here. */
    boolean sees(Pattern pattern) {
        return matcher(pattern).lookingAt();
    }

    private Matcher matcher(Pattern pattern) {
        return pattern.matcher(plain)
                .useAnchoringBounds(false)
                .useTransparentBounds(true)
                .region(at, plain.length());
    }

    /** Goes to the next piece. */
    void skipSeparators() {
        while (!atEnd() && separates(at)) {
            at++;
        }
    }

    /** The piece that begins at a place, as typed: up to the next separator. */
    String piece(int from) {
        int to = from;
        while (to < plain.length() && !separates(to)) {
            to++;
        }
        return raw.substring(from, to);
    }

    private boolean separates(int i) {
        char c = plain.charAt(i);
        return c == ' '
                || c == ';'
                || (c == ',' && (i + 1 == plain.length() || " ;".indexOf(plain.charAt(i + 1)) >= 0));
    }
}

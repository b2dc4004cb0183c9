package pegbed.notation;

import pegbed.model.InputException;

/**
 * A typed line that can't be read. The message is one sentence that names the piece that failed and gives a right
 * example.
 */
public final class NotationException extends InputException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST_QUOTED = 40;

    private final String piece;

    private NotationException(String piece, String sentence) {
        super(sentence);
        this.piece = piece;
    }

    /** The piece that failed, as typed; empty where a piece is missing. */
    public String piece() {
        return piece;
    }

    /** A piece that is wrong: the sentence is the quoted piece, a blank and {@code rest}. */
    static NotationException about(String piece, String rest) {
        return new NotationException(piece, quoted(piece) + " " + rest);
    }

    /** A whole sentence about a piece that it already quotes. */
    static NotationException saying(String piece, String sentence) {
        return new NotationException(piece, sentence);
    }

    /** A piece that is not there. */
    static NotationException missing(String what, String before, String example) {
        String after = before.isEmpty() ? "" : " after " + quoted(before);
        return new NotationException("", "The " + what + " is missing" + after + "; type a line like " + example + ".");
    }

    /** A piece between quotes, cut where it is very long, with nothing unprintable in it. */
    static String quoted(String piece) {
        StringBuilder shown = new StringBuilder("\"");
        piece.codePoints().limit(LONGEST_QUOTED).forEach(c -> shown.appendCodePoint(unprintable(c) ? '\uFFFD' : c));
        if (piece.codePointCount(0, piece.length()) > LONGEST_QUOTED) {
            shown.append('…');
        }
        return shown.append('"').toString();
    }

    private static boolean unprintable(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.UNASSIGNED -> true;
            default -> false;
        };
    }
}

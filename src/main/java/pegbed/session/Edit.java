package pegbed.session;

import java.util.function.UnaryOperator;
import pegbed.model.Peg;

/**
 * One change of the open peg.
 *
 * @param label what it does, as the person would say it, such as {@code Add reading}; shown beside Undo
 * @param burst edits of one burst that follow each other quickly are undone as one: the letters of a note, the steps of
 *     a drag. Empty for an edit that stands alone.
 * @param change from the peg before to the peg after; may refuse with an {@link IllegalArgumentException} whose message
 *     is a sentence for the person
 */
public record Edit(String label, String burst, UnaryOperator<Peg> change) {
    /** An edit that stands alone. */
    public static Edit of(String label, UnaryOperator<Peg> change) {
        return new Edit(label, "", change);
    }

    /** A step of a burst. */
    public static Edit step(String label, String burst, UnaryOperator<Peg> change) {
        return new Edit(label, burst, change);
    }
}

package pegbed.phone.page;

import org.teavm.jso.JSExport;
import pegbed.model.InputException;
import pegbed.phone.PegAnswers;

/** What a worker of the page may call. Texts go in and out; a refusal begins with {@code !}. */
public final class Core {
    private Core() {}

    public static void main(String[] words) {
        // The page's worker calls the functions below.
    }

    /** The numbers of a peg, separated by blanks, each as the shortest text that reads back as itself. */
    @JSExport
    public static String numbers(String peg) {
        try {
            StringBuilder all = new StringBuilder();
            PegAnswers.of(peg).numbers().forEach(number -> all.append(number).append(' '));
            return all.toString().strip();
        } catch (InputException refused) {
            return "!" + refused.getMessage();
        }
    }

    /** The sentences of a peg, one a line. */
    @JSExport
    public static String words(String peg) {
        try {
            return String.join("\n", PegAnswers.of(peg).words());
        } catch (InputException refused) {
            return "!" + refused.getMessage();
        }
    }

    /** The peg as it would be written to a file. */
    @JSExport
    public static String text(String peg) {
        try {
            return PegAnswers.of(peg).text();
        } catch (InputException refused) {
            return "!" + refused.getMessage();
        }
    }

    /** How a typed line is understood at a peg, or why not. */
    @JSExport
    public static String understood(String peg, String typed) {
        try {
            return PegAnswers.understood(peg, typed);
        } catch (InputException refused) {
            return "!" + refused.getMessage();
        }
    }
}

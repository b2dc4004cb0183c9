package pegbed.model;

/**
 * Bad input from outside: a file, a table or a typed line that can't be used. The message is one whole sentence that
 * says what was wrong and what would be right, fit to be shown to a person as it is.
 */
public class InputException extends Exception {
    private static final long serialVersionUID = 1L;

    public InputException(String sentence) {
        super(sentence);
    }

    public InputException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}

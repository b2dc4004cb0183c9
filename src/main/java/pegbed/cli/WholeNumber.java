package pegbed.cli;

import java.util.regex.Pattern;
import pegbed.model.InputException;
import pegbed.storage.peg.Fields;

/**
 * A whole number that was given as an option; whether it is one is looked at where its bounds are known.
 *
 * @param typed as it was typed
 */
record WholeNumber(String typed) {
    private static final Pattern DIGITS = Pattern.compile("[+-]?\\d{1,9}");

    private static final int LONGEST_SHOWN = 40;

    /**
     * The number.
     *
     * @param option its option, for the sentence
     * @param least the smallest right value
     * @param most the largest right value
     * @throws InputException if it is no whole number, or out of these bounds
     */
    int within(String option, int least, int most) throws InputException {
        if (DIGITS.matcher(typed).matches()) {
            int value = Integer.parseInt(typed);
            if (value >= least && value <= most) {
                return value;
            }
        }
        throw new InputException(option + " takes a whole number between " + least + " and " + most + "; not "
                + (typed.isBlank() ? "an empty word" : Fields.shortened(typed, LONGEST_SHOWN)) + ".");
    }
}

package pegbed.storage.table;

import java.util.regex.Pattern;

/**
 * Keeps a person's words in a table from being a formula of the spreadsheet that opens it: words that begin with
 * {@code = + - @}, a tab or a line's end get an apostrophe before them, by which spreadsheets know a text, and lose it
 * when they are read again. Words that begin with such an apostrophe of their own get another, so that all come back
 * the same.
 */
public final class Formulas {
    private static final Pattern FORMULA = Pattern.compile("'*[=+\\-@\t\r\n].*", Pattern.DOTALL);

    private static final Pattern MARKED = Pattern.compile("'+[=+\\-@\t\r\n].*", Pattern.DOTALL);

    private Formulas() {}

    /** Words as a cell that no spreadsheet takes for a formula. */
    public static String asText(String words) {
        return FORMULA.matcher(words).matches() ? "'" + words : words;
    }

    /** The words of a cell that was written so. */
    public static String asTyped(String cell) {
        return MARKED.matcher(cell).matches() ? cell.substring(1) : cell;
    }
}

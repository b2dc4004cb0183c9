package pegbed.storage;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as people and spreadsheets write them: with a point or a comma as decimal sign, never both. */
final class Cells {
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,30}([.,]\\d{0,30})?|[.,]\\d{1,30})([eE][+-]?\\d{1,3})?");

    private Cells() {}

    static boolean isNumber(String words) {
        return NUMBER.matcher(plain(words)).matches();
    }

    /** The number that a cell says; empty if it says none. */
    static Optional<BigDecimal> number(String words) {
        String plain = plain(words);
        return NUMBER.matcher(plain).matches()
                ? Optional.of(new BigDecimal(plain.replace(',', '.')))
                : Optional.empty();
    }

    private static String plain(String words) {
        return words.replace('\u00A0', ' ').strip().replace('\u2212', '-');
    }
}

package pegbed.storage.table;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as people and spreadsheets write them: with a point or a comma as decimal sign, never both. */
final class Cells {
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,30}([.,]\\d{0,30})?|[.,]\\d{1,30})([eE][+-]?\\d{1,3})?");

    private static final int PLAIN_DIGITS = 15;

    private static final double[] POWERS = new double[PLAIN_DIGITS];

    static {
        POWERS[0] = 1;
        for (int i = 1; i < POWERS.length; i++) {
            POWERS[i] = 10 * POWERS[i - 1];
        }
    }

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

    /**
     * The number that a cell of a few digits says, such as -12.5, at once; NaN where it takes a closer look. It is the
     * same as that of {@link #number}: a whole number below 10^15 and a power of ten up to 10^15 are exact, and so
     * their quotient is rounded once.
     */
    static double plainNumber(String words) {
        int length = words.length();
        int at = length > 0 && words.charAt(0) == '-' ? 1 : 0;
        int digits = length - at;
        if (digits == 0 || digits > PLAIN_DIGITS) {
            return Double.NaN;
        }
        long whole = 0;
        int point = -1;
        for (int i = at; i < length; i++) {
            char c = words.charAt(i);
            if (c >= '0' && c <= '9') {
                whole = 10 * whole + (c - '0');
            } else if (c == '.' && point < 0 && i > at) {
                point = i;
            } else {
                return Double.NaN;
            }
        }
        double size = point < 0 ? whole : whole / POWERS[length - 1 - point];
        return at == 1 && whole != 0 ? -size : size;
    }

    private static String plain(String words) {
        return words.replace('\u00A0', ' ').strip().replace('\u2212', '-');
    }
}

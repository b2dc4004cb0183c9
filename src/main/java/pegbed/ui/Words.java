package pegbed.ui;

import java.util.Locale;

/** Small things about texts. */
final class Words {
    private Words() {}

    /** With its first letter large. */
    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A number with so many decimals. */
    static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}

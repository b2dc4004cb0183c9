package pegbed.ui.controls;

import java.util.Locale;

/** Small things about texts. */
public final class Texts {
    private Texts() {}

    /** With its first letter large. */
    public static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A number with so many decimals. */
    public static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}

package pegbed.ui.controls;

import java.util.Locale;

/** Small things about texts. */
public final class Texts {
    private Texts() {}

    /** Words as the beginning of a file's name: letters and figures in lower case, with hyphens between. */
    public static String fileName(String words) {
        return words.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
    }

    /** A number with so many decimals. */
    public static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}

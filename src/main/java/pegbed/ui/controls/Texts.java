package pegbed.ui.controls;

import java.util.Locale;

/** Small things about texts. */
public final class Texts {
    private Texts() {}

    /** A number with so many decimals. */
    public static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}

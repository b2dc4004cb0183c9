package pegbed.wording;

import java.util.Locale;

/** Small repairs to words that come from elsewhere, so that they stand as sentences. */
public final class Sentences {
    private Sentences() {}

    /** One line that begins with a capital and ends with a full stop. */
    public static String whole(String text) {
        String begun = capital(text.strip().replaceAll("\\s+", " "));
        return begun.matches(".*[.!?]$") ? begun : begun + ".";
    }

    /** Words with a capital at their start. */
    public static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}

package pegbed.cli.output;

import java.util.Locale;

/** Small repairs to sentences that come from elsewhere. */
public final class Sentences {
    private Sentences() {}

    /** One line that begins with a capital and ends with a full stop. */
    public static String whole(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        String begun = line.substring(0, 1).toUpperCase(Locale.ROOT) + line.substring(1);
        return begun.matches(".*[.!?]$") ? begun : begun + ".";
    }
}

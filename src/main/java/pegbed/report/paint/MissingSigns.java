package pegbed.report.paint;

import java.util.Locale;
import java.util.function.IntPredicate;

/** Signs that no face at hand has: they are written by name, so that none is lost without a trace. */
final class MissingSigns {
    /** A longer name is left to the sign's number. */
    private static final int LONGEST_NAME = 16;

    private MissingSigns() {}

    /**
     * Words with every sign that can't be drawn replaced by its Unicode name, such as {@code [fish]}, or its number,
     * such as {@code [U+9C7C]}; signs that only change how others look are left out.
     *
     * @param known whether the face has a sign, by its code point
     */
    static String named(String words, IntPredicate known) {
        if (words.codePoints().allMatch(known)) {
            return words;
        }
        StringBuilder named = new StringBuilder();
        words.codePoints().forEach(sign -> {
            if (known.test(sign)) {
                named.appendCodePoint(sign);
            } else if (!isModifier(sign)) {
                named.append('[').append(name(sign)).append(']');
            }
        });
        return named.toString();
    }

    /** Variation selectors and joiners. */
    private static boolean isModifier(int sign) {
        return (sign >= 0xFE00 && sign <= 0xFE0F)
                || (sign >= 0xE0100 && sign <= 0xE01EF)
                || Character.getType(sign) == Character.FORMAT;
    }

    private static String name(int sign) {
        String name = Character.getName(sign);
        boolean letters = Character.isIdeographic(sign) || name == null || name.length() > LONGEST_NAME;
        return letters ? String.format(Locale.ROOT, "U+%04X", sign) : name.toLowerCase(Locale.ROOT);
    }
}

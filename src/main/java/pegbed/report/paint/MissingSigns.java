package pegbed.report.paint;

import java.util.Locale;
import java.util.function.IntPredicate;

/** Signs that no face at hand has: they are written by name, so that none is lost without a trace. */
final class MissingSigns {
    /** A longer name is left to the sign's number. */
    private static final int LONGEST_NAME = 32;

    private MissingSigns() {}

    /**
     * Words with every sign that can't be drawn replaced by its Unicode name, such as {@code [fish]}; of an ideograph,
     * which has none, the script and the number, such as {@code [CJK U+9C7C]}; signs that only change how others look
     * are left out.
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
    static boolean isModifier(int sign) {
        return (sign >= 0xFE00 && sign <= 0xFE0F)
                || (sign >= 0xE0100 && sign <= 0xE01EF)
                || Character.getType(sign) == Character.FORMAT;
    }

    private static String name(int sign) {
        String name = Character.getName(sign);
        String number = String.format(Locale.ROOT, "U+%04X", sign);
        int type = Character.getType(sign);
        if (name == null || type == Character.SURROGATE || type == Character.PRIVATE_USE) {
            return number;
        }
        if (Character.isIdeographic(sign)) {
            // Its name is that of its block and the number.
            return name.substring(0, name.indexOf(' ')) + " " + number;
        }
        return name.length() > LONGEST_NAME ? number : name.toLowerCase(Locale.ROOT);
    }
}

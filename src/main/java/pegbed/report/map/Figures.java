package pegbed.report.map;

import java.util.Locale;
import pegbed.model.Units;
import pegbed.notation.FeetAndInches;

/** Depths as the short figures that stand in the water. */
public final class Figures {
    private static final int LONGEST = 120;

    private Figures() {}

    /** {@code 4'6} or {@code 9"} to the inch, {@code 137} centimetres, or {@code 1.37} metres. */
    public static String depth(double metres, Units.Depth unit) {
        return switch (unit) {
            case FEET -> FeetAndInches.figure(metres);
            case CENTIMETRES -> Long.toString(Math.round(metres * 100));
            case METRES -> String.format(Locale.ROOT, "%.2f", metres);
        };
    }

    /** What the figures are. */
    static String unit(Units.Depth unit) {
        return switch (unit) {
            case FEET -> "feet'inches";
            case CENTIMETRES -> "centimetres";
            case METRES -> "metres";
        };
    }

    /**
     * What a person typed, made fit for one line: signs that can't be seen or that turn the direction of writing are
     * taken out, and what is longer than {@value #LONGEST} signs is cut short with an ellipsis.
     */
    public static String oneLine(String typed) {
        return oneLine(typed, LONGEST);
    }

    public static String oneLine(String typed, int longest) {
        StringBuilder clean = new StringBuilder();
        int signs = 0;
        for (int at = 0; at < typed.length() && signs <= longest; at += Character.charCount(typed.codePointAt(at))) {
            int sign = typed.codePointAt(at);
            int kind = Character.getType(sign);
            if (Character.isWhitespace(sign)) {
                clean.append(' ');
            } else if (kind != Character.CONTROL
                    && (kind != Character.FORMAT || sign == 0x200C || sign == 0x200D)
                    && kind != Character.SURROGATE
                    && kind != Character.UNASSIGNED
                    && kind != Character.PRIVATE_USE) {
                clean.appendCodePoint(sign);
            } else {
                continue;
            }
            signs++;
        }
        if (signs > longest) {
            clean.setLength(clean.offsetByCodePoints(clean.length(), -2));
            clean.append('…');
        }
        return clean.toString().strip();
    }
}

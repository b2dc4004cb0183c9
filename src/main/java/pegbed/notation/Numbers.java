package pegbed.notation;

import java.math.BigDecimal;
import java.math.RoundingMode;
import pegbed.model.Decimals;

/** Numbers as people write them, read and written. */
public final class Numbers {
    /** Digits with a point or a comma as decimal sign; no sign, no exponent. */
    static final String DECIMAL = "(?:\\d+(?:[.,]\\d+)?|[.,]\\d+)";

    /** A decimal, or one that ends in a fraction: {@code 6½}, {@code ½}, {@code 6 1/2}, {@code 1/2}. */
    static final String FRACTIONAL = "(?:\\d+ +\\d+/[1-9]\\d*|\\d+/[1-9]\\d*|(?:\\d+ *)?[½¼¾⅛⅜⅝⅞]|" + DECIMAL + ")";

    private static final String SIGNS = "½¼¾⅛⅜⅝⅞";
    private static final double[] VALUES = {0.5, 0.25, 0.75, 0.125, 0.375, 0.625, 0.875};

    private Numbers() {}

    /** The value of a text that matches {@link #FRACTIONAL}. May be infinite for very many digits. */
    static double parse(String text) {
        int last = text.length() - 1;
        int sign = SIGNS.indexOf(text.charAt(last));
        if (sign >= 0) {
            String whole = text.substring(0, last).strip();
            return (whole.isEmpty() ? 0 : Double.parseDouble(whole)) + VALUES[sign];
        }
        int slash = text.indexOf('/');
        if (slash >= 0) {
            int blank = text.lastIndexOf(' ');
            double whole =
                    blank < 0 ? 0 : Double.parseDouble(text.substring(0, blank).strip());
            return whole
                    + Double.parseDouble(text.substring(blank + 1, slash))
                            / Double.parseDouble(text.substring(slash + 1));
        }
        return Double.parseDouble(text.replace(',', '.'));
    }

    /**
     * A finite number with a decimal point, rounded half away from zero, never {@code -0}.
     *
     * @param minDecimals digits behind the point that stand there even if they are zeros
     * @param maxDecimals digits behind the point to which it is rounded, from minDecimals on
     */
    public static String print(double value, int minDecimals, int maxDecimals) {
        BigDecimal rounded = Decimals.rounded(value, maxDecimals);
        while (rounded.scale() > minDecimals
                && rounded.setScale(rounded.scale() - 1, RoundingMode.DOWN).compareTo(rounded) == 0) {
            rounded = rounded.setScale(rounded.scale() - 1, RoundingMode.DOWN);
        }
        return rounded.toPlainString();
    }
}

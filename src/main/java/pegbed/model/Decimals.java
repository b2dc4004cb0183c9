package pegbed.model;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers with a fixed count of decimals as text, the same on every platform and in every locale. */
public final class Decimals {
    private Decimals() {}

    /**
     * A number with a decimal point, its shortest decimal form rounded half away from zero, never {@code -0}:
     * {@code 18.5} with no decimals is {@code 19}.
     *
     * @param decimals digits behind the point, 0 or more
     * @return {@code NaN}, {@code Infinity} or {@code -Infinity} for what is no finite number
     */
    public static String text(double value, int decimals) {
        return Double.isFinite(value) ? rounded(value, decimals).toPlainString() : Double.toString(value);
    }

    /** A finite number rounded half away from zero to so many decimals. */
    public static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}

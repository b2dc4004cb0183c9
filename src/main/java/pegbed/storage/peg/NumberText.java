package pegbed.storage.peg;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import pegbed.model.Place;

/** Numbers as text: as short as they can be and still read back as the same number. */
public final class NumberText {
    /** Places farther from the seat than this are taken for a slip of the pen, metres. */
    public static final double FARTHEST_METRES = 100_000;

    /** Enough digits for a double's own noise to fall behind them, so that reading and writing settle at once. */
    private static final MathContext POLAR_DIGITS = new MathContext(14);

    private static final int POLAR_DECIMALS = 12;

    private NumberText() {}

    /** The shortest text that reads back as exactly this number: {@code 11}, {@code 0.3}, {@code -1.5}. */
    public static String text(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A number must be finite, not " + value + ".");
        }
        if (value == 0) {
            return "0";
        }
        String shortest = NumberOutput.toString(value, true);
        double size = Math.abs(value);
        return size >= 1e-9 && size < 1e15
                ? new BigDecimal(shortest).stripTrailingZeros().toPlainString()
                : shortest;
    }

    /**
     * A place's distance and direction as text. {@link Place#polar} of the two lies within 1e-12 of the distance from
     * the place, and gives the same text again.
     */
    public static Polar polar(Place place) {
        double distanceMetres = rounded(place.distanceMetres());
        return new Polar(text(distanceMetres), distanceMetres == 0 ? "0" : text(rounded(place.angleDegrees())));
    }

    private static double rounded(double value) {
        BigDecimal digits = new BigDecimal(value).round(POLAR_DIGITS);
        return digits.scale() > POLAR_DECIMALS
                ? digits.setScale(POLAR_DECIMALS, RoundingMode.HALF_EVEN).doubleValue()
                : digits.doubleValue();
    }

    /** Distance in metres and direction in degrees, as text. */
    public record Polar(String distanceMetres, String angleDegrees) {}
}

package pegbed.notation;

import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import pegbed.model.DayEvent;

/**
 * Weights as people say them, read and written: {@code 1.5lb}, {@code 1lb8}, {@code 1 lb 8 oz}, {@code 12oz},
 * {@code 0.7kg}, {@code 700g}.
 */
public final class Weight {
    /** One pound (international, exact), kilograms. */
    public static final double POUND_KILOGRAMS = 0.45359237;

    private static final double OUNCE_KILOGRAMS = POUND_KILOGRAMS / 16;
    private static final String NUMBER = "(" + Numbers.FRACTIONAL + ")";
    private static final Pattern FORM = Pattern.compile("(?:" + NUMBER + " ?(?:lbs?|pounds?)(?: ?" + NUMBER
            + " ?(?:ozs?|ounces?)|(\\d{1,2}))?|" + NUMBER + " ?(?:ozs?|ounces?)|" + NUMBER + " ?(?:kg|kilos?)|" + NUMBER
            + " ?(?:g|grams?))"
            + Text.END);

    private Weight() {}

    /**
     * Reads a weight here, or nothing.
     *
     * @return kilograms, to the gram
     * @throws NotationException when it is 0, or heavier than a peg's fish
     */
    static OptionalDouble take(Text text) throws NotationException {
        int from = text.at();
        MatchResult found = text.take(FORM).orElse(null);
        if (found == null) {
            return OptionalDouble.empty();
        }
        double kilograms = value(found, 1) * POUND_KILOGRAMS
                + (value(found, 2) + value(found, 3) + value(found, 4)) * OUNCE_KILOGRAMS
                + value(found, 5)
                + value(found, 6) / 1000;
        if (!(kilograms > 0 && kilograms <= DayEvent.HEAVIEST_KILOGRAMS)) {
            throw NotationException.about(
                    text.since(from), "can't be the weight of fish; type it like 1lb8, 12oz or 0.7kg.");
        }
        return OptionalDouble.of(Math.max(1, Math.round(1000 * kilograms)) / 1000.0);
    }

    private static double value(MatchResult found, int group) {
        return found.group(group) == null ? 0 : Numbers.parse(found.group(group));
    }

    /** A weight in pounds and ounces, to the ounce and never as nothing: {@code 1 lb 8 oz}, {@code 12 oz}. */
    public static String poundsAndOunces(double kilograms) {
        long ounces = Math.max(1, Math.round(kilograms / OUNCE_KILOGRAMS));
        long pounds = ounces / 16;
        long rest = ounces % 16;
        if (pounds == 0) {
            return rest + " oz";
        }
        return pounds + " lb" + (rest == 0 ? "" : " " + rest + " oz");
    }
}

package pegbed.notation;

import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A length as people write it: {@code 11}, {@code 11m}, {@code 168cm}, {@code 36ft}, {@code 5'6}, {@code 5ft 6in},
 * {@code 66in}.
 *
 * @param metres not negative; may be absurdly long or infinite, so the caller checks the range
 * @param form how it was written
 */
record Length(double metres, Form form) {
    /** The ways of writing that matter for what may follow. */
    enum Form {
        /** A number without a unit. */
        BARE,
        /** Feet without inches: a bare number behind it may be meant as inches. */
        FEET,
        /** Inches alone, the word apart from the number: "5 in silt" may be meant as a bare 5. */
        APART_INCHES,
        /** Anything else. */
        CLEAR
    }

    private static final String FEET_SIGN = "(?:'(?!')| *(?:ft|foot|feet)(?!\\p{L})(?:\\.(?!\\d))?)";
    private static final String INCH_SIGN = "(?:\"|''| *(?:inches|inch|ins|in)(?!\\p{L})(?:\\.(?!\\d))?)";

    /** A comma before three digits: in English it parts thousands, elsewhere decimals. */
    private static final String THOUSANDS = "\\d{1,3},\\d{3}";

    private static final Pattern FEET_AND_INCHES = Pattern.compile("(\\d+)" + FEET_SIGN + "(?: *(" + Numbers.FRACTIONAL
            + ")" + INCH_SIGN + "|(" + Numbers.FRACTIONAL + "))" + Text.END);
    private static final Pattern FEET = Pattern.compile("(" + Numbers.FRACTIONAL + ")" + FEET_SIGN + Text.END);
    private static final Pattern INCHES = Pattern.compile("(" + Numbers.FRACTIONAL + ")(" + INCH_SIGN + ")" + Text.END);
    private static final Pattern METRIC =
            Pattern.compile("(" + Numbers.DECIMAL + ") *(m|metres?|meters?|cm|mm)" + Text.END);
    private static final Pattern BARE = Pattern.compile("(" + Numbers.FRACTIONAL + ")" + Text.END);

    /**
     * Reads a length.
     *
     * @param bareMetres metres that one unit of a bare number stands for
     * @return empty, with nothing read, where there is no length here
     * @throws NotationException for twelve inches or more beside feet, or for a comma that may part thousands
     */
    static Optional<Length> take(Text text, double bareMetres) throws NotationException {
        int from = text.at();
        Optional<MatchResult> found = text.take(FEET_AND_INCHES);
        if (found.isPresent()) {
            String inches = found.get().group(2) != null
                    ? found.get().group(2)
                    : found.get().group(3);
            double feet = Numbers.parse(found.get().group(1));
            return Optional.of(new Length(feetAndInches(feet, Numbers.parse(inches), text.since(from)), Form.CLEAR));
        }
        found = text.take(FEET);
        if (found.isPresent()) {
            return Optional.of(new Length(Numbers.parse(found.get().group(1)) * FeetAndInches.FOOT_METRES, Form.FEET));
        }
        found = text.take(INCHES);
        if (found.isPresent()) {
            Form form = found.get().group(2).startsWith(" ") ? Form.APART_INCHES : Form.CLEAR;
            return Optional.of(new Length(Numbers.parse(found.get().group(1)) * FeetAndInches.INCH_METRES, form));
        }
        found = text.take(METRIC);
        if (found.isPresent()) {
            if (found.get().group(1).matches(THOUSANDS)
                    && !found.get().group(2).startsWith("me")
                    && !found.get().group(2).equals("m")) {
                throw NotationException.about(
                        text.since(from),
                        "could be a thousand and more or a decimal; type it without a comma, like "
                                + found.get().group(1).replace(",", "")
                                + found.get().group(2) + ".");
            }
            double metres = switch (found.get().group(2)) {
                case "cm" -> Numbers.parse(found.get().group(1)) / 100;
                case "mm" -> Numbers.parse(found.get().group(1)) / 1000;
                default -> Numbers.parse(found.get().group(1));
            };
            return Optional.of(new Length(metres, Form.CLEAR));
        }
        return text.take(BARE).map(bare -> new Length(Numbers.parse(bare.group(1)) * bareMetres, Form.BARE));
    }

    /** Metres in feet and inches. */
    static double feetAndInches(double feet, double inches, String piece) throws NotationException {
        if (!(inches < 12)) {
            throw NotationException.about(
                    piece,
                    "has twelve inches or more beside its feet; type fewer, like 5'6, or inches alone, like 66in.");
        }
        return (feet * 12 + inches) * FeetAndInches.INCH_METRES;
    }
}

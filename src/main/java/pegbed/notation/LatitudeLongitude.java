package pegbed.notation;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pegbed.model.InputException;

/**
 * A place on the earth as people write it: {@code 52.1234,-1.2345}, {@code 52.1234 N 1.2345 W}, {@code 52°07'24.2"N
 * 1°14'04"W}. Latitude comes first; a decimal comma is understood where a blank or a semicolon parts the two.
 *
 * @param latitudeDegrees -90 to 90
 * @param longitudeDegrees -180 to 180
 */
public record LatitudeLongitude(double latitudeDegrees, double longitudeDegrees) {
    private static final String RIGHT =
            "give latitude, then longitude in degrees, such as 52.1234,-1.2345" + " or 52°07'24\"N 1°14'04\"W.";
    private static final Pattern PLAIN =
            Pattern.compile("([+−-]?\\d{1,3}(?:\\.\\d{1,17})?)\\s*[,;\\s]\\s*" + "([+−-]?\\d{1,3}(?:\\.\\d{1,17})?)");
    private static final Pattern COMMAS =
            Pattern.compile("([+−-]?\\d{1,3}(?:,\\d{1,17})?)\\s*[;\\s]\\s*([+−-]?\\d{1,3}(?:,\\d{1,17})?)");
    private static final String ANGLE =
            "(\\d{1,3}(?:[.,]\\d{1,17})?)\\s*°?\\s*(?:(\\d{1,2}(?:[.,]\\d{1,12})?)\\s*['′]\\s*)?"
                    + "(?:(\\d{1,2}(?:[.,]\\d{1,12})?)\\s*(?:[\"″]|'')\\s*)?";
    private static final Pattern LETTERS = Pattern.compile("(?:" + ANGLE + "([NS]))[\\s,;]*(?:" + ANGLE + "([EW]))");

    /**
     * Reads a place.
     *
     * @throws InputException if the text is none
     */
    public static LatitudeLongitude parse(String text) throws InputException {
        String words = text.strip().toUpperCase(Locale.ROOT).replace('−', '-');
        Matcher plain = PLAIN.matcher(words);
        Matcher commas = COMMAS.matcher(words);
        Matcher letters = LETTERS.matcher(words);
        if (plain.matches()) {
            return within(text, number(plain.group(1)), number(plain.group(2)));
        }
        if (commas.matches()) {
            return within(text, number(commas.group(1)), number(commas.group(2)));
        }
        if (letters.matches()) {
            double latitude = sexagesimal(text, letters, 1) * (letters.group(4).equals("S") ? -1 : 1);
            double longitude = sexagesimal(text, letters, 5) * (letters.group(8).equals("W") ? -1 : 1);
            return within(text, latitude, longitude);
        }
        throw new InputException("'" + text.strip() + "' is no place on the earth; " + RIGHT);
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }

    private static double sexagesimal(String text, Matcher words, int first) throws InputException {
        double minutes = words.group(first + 1) == null ? 0 : number(words.group(first + 1));
        double seconds = words.group(first + 2) == null ? 0 : number(words.group(first + 2));
        if (minutes >= 60 || seconds >= 60) {
            throw new InputException(
                    "'" + text.strip() + "' has 60 minutes or seconds or more, where there are less; " + RIGHT);
        }
        return number(words.group(first)) + minutes / 60 + seconds / 3600;
    }

    private static LatitudeLongitude within(String text, double latitude, double longitude) throws InputException {
        if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) {
            throw new InputException("'" + text.strip() + "' is no place on the earth: latitudes go from -90 to 90,"
                    + " longitudes from -180 to 180; " + RIGHT);
        }
        return new LatitudeLongitude(latitude, longitude);
    }

    /** As it is written here: degrees with seven decimals, about a centimetre. */
    public String text() {
        return Numbers.print(latitudeDegrees, 1, 7) + "," + Numbers.print(longitudeDegrees, 1, 7);
    }
}

package pegbed.storage.peg;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * Moments as a peg file has them: date, time and offset by ISO 8601, as {@code DateTimeFormatter.ISO_OFFSET_DATE_TIME}
 * reads and writes them. That class itself would bring the calendars, languages and time zones of the world into a
 * page.
 */
public final class Moments {
    private static final int NANO_DIGITS = 9;

    private final String text;
    private int at;

    private Moments(String text) {
        this.text = text;
    }

    /** A moment as text, such as {@code 2026-05-02T09:14:05+01:00}; parts of seconds stand where there are any. */
    public static String text(OffsetDateTime moment) {
        int year = moment.getYear();
        StringBuilder text = new StringBuilder(year < 0 ? "-" : year > 9999 ? "+" : "");
        pad(text, Math.abs(year), 4);
        pad(text.append('-'), moment.getMonthValue(), 2);
        pad(text.append('-'), moment.getDayOfMonth(), 2);
        pad(text.append('T'), moment.getHour(), 2);
        pad(text.append(':'), moment.getMinute(), 2);
        pad(text.append(':'), moment.getSecond(), 2);
        if (moment.getNano() > 0) {
            pad(text.append('.'), moment.getNano(), NANO_DIGITS);
            while (text.charAt(text.length() - 1) == '0') {
                text.setLength(text.length() - 1);
            }
        }
        return text.append(moment.getOffset().getId()).toString();
    }

    private static void pad(StringBuilder text, int number, int digits) {
        String plain = Integer.toString(number);
        text.append("0".repeat(Math.max(0, digits - plain.length()))).append(plain);
    }

    /** The moment that a text tells; empty where it tells none. */
    public static Optional<OffsetDateTime> read(String text) {
        try {
            return Optional.of(new Moments(text).moment());
        } catch (DateTimeException noSuchMoment) {
            return Optional.empty();
        }
    }

    private OffsetDateTime moment() {
        int year = year();
        require(take('-'));
        int month = two();
        require(take('-'));
        int day = two();
        require(take('T') || take('t'));
        int hour = two();
        require(take(':'));
        int minute = two();
        int second = 0;
        int nano = 0;
        if (take(':')) {
            second = two();
            nano = take('.') ? fraction() : 0;
        }
        ZoneOffset offset = offset();
        require(at == text.length());
        return OffsetDateTime.of(year, month, day, hour, minute, second, nano, offset);
    }

    /** Four digits, or more behind a sign. */
    private int year() {
        boolean before = take('-');
        boolean far = !before && take('+');
        int from = at;
        while (at < text.length() && isDigit(at)) {
            at++;
        }
        int digits = at - from;
        require(digits >= 4 && digits <= NANO_DIGITS && (digits == 4 ? !far : far || before));
        int year = Integer.parseInt(text.substring(from, at));
        require(!before || year > 0);
        return before ? -year : year;
    }

    private int fraction() {
        int from = at;
        while (at < text.length() && at - from < NANO_DIGITS && isDigit(at)) {
            at++;
        }
        String digits = text.substring(from, at);
        return Integer.parseInt(digits + "0".repeat(NANO_DIGITS - digits.length()));
    }

    /** {@code Z}, or hours with minutes and seconds where these are told. */
    private ZoneOffset offset() {
        if (take('Z') || take('z')) {
            return ZoneOffset.UTC;
        }
        boolean west = take('-');
        require(west || take('+'));
        int hours = two();
        int minutes = take(':') ? two() : 0;
        int seconds = take(':') ? two() : 0;
        int sign = west ? -1 : 1;
        return ZoneOffset.ofHoursMinutesSeconds(sign * hours, sign * minutes, sign * seconds);
    }

    private int two() {
        require(at + 2 <= text.length() && isDigit(at) && isDigit(at + 1));
        at += 2;
        return Integer.parseInt(text.substring(at - 2, at));
    }

    private boolean take(char letter) {
        boolean there = at < text.length() && text.charAt(at) == letter;
        at += there ? 1 : 0;
        return there;
    }

    private boolean isDigit(int index) {
        return text.charAt(index) >= '0' && text.charAt(index) <= '9';
    }

    private static void require(boolean right) {
        if (!right) {
            throw new DateTimeException("No moment by ISO 8601.");
        }
    }
}

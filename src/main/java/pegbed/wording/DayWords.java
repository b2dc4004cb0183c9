package pegbed.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.day.Estimate;
import pegbed.day.LineHistory;
import pegbed.day.LineOdds;
import pegbed.day.LineRate;
import pegbed.model.Decimals;
import pegbed.model.Peg;

/** A day's fishing in the person's words: what the log shows and what is likely, never what to do. */
public final class DayWords {
    private final Quantities quantities;

    private DayWords(Peg peg) {
        quantities = Quantities.of(peg);
    }

    /** The words at a peg. */
    public static DayWords of(Peg peg) {
        return new DayWords(peg);
    }

    /** A line by its number, such as {@code line 2}; by its place where it is not planned. */
    public String line(LineHistory line) {
        return line.number().isPresent()
                ? "line " + line.number().getAsInt()
                : "the line at " + quantities.placeByClock(line.place());
    }

    /** A line in few signs: {@code line 2}, or how far out and where on the clock, {@code 4.2 m, 9:15}. */
    public String shortLine(LineHistory line) {
        return line.number().isPresent()
                ? line(line)
                : Decimals.text(line.place().distanceMetres(), 1) + " m, "
                        + quantities.clock(line.place().angleDegrees());
    }

    /** How long ago it was fished and fed: {@code fished 40 min ago, fed 12 min ago}. */
    public String since(LineHistory line) {
        String fished = line.fishedNow() ? "fished now" : ago("fished", line.minutesSinceFished());
        return fished + ", " + ago("fed", line.minutesSinceFed());
    }

    /** How long ago something was, or that it was not: {@code fed 12 min ago}, {@code not fed yet}. */
    public static String ago(String what, OptionalDouble minutes) {
        if (minutes.isEmpty()) {
            return "not " + what + " yet";
        }
        return what + " " + minutes(minutes.getAsDouble()) + " ago";
    }

    /** Minutes as people say them: {@code 5 min}, {@code 1 h 20 min}. */
    public static String minutes(double minutes) {
        long whole = Math.max(0, Math.round(minutes));
        return whole < 60 ? whole + " min" : whole / 60 + " h" + (whole % 60 == 0 ? "" : " " + whole % 60 + " min");
    }

    /** Its rate: {@code 12 fish an hour (7 to 19)}; empty while too little is known of it. */
    public Optional<String> rate(LineRate rate) {
        return rate.told() ? Optional.of(range(rate.fishAnHour(), 1, "fish an hour")) : Optional.empty();
    }

    /** Its weight an hour: {@code 2.4 kg an hour (1.3 to 4.0)}; empty while too little is known of it. */
    public Optional<String> weight(LineRate rate) {
        return rate.told()
                ? rate.kilogramsAnHour().map(kilograms -> range(kilograms, 0, "kg an hour"))
                : Optional.empty();
    }

    private static String range(Estimate estimate, int wholeDigits, String unit) {
        return number(estimate.mean(), wholeDigits) + " " + unit + " (" + number(estimate.low(), wholeDigits) + " to "
                + number(estimate.high(), wholeDigits) + ")";
    }

    /** To about two figures; with more than so many digits before the point none after it. */
    private static String number(double value, int wholeDigits) {
        boolean whole = value >= Math.pow(10, Math.max(1, wholeDigits));
        return Decimals.text(value, whole ? 0 : 1);
    }

    /** What can be said of the other lines, one sentence or two; empty while there is too little to say. */
    public Optional<String> odds(LineOdds odds) {
        return switch (odds.saying()) {
            case TOO_LITTLE, NO_CHOICE, JUST_BEGUN -> Optional.empty();
            case STAY ->
                Optional.of("No other line is likely to give more in the next " + LineOdds.AHEAD_MINUTES + " minutes"
                        + odds.others().stream()
                                .findFirst()
                                .map(other -> "; the nearest is " + line(other.line()) + ", " + inTen(other) + ".")
                                .orElse("."));
            case BETTER -> odds.named().map(this::better);
            case WORTH_TRYING -> odds.named().map(this::worthTrying);
        };
    }

    private String better(LineOdds.Other other) {
        return Sentences.capital(line(other.line())) + " is expected to give more in the next "
                + LineOdds.AHEAD_MINUTES + " minutes, the change counted: " + inTen(other) + " that it does ("
                + since(other.line()) + ").";
    }

    private String worthTrying(LineOdds.Other other) {
        return Sentences.capital(line(other.line())) + " is little known at present and may well give more in the next "
                + LineOdds.AHEAD_MINUTES + " minutes: " + inTen(other) + " that it does ("
                + since(other.line()) + ").";
    }

    /** Odds in tenths, since they are known no better: {@code about 4 in 10}. */
    private static String inTen(LineOdds.Other other) {
        long tenths = Math.round(10 * other.odds());
        return tenths < 1 ? "less than 1 in 10" : tenths > 9 ? "more than 9 in 10" : "about " + tenths + " in 10";
    }

    /** After how long the line that is fished may be spent; empty if that is not in sight or too little is known. */
    public Optional<String> leaving(LineOdds odds) {
        boolean told = odds.saying() == LineOdds.Saying.STAY || odds.saying() == LineOdds.Saying.WORTH_TRYING;
        return told
                        && odds.leaveInMinutes().isPresent()
                        && odds.leaveInMinutes().getAsDouble() >= 1
                ? odds.fished()
                        .map(line -> "In about "
                                + Decimals.text(odds.leaveInMinutes().getAsDouble(), 0) + " minutes " + line(line)
                                + " is expected to have fallen to what another line would give, the change counted.")
                : Optional.empty();
    }

    /** How many earlier visits the rates start from; empty if none. */
    public Optional<String> visits(int visits) {
        return visits == 0
                ? Optional.empty()
                : Optional.of("Started from " + visits + (visits == 1 ? " earlier visit." : " earlier visits."));
    }

    /** All that is to be said of the day's lines now, in order. */
    public List<String> outlook(LineOdds odds) {
        List<String> sentences = new ArrayList<>();
        odds(odds).ifPresent(sentences::add);
        leaving(odds).ifPresent(sentences::add);
        return sentences;
    }
}

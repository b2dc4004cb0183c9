package pegbed.wording;

import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.OptionalDouble;
import pegbed.model.Decimals;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Units;
import pegbed.notation.Clock;
import pegbed.notation.FeetAndInches;
import pegbed.notation.Numbers;
import pegbed.notation.Section;
import pegbed.notation.Sights;
import pegbed.notation.Weight;

/**
 * Depths, distances and directions in the person's units and words, to be shown. All values must be finite. For texts
 * that can be typed again see {@link ShortForm}.
 */
public final class Quantities {
    /** A mark farther to the side than this, in degrees, is no help to aim by (our choice). */
    private static final double WIDEST_AIM_DEGREES = 30;

    private static final double JOINT_TOLERANCE_METRES = 0.05;

    private static final List<String> MONTHS = List.of(
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December");

    private static final int SHORT_MONTH_LETTERS = 3;

    private final Units units;
    private final Pole pole;
    private final List<Mark> marks;
    private final Sights sights;

    private Quantities(Peg peg) {
        units = peg.units();
        pole = peg.pole();
        marks = peg.marks();
        sights = new Sights(peg.banks().far());
    }

    /** The quantities at a peg: its units, pole, marks and far bank. */
    public static Quantities of(Peg peg) {
        return new Quantities(peg);
    }

    /** The person's unit of depths. */
    public Units.Depth depthUnit() {
        return units.depth();
    }

    /** A depth in the person's unit: {@code 5 ft 6 in} to the inch, {@code 168 cm}, or {@code 1.68 m}. */
    public String depth(double metres) {
        return depth(metres, 1);
    }

    /** As {@link #depth}, feet and inches to the half inch: {@code 5 ft 6½ in}. */
    public String depthToHalfInch(double metres) {
        return depth(metres, 2);
    }

    /** The target depth, to the half inch or the centimetre everywhere, as it is typed. */
    public String target(double metres) {
        return depthToHalfInch(metres);
    }

    /** As {@link #depth} for a standard deviation: never less than 1 in or 1 cm, since nothing is known better. */
    public String doubt(double metres) {
        return depth(Math.max(units.depth() == Units.Depth.FEET ? FeetAndInches.INCH_METRES : 0.01, metres));
    }

    /** The smallest step of {@link #depthToHalfInch}, metres. */
    double smallestStepMetres() {
        return units.depth() == Units.Depth.FEET ? FeetAndInches.INCH_METRES / 2 : 0.01;
    }

    /** A weight of fish, to the ounce or ten grams: {@code 1 lb 8 oz}, {@code 0.68 kg}. */
    public String weight(double kilograms) {
        return units.depth() == Units.Depth.FEET
                ? Weight.poundsAndOunces(kilograms)
                : Numbers.print(Math.max(0.01, kilograms), 2, 2) + " kg";
    }

    /** A day, such as {@code 2 May 2026}. */
    public static String day(TemporalAccessor day) {
        return day(day, month(day).substring(0, SHORT_MONTH_LETTERS));
    }

    /** A day with its whole month, such as {@code 2 September 2026}. */
    public static String longDay(TemporalAccessor day) {
        return day(day, month(day));
    }

    private static String month(TemporalAccessor day) {
        return month(day.get(ChronoField.MONTH_OF_YEAR));
    }

    /** A month by its number, 1 to 12: {@code June}. */
    static String month(int number) {
        return MONTHS.get(number - 1);
    }

    private static String day(TemporalAccessor day, String month) {
        return day.get(ChronoField.DAY_OF_MONTH) + " " + month + " " + day.get(ChronoField.YEAR);
    }

    /** As {@link #depth}, feet and inches to the quarter inch, for small things such as a doubt: {@code ¾ in}. */
    public String depthToQuarterInch(double metres) {
        return depth(metres, 4);
    }

    private String depth(double metres, int partsOfInch) {
        return switch (units.depth()) {
            case FEET -> FeetAndInches.words(metres, partsOfInch);
            case CENTIMETRES -> Numbers.print(metres * 100, 0, 0) + " cm";
            case METRES -> Numbers.print(metres, 2, 2) + " m";
        };
    }

    /**
     * A distance in the person's unit with metres beside: {@code section 6 + 0.5 m (10.5 m)}, {@code 34 ft 5 in (10.5
     * m)}, or {@code 10.5 m} alone.
     */
    public String distance(double metres) {
        String inMetres = Numbers.print(metres, 1, 1) + " m";
        return switch (units.distance()) {
            case SECTIONS ->
                Section.of(pole, metres, JOINT_TOLERANCE_METRES).print("section ", " ", " m", 1, 1) + " (" + inMetres
                        + ")";
            case FEET -> FeetAndInches.words(metres, 1) + " (" + inMetres + ")";
            case METRES -> inMetres;
        };
    }

    /** A direction to the whole degree: {@code 20° left}, {@code straight out}. */
    public String direction(double angleDegrees) {
        return direction(angleDegrees, 0);
    }

    static String direction(double angleDegrees, int decimals) {
        String degrees = Numbers.print(Math.abs(angleDegrees), 0, decimals);
        if ("0".equals(degrees)) {
            return "straight out";
        }
        return degrees + "°" + (angleDegrees < 0 ? " left" : " right");
    }

    /** A direction as the nearest five minutes of a clock on which twelve is straight out: {@code 11:20}. */
    public String clock(double angleDegrees) {
        return Clock.print(angleDegrees, 5);
    }

    /**
     * What to sight on: the nearest mark and how far beside it along the far bank, such as {@code 0.8 m left of leaning
     * post} or {@code at leaning post}. Where no mark is within 30°, the clock: {@code towards 11:20}.
     */
    public String aim(Place place) {
        double angle = place.angleDegrees();
        Mark nearest = null;
        double right = Double.POSITIVE_INFINITY;
        for (Mark mark : marks) {
            double turn = Sights.halfTurn(angle - mark.place().angleDegrees());
            OptionalDouble offset = sights.rightOf(mark.place(), angle);
            if (Math.abs(turn) <= WIDEST_AIM_DEGREES
                    && offset.isPresent()
                    && Math.abs(offset.getAsDouble()) < Math.abs(right)) {
                nearest = mark;
                right = offset.getAsDouble();
            }
        }
        if (nearest == null) {
            return "towards " + clock(angle);
        }
        String metres = Numbers.print(Math.abs(right), 1, 1);
        if ("0.0".equals(metres)) {
            return "at " + nearest.name();
        }
        return metres + " m " + (right < 0 ? "left" : "right") + " of " + nearest.name();
    }

    /**
     * A place: distance, direction, clock and aim, such as {@code section 6 (10.0 m), 20° left (11:20), at white pipe}.
     */
    public String place(Place place) {
        return placeByClock(place) + besideMark(place);
    }

    /** A comma and what to sight on; empty where no mark is near enough, because the clock says as much. */
    private String besideMark(Place place) {
        String aim = aim(place);
        return aim.startsWith("towards ") ? "" : ", " + aim;
    }

    /** A place without its mark: distance, direction and clock. */
    String placeByClock(Place place) {
        double angle = place.angleDegrees();
        return distance(place.distanceMetres()) + ", " + direction(angle) + " (" + clock(angle) + ")";
    }

    /** A probability in whole hundredths: {@code 64 %}. */
    static String percent(double probability) {
        return Decimals.text(100 * probability, 0) + " %";
    }

    /** A number of readings: {@code 1 reading}, {@code 12 readings}. */
    public static String readings(int count) {
        return count + (count == 1 ? " reading" : " readings");
    }
}

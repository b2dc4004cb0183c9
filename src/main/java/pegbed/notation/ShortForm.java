package pegbed.notation;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.Bottom;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.model.Units;

/**
 * Values as a person would type them: every text that is printed here is read back by {@link Notation} at a peg with
 * the same pole and units. All values must be finite.
 *
 * @param units the person's units
 * @param pole the person's pole
 * @param decimalSign a point or a comma
 */
public record ShortForm(Units units, Pole pole, char decimalSign) {
    public ShortForm {
        if (decimalSign != '.' && decimalSign != ',') {
            throw new IllegalArgumentException("A decimal sign is a point or a comma, not " + decimalSign + ".");
        }
    }

    /** A distance by the pole's joints, whatever the units: {@code s6+0.5}. */
    public static String section(Pole pole, double metres) {
        return Section.of(pole, metres, 0.005).print("s", "", "", 0, 2);
    }

    /** A distance to the centimetre, from 0 m on: {@code s6+0.5}, {@code 10.5m}, or {@code 34.45ft}. */
    public String printDistance(double metres) {
        return localised(
                switch (units.distance()) {
                    case SECTIONS -> section(pole, metres);
                    case METRES -> Numbers.print(metres, 0, 2) + "m";
                    case FEET -> Numbers.print(metres / FeetAndInches.FOOT_METRES, 0, 2) + "ft";
                });
    }

    /** A direction to the tenth of a degree: {@code 20L}, {@code 12.5R}, {@code 0}. */
    public String printDirection(double angleDegrees) {
        String degrees = Numbers.print(Math.abs(angleDegrees), 0, 1);
        return localised("0".equals(degrees) ? degrees : degrees + (angleDegrees < 0 ? "L" : "R"));
    }

    /**
     * A depth in the person's unit, 0 to 30 m: {@code 5'6.5} to the tenth of an inch, {@code 168.3cm}, or
     * {@code 1.683m}.
     */
    public String printDepth(double metres) {
        return localised(
                switch (units.depth()) {
                    case FEET -> FeetAndInches.typed(metres, 10);
                    case CENTIMETRES -> Numbers.print(metres * 100, 0, 1) + "cm";
                    case METRES -> Numbers.print(metres, 0, 3) + "m";
                });
    }

    private String localised(String withPoints) {
        return withPoints.replace('.', decimalSign);
    }

    /**
     * A whole reading, to be typed again or changed: what was typed where there is such, else as printed here. The unit
     * of a typed depth moves up to its number, and line breaks in the note become blanks.
     */
    public String printReading(Reading reading) {
        List<String> line = new ArrayList<>();
        line.add(
                either(reading.typed().distance(), printDistance(reading.place().distanceMetres())));
        line.add(either(
                reading.typed().direction(), printDirection(reading.place().angleDegrees())));
        line.add(either(
                reading.typed().depth().replaceAll(Text.BLANKS + "(?=\\p{L})", ""), printDepth(reading.depthMetres())));
        String note = reading.note().replaceAll(Text.LINE_BREAK, " ").strip();
        if (reading.bottom() != Bottom.UNKNOWN || !note.isEmpty()) {
            line.add(reading.bottom().word());
        }
        line.add(note);
        return String.join(" ", line).strip();
    }

    private static String either(String typed, String printed) {
        return typed.isEmpty() ? printed : typed;
    }
}

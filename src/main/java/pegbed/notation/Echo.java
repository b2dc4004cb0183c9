package pegbed.notation;

import java.util.StringJoiner;
import pegbed.model.BankPoint;
import pegbed.model.Bottom;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.model.Units;

/** How a line was understood, in words. */
final class Echo {
    private final Wording wording;
    private final Units units;
    private final Pole pole;

    Echo(Wording wording, Units units, Pole pole) {
        this.wording = wording;
        this.units = units;
        this.pole = pole;
    }

    String of(Reading reading, String aim) {
        StringJoiner words = new StringJoiner(", ");
        words.add(where(reading.place(), reading.typed(), aim)).add(depth(reading.depthMetres()));
        if (reading.bottom() != Bottom.UNKNOWN) {
            words.add(reading.bottom().word());
        }
        return withNote(words, reading.note());
    }

    String of(BankPoint point, String aim) {
        return "edge at " + where(point.place(), point.typed(), aim) + ", "
                + (point.depthMetres().isPresent() ? depth(point.depthMetres().getAsDouble()) : "no depth given");
    }

    String of(Line.SnagLine snag, String aim) {
        StringJoiner words = new StringJoiner(", ");
        words.add(
                "snag at " + where(snag.hazard().outline().get(0), snag.hazard().typed(), aim));
        words.add("radius " + Numbers.print(snag.hazard().radiusMetres(), 1, 2) + " m"
                + (snag.radiusAssumed() ? " (none given)" : ""));
        return withNote(words, snag.hazard().note());
    }

    private static String withNote(StringJoiner words, String note) {
        return note.isEmpty() ? words.toString() : words.add("note: " + note).toString();
    }

    private String where(Place place, Typed typed, String aim) {
        double metres = place.distanceMetres();
        String distance = Numbers.print(metres, 1, 2) + " m"
                + switch (units.distance()) {
                    case SECTIONS -> " (" + Section.of(pole, metres, 0.005).print("s", " ", "", 1, 2) + ")";
                    case FEET -> " (" + Wording.feetAndInches(metres, 1) + ")";
                    case METRES -> "";
                };
        // A time that was typed is shown to the minute; one that stands for degrees to five.
        String clock = Clock.print(place.angleDegrees(), typed.direction().contains(":") ? 1 : 5);
        String direction =
                Wording.direction(place.angleDegrees(), 1) + " (" + clock + (aim.isEmpty() ? "" : ", " + aim) + ")";
        return distance + ", " + direction;
    }

    private String depth(double metres) {
        String inMetres = Numbers.print(metres, 2, 2) + " m";
        return wording.depthToHalfInch(metres) + (units.depth() == Units.Depth.METRES ? "" : " (" + inMetres + ")");
    }
}

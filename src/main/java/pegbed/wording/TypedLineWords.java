package pegbed.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbed.findings.PegMap;
import pegbed.geometry.Shoreline;
import pegbed.model.BankPoint;
import pegbed.model.Bottom;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.model.Units;
import pegbed.notation.Aim;
import pegbed.notation.Clock;
import pegbed.notation.FeetAndInches;
import pegbed.notation.Line;
import pegbed.notation.Notation;
import pegbed.notation.Numbers;
import pegbed.notation.Section;

/** How a typed line was understood, in words. */
public final class TypedLineWords {
    private final Quantities quantities;
    private final Notation notation;
    private final Units units;
    private final Pole pole;

    private TypedLineWords(Peg peg) {
        quantities = Quantities.of(peg);
        notation = Notation.of(peg);
        units = peg.units();
        pole = peg.pole();
    }

    /** The words at a peg: its units, pole and marks. */
    public static TypedLineWords of(Peg peg) {
        return new TypedLineWords(peg);
    }

    /**
     * How a line was understood, in one line, such as {@code 11.0 m (s6 + 1.0), 20° left (11:20), 4 ft 6 in (1.37 m),
     * silt}.
     */
    public String understood(Line line) {
        if (line instanceof Line.ReadingLine reading) {
            return reading(reading.reading());
        }
        if (line instanceof Line.EdgeLine edge) {
            return edge(edge.point());
        }
        return snag((Line.SnagLine) line);
    }

    /**
     * What the person should know of a line that is added, to stand behind {@link #understood}: that a reading lies on
     * land, or which bank an edge was added to.
     *
     * @param map of the peg before, if there is one
     * @return empty if there is nothing to say
     */
    public static String aside(Peg peg, Line line, Optional<PegMap> map) {
        if (line instanceof Line.ReadingLine reading) {
            Place place = reading.reading().place();
            boolean land = map.filter(known -> known.water().isLand(place.xMetres(), place.yMetres()))
                    .isPresent();
            return land ? ". It lies on dry ground as the banks are drawn." : "";
        }
        if (line instanceof Line.EdgeLine edge) {
            return ", added to the "
                    + Shoreline.nearest(peg.banks(), edge.point().place())
                            .kind()
                            .words();
        }
        return "";
    }

    private String reading(Reading reading) {
        List<String> words = new ArrayList<>();
        words.add(where(reading.place(), reading.typed()));
        words.add(depth(reading.depthMetres()));
        if (reading.bottom() != Bottom.UNKNOWN) {
            words.add(reading.bottom().word());
        }
        return withNote(words, reading.note());
    }

    private String edge(BankPoint point) {
        return "edge at " + where(point.place(), point.typed()) + ", "
                + (point.depthMetres().isPresent() ? depth(point.depthMetres().getAsDouble()) : "no depth given");
    }

    private String snag(Line.SnagLine snag) {
        List<String> words = new ArrayList<>();
        words.add(
                "snag at " + where(snag.hazard().outline().get(0), snag.hazard().typed()));
        words.add("radius " + Numbers.print(snag.hazard().radiusMetres(), 1, 2) + " m"
                + (snag.radiusAssumed() ? " (none given)" : ""));
        return withNote(words, snag.hazard().note());
    }

    private static String withNote(List<String> words, String note) {
        if (!note.isEmpty()) {
            words.add("note: " + note);
        }
        return String.join(", ", words);
    }

    private String where(Place place, Typed typed) {
        double metres = place.distanceMetres();
        String distance = Numbers.print(metres, 1, 2) + " m"
                + switch (units.distance()) {
                    case SECTIONS -> " (" + Section.of(pole, metres, 0.005).print("s", " ", "", 1, 2) + ")";
                    case FEET -> " (" + FeetAndInches.words(metres, 1) + ")";
                    case METRES -> "";
                };
        // A time that was typed is shown to the minute; one that stands for degrees to five.
        String clock = Clock.print(place.angleDegrees(), typed.direction().contains(":") ? 1 : 5);
        Optional<Aim> aim = notation.aim(typed);
        return distance + ", " + Quantities.direction(place.angleDegrees(), 1) + " (" + clock
                + aim.map(mark -> ", " + words(mark)).orElse("") + ")";
    }

    private static String words(Aim aim) {
        String side = aim.toLeft() ? " left of " : " right of ";
        return switch (aim.unit()) {
            case NONE -> "at " + aim.mark();
            case METRES -> Numbers.print(aim.offset(), 0, 2) + " m" + side + aim.mark();
            case DEGREES -> Numbers.print(aim.offset(), 0, 1) + "°" + side + aim.mark();
        };
    }

    private String depth(double metres) {
        String inMetres = Numbers.print(metres, 2, 2) + " m";
        return quantities.depthToHalfInch(metres) + (units.depth() == Units.Depth.METRES ? "" : " (" + inMetres + ")");
    }
}

package pegbed.geodesy;

import pegbed.model.InputException;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.LatitudeLongitude;

/**
 * A mark of a peg whose position on the earth is known.
 *
 * @param name the mark
 * @param place where it stands in the peg's plane
 * @param latitudeDegrees WGS 84 latitude, degrees
 * @param longitudeDegrees WGS 84 longitude, degrees
 */
public record SightedMark(String name, Place place, double latitudeDegrees, double longitudeDegrees) {
    /**
     * A mark of a peg, by its name and the position typed for it.
     *
     * @throws InputException if the peg has no such mark, or the text is no position
     */
    public static SightedMark of(Peg peg, String name, String position) throws InputException {
        Mark mark = peg.marks().stream()
                .filter(own -> own.name().equalsIgnoreCase(name.strip()))
                .findFirst()
                .orElseThrow(() -> noMark(peg, name.strip()));
        LatitudeLongitude where = LatitudeLongitude.parse(position);
        return new SightedMark(mark.name(), mark.place(), where.latitudeDegrees(), where.longitudeDegrees());
    }

    private static InputException noMark(Peg peg, String name) {
        String names = String.join(", ", peg.marks().stream().map(Mark::name).toList());
        return new InputException("The peg has no mark '" + name + "'; "
                + (names.isEmpty() ? "it has none at all." : "it has " + names + "."));
    }
}

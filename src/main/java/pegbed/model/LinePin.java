package pegbed.model;

/**
 * A place at which the person wants a line, or wants none.
 *
 * @param place where
 * @param extras fields of a later version
 */
public record LinePin(Place place, Extras extras) {
    public static LinePin at(Place place) {
        return new LinePin(place, Extras.NONE);
    }
}

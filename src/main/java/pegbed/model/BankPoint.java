package pegbed.model;

import java.util.OptionalDouble;

/**
 * A point where water meets bank.
 *
 * @param place where
 * @param depthMetres depth at the very edge where the person gave one, metres, 0 to 30
 * @param typed what the person typed, {@link Typed#NOTHING} for a drawn or imported point
 * @param extras fields of a later version
 */
public record BankPoint(Place place, OptionalDouble depthMetres, Typed typed, Extras extras) {
    public BankPoint {
        if (depthMetres.isPresent()) {
            Check.within(depthMetres.getAsDouble(), 0, Reading.DEEPEST_METRES, "The depth in metres");
        }
    }

    /** A drawn or imported point. */
    public static BankPoint at(double xMetres, double yMetres) {
        return new BankPoint(new Place(xMetres, yMetres), OptionalDouble.empty(), Typed.NOTHING, Extras.NONE);
    }
}

package pegbed.geodesy;

import org.opengis.referencing.operation.MathTransform;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Position;

/**
 * A peg's plane on the earth: origin at the seat, y along the true bearing of straight out, x to the right of it.
 *
 * <p>The plane is the Transverse Mercator projection of WGS 84 with its natural origin at the seat and scale 1 there,
 * turned by the bearing. It is conformal; at r metres from the seat its scale is off by r²/(2R²), R the earth's radius:
 * 1e-10 at 100 m, 1e-6 at 9 km (Snyder, J. P. (1987), "Map projections: a working manual", USGS Professional Paper
 * 1395, eq. 8-11).
 *
 * <p>Immutable and thread-safe.
 */
public final class LocalFrame {
    /** Where UTM ends, degrees (NGA.SIG.0012, "Universal Grids and Grid Reference Systems"). */
    static final double MOST_NORTH_DEGREES = 84;

    static final double MOST_SOUTH_DEGREES = -80;

    private final Position position;
    private final double cosine;
    private final double sine;
    private final MathTransform toPlane;
    private final MathTransform toEarth;

    private LocalFrame(Position position) {
        this.position = position;
        cosine = Math.cos(Math.toRadians(position.bearingDegrees()));
        sine = Math.sin(Math.toRadians(position.bearingDegrees()));
        toPlane = Projections.transverseMercator(
                position.latitudeDegrees(),
                position.longitudeDegrees(),
                Projections.WGS84_SEMI_MAJOR_METRES,
                Projections.WGS84_INVERSE_FLATTENING);
        toEarth = Projections.inverse(toPlane);
    }

    /**
     * The plane of a peg.
     *
     * @throws InputException if the position is nearer to a pole than UTM goes
     */
    public static LocalFrame of(Position position) throws InputException {
        refuseNearPole(position.latitudeDegrees());
        return new LocalFrame(position);
    }

    /** Refuses latitudes beyond those of UTM: at a pole itself there is no bearing. */
    public static void refuseNearPole(double latitudeDegrees) throws InputException {
        if (!(latitudeDegrees >= MOST_SOUTH_DEGREES && latitudeDegrees <= MOST_NORTH_DEGREES)) {
            throw new InputException("The latitude " + plain(latitudeDegrees)
                    + " is too near a pole, where bearings mean nothing; a peg lies between 80 degrees south and 84"
                    + " degrees north, such as 52.1234.");
        }
    }

    private static String plain(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    public Position position() {
        return position;
    }

    /**
     * Places of the plane as WGS 84.
     *
     * @param xy x and y by turns, metres; changed into longitude and latitude by turns, degrees, longitudes in [-180,
     *     180]
     */
    public void toEarth(double[] xy) {
        for (int i = 0; i < xy.length; i += 2) {
            double x = xy[i];
            double y = xy[i + 1];
            xy[i] = x * cosine + y * sine;
            xy[i + 1] = y * cosine - x * sine;
        }
        Projections.inPlace(toEarth, xy);
        for (int i = 0; i < xy.length; i += 2) {
            xy[i] = Math.IEEEremainder(xy[i], 360);
        }
    }

    /** The place of the plane at a latitude and longitude, degrees. */
    public Place place(double latitudeDegrees, double longitudeDegrees) {
        double[] at = {longitudeDegrees, latitudeDegrees};
        Projections.inPlace(toPlane, at);
        return new Place(at[0] * cosine - at[1] * sine, at[0] * sine + at[1] * cosine);
    }
}

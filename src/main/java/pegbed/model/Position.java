package pegbed.model;

import java.util.OptionalDouble;

/**
 * Where on the earth the seat is.
 *
 * @param latitudeDegrees WGS 84 latitude, degrees, -90 to 90
 * @param longitudeDegrees WGS 84 longitude, degrees, -180 to 180
 * @param bearingDegrees true bearing of straight out, degrees clockwise from north, 0 to 360
 * @param accuracyMetres how well latitude and longitude are known, as the satellite fix told it: the radius within
 *     which the seat lies 95 times in 100 (W3C Geolocation, "accuracy"), metres, 0 to 1,000,000; empty if it was not
 *     told
 */
public record Position(
        double latitudeDegrees, double longitudeDegrees, double bearingDegrees, OptionalDouble accuracyMetres) {
    /** More than this is no fix at all, metres. */
    public static final double WORST_METRES = 1_000_000;

    public Position {
        Check.within(latitudeDegrees, -90, 90, "Latitude");
        Check.within(longitudeDegrees, -180, 180, "Longitude");
        Check.within(bearingDegrees, 0, 360, "The bearing of straight out");
        accuracyMetres.ifPresent(
                metres -> Check.within(metres, 0, WORST_METRES, "How well the position is known, in metres,"));
    }

    /** A position of which it is not told how well it is known. */
    public Position(double latitudeDegrees, double longitudeDegrees, double bearingDegrees) {
        this(latitudeDegrees, longitudeDegrees, bearingDegrees, OptionalDouble.empty());
    }
}

package pegbed.model;

/**
 * Where on the earth the seat is.
 *
 * @param latitudeDegrees WGS 84 latitude, degrees, -90 to 90
 * @param longitudeDegrees WGS 84 longitude, degrees, -180 to 180
 * @param bearingDegrees true bearing of straight out, degrees clockwise from north, 0 to 360
 */
public record Position(double latitudeDegrees, double longitudeDegrees, double bearingDegrees) {
    public Position {
        Check.within(latitudeDegrees, -90, 90, "Latitude");
        Check.within(longitudeDegrees, -180, 180, "Longitude");
        Check.within(bearingDegrees, 0, 360, "The bearing of straight out");
    }
}

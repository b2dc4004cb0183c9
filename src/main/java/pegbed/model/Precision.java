package pegbed.model;

/**
 * How well a place is known from the way it was said: one standard deviation along the pole and one across it.
 *
 * @param sdDistanceMetres standard deviation of the distance, metres, 0 to 5
 * @param sdAngleDegrees standard deviation of the direction, degrees, 0 to 45
 */
public record Precision(double sdDistanceMetres, double sdAngleDegrees) {
    /** What is assumed where the way of saying tells nothing: 0.15 m and 3° (common practice). */
    public static final Precision PLAIN = new Precision(0.15, 3);

    public Precision {
        Check.within(sdDistanceMetres, 0, 5, "The distance's standard deviation in metres");
        Check.within(sdAngleDegrees, 0, 45, "The direction's standard deviation in degrees");
    }
}

package pegbed.surface.prior;

/** A covariance function between places. Symmetric and positive definite; thread-safe. */
public interface Covariance {
    /** Covariance between place i of one set and place j of another, square metres. */
    double between(PlaceCoordinates a, int i, PlaceCoordinates b, int j);
}

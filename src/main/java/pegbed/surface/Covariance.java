package pegbed.surface;

/** A covariance function between places. Symmetric and positive definite; thread-safe. */
interface Covariance {
    /** Covariance between place i of one set and place j of another, square metres. */
    double between(Places a, int i, Places b, int j);
}

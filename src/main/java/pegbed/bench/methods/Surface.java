package pegbed.bench.methods;

/** A surface of depth as a general method draws it through sites. */
public interface Surface {
    /** Depth at a place, metres; NaN where the method has none. */
    double depthAt(double xMetres, double yMetres);

    /** Standard deviation of the surface there, metres; NaN from a method that tells none. */
    default double sdAt(double xMetres, double yMetres) {
        return Double.NaN;
    }
}

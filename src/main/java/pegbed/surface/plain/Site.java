package pegbed.surface.plain;

/**
 * A place with a known depth, as the plain interpolators take it.
 *
 * @param xMetres x, metres
 * @param yMetres y, metres
 * @param depthMetres depth below the water, metres, positive down
 */
public record Site(double xMetres, double yMetres, double depthMetres) {
    public Site {
        if (!Double.isFinite(xMetres) || !Double.isFinite(yMetres) || !Double.isFinite(depthMetres)) {
            throw new IllegalArgumentException("A site needs a finite place and depth, not (" + xMetres + ", " + yMetres
                    + ") at " + depthMetres + " m.");
        }
    }
}

package pegbed.surface.plain;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * How near counts as the same place: the one spot where the tolerances of this package are set.
 *
 * <p>They are empirical: doubles carry sixteen digits, and half of them are lost beside a site or the hull.
 */
final class Tolerance {
    /** Sites nearer to each other than this share of the data's extent are one site. */
    static final double SAME_SITE = 1e-9;

    /** A place nearer to a site or to the hull than this share of the edge beside it lies on it. */
    static final double TOUCHING = 1e-8;

    /** A triangle on the hull lower than this share of its outer edge has its height from rounding alone. */
    static final double FLAT = 1e-10;

    private Tolerance() {}

    /** The lattice on which the sites are triangulated: about 2e-13 of their extent, a power of two, metres. */
    static double latticeStep(Coordinate[] sites) {
        Envelope box = new Envelope();
        for (Coordinate site : sites) {
            box.expandToInclude(site);
        }
        return Math.scalb(1.0, Math.getExponent(Math.max(box.getWidth(), box.getHeight())) - 42);
    }
}

package pegbed.surface;

import pegbed.model.Precision;
import pegbed.model.Reading;

/**
 * One depth at one place, with how well both are known.
 *
 * @param xMetres metres to the right of the seat
 * @param yMetres metres straight out
 * @param depthMetres depth below the level of its visit, metres
 * @param sdDepthMetres standard deviation of the depth itself on level ground, metres, above 0
 * @param precision how well the place is known, along and across the pole
 * @param visit index of the visit at which it was read, 0 for the first
 */
public record Sounding(
        double xMetres, double yMetres, double depthMetres, double sdDepthMetres, Precision precision, int visit) {
    /** Depth on firm ground: half an inch to an inch (common practice). */
    public static final double FIRM_SD_METRES = 0.02;

    /** Depth on silt, weed or leaves, into which the plummet sinks (common practice). */
    public static final double SOFT_SD_METRES = 0.04;

    /** The sounding that a reading gives. */
    public static Sounding of(Reading reading, int visit) {
        return new Sounding(
                reading.place().xMetres(),
                reading.place().yMetres(),
                reading.depthMetres(),
                reading.bottom().soft() ? SOFT_SD_METRES : FIRM_SD_METRES,
                reading.precision(),
                visit);
    }

    /** Variance of x from the position noise S = σd²·e_r e_rᵀ + (r·σa)²·e_t e_tᵀ, square metres. */
    public double varX() {
        double s = sine();
        return along2() * s * s + across2() * (1 - s * s);
    }

    /** Variance of y, square metres. */
    public double varY() {
        double s = sine();
        return along2() * (1 - s * s) + across2() * s * s;
    }

    /** Covariance of x and y, square metres. */
    public double covXY() {
        double r = Math.hypot(xMetres, yMetres);
        return r == 0 ? 0 : (along2() - across2()) * xMetres * yMetres / (r * r);
    }

    private double sine() {
        double r = Math.hypot(xMetres, yMetres);
        return r == 0 ? 0 : xMetres / r;
    }

    private double along2() {
        return precision.sdDistanceMetres() * precision.sdDistanceMetres();
    }

    private double across2() {
        double across = Math.hypot(xMetres, yMetres) * Math.toRadians(precision.sdAngleDegrees());
        return across * across;
    }
}

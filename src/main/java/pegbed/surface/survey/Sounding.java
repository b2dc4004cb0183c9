package pegbed.surface.survey;

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
 * @param changeSdMetres standard deviation of what the bottom may have changed by since, metres; 0 where nothing shows
 *     a change, infinite where the bottom was dug out, so that the sounding is not used
 */
public record Sounding(
        double xMetres,
        double yMetres,
        double depthMetres,
        double sdDepthMetres,
        Precision precision,
        int visit,
        double changeSdMetres) {
    /** Depth on firm ground: half an inch to an inch (common practice). */
    public static final double FIRM_SD_METRES = 0.02;

    /** Depth on silt, weed or leaves, into which the plummet sinks (common practice). */
    public static final double SOFT_SD_METRES = 0.04;

    /** A sounding of ground that has not changed. */
    public Sounding(
            double xMetres, double yMetres, double depthMetres, double sdDepthMetres, Precision precision, int visit) {
        this(xMetres, yMetres, depthMetres, sdDepthMetres, precision, visit, 0);
    }

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

    /** Whether it still says something of the bottom. */
    public boolean isUsed() {
        return Double.isFinite(changeSdMetres);
    }

    /** This sounding where the bottom may have changed by so much more since, metres. */
    public Sounding changed(double sdMetres) {
        return new Sounding(
                xMetres, yMetres, depthMetres, sdDepthMetres, precision, visit, Math.hypot(changeSdMetres, sdMetres));
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

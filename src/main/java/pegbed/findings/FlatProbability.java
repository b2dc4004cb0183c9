package pegbed.findings;

import java.util.function.ToDoubleFunction;
import pegbed.surface.posterior.Disc;

/**
 * How probable it is that a disc is flat at a target depth.
 *
 * <p>P = E[1(|g| ≤ limit)·(Φ((T + band − m)/s) − Φ((T − band − m)/s))] over the posterior of the mean gradient g, with
 * m and s² the mean and variance of the mean depth given g.
 *
 * @param bandMetres how far from the target the mean depth may be, metres
 * @param slopeLimit steepest mean gradient, rise over run
 */
public record FlatProbability(double bandMetres, double slopeLimit) {
    /** Within 2 in (5 cm), and no steeper than 1 in 5 (common practice). */
    public static final FlatProbability USUAL = new FlatProbability(0.05, 0.20);

    /** Beyond this many standard deviations from the band the odds are taken as 0. */
    private static final double FAR = 4.5;

    /** Probability that a disc lies within the band about a target, and is no steeper than the limit. */
    public double flat(Disc disc, double targetMetres) {
        if (!disc.components().isEmpty()) {
            return mixed(disc, component -> flat(component, targetMetres));
        }
        if (isFar(disc.depthMetres(), disc.sdMetres(), targetMetres)) {
            return 0;
        }
        double l11 = Math.sqrt(Math.max(disc.varX(), 1e-12));
        double l21 = disc.covXY() / l11;
        double l22 = Math.sqrt(Math.max(disc.varY() - l21 * l21, 1e-12));
        double b1 = disc.covDX() / l11;
        double b2 = (disc.covDY() - b1 * l21) / l22;
        double s = Math.sqrt(Math.max(disc.varD() - b1 * b1 - b2 * b2, 1e-10));
        double limit2 = slopeLimit * slopeLimit;
        double perS = 1 / s;
        double band = bandMetres * perS;
        double depth = (disc.depthMetres() - targetMetres) * perS;
        double slopeX = disc.slopeX();
        double slopeY = disc.slopeY();
        double m1 = b1 * perS;
        double m2 = b2 * perS;
        double sum = 0;
        double[] first = SobolNormals.FIRST;
        double[] second = SobolNormals.SECOND;
        for (int i = 0; i < first.length; i++) {
            double gx = slopeX + l11 * first[i];
            double gy = slopeY + l21 * first[i] + l22 * second[i];
            if (gx * gx + gy * gy <= limit2) {
                double m = depth + m1 * first[i] + m2 * second[i];
                sum += StandardNormal.within(band, m);
            }
        }
        return sum / first.length;
    }

    /** Of a mixture it is the weighted sum of each structure's. */
    private static double mixed(Disc disc, ToDoubleFunction<Disc> probability) {
        double sum = 0;
        for (Disc.Component component : disc.components()) {
            sum += component.weight() * probability.applyAsDouble(component.disc());
        }
        return sum;
    }

    /** Whether a depth lies within the band about a target. */
    boolean isWithin(double depthMetres, double targetMetres) {
        return Math.abs(depthMetres - targetMetres) <= bandMetres;
    }

    /**
     * What the odds are not above for a depth whose standard deviation is not above this: those of the band's near
     * side.
     */
    double upperBound(double depthMetres, double sdMetres, double targetMetres) {
        double off = Math.abs(depthMetres - targetMetres) - bandMetres;
        return off <= 0 ? 1 : StandardNormal.cumulative(-off / sdMetres);
    }

    /** Whether a depth with such a standard deviation is so far from the target's band that the odds are 0. */
    boolean isFar(double depthMetres, double sdMetres, double targetMetres) {
        return Math.abs(depthMetres - targetMetres) - bandMetres > FAR * sdMetres;
    }

    /** Probability that a disc lies within the band about a target, however steep: no less than {@link #flat}. */
    public double near(Disc disc, double targetMetres) {
        if (!disc.components().isEmpty()) {
            return mixed(disc, component -> near(component, targetMetres));
        }
        double sd = Math.sqrt(Math.max(disc.varD(), 1e-10));
        double above = StandardNormal.cumulative((targetMetres + bandMetres - disc.depthMetres()) / sd);
        return above - StandardNormal.cumulative((targetMetres - bandMetres - disc.depthMetres()) / sd);
    }

    /** Probability that a disc is no steeper than the limit. */
    public double gentle(Disc disc) {
        if (!disc.components().isEmpty()) {
            return mixed(disc, this::gentle);
        }
        double l11 = Math.sqrt(Math.max(disc.varX(), 1e-12));
        double l21 = disc.covXY() / l11;
        double l22 = Math.sqrt(Math.max(disc.varY() - l21 * l21, 1e-12));
        double limit2 = slopeLimit * slopeLimit;
        int within = 0;
        for (int i = 0; i < SobolNormals.FIRST.length; i++) {
            double gx = disc.slopeX() + l11 * SobolNormals.FIRST[i];
            double gy = disc.slopeY() + l21 * SobolNormals.FIRST[i] + l22 * SobolNormals.SECOND[i];
            if (gx * gx + gy * gy <= limit2) {
                within++;
            }
        }
        return (double) within / SobolNormals.FIRST.length;
    }
}

package pegbed.findings;

import java.util.function.ToDoubleFunction;
import pegbed.surface.posterior.Disc;

/**
 * How probable it is that a disc is flat at a target depth.
 *
 * <p>P = E[1(|g| ≤ limit)·(Φ((T + band − m)/s) − Φ((T − band − m)/s))] over the posterior of the mean gradient g, with
 * m and s² the mean and variance of the mean depth given g. The standard deviations come from few readings and are
 * known to a factor of two or so themselves: the expectation is also over a half, one and two times of them, a scale
 * mixture with tails much like Student's t.
 *
 * @param bandMetres how far from the target the mean depth may be, metres
 * @param slopeLimit steepest mean gradient, rise over run
 */
public record FlatProbability(double bandMetres, double slopeLimit) {
    /** Within 2 in (5 cm), and no steeper than 1 in 5 (common practice). */
    public static final FlatProbability USUAL = new FlatProbability(0.05, 0.20);

    /** Beyond this many standard deviations from the band the odds are taken as 0. */
    private static final double FAR = 6;

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
        double[] factors = SobolNormals.FACTOR;
        for (int i = 0; i < first.length; i++) {
            double gx = slopeX + factors[i] * (l11 * first[i]);
            double gy = slopeY + factors[i] * (l21 * first[i] + l22 * second[i]);
            if (gx * gx + gy * gy <= limit2) {
                double perFactor = 1 / factors[i];
                double m = depth * perFactor + m1 * first[i] + m2 * second[i];
                sum += StandardNormal.within(band * perFactor, m);
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
        if (off <= 0) {
            return 1;
        }
        double sum = 0;
        for (double factor : SobolNormals.FACTORS) {
            sum += StandardNormal.cumulative(-off / (factor * sdMetres));
        }
        return sum / SobolNormals.FACTORS.length;
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
        double sum = 0;
        for (double factor : SobolNormals.FACTORS) {
            double perSd = 1 / (factor * sd);
            sum += StandardNormal.within(bandMetres * perSd, (disc.depthMetres() - targetMetres) * perSd);
        }
        return sum / SobolNormals.FACTORS.length;
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
            double factor = SobolNormals.FACTOR[i];
            double gx = disc.slopeX() + factor * (l11 * SobolNormals.FIRST[i]);
            double gy = disc.slopeY() + factor * (l21 * SobolNormals.FIRST[i] + l22 * SobolNormals.SECOND[i]);
            if (gx * gx + gy * gy <= limit2) {
                within++;
            }
        }
        return (double) within / SobolNormals.FIRST.length;
    }
}

package pegbed.surface;

import pegbed.surface.posterior.Gradient;
import pegbed.surface.survey.Scale;

/**
 * What an unsure place adds to the variance of a depth: ξ = ĝᵀSĝ + S_xx·Var g_x + S_yy·Var g_y, with ĝ the gradient of
 * the posterior mean and S the covariance of the place (McHutchon & Rasmussen 2011, Gaussian process training with
 * input noise), capped at 0.35² m² times the square of the vertical scale.
 */
public final class InputNoise {
    private static final double CAP_METRES = 0.35;

    private InputNoise() {}

    static double[] of(StructureFit fit, Observations observations) {
        double[] noise = new double[observations.count];
        Gradient[] g = fit.gradients(observations.places.x, observations.places.y);
        for (int i = 0; i < noise.length; i++) {
            noise[i] = at(
                    g[i],
                    observations.varX[i],
                    observations.varY[i],
                    observations.covXY[i],
                    fit.prior().scale());
        }
        return noise;
    }

    /** What the place of one observation adds about a bottom that was fitted without it. */
    static double of(StructureFit fit, Observations observations, int i) {
        Gradient g = fit.gradient(observations.places.x[i], observations.places.y[i]);
        return at(
                g,
                observations.varX[i],
                observations.varY[i],
                observations.covXY[i],
                fit.prior().scale());
    }

    /** What a place with covariance S adds where the bottom falls so. */
    public static double at(Gradient g, double sxx, double syy, double sxy, Scale scale) {
        double cap = CAP_METRES * scale.vertical();
        double along = g.dx() * g.dx() * sxx + g.dy() * g.dy() * syy + 2 * g.dx() * g.dy() * sxy;
        return Math.min(cap * cap, along + sxx * g.varDx() + syy * g.varDy());
    }
}

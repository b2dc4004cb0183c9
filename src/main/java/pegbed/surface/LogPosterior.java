package pegbed.surface;

import pegbed.surface.gaussian.Bfgs;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.gaussian.Matern;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.prior.Priors;
import pegbed.surface.survey.Scale;

/**
 * Negative logarithm of the posterior density of one structure's hyperparameters, with its gradient (Rasmussen &
 * Williams 2006, eq. 5.9: ∂ log p/∂θ = ½ tr[(ααᵀ − K⁻¹) ∂K/∂θ]). Variables are the logarithms, those that the
 * {@link Priors} name.
 */
public final class LogPosterior implements Bfgs.Objective {
    private final Observations observations;
    private final Priors priors;
    private final Scale scale;
    private final double[] inputNoise;
    private final boolean unknownConstant;
    private final int n;
    private final boolean hasProfile;
    /** |Δu|, |Δv|, the product of the roughness of both, and the distance of each pair i > j, packed row by row. */
    private final double[] du;

    private final double[] dv;
    private final double[] rough;
    private final double[] dr;
    /** What does not depend on the hyperparameters. */
    private final double[] fixed;

    /**
     * @param inputNoise what the unsure place of each observation adds to its variance, square metres
     * @param unknownConstant whether the mean has an unknown constant besides
     */
    public LogPosterior(
            Observations observations, Priors priors, Scale scale, double[] inputNoise, boolean unknownConstant) {
        this.observations = observations;
        this.priors = priors;
        this.scale = scale;
        this.inputNoise = inputNoise;
        this.unknownConstant = unknownConstant;
        n = observations.count;
        BottomCovariance k = new BottomCovariance(priors.medians(), scale);
        hasProfile = k.profile2 > 0;
        int pairs = n * (n - 1) / 2;
        dr = new double[pairs];
        fixed = new double[pairs];
        du = new double[hasProfile ? pairs : 0];
        dv = new double[du.length];
        rough = new double[du.length];
        PlaceCoordinates p = observations.places;
        int at = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++, at++) {
                dr[at] = Math.hypot(p.x[i] - p.x[j], p.y[i] - p.y[j]);
                fixed[at] = k.level2 + PlaceCoordinates.common(p, i, p, j) + observations.commonErrorCovariance(i, j);
                if (hasProfile) {
                    du[at] = Math.abs(p.u[i] - p.u[j]);
                    dv[at] = Math.abs(p.v[i] - p.v[j]);
                    rough[at] = p.roughness[i] * p.roughness[j];
                }
            }
        }
    }

    /** A correlation of all pairs and its derivative by the logarithm of its length; empty where it has no weight. */
    private record Term(double[] correlation, double[] byLogLength) {
        static final Term NONE = new Term(new double[0], new double[0]);

        static Term fiveHalves(double[] distances, double length) {
            Term term = new Term(new double[distances.length], new double[distances.length]);
            Matern.fiveHalves(distances, length, term.correlation, term.byLogLength);
            return term;
        }

        static Term threeHalves(double[] distances, double length) {
            Term term = new Term(new double[distances.length], new double[distances.length]);
            Matern.threeHalves(distances, length, term.correlation, term.byLogLength);
            return term;
        }

        void addTo(double[] values, double variance) {
            for (int at = 0; at < correlation.length; at++) {
                values[at] += variance * correlation[at];
            }
        }
    }

    @Override
    public double value(double[] logs, double[] gradient) {
        Hyperparameters hyper = Hyperparameters.ofLogs(priors.variables(), logs);
        BottomCovariance k = new BottomCovariance(hyper, scale);
        Term isotropic = k.isotropic2 > 0 ? Term.fiveHalves(dr, k.isotropic) : Term.NONE;
        Term local = k.local2 > 0 ? Term.threeHalves(dr, k.local) : Term.NONE;
        Term across = hasProfile ? Term.fiveHalves(dv, k.across) : Term.NONE;
        Term along = hasProfile ? Term.fiveHalves(du, k.along) : Term.NONE;
        double[] pairs = fixed.clone();
        isotropic.addTo(pairs, k.isotropic2);
        local.addTo(pairs, k.local2);
        for (int at = 0; at < du.length; at++) {
            pairs[at] += k.profile2 * rough[at] * across.correlation[at] * along.correlation[at];
        }
        GaussianProcess process;
        try {
            process = new GaussianProcess(matrix(pairs, k, hyper.noise()), observations.residual, unknownConstant);
        } catch (GaussianProcess.NotPositiveDefinite e) {
            return Double.POSITIVE_INFINITY;
        }
        double[] pull = new double[pairs.length];
        double[] diagonal = new double[n];
        pulls(process, pull, diagonal);
        double own = 0;
        double roughOwn = 0;
        double noise = 0;
        for (int i = 0; i < n; i++) {
            double roughness = observations.places.roughness[i];
            own += diagonal[i];
            roughOwn += roughness * roughness * diagonal[i];
            noise += diagonal[i] * observations.scaledVariance[i];
        }
        for (int i = 0; i < logs.length; i++) {
            double slope = switch (priors.variables()[i]) {
                case PROFILE_SD -> 2 * k.profile2 * (triple(pull, across.correlation, along.correlation) + roughOwn);
                case ACROSS -> k.profile2 * triple(pull, across.byLogLength, along.correlation);
                case ALONG -> k.profile2 * triple(pull, across.correlation, along.byLogLength);
                case ISOTROPIC_SD -> 2 * k.isotropic2 * (GaussianProcess.dot(pull, isotropic.correlation) + own);
                case ISOTROPIC_LENGTH -> k.isotropic2 * GaussianProcess.dot(pull, isotropic.byLogLength);
                case LOCAL_SD -> 2 * k.local2 * (GaussianProcess.dot(pull, local.correlation) + own);
                case LOCAL_LENGTH -> k.local2 * GaussianProcess.dot(pull, local.byLogLength);
                case NOISE -> 2 * hyper.noise() * hyper.noise() * noise;
            };
            gradient[i] = slope + priors.penaltyGradient(logs, i);
        }
        return priors.penalty(logs) - process.logMarginalLikelihood();
    }

    private double[] matrix(double[] pairs, BottomCovariance k, double eta) {
        double[] matrix = new double[n * n];
        PlaceCoordinates p = observations.places;
        int at = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++, at++) {
                matrix[i * n + j] = pairs[at];
                matrix[j * n + i] = pairs[at];
            }
            matrix[i * n + i] = k.between(p, i, p, i)
                    + observations.commonErrorCovariance(i, i)
                    + observations.noise(i, eta, inputNoise);
        }
        return matrix;
    }

    /** K⁻¹ − ααᵀ of each pair, which counts for itself and its mirror image, and half of it on the diagonal. */
    private void pulls(GaussianProcess process, double[] pull, double[] diagonal) {
        double[] inverse = process.inverse();
        double[] alpha = process.alpha();
        int at = 0;
        for (int i = 0; i < n; i++) {
            double alphaI = alpha[i];
            for (int j = 0; j < i; j++, at++) {
                pull[at] = inverse[i * n + j] - alphaI * alpha[j];
            }
            diagonal[i] = (inverse[i * n + i] - alphaI * alphaI) / 2;
        }
    }

    private double triple(double[] pull, double[] a, double[] b) {
        double sum = 0;
        for (int at = 0; at < pull.length; at++) {
            sum += pull[at] * rough[at] * a[at] * b[at];
        }
        return sum;
    }
}

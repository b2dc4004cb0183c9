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
 * Negative logarithm of the posterior density of the hyperparameters, with its gradient (Rasmussen & Williams 2006,
 * eq. 5.9: ∂ log p/∂θ = ½ tr[(ααᵀ − K⁻¹) ∂K/∂θ]). Variables are the logarithms, in the order of {@link Hyperparameters}.
 * In open water the constant is unknown and the length along is not used.
 */
public final class LogPosterior implements Bfgs.Objective {
    private final Observations observations;
    private final Priors priors;
    private final Scale scale;
    private final double[] placing;
    private final boolean open;
    private final double ownTrack;
    private final int n;
    /** |Δu|, |Δv| and distance of each pair i > j, packed row by row; in open water 0 and twice the distance. */
    private final double[] du;

    private final double[] dv;
    private final double[] dr;
    /** Product of the roughness of both. */
    private final double[] rough;

    private final double[] fixed;

    public LogPosterior(
            Observations observations, Priors priors, Scale scale, double[] placing, boolean open, double ownTrack) {
        this.observations = observations;
        this.priors = priors;
        this.scale = scale;
        this.placing = placing;
        this.open = open;
        this.ownTrack = ownTrack;
        n = observations.count;
        du = new double[n * (n - 1) / 2];
        dv = new double[du.length];
        dr = new double[du.length];
        rough = new double[du.length];
        fixed = new double[du.length];
        PlaceCoordinates p = observations.places;
        BottomCovariance any =
                new BottomCovariance(Hyperparameters.ofLogs(priors.logMedians()), scale, open, 0, ownTrack);
        int at = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++, at++) {
                dr[at] = Math.hypot(p.x[i] - p.x[j], p.y[i] - p.y[j]);
                du[at] = open ? 0 : Math.abs(p.u[i] - p.u[j]);
                dv[at] = open ? dr[at] : Math.abs(p.v[i] - p.v[j]);
                rough[at] = p.roughness[i] * p.roughness[j];
                fixed[at] = any.level2 + any.track2 * p.t[i] * p.t[j] + observations.levelCovariance(i, j) + told(i, j);
            }
        }
    }

    private double told(int i, int j) {
        double[][] told = observations.places.told;
        return told == null ? 0 : BottomCovariance.told(told[i], told[j]);
    }

    private double roughness2(int i) {
        double roughness = observations.places.roughness[i];
        return roughness * roughness;
    }

    @Override
    public double value(double[] logs, double[] gradient) {
        Hyperparameters hyper = Hyperparameters.ofLogs(logs);
        BottomCovariance k = new BottomCovariance(hyper, scale, open, 0, ownTrack);
        double[] matrix = new double[n * n];
        int pairs = du.length;
        double[] across = new double[pairs];
        double[] acrossByLog = new double[pairs];
        Matern.fiveHalves(dv, k.across, across, acrossByLog);
        double[] profile = new double[pairs];
        double[] profileByLog = new double[pairs];
        Matern.fiveHalves(du, k.along, profile, profileByLog);
        double[] local = new double[pairs];
        double[] localByLog = new double[pairs];
        Matern.threeHalves(dr, k.local, local, localByLog);
        int at = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++, at++) {
                double varied = k.profile2 * profile[at] * across[at] + k.local2 * local[at];
                double value = rough[at] * varied + fixed[at];
                matrix[i * n + j] = value;
                matrix[j * n + i] = value;
            }
            double t = observations.places.t[i];
            matrix[i * n + i] = roughness2(i) * (k.profile2 + k.local2)
                    + k.level2
                    + k.track2 * t * t
                    + observations.levelCovariance(i, i)
                    + told(i, i)
                    + observations.noise(i, hyper.noise(), placing);
        }
        GaussianProcess conditioned;
        try {
            conditioned = new GaussianProcess(matrix, observations.residual, open);
        } catch (GaussianProcess.NotPositiveDefinite e) {
            return Double.POSITIVE_INFINITY;
        }
        double[] inverse = conditioned.inverse();
        double[] alpha = conditioned.alpha();
        double profileSum = 0;
        double acrossSum = 0;
        double alongSum = 0;
        double localSum = 0;
        double lengthSum = 0;
        double own = 0;
        double noise = 0;
        at = 0;
        for (int i = 0; i < n; i++) {
            double alphaI = alpha[i];
            for (int j = 0; j < i; j++, at++) {
                // Twice ½ for the pair and its mirror image.
                double pull = rough[at] * (inverse[i * n + j] - alphaI * alpha[j]);
                profileSum += pull * profile[at] * across[at];
                acrossSum += pull * profile[at] * acrossByLog[at];
                alongSum += pull * across[at] * profileByLog[at];
                localSum += pull * local[at];
                lengthSum += pull * localByLog[at];
            }
            double pull = (inverse[i * n + i] - alphaI * alphaI) / 2;
            own += roughness2(i) * pull;
            noise += pull * observations.scaledVariance[i];
        }
        gradient[0] = 2 * k.profile2 * (profileSum + own);
        gradient[1] = k.profile2 * acrossSum;
        gradient[2] = k.profile2 * alongSum;
        gradient[3] = 2 * k.local2 * (localSum + own);
        gradient[4] = k.local2 * lengthSum;
        gradient[5] = 2 * hyper.noise() * hyper.noise() * noise;
        for (int i = 0; i < logs.length; i++) {
            gradient[i] += priors.penaltyGradient(logs, i);
        }
        return priors.penalty(logs) - conditioned.logMarginalLikelihood();
    }
}

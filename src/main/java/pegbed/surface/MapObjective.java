package pegbed.surface;

/**
 * Negative logarithm of the posterior density of the hyperparameters, with its gradient (Rasmussen & Williams 2006,
 * eq. 5.9: ∂ log p/∂θ = ½ tr[(ααᵀ − K⁻¹) ∂K/∂θ]). Variables are the logarithms, in the order of {@link Hyperparameters}.
 * In open water the constant is unknown and the length along is not used.
 */
final class MapObjective implements Bfgs.Objective {
    private final Observations observations;
    private final Priors priors;
    private final Scale scale;
    private final double[] placing;
    private final boolean open;
    private final int n;
    /** |Δu|, |Δv| and distance of each pair i > j, packed row by row; in open water 0 and twice the distance. */
    private final double[] du;

    private final double[] dv;
    private final double[] dr;
    private final double[] fixed;

    MapObjective(Observations observations, Priors priors, Scale scale, double[] placing, boolean open) {
        this.observations = observations;
        this.priors = priors;
        this.scale = scale;
        this.placing = placing;
        this.open = open;
        n = observations.count;
        du = new double[n * (n - 1) / 2];
        dv = new double[du.length];
        dr = new double[du.length];
        fixed = new double[du.length];
        Places p = observations.places;
        BottomCovariance any = new BottomCovariance(Hyperparameters.ofLogs(priors.logMedians()), scale, open);
        int at = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++, at++) {
                dr[at] = Math.hypot(p.x[i] - p.x[j], p.y[i] - p.y[j]);
                du[at] = open ? 0 : Math.abs(p.u[i] - p.u[j]);
                dv[at] = open ? dr[at] : Math.abs(p.v[i] - p.v[j]);
                fixed[at] = any.level2 + any.track2 * p.t[i] * p.t[j] + observations.levelCovariance(i, j);
            }
        }
    }

    @Override
    public double value(double[] logs, double[] gradient) {
        Hyperparameters hyper = Hyperparameters.ofLogs(logs);
        BottomCovariance k = new BottomCovariance(hyper, scale, open);
        double[] matrix = new double[n * n];
        double[] profile = new double[du.length];
        double[] across = new double[du.length];
        double[] local = new double[du.length];
        int at = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++, at++) {
                across[at] = Matern.fiveHalves(dv[at] / k.across);
                profile[at] = Matern.fiveHalves(du[at] / k.along);
                local[at] = Matern.threeHalves(dr[at] / k.local);
                double value = k.profile2 * profile[at] * across[at] + k.local2 * local[at] + fixed[at];
                matrix[i * n + j] = value;
                matrix[j * n + i] = value;
            }
            double t = observations.places.t[i];
            matrix[i * n + i] = k.profile2
                    + k.local2
                    + k.level2
                    + k.track2 * t * t
                    + observations.levelCovariance(i, i)
                    + observations.noise(i, hyper.noise(), placing);
        }
        Conditioned conditioned;
        try {
            conditioned = new Conditioned(matrix, observations.residual, open);
        } catch (Conditioned.NotPositiveDefinite e) {
            return Double.POSITIVE_INFINITY;
        }
        double[] inverse = conditioned.inverse();
        double[] alpha = conditioned.alpha();
        java.util.Arrays.fill(gradient, 0);
        at = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++, at++) {
                // Twice ½ for the pair and its mirror image.
                double pull = inverse[i * n + j] - alpha[i] * alpha[j];
                gradient[0] += pull * 2 * k.profile2 * profile[at] * across[at];
                gradient[1] += pull * k.profile2 * profile[at] * Matern.fiveHalvesByLogScale(dv[at] / k.across);
                gradient[2] += pull * k.profile2 * across[at] * Matern.fiveHalvesByLogScale(du[at] / k.along);
                gradient[3] += pull * 2 * k.local2 * local[at];
                gradient[4] += pull * k.local2 * Matern.threeHalvesByLogScale(dr[at] / k.local);
            }
            double pull = (inverse[i * n + i] - alpha[i] * alpha[i]) / 2;
            gradient[0] += pull * 2 * k.profile2;
            gradient[3] += pull * 2 * k.local2;
            gradient[5] += pull * 2 * hyper.noise() * hyper.noise() * observations.scaledVariance[i];
        }
        for (int i = 0; i < logs.length; i++) {
            gradient[i] += priors.penaltyGradient(logs, i);
        }
        return priors.penalty(logs) - conditioned.logMarginalLikelihood();
    }
}

package pegbed.surface;

import java.util.List;
import java.util.Optional;
import pegbed.model.Monitor;
import pegbed.surface.gaussian.Bfgs;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.PriorMean;
import pegbed.surface.prior.Priors;
import pegbed.surface.survey.BlockAveraging;
import pegbed.surface.survey.Levels;
import pegbed.surface.survey.Scale;
import pegbed.surface.survey.Survey;

/**
 * From a survey to the fitted bottom: a Gaussian process in bank coordinates with a tub for its mean, noisy inputs, and
 * hyperparameters at their maximum a posteriori. The method is derived in {@code docs/method.md}.
 */
public final class BottomModel {
    /** Below this many soundings the hyperparameters keep their medians. */
    public static final int LEARNS_FROM = 15;

    private static final int ROUNDS = 2;
    private static final int ITERATIONS = 25;
    private static final double TOLERANCE = 1e-6;

    private BottomModel() {}

    /**
     * Fits the bottom. With no soundings at all the answer is the prior alone. Where a later visit shows that the bottom
     * has changed, older soundings there lose weight, as {@link ChangeSearch} tells.
     */
    public static FittedBottom fit(Survey survey, Monitor monitor) {
        return fit(survey, NeighbouringPegs.NONE, monitor);
    }

    /** As {@link #fit(Survey, Monitor)}, starting from what neighbouring pegs of the same water teach. */
    public static FittedBottom fit(Survey survey, NeighbouringPegs neighbours, Monitor monitor) {
        Survey small = BlockAveraging.of(survey);
        FittedBottom fitted = fitExactly(small, neighbours, monitor);
        if (survey.levels().visits() > 1) {
            fitted = ChangeSearch.heeded(fitted, monitor);
        }
        return small == survey ? fitted : fitted.behind(ChangeSearch.lighter(survey, fitted.changes()));
    }

    /** Fits the bottom to every sounding as it is, as if it had never changed, however long that takes. */
    public static FittedBottom fitExactly(Survey survey, NeighbouringPegs neighbours, Monitor monitor) {
        Scale scale = scale(survey);
        boolean open = survey.water().isEmpty();
        NeighbourProfile.Told told = NeighbourProfile.of(
                survey, neighbours, open ? Priors.open(scale) : Priors.banked(scale), scale, monitor);
        Priors priors = told.priors();
        PriorMean tub = new PriorMean(survey.coordinates(), scale).told(told.shared());
        Observations observations = new Observations(survey, tub);
        double[] logs = priors.logMedians().clone();
        double[] placing = observations.firstPlacing();
        boolean learns = observations.real >= LEARNS_FROM;
        for (int round = 0; round < ROUNDS; round++) {
            monitor.check();
            if (learns) {
                logs = learned(observations, priors, tub, placing, open, logs);
            }
            FittedBottom fitted = factored(survey, tub, observations, logs, placing, open, learns);
            placing = InputNoise.of(fitted, observations);
            monitor.progress((round + 1.0) / (ROUNDS + 1));
        }
        return factored(survey, tub, observations, logs, placing, open, learns).with(neighbours);
    }

    /** Fits every sounding as it is with given hyperparameters. */
    public static FittedBottom fitWith(Survey survey, Hyperparameters hyper, Monitor monitor) {
        PriorMean tub = new PriorMean(survey.coordinates(), scale(survey));
        Observations observations = new Observations(survey, tub);
        boolean open = survey.water().isEmpty();
        double[] logs = hyper.logs();
        double[] placing = observations.firstPlacing();
        for (int round = 0; round < ROUNDS; round++) {
            monitor.check();
            placing = InputNoise.of(factored(survey, tub, observations, logs, placing, open, true), observations);
        }
        return factored(survey, tub, observations, logs, placing, open, true);
    }

    /**
     * A bottom with one sounding more of which everything else is kept: scale, hyperparameters, and what the places of the
     * other soundings add to their noise.
     *
     * @param added index of the new sounding in the new survey
     * @return empty where the new sounding takes the place of a bank's own
     */
    static Optional<FittedBottom> withOneMore(FittedBottom before, Survey now, int added) {
        PriorMean tub = before.tub().under(0);
        Observations observations = new Observations(now, tub);
        if (observations.count != before.observations().count + 1) {
            return Optional.empty();
        }
        double[] placing = new double[observations.count];
        int old = 0;
        for (int i = 0; i < placing.length; i++) {
            boolean own = i < observations.real && observations.sounding[i] == added;
            placing[i] = own ? InputNoise.of(before, observations, i) : before.placing(old++);
        }
        double[] logs = before.hyperparameters().logs();
        boolean open = now.water().isEmpty();
        return Optional.of(factored(now, tub, observations, logs, placing, open, before.learned())
                .with(before.neighbours())
                .withChanges(before.changes()));
    }

    private static Scale scale(Survey survey) {
        Scale shown = Scale.of(survey.used());
        return survey.water().isPresent() ? new Scale(shown.vertical(), 1) : shown;
    }

    private static double[] learned(
            Observations observations, Priors priors, PriorMean tub, double[] placing, boolean open, double[] start) {
        LogPosterior objective = new LogPosterior(
                observations, priors, tub.scale(), placing, open, tub.shared().ownTrack());
        return minimised(objective, priors, start);
    }

    /** The best point of a negative log posterior within what the priors allow. */
    public static double[] minimised(Bfgs.Objective objective, Priors priors, double[] start) {
        double[] least = new double[start.length];
        double[] most = new double[start.length];
        double[] inverseHessian = new double[start.length];
        for (int i = 0; i < start.length; i++) {
            least[i] = priors.least(i);
            most[i] = priors.most(i);
            inverseHessian[i] = priors.logSds()[i] * priors.logSds()[i] / 2;
        }
        return Bfgs.minimise(objective, start, least, most, inverseHessian, ITERATIONS, TOLERANCE);
    }

    private static FittedBottom factored(
            Survey survey,
            PriorMean tub,
            Observations observations,
            double[] logs,
            double[] placing,
            boolean open,
            boolean learned) {
        double[] used = logs.clone();
        if (open) {
            // One length scale in all directions.
            used[2] = used[1];
        }
        Hyperparameters hyper = Hyperparameters.ofLogs(used);
        double ownTrack = tub.shared().ownTrack();
        BottomCovariance covariance = new BottomCovariance(hyper, tub.scale(), open, 0, ownTrack);
        double[] k = observations.covariance(covariance, hyper.noise(), placing);
        GaussianProcess conditioned = new GaussianProcess(k, observations.residual, open);
        Levels levels = survey.levels();
        FittedBottom.Solution solution = new FittedBottom.Solution(
                tub.under(levels.mean(survey.shown())),
                observations,
                hyper,
                new BottomCovariance(
                        hyper, tub.scale(), open, levels.covariance(survey.shown(), survey.shown()), ownTrack),
                conditioned,
                placing);
        return new FittedBottom(survey, NeighbouringPegs.NONE, solution, learned, List.of());
    }
}

package pegbed.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import pegbed.model.Monitor;
import pegbed.model.Parallel;
import pegbed.surface.gaussian.Bfgs;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.Priors;
import pegbed.surface.prior.Structure;
import pegbed.surface.prior.StructurePrior;
import pegbed.surface.survey.BlockAveraging;
import pegbed.surface.survey.Scale;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * From a survey to the fitted bottom: for each structure that a bottom may have, a Gaussian process with noisy inputs
 * and hyperparameters at their maximum a posteriori; then the weights of the structures. The method is derived in
 * {@code docs/method.md}.
 */
public final class BottomModel {
    /** Below this many soundings the hyperparameters keep their medians. */
    public static final int LEARNS_FROM = 15;

    private static final List<Structure> BANKED = List.of(Structure.TUB, Structure.FALL, Structure.OPEN);

    private static final int ROUNDS = 2;
    private static final int ITERATIONS = 25;
    private static final double TOLERANCE = 1e-3;

    private BottomModel() {}

    /**
     * Fits the bottom. With no soundings at all the answer is the prior alone. Where a later visit shows that the
     * bottom has changed, older soundings there lose weight, as {@link ChangeSearch} finds it.
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
        if (small == survey && survey.water().isPresent()) {
            fitted = GrossErrors.doubted(fitted, monitor);
        }
        return small == survey ? fitted : fitted.behind(ChangeSearch.lighter(survey, fitted.changes()));
    }

    /** Fits the bottom to every sounding as it is, as if it had never changed, however long that takes. */
    public static FittedBottom fitExactly(Survey survey, NeighbouringPegs neighbours, Monitor monitor) {
        Scale scale = scale(survey);
        List<Structure> structures = survey.water().isEmpty() ? List.of(Structure.BASIN) : BANKED;
        AtomicInteger done = new AtomicInteger();
        List<StructureFit> fits = Parallel.map(structures, structure -> {
            StructurePrior prior = new StructurePrior(structure, survey.coordinates(), scale);
            Priors priors = prior.priors();
            if (structure == Structure.TUB) {
                NeighbourProfile.Said said = NeighbourProfile.of(survey, neighbours, prior, monitor);
                prior = prior.with(said.shared());
                priors = said.priors();
            }
            StructureFit fit = fit(survey, prior, priors, monitor);
            monitor.progress((double) done.incrementAndGet() / (structures.size() + 1));
            return fit;
        });
        boolean learned = fits.get(0).observations().real >= LEARNS_FROM;
        return new FittedBottom(survey, neighbours, fits, Stacking.weights(fits), learned, List.of());
    }

    private static StructureFit fit(Survey survey, StructurePrior prior, Priors priors, Monitor monitor) {
        Observations observations = new Observations(survey, prior);
        return fit(survey, prior, priors, observations, priors.logMedians(), observations.firstInputNoise(), monitor);
    }

    /** A fit of the same structure to another survey of the same places, with the priors' medians. */
    static StructureFit unlearned(StructureFit fit, Survey survey, Monitor monitor) {
        return fitWith(survey, fit.prior().under(0), fit.priors().medians(), monitor);
    }

    /** A fit of the same structure to another survey of the same places, begun where this one ended. */
    static StructureFit again(StructureFit fit, Survey survey, Monitor monitor) {
        StructurePrior prior = fit.prior().under(0);
        double[] logs = fit.hyperparameters().logs(fit.priors().variables());
        return fit(survey, prior, fit.priors(), new Observations(survey, prior), logs, fit.inputNoise(), monitor);
    }

    private static StructureFit fit(
            Survey survey,
            StructurePrior prior,
            Priors priors,
            Observations observations,
            double[] startLogs,
            double[] startNoise,
            Monitor monitor) {
        double[] logs = startLogs;
        double[] inputNoise = startNoise;
        boolean unknownConstant = prior.structure() == Structure.BASIN;
        for (int round = 0; round < ROUNDS; round++) {
            monitor.check();
            if (observations.real >= LEARNS_FROM) {
                LogPosterior posterior =
                        new LogPosterior(observations, priors, prior.scale(), inputNoise, unknownConstant);
                logs = minimised(posterior, priors, logs);
            }
            Hyperparameters hyper = Hyperparameters.ofLogs(priors.variables(), logs);
            StructureFit looked = new StructureFit(survey, prior, priors, observations, hyper, inputNoise);
            inputNoise = InputNoise.of(looked, observations);
        }
        Hyperparameters hyper = Hyperparameters.ofLogs(priors.variables(), logs);
        return new StructureFit(survey, prior, priors, observations, hyper, inputNoise);
    }

    /** Fits one structure to every sounding as it is with given hyperparameters. */
    static StructureFit fitWith(Survey survey, Structure structure, Hyperparameters hyper, Monitor monitor) {
        return fitWith(survey, new StructurePrior(structure, survey.coordinates(), scale(survey)), hyper, monitor);
    }

    private static StructureFit fitWith(Survey survey, StructurePrior prior, Hyperparameters hyper, Monitor monitor) {
        Observations observations = new Observations(survey, prior);
        double[] inputNoise = observations.firstInputNoise();
        for (int round = 0; round < ROUNDS; round++) {
            monitor.check();
            StructureFit looked = new StructureFit(survey, prior, prior.priors(), observations, hyper, inputNoise);
            inputNoise = InputNoise.of(looked, observations);
        }
        return new StructureFit(survey, prior, prior.priors(), observations, hyper, inputNoise);
    }

    /** Fits the open water of a survey without banks with given hyperparameters. */
    public static FittedBottom fitWith(Survey survey, Hyperparameters hyper, Monitor monitor) {
        StructureFit fit = fitWith(survey, Structure.BASIN, hyper, monitor);
        return new FittedBottom(survey, NeighbouringPegs.NONE, List.of(fit), new double[] {1}, true, List.of());
    }

    /**
     * A bottom with one sounding more of which everything else is kept: scale, hyperparameters, weights, and what the
     * places of the other soundings add to their noise. Structures that don't count are left out.
     *
     * @param added index of the new sounding in the new survey
     * @return empty where the new sounding takes the place of a bank's own
     */
    static Optional<FittedBottom> withOneMore(FittedBottom before, Survey now, int added) {
        List<StructureFit> fits = new ArrayList<>();
        for (int s : before.counting()) {
            Optional<StructureFit> fit = withOneMore(before.fits().get(s), now, added);
            if (fit.isEmpty()) {
                return Optional.empty();
            }
            fits.add(fit.get());
        }
        double[] weights =
                Arrays.stream(before.counting()).mapToDouble(before::weight).toArray();
        FittedBottom bottom =
                new FittedBottom(now, before.neighbours(), fits, weights, before.learned(), before.changes());
        return Optional.of(bottom.withCallsOf(before, added));
    }

    private static Optional<StructureFit> withOneMore(StructureFit before, Survey whole, int added) {
        // What this fit doubts of the other soundings it goes on doubting.
        List<Sounding> soundings = new ArrayList<>(before.survey().soundings());
        soundings.add(added, whole.soundings().get(added));
        Survey now = whole.withSoundings(soundings);
        StructurePrior prior = before.prior().under(0);
        Observations observations = new Observations(now, prior);
        if (observations.count != before.observations().count + 1) {
            return Optional.empty();
        }
        double[] inputNoise = new double[observations.count];
        int own = -1;
        for (int i = 0; i < inputNoise.length; i++) {
            if (i < observations.real && observations.sounding[i] == added) {
                own = i;
            }
            int old = own < 0 ? i : i - 1;
            inputNoise[i] = own == i ? InputNoise.of(before, observations, i) : before.inputNoise(old);
        }
        Observations moved = observations.movedAs(before.observations(), own);
        return Optional.of(new StructureFit(now, prior, before.priors(), moved, before.hyperparameters(), inputNoise));
    }

    private static Scale scale(Survey survey) {
        Scale shown = Scale.of(survey.used());
        return survey.water().isPresent() ? new Scale(shown.vertical(), 1) : shown;
    }

    /** The best point of a negative log posterior within what the priors allow. */
    public static double[] minimised(Bfgs.Objective objective, Priors priors, double[] start) {
        double[] lower = new double[start.length];
        double[] upper = new double[start.length];
        double[] inverseHessian = new double[start.length];
        for (int i = 0; i < start.length; i++) {
            lower[i] = priors.lower(i);
            upper[i] = priors.upper(i);
            inverseHessian[i] = priors.logSds()[i] * priors.logSds()[i] / 2;
        }
        return Bfgs.minimise(objective, start, lower, upper, inverseHessian, ITERATIONS, TOLERANCE);
    }
}

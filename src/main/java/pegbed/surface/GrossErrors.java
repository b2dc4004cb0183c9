package pegbed.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import pegbed.model.Monitor;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * Finds gross errors among the readings, such as a misread or misheard depth: the reading error is a contaminated
 * normal (Tukey 1960, A survey of sampling from contaminated distributions), with a further error of N(0, 0.5²) m in
 * one of sixty.
 *
 * <p>With the leave-one-out mean μ and variance v that each structure of weight w has of a reading z, and g = 0.5², p₀
 * = Σ w N(z; μ, v), p₁ = Σ w N(z; μ, v + g) and P = p₁/60 / (p₁/60 + p₀·59/60). The reading of the greatest P gets the
 * variance g more, all structures are learned anew, and if P is above 0.9 it is called a gross error; else it loses
 * that variance. The probabilities and thresholds are empirical: at most one false call in some seven pegs
 * ({@code docs/quality.md}).
 *
 * <p>A call may be wrong too, where the bottom itself is steep. So the result is a mixture of the fits with and without
 * the extra variance: those with it have the weight {@value #CALLED_WEIGHT}, {@value #CALLED_WEIGHT_FEW} with fewer
 * than {@value #FEW} readings. Readings that may be wrong without being called are {@link DoubtfulReadings}.
 */
final class GrossErrors {
    /** Share of readings that are wrong. */
    static final double PRIOR = 1.0 / 60;

    /** Variance of the error of one that is, square metres. */
    static final double VARIANCE = 0.5 * 0.5;

    /** A reading of less probability is not looked at. */
    private static final double LOOKED_AT_FROM = 0.2;

    /** From this probability on a reading is called wrong. */
    static final double CALLED_FROM = 0.9;

    /** A reading that is off by less is not looked at: bottoms have humps and holes as large, metres. */
    private static final double LEAST_METRES = 0.25;

    private static final int MOST_CALLED = 3;
    private static final int MOST_TRIED = 5;

    private static final double CALLED_WEIGHT = 0.75;
    private static final double CALLED_WEIGHT_FEW = 0.5;
    private static final int FEW = 20;

    private static final double IMPOSSIBLE_METRES = 2;
    private static final double IMPOSSIBLE_SDS = 5;

    /** With fewer readings nothing is called wrong: the model knows too little to contradict one. */
    private static final int FEWEST = 8;

    private GrossErrors() {}

    /**
     * A reading that was called a gross error.
     *
     * @param observation its index among the observations
     * @param sounding its index in the survey
     * @param probability that it is wrong, 0 to 1
     */
    record Call(int observation, int sounding, double probability) {}

    /** The bottom with its gross errors found and allowed for. */
    static FittedBottom doubted(FittedBottom fitted, Monitor monitor) {
        if (fitted.fits().get(0).observations().real < FEWEST) {
            return fitted;
        }
        List<Call> calls = new ArrayList<>();
        FittedBottom first = impossible(fitted, calls, monitor);
        List<StructureFit> fits = first.fits();
        Observations observations = fits.get(0).observations();
        Set<Integer> tried = new HashSet<>();
        calls.forEach(call -> tried.add(call.observation()));
        Survey survey = fits.get(0).survey();
        double[] weights = Stacking.unreduced(fits);
        int known = calls.size();
        while (calls.size() < known + MOST_CALLED && tried.size() < known + MOST_TRIED) {
            double[] probability = probabilities(fits, weights, i -> 0.0);
            int most = -1;
            for (int i = 0; i < probability.length; i++) {
                boolean large = Math.abs(off(fits, weights, i)) >= LEAST_METRES;
                if (large && !tried.contains(i) && (most < 0 || probability[i] > probability[most])) {
                    most = i;
                }
            }
            if (most < 0 || probability[most] < LOOKED_AT_FROM) {
                break;
            }
            monitor.check();
            tried.add(most);
            int sounding = observations.sounding[most];
            double off = off(fits, weights, most);
            double variance = Math.max(VARIANCE, off * off);
            Survey doubting = doubting(survey, sounding, variance);
            List<StructureFit> again = fits.stream()
                    .map(fit -> BottomModel.again(fit, doubting, monitor))
                    .toList();
            double[] newWeights = Stacking.unreduced(again);
            int doubted = most;
            double left = probabilities(again, newWeights, i -> i == doubted ? variance : 0.0)[most];
            if (left > CALLED_FROM) {
                calls.add(new Call(most, sounding, left));
                survey = doubting;
                fits = again;
                weights = newWeights;
            }
        }
        double[] own = first.weights();
        List<StructureFit> doubtful = DoubtfulReadings.moved(first.fits(), own);
        if (calls.size() == known) {
            return first.withFits(doubtful, own, calls);
        }
        double[] heeded = Stacking.weights(fits);
        return mixed(first.withFits(doubtful, own, calls), DoubtfulReadings.moved(fits, heeded), heeded, calls);
    }

    /**
     * Fits without readings that no bottom of a peg explains: further than {@value #IMPOSSIBLE_METRES} m and
     * {@value #IMPOSSIBLE_SDS} standard deviations from what the others make expected before anything is learned, since
     * what is learned with such a reading explains it.
     */
    private static FittedBottom impossible(FittedBottom fitted, List<Call> calls, Monitor monitor) {
        double[] depths = fitted.survey().used().stream()
                .mapToDouble(Sounding::depthMetres)
                .sorted()
                .toArray();
        double middle = depths[depths.length / 2];
        double limit = IMPOSSIBLE_METRES * fitted.scale().vertical();
        if (depths[depths.length - 1] - middle < limit && middle - depths[0] < limit) {
            return fitted;
        }
        Survey survey = fitted.fits().get(0).survey();
        while (calls.size() < MOST_CALLED) {
            Survey now = survey;
            List<StructureFit> unlearned = fitted.fits().stream()
                    .map(fit -> BottomModel.unlearned(fit, now, monitor))
                    .toList();
            double[] weights = Stacking.unreduced(unlearned);
            int most = -1;
            double largest = IMPOSSIBLE_SDS;
            for (int i = 0; i < unlearned.get(0).observations().real; i++) {
                double off = Math.abs(off(unlearned, weights, i));
                double z = off / Math.sqrt(variance(unlearned, weights, i));
                if (off > limit && z > largest) {
                    most = i;
                    largest = z;
                }
            }
            if (most < 0) {
                break;
            }
            double off = off(unlearned, weights, most);
            int sounding = unlearned.get(0).observations().sounding[most];
            calls.add(new Call(most, sounding, 1));
            survey = doubting(survey, sounding, off * off);
        }
        if (calls.isEmpty()) {
            return fitted;
        }
        FittedBottom clean = BottomModel.fitExactly(survey, fitted.neighbours(), monitor);
        return fitted.withFits(clean.fits(), clean.weights(), calls);
    }

    /** By how much a reading is deeper than the others make expected, over all structures, metres. */
    private static double off(List<StructureFit> fits, double[] weights, int i) {
        double sum = 0;
        for (int s = 0; s < fits.size(); s++) {
            GaussianProcess process = fits.get(s).process();
            sum += weights[s] * process.alpha()[i] / process.inverseDiagonal()[i];
        }
        return sum;
    }

    private static double variance(List<StructureFit> fits, double[] weights, int i) {
        double sum = 0;
        for (int s = 0; s < fits.size(); s++) {
            sum += weights[s] / fits.get(s).process().inverseDiagonal()[i];
        }
        return sum;
    }

    private static FittedBottom mixed(FittedBottom first, List<StructureFit> heeding, double[] own, List<Call> calls) {
        double share = heeding.get(0).observations().real < FEW ? CALLED_WEIGHT_FEW : CALLED_WEIGHT;
        List<StructureFit> all = new ArrayList<>(first.fits());
        all.addAll(heeding);
        double[] weights = new double[all.size()];
        for (int s = 0; s < weights.length; s++) {
            int old = first.fits().size();
            weights[s] = s < old ? (1 - share) * first.weight(s) : share * own[s - old];
        }
        return first.withFits(all, weights, calls);
    }

    private static Survey doubting(Survey survey, int sounding, double variance) {
        List<Sounding> soundings = new ArrayList<>(survey.soundings());
        soundings.set(sounding, soundings.get(sounding).changed(Math.sqrt(variance)));
        return survey.withSoundings(soundings);
    }

    /**
     * P of each real sounding.
     *
     * @param doubtedBy what variance a sounding has been given for being doubted, by its observation
     */
    static double[] probabilities(List<StructureFit> fits, double[] weights, IntToDoubleFunction doubtedBy) {
        int real = fits.get(0).observations().real;
        double[] right = new double[real];
        double[] wrong = new double[real];
        for (int s = 0; s < fits.size(); s++) {
            GaussianProcess process = fits.get(s).process();
            double[] precision = process.inverseDiagonal();
            for (int i = 0; i < real && weights[s] > 0; i++) {
                double off = process.alpha()[i] / precision[i];
                double variance = 1 / precision[i] - doubtedBy.applyAsDouble(i);
                right[i] += weights[s] * density(off, variance);
                wrong[i] += weights[s] * density(off, variance + VARIANCE);
            }
        }
        double[] probability = new double[real];
        Arrays.setAll(probability, i -> posterior(right[i], wrong[i]));
        return probability;
    }

    static double posterior(double right, double wrong) {
        double sum = PRIOR * wrong + (1 - PRIOR) * right;
        return sum > 0 ? PRIOR * wrong / sum : 1;
    }

    static double density(double off, double variance) {
        double v = Math.max(variance, 1e-9);
        return Math.exp(-off * off / (2 * v)) / Math.sqrt(v);
    }

    /** P of one reading that is off by so much, from one normal; 0 where that is less than is looked at. */
    static double probability(double off, double variance) {
        return Math.abs(off) < LEAST_METRES ? 0 : posterior(density(off, variance), density(off, variance + VARIANCE));
    }

    /** What variance a fit has given an observation because it doubts it, square metres. */
    static double doubtedBy(FittedBottom bottom, StructureFit fit, int observation) {
        Sounding sounding = bottom.survey().soundings().get(fit.observations().sounding[observation]);
        return fit.observations().fixedVariance[observation] - sounding.changeSdMetres() * sounding.changeSdMetres();
    }
}

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
 * Finds readings that are grossly wrong, a slip of the tongue or of the pole: the reading error is a contaminated normal
 * (Tukey 1960, A survey of sampling from contaminated distributions), one reading in sixty wrong by N(0, 0.5²) m besides.
 *
 * <p>With the leave-one-out mean μ and variance v that each structure of weight w has of a reading z, and g = 0.5², p₀ = Σ w
 * N(z; μ, v), p₁ = Σ w N(z; μ, v + g) and P = p₁/60 / (p₁/60 + p₀·59/60). The reading of the greatest P gets the variance g
 * more, all structures are learned anew, and if P is above 0.9 then it is called wrong; else it is put back. The
 * probabilities and thresholds are empirical: at most one false call in some seven pegs ({@code docs/quality.md}).
 *
 * <p>A call may be wrong too, where the bottom itself is steep. So the answer is a mixture of what was fitted with and without
 * it: {@value #CALLED_WEIGHT} of it heeds the call, {@value #CALLED_WEIGHT_FEW} with fewer than {@value #FEW} readings.
 */
final class GrossErrors {
    private static final double PRIOR = 1.0 / 60;
    private static final double VARIANCE = 0.5 * 0.5;

    /** A reading of less probability is not looked at. */
    private static final double LOOKED_AT_FROM = 0.3;

    /** From this probability on a reading is called wrong. */
    static final double CALLED_FROM = 0.9;

    private static final int MOST_CALLED = 3;
    private static final int MOST_TRIED = 5;

    private static final double CALLED_WEIGHT = 0.9;
    private static final double CALLED_WEIGHT_FEW = 0.5;
    private static final int FEW = 20;

    /** With fewer readings nothing is called wrong: the model knows too little to contradict one. */
    private static final int FEWEST = 8;

    private GrossErrors() {}

    /**
     * A reading that was called wrong.
     *
     * @param observation its index among the observations
     * @param sounding its index in the survey
     * @param probability that it is wrong, 0 to 1
     */
    record Call(int observation, int sounding, double probability) {}

    /** The bottom with its grossly wrong readings found and doubted. */
    static FittedBottom doubted(FittedBottom first, Monitor monitor) {
        List<StructureFit> fits = first.fits();
        Observations observations = fits.get(0).observations();
        if (observations.real < FEWEST) {
            return first;
        }
        List<Call> calls = new ArrayList<>();
        Set<Integer> tried = new HashSet<>();
        Survey survey = fits.get(0).survey();
        double[] weights = Stacking.unreduced(fits);
        while (calls.size() < MOST_CALLED && tried.size() < MOST_TRIED) {
            double[] probability = probabilities(fits, weights, i -> 0.0);
            int most = -1;
            for (int i = 0; i < probability.length; i++) {
                if (!tried.contains(i) && (most < 0 || probability[i] > probability[most])) {
                    most = i;
                }
            }
            if (most < 0 || probability[most] < LOOKED_AT_FROM) {
                break;
            }
            monitor.check();
            tried.add(most);
            int sounding = observations.sounding[most];
            Survey doubting = doubting(survey, sounding);
            List<StructureFit> again = fits.stream()
                    .map(fit -> BottomModel.again(fit, doubting, monitor))
                    .toList();
            double[] newWeights = Stacking.unreduced(again);
            int doubted = most;
            double left = probabilities(again, newWeights, i -> i == doubted ? VARIANCE : 0.0)[most];
            if (left > CALLED_FROM) {
                calls.add(new Call(most, sounding, left));
                survey = doubting;
                fits = again;
                weights = newWeights;
            }
        }
        return calls.isEmpty() ? first : mixed(first, fits, calls);
    }

    private static FittedBottom mixed(FittedBottom first, List<StructureFit> heeding, List<Call> calls) {
        double share = heeding.get(0).observations().real < FEW ? CALLED_WEIGHT_FEW : CALLED_WEIGHT;
        double[] own = Stacking.weights(heeding);
        List<StructureFit> all = new ArrayList<>(first.fits());
        all.addAll(heeding);
        double[] weights = new double[all.size()];
        for (int s = 0; s < weights.length; s++) {
            int old = first.fits().size();
            weights[s] = s < old ? (1 - share) * first.weight(s) : share * own[s - old];
        }
        return first.withFits(all, weights, calls);
    }

    private static Survey doubting(Survey survey, int sounding) {
        List<Sounding> soundings = new ArrayList<>(survey.soundings());
        soundings.set(sounding, soundings.get(sounding).changed(Math.sqrt(VARIANCE)));
        return survey.withSoundings(soundings);
    }

    /**
     * P of each real sounding.
     *
     * @param doubtedBy what variance a sounding has been given for being doubted, by its observation
     */
    private static double[] probabilities(
            List<StructureFit> fits, double[] weights, IntToDoubleFunction doubtedBy) {
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

    private static double posterior(double right, double wrong) {
        double sum = PRIOR * wrong + (1 - PRIOR) * right;
        return sum > 0 ? PRIOR * wrong / sum : 1;
    }

    private static double density(double off, double variance) {
        double v = Math.max(variance, 1e-9);
        return Math.exp(-off * off / (2 * v)) / Math.sqrt(v);
    }

    /** P of one reading that is off by so much, from one normal. */
    static double probability(double off, double variance) {
        return posterior(density(off, variance), density(off, variance + VARIANCE));
    }

    /** What variance a fit has given an observation because it doubts it, beside the first fit, square metres. */
    static double doubtedBy(FittedBottom bottom, StructureFit fit, int observation) {
        return fit.observations().fixedVariance[observation]
                - bottom.fits().get(0).observations().fixedVariance[observation];
    }
}

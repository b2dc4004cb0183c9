package pegbed.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import pegbed.surface.gaussian.GaussianProcess;

/**
 * Readings that may be gross errors without being called so: the bottom follows each as far as it is probably right.
 *
 * <p>The error of a reading is the contaminated normal of {@link GrossErrors}. Its posterior is not normal; it is
 * approximated by expectation propagation (Minka 2001, Expectation propagation for approximate Bayesian inference, UAI
 * 17; for robust Gaussian processes: Jylänki, Vanhatalo & Vehtari 2011, J. Mach. Learn. Res. 12): a doubtful reading is
 * replaced by a normal one of such a depth and variance that, with the leave-one-out prediction before it, mean and
 * variance at its place are those of the contaminated error. Only the doubtful readings are iterated, on their joint
 * distribution given all the others. Half of what contradicts the rest is taken as the bottom's own hump or hole
 * (empirical, {@code docs/quality.md}).
 */
final class DoubtfulReadings {
    /** From this probability of being wrong on a reading is doubtful. */
    private static final double DOUBTFUL_FROM = 0.02;

    /** How probably the reading is wrong, not the bottom uneven, where they contradict each other. */
    private static final double SHARE_WRONG = 0.5;

    private static final int ROUNDS = 6;
    private static final double DAMPING = 0.7;

    /** Largest variance of what stands for a reading, square metres. */
    private static final double LARGEST_VARIANCE = 4 * GrossErrors.VARIANCE;

    private final int structures;
    private final double[] weights;
    /** The doubtful readings by their observations. */
    private final int[] doubtful;
    /**
     * For each structure, the covariance of the doubtful readings given all others, their own errors included, row by
     * row.
     */
    private final double[][] covariance;
    /** For each structure, the readings less what all others make expected, metres. */
    private final double[][] difference;
    /** For each structure and reading, the variance of its error were it right, square metres. */
    private final double[][] noise;
    /** By how much what stands for a reading is deeper than it was read, metres. */
    private final double[][] deeper;
    /** By how much its variance is larger, square metres. */
    private final double[][] moreVariance;

    private DoubtfulReadings(List<StructureFit> fits, double[] weights, int[] doubtful) {
        this.weights = weights;
        this.doubtful = doubtful;
        structures = fits.size();
        covariance = new double[structures][];
        difference = new double[structures][doubtful.length];
        noise = new double[structures][doubtful.length];
        deeper = new double[structures][doubtful.length];
        moreVariance = new double[structures][doubtful.length];
        for (int s = 0; s < structures; s++) {
            given(fits.get(s), s);
        }
    }

    /** What the other readings say of the doubtful ones: the inverse of their part of K⁻¹. */
    private void given(StructureFit fit, int structure) {
        int n = doubtful.length;
        GaussianProcess process = fit.process();
        double[][] unit = new double[n][];
        for (int i = 0; i < n; i++) {
            unit[i] = process.whitenedUnit(doubtful[i]);
            noise[structure][i] = fit.observationNoise(doubtful[i]);
        }
        double[] precision = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                precision[i * n + j] = GaussianProcess.dot(unit[i], unit[j]);
            }
        }
        covariance[structure] = new GaussianProcess(precision, new double[n], false).inverse();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                difference[structure][i] += covariance[structure][i * n + j] * process.alpha()[doubtful[j]];
            }
        }
    }

    /**
     * Fits of the structures to the same readings, conditioned on what stands for the doubtful ones.
     *
     * @param weights of the fits, adding up to 1
     */
    static List<StructureFit> moved(List<StructureFit> fits, double[] weights) {
        double[] probability = GrossErrors.probabilities(fits, weights, i -> 0.0);
        int[] doubtful = IntStream.range(0, probability.length)
                .filter(i -> probability[i] >= DOUBTFUL_FROM)
                .toArray();
        if (doubtful.length == 0) {
            return fits;
        }
        DoubtfulReadings readings = new DoubtfulReadings(fits, weights, doubtful);
        for (int round = 0; round < ROUNDS; round++) {
            readings.improve();
        }
        List<StructureFit> moved = new ArrayList<>();
        for (int s = 0; s < fits.size(); s++) {
            moved.add(readings.moved(fits.get(s), s));
        }
        return moved;
    }

    private StructureFit moved(StructureFit fit, int structure) {
        Observations observations = fit.observations();
        double[] shift = new double[observations.count];
        double[] variance = new double[observations.count];
        for (int i = 0; i < doubtful.length; i++) {
            shift[doubtful[i]] = deeper[structure][i];
            variance[doubtful[i]] = moreVariance[structure][i];
        }
        return fit.on(observations.moved(shift, variance));
    }

    /** One round of expectation propagation for all doubtful readings and structures at once. */
    private void improve() {
        int n = doubtful.length;
        double[][] variance = new double[structures][n];
        double[][] off = new double[structures][n];
        double[] right = new double[n];
        double[] wrong = new double[n];
        for (int s = 0; s < structures; s++) {
            GaussianProcess standing = standing(s);
            for (int i = 0; i < n; i++) {
                double left = 1 / standing.inverseDiagonal()[i];
                variance[s][i] = Math.max(1e-8, left - noise[s][i] - moreVariance[s][i]);
                off[s][i] = standing.alpha()[i] * left - deeper[s][i];
                double predicted = variance[s][i] + noise[s][i];
                right[i] += weights[s] * GrossErrors.density(off[s][i], predicted);
                wrong[i] += weights[s] * GrossErrors.density(off[s][i], predicted + GrossErrors.VARIANCE);
            }
        }
        for (int i = 0; i < n; i++) {
            double probability = SHARE_WRONG * GrossErrors.posterior(right[i], wrong[i]);
            for (int s = 0; s < structures; s++) {
                match(s, i, probability, variance[s][i], off[s][i]);
            }
        }
    }

    /** What stands for the doubtful readings now, given all others. */
    private GaussianProcess standing(int structure) {
        int n = doubtful.length;
        double[] k = covariance[structure].clone();
        double[] values = difference[structure].clone();
        for (int i = 0; i < n; i++) {
            k[i * n + i] += moreVariance[structure][i];
            values[i] += deeper[structure][i];
        }
        return new GaussianProcess(k, values, false);
    }

    /**
     * Moves what stands for a reading towards the normal that matches the moments: the mean always, the variance unless
     * it is larger than without the reading.
     *
     * @param probability that the reading is wrong
     * @param variance of the bottom at its place, left open by the others, square metres
     * @param off the reading less what the others make expected, metres
     */
    private void match(int structure, int i, double probability, double variance, double off) {
        double error = noise[structure][i];
        double gain = variance / (variance + error);
        double lessGain = variance / (variance + error + GrossErrors.VARIANCE);
        double mean = ((1 - probability) * gain + probability * lessGain) * off;
        double spread = (1 - probability) * probability * Math.pow((gain - lessGain) * off, 2);
        double left = (1 - probability) * variance * (1 - gain) + probability * variance * (1 - lessGain) + spread;
        double precision = Math.max(1 / left - 1 / variance, 1 / (error + LARGEST_VARIANCE));
        double more = Math.max(0, 1 / precision - error);
        double shift = mean * (1 / variance + precision) / precision - off;
        moreVariance[structure][i] += DAMPING * (more - moreVariance[structure][i]);
        deeper[structure][i] += DAMPING * (shift - deeper[structure][i]);
    }
}

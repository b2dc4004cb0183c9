package pegbed.surface;

import java.util.List;
import pegbed.surface.gaussian.GaussianProcess;

/**
 * The weights of the structures: stacking of their leave-one-out predictive densities (Yao, Vehtari, Simpson & Gelman
 * 2018, Using stacking to average Bayesian predictive distributions, Bayesian Analysis 13(3)), the weights by
 * expectation maximisation, with prior counts for each structure so that few readings change the weights little.
 */
final class Stacking {
    /** Prior count of each structure, in readings (empirical). */
    private static final double PRIOR_COUNT = 0.6;

    /**
     * Largest squared standardised residual: beyond it a reading is more likely wrong than evidence against a
     * structure.
     */
    private static final double LARGEST_Z2 = 16;

    /** A structure of less weight is left out (empirical: the accuracy stays the same). */
    private static final double LEAST_WEIGHT = 0.10;

    private static final int ITERATIONS = 200;

    private Stacking() {}

    /** Weights of fits to the same soundings, adding up to 1; 0 for those left out. */
    static double[] weights(List<StructureFit> fits) {
        double[] weights = unreduced(fits);
        double kept = 0;
        for (double weight : weights) {
            kept += weight < LEAST_WEIGHT ? 0 : weight;
        }
        for (int s = 0; s < weights.length; s++) {
            weights[s] = weights[s] < LEAST_WEIGHT ? 0 : weights[s] / kept;
        }
        return weights;
    }

    /** Weights of fits to the same soundings, none left out. */
    static double[] unreduced(List<StructureFit> fits) {
        int structures = fits.size();
        if (structures == 1) {
            return new double[] {1};
        }
        double[][] logs = new double[structures][];
        for (int s = 0; s < structures; s++) {
            logs[s] = leaveOneOut(fits.get(s));
        }
        return maximised(logs, fits.get(0).observations().real);
    }

    private static double[] maximised(double[][] logs, int readings) {
        int structures = logs.length;
        double[] weights = new double[structures];
        java.util.Arrays.fill(weights, 1.0 / structures);
        double[][] density = relative(logs, readings);
        for (int iteration = 0; iteration < ITERATIONS; iteration++) {
            double[] counts = new double[structures];
            for (int i = 0; i < readings; i++) {
                double sum = 0;
                for (int s = 0; s < structures; s++) {
                    sum += weights[s] * density[s][i];
                }
                for (int s = 0; s < structures; s++) {
                    counts[s] += weights[s] * density[s][i] / sum;
                }
            }
            for (int s = 0; s < structures; s++) {
                weights[s] = (counts[s] + PRIOR_COUNT) / (readings + structures * PRIOR_COUNT);
            }
        }
        return weights;
    }

    /** Densities of each reading, divided by the largest of the structures. */
    private static double[][] relative(double[][] logs, int readings) {
        double[][] density = new double[logs.length][readings];
        for (int i = 0; i < readings; i++) {
            double largest = Double.NEGATIVE_INFINITY;
            for (double[] log : logs) {
                largest = Math.max(largest, log[i]);
            }
            for (int s = 0; s < logs.length; s++) {
                density[s][i] = Math.exp(logs[s][i] - largest);
            }
        }
        return density;
    }

    /** Logarithm of the leave-one-out density of each real sounding (Rasmussen & Williams 2006, eq. 5.10 to 5.12). */
    private static double[] leaveOneOut(StructureFit fit) {
        GaussianProcess process = fit.process();
        double[] precision = process.inverseDiagonal();
        double[] logs = new double[fit.observations().real];
        for (int i = 0; i < logs.length; i++) {
            double z2 = process.alpha()[i] * process.alpha()[i] / precision[i];
            logs[i] = Math.log(precision[i]) / 2 - Math.min(z2, LARGEST_Z2) / 2;
        }
        return logs;
    }
}

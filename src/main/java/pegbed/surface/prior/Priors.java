package pegbed.surface.prior;

import pegbed.surface.survey.Scale;

/**
 * Log-normal priors of the hyperparameters, in the order of {@link Hyperparameters}.
 *
 * @param logMedians logarithms of the medians
 * @param logSds standard deviations of the logarithms
 */
public record Priors(double[] logMedians, double[] logSds) {
    /** How many standard deviations from the median a value may go. */
    public static final double CLAMP = 3;

    /** Between banks or at one bank, from simulated pegs. */
    public static Priors banked(Scale scale) {
        return of(
                new double[] {
                    0.25 * scale.vertical(),
                    1.15 * scale.horizontal(),
                    13 * scale.horizontal(),
                    0.07 * scale.vertical(),
                    1.5 * scale.horizontal(),
                    1
                },
                new double[] {0.25, 0.20, 0.35, 0.20, 0.20, 0.25});
    }

    /**
     * Open water without banks, about an unknown constant. The basin itself is what varies: its depths by about a third
     * of the deepest (1 × 3 m), over about a third of its extent (10 of 32 m). Waters differ, so both are known to a
     * factor of e only, and the soundings must say more. No direction is preferred, so the third is not used.
     */
    public static Priors open(Scale scale) {
        return of(
                new double[] {
                    1.0 * scale.vertical(),
                    10 * scale.horizontal(),
                    10 * scale.horizontal(),
                    0.10 * scale.vertical(),
                    2 * scale.horizontal(),
                    1
                },
                new double[] {1, 1, 1, 0.5, 0.5, 0.5});
    }

    private static Priors of(double[] medians, double[] sds) {
        double[] logs = new double[medians.length];
        for (int i = 0; i < logs.length; i++) {
            logs[i] = Math.log(medians[i]);
        }
        return new Priors(logs, sds);
    }

    public double least(int i) {
        return logMedians[i] - CLAMP * logSds[i];
    }

    public double most(int i) {
        return logMedians[i] + CLAMP * logSds[i];
    }

    /** Negative logarithm of the density, but for a constant. */
    public double penalty(double[] logs) {
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            double z = (logs[i] - logMedians[i]) / logSds[i];
            sum += z * z / 2;
        }
        return sum;
    }

    public double penaltyGradient(double[] logs, int i) {
        return (logs[i] - logMedians[i]) / (logSds[i] * logSds[i]);
    }
}

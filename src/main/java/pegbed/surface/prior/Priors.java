package pegbed.surface.prior;

import static pegbed.surface.prior.Hyperparameters.Variable.ACROSS;
import static pegbed.surface.prior.Hyperparameters.Variable.ALONG;
import static pegbed.surface.prior.Hyperparameters.Variable.ISOTROPIC_LENGTH;
import static pegbed.surface.prior.Hyperparameters.Variable.ISOTROPIC_SD;
import static pegbed.surface.prior.Hyperparameters.Variable.LOCAL_LENGTH;
import static pegbed.surface.prior.Hyperparameters.Variable.LOCAL_SD;
import static pegbed.surface.prior.Hyperparameters.Variable.NOISE;
import static pegbed.surface.prior.Hyperparameters.Variable.PROFILE_SD;

import java.util.ArrayList;
import java.util.List;
import pegbed.surface.survey.Scale;

/**
 * Log-normal priors of the hyperparameters that a structure has.
 *
 * @param variables which, in the order of {@link Hyperparameters.Variable}
 * @param logMedians logarithms of the medians
 * @param logSds standard deviations of the logarithms
 */
public record Priors(Hyperparameters.Variable[] variables, double[] logMedians, double[] logSds) {
    /** How many standard deviations from the median a value may go. */
    public static final double CLAMP = 3;

    /** Of a structure in a water of this scale; the figures are empirical ({@code docs/method.md}). */
    static Priors of(Structure structure, Scale scale) {
        Builder priors = new Builder(scale);
        return switch (structure) {
            case TUB ->
                priors.metresDeep(PROFILE_SD, 0.25, 0.5)
                        .metresWide(ACROSS, 1.5, 0.5)
                        .metresWide(ALONG, 13, 0.35)
                        .metresDeep(ISOTROPIC_SD, 0.2, 0.6)
                        .metresWide(ISOTROPIC_LENGTH, 3, 0.5)
                        .number(NOISE, 1, 0.25)
                        .build();
            case FALL ->
                priors.metresDeep(ISOTROPIC_SD, 0.4, 0.7)
                        .metresWide(ISOTROPIC_LENGTH, 6, 0.5)
                        .number(NOISE, 1, 0.25)
                        .build();
            case OPEN ->
                priors.metresDeep(PROFILE_SD, 0.5, 0.7)
                        .metresWide(ACROSS, 5, 0.6)
                        .metresWide(ALONG, 8, 0.6)
                        .metresDeep(LOCAL_SD, 0.04, 0.5)
                        .metresWide(LOCAL_LENGTH, 1.5, 0.3)
                        .number(NOISE, 1, 0.25)
                        .build();
            // The basin itself is what varies: its depths by about a third of the deepest (1 × 3 m), over about a third
            // of
            // its extent (10 of 32 m). Waters differ, so both are known to a factor of e only.
            case BASIN ->
                priors.metresDeep(ISOTROPIC_SD, 1, 1)
                        .metresWide(ISOTROPIC_LENGTH, 10, 1)
                        .metresDeep(LOCAL_SD, 0.10, 0.5)
                        .metresWide(LOCAL_LENGTH, 2, 0.5)
                        .number(NOISE, 1, 0.5)
                        .build();
        };
    }

    private static final class Builder {
        private final Scale scale;
        private final List<Hyperparameters.Variable> variables = new ArrayList<>();
        private final List<Double> medians = new ArrayList<>();
        private final List<Double> sds = new ArrayList<>();

        Builder(Scale scale) {
            this.scale = scale;
        }

        Builder metresDeep(Hyperparameters.Variable variable, double median, double logSd) {
            return number(variable, median * scale.vertical(), logSd);
        }

        Builder metresWide(Hyperparameters.Variable variable, double median, double logSd) {
            return number(variable, median * scale.horizontal(), logSd);
        }

        Builder number(Hyperparameters.Variable variable, double median, double logSd) {
            variables.add(variable);
            medians.add(Math.log(median));
            sds.add(logSd);
            return this;
        }

        Priors build() {
            return new Priors(
                    variables.toArray(new Hyperparameters.Variable[0]),
                    medians.stream().mapToDouble(m -> m).toArray(),
                    sds.stream().mapToDouble(s -> s).toArray());
        }
    }

    /** The hyperparameters at their medians. */
    public Hyperparameters medians() {
        return Hyperparameters.ofLogs(variables, logMedians);
    }

    /** Lower bound of the logarithm of variable i. */
    public double lower(int i) {
        return logMedians[i] - CLAMP * logSds[i];
    }

    /** Upper bound of the logarithm of variable i. */
    public double upper(int i) {
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

    /** Its derivative by variable i. */
    public double penaltyGradient(double[] logs, int i) {
        return (logs[i] - logMedians[i]) / (logSds[i] * logSds[i]);
    }
}

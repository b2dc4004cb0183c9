package pegbed.surface;

import java.util.ArrayList;
import java.util.List;
import pegbed.surface.posterior.Gradient;
import pegbed.surface.survey.Sounding;

/**
 * Which further readings would tell the level of the shown visit best against an earlier one's.
 *
 * <p>Greedy: the next reading is the one that leaves the least variance of the offset δ, given all that is known, with
 * the doubt of bottom and slopes calibrated for the steepness of the ground ({@link SteepnessDoubt}). Where the shown
 * visit has no reading yet that is the choice of the greatest 1ᵀM⁻¹1, M = K_post + diag τ², since then 1/var δ =
 * 1/0.12² + 1ᵀM⁻¹1; τ² is the depth noise and what an unsure place adds on the slope that is expected and on the slope
 * that is unknown.
 */
public final class LevelChecks {
    private final FittedBottom bottom;
    private final int visit;
    private final List<Sounding> candidates;
    /** Number of readings that the shown visit has. */
    private final int taken;
    /** Covariance of what is seen at two readings, those taken first, given those conditioned on. */
    private final double[][] seen;
    /** Covariance of δ with what is seen at each. */
    private final double[] level;

    private final double[] noise;
    private final Gradient[] slopes;

    private LevelChecks(FittedBottom bottom, int visit, List<Sounding> candidates) {
        this.bottom = bottom;
        this.visit = visit;
        this.candidates = candidates;
        int shown = bottom.survey().shown();
        ExpectedReadings expected = ExpectedReadings.of(bottom, v -> v == shown, v -> v == visit, candidates);
        int n = expected.count();
        taken = n - candidates.size();
        seen = new double[n][n];
        level = new double[n];
        noise = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                seen[i][j] = expected.calibratedCovariance(i, j);
            }
            level[i] = expected.calibratedWithLevel(i, shown, visit);
            noise[i] = expected.calibratedNoise(i);
        }
        slopes = bottom.gradients(
                candidates.stream().mapToDouble(Sounding::xMetres).toArray(),
                candidates.stream().mapToDouble(Sounding::yMetres).toArray());
        for (int i = 0; i < taken; i++) {
            take(i);
        }
    }

    /**
     * A reading to take.
     *
     * @param candidate its index among the candidates
     * @param sdExpectedMetres standard deviation of what should be read there, metres
     * @param slope steepness expected there, rise over run
     * @param sdAfterMetres standard deviation of the level once this and those before it are taken, metres
     */
    public record LevelCheck(int candidate, double sdExpectedMetres, double slope, double sdAfterMetres) {}

    /**
     * The best readings in the order in which to take them.
     *
     * @param bottom what is known
     * @param visit the earlier visit against whose level it is measured
     * @param candidates where a reading could be taken, and how well it would be placed
     * @param count how many at most
     * @param apartMetres how far from each other at least, so that one change of the bottom can't spoil two
     */
    public static List<LevelCheck> best(
            FittedBottom bottom, int visit, List<Sounding> candidates, int count, double apartMetres) {
        return new LevelChecks(bottom, visit, candidates).chosen(count, apartMetres);
    }

    private List<LevelCheck> chosen(int count, double apartMetres) {
        List<LevelCheck> chosen = new ArrayList<>();
        boolean[] out = new boolean[candidates.size()];
        int shown = bottom.survey().shown();
        List<Sounding> planned = new ArrayList<>();
        while (chosen.size() < count) {
            int best = -1;
            double most = 0;
            for (int i = 0; i < out.length; i++) {
                double gain = out[i] ? 0 : gain(taken + i);
                if (gain > most) {
                    best = i;
                    most = gain;
                }
            }
            if (best < 0) {
                break;
            }
            planned.add(candidates.get(best));
            chosen.add(new LevelCheck(
                    best,
                    Math.sqrt(Math.max(0, seen[taken + best][taken + best])),
                    Math.hypot(slopes[best].dx(), slopes[best].dy()),
                    ExpectedReadings.of(bottom, v -> v == shown, v -> v == visit, planned)
                            .levelSd(shown, visit)));
            take(taken + best);
            for (int i = 0; i < out.length; i++) {
                out[i] |= i == best || apart(i, best) < apartMetres;
            }
        }
        return chosen;
    }

    /** By how much a reading would lessen the variance of δ, square metres. */
    private double gain(int i) {
        return level[i] * level[i] / (seen[i][i] + noise[i]);
    }

    /** Conditions everything on a reading. */
    private void take(int at) {
        double variance = seen[at][at] + noise[at];
        double[] with = seen[at].clone();
        double withLevel = level[at];
        for (int i = 0; i < seen.length; i++) {
            level[i] -= with[i] * withLevel / variance;
            for (int j = 0; j < seen.length; j++) {
                seen[i][j] -= with[i] * with[j] / variance;
            }
        }
    }

    private double apart(int a, int b) {
        Sounding one = candidates.get(a);
        Sounding other = candidates.get(b);
        return Math.hypot(one.xMetres() - other.xMetres(), one.yMetres() - other.yMetres());
    }
}

package pegbed.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which further readings would tell the level of the shown visit best against an earlier one's.
 *
 * <p>Greedy: the next reading is the one that leaves the least variance of the offset δ, given all that is known. Where
 * the shown visit has no reading yet that is the choice of the greatest 1ᵀM⁻¹1, M = K_post + diag τ², since then
 * 1/var δ = 1/0.12² + 1ᵀM⁻¹1; τ² is the depth noise and what an unsure place adds on the slope that is expected and on
 * the slope that is unknown.
 */
public final class LevelChecks {
    private final FittedBottom bottom;
    private final int visit;
    private final Places places;
    private final List<Sounding> candidates;
    /** L⁻¹k by candidate, with an element more for each reading that is planned. */
    private final double[][] whitened;

    private final double[] slope;
    /** τ² by candidate. */
    private final double[] noise;

    /** L⁻¹k of δ, longer like the candidates'. */
    private final double[] level;

    /** Covariance of δ with any depth at the shown level, before any sounding. */
    private final double withDepth;

    private LevelChecks(FittedBottom bottom, int visit, List<Sounding> candidates, int count) {
        this.bottom = bottom;
        this.visit = visit;
        this.candidates = candidates;
        places = bottom.places(
                candidates.stream().mapToDouble(Sounding::xMetres).toArray(),
                candidates.stream().mapToDouble(Sounding::yMetres).toArray());
        int n = bottom.observations().count;
        withDepth = bottom.levelWithShown(visit)
                - bottom.levelWithShown(bottom.survey().shown());
        level = Arrays.copyOf(bottom.levelCovariances(visit), n + count);
        bottom.conditioned().whiten(level);
        whitened = new double[candidates.size()][];
        slope = new double[candidates.size()];
        noise = bottom.readingVariances(candidates);
        double[] row = new double[n];
        for (int i = 0; i < candidates.size(); i++) {
            bottom.covariances(places, i, row);
            whitened[i] = Arrays.copyOf(row, n + count);
            bottom.conditioned().whiten(whitened[i]);
            Sounding planned = candidates.get(i);
            Gradient g = bottom.gradient(planned.xMetres(), planned.yMetres());
            slope[i] = Math.hypot(g.dx(), g.dy());
        }
    }

    /**
     * A reading to take.
     *
     * @param candidate its index among the candidates
     * @param sdExpectedMetres standard deviation of the bottom there, metres
     * @param slope steepness expected there, rise over run
     * @param sdAfterMetres standard deviation of the level once this and those before it are taken, metres
     */
    public record LevelCheck(int candidate, double sdExpectedMetres, double slope, double sdAfterMetres) {}

    /**
     * The best readings in the order in which to take them.
     *
     * @param bottom what is known
     * @param visit the earlier visit against whose level it is told
     * @param candidates where a reading could be taken, and how well it would be placed
     * @param count how many at most
     * @param apartMetres how far from each other at least, so that one change of the bottom can't spoil two
     */
    public static List<LevelCheck> best(
            FittedBottom bottom, int visit, List<Sounding> candidates, int count, double apartMetres) {
        return new LevelChecks(bottom, visit, candidates, count).chosen(count, apartMetres);
    }

    private List<LevelCheck> chosen(int count, double apartMetres) {
        List<LevelCheck> chosen = new ArrayList<>();
        boolean[] taken = new boolean[candidates.size()];
        int shown = bottom.survey().shown();
        List<Sounding> planned = new ArrayList<>();
        while (chosen.size() < count) {
            int best = -1;
            double most = 0;
            for (int i = 0; i < taken.length; i++) {
                double gain = taken[i] ? 0 : gain(i);
                if (gain > most) {
                    best = i;
                    most = gain;
                }
            }
            if (best < 0) {
                break;
            }
            double sd = Math.sqrt(Math.max(0, covariance(best, best)));
            take(best, bottom.observations().count + chosen.size());
            planned.add(candidates.get(best));
            double sdAfter = Expected.of(bottom, v -> v == shown, planned).levelSd(shown, visit);
            chosen.add(new LevelCheck(best, sd, slope[best], sdAfter));
            for (int i = 0; i < taken.length; i++) {
                taken[i] |= i == best || apart(i, best) < apartMetres;
            }
        }
        return chosen;
    }

    /** By how much a reading would lessen the variance of δ, square metres. */
    private double gain(int i) {
        double withLevel = withLevel(i);
        return withLevel * withLevel / (covariance(i, i) + noise[i]);
    }

    /** Conditions everything on a reading: one more element of every whitened vector. */
    private void take(int at, int element) {
        double sd = Math.sqrt(covariance(at, at) + noise[at]);
        double withLevel = withLevel(at);
        double[] with = new double[candidates.size()];
        for (int i = 0; i < with.length; i++) {
            with[i] = covariance(i, at);
        }
        for (int i = 0; i < with.length; i++) {
            whitened[i][element] = with[i] / sd;
        }
        level[element] = withLevel / sd;
    }

    private double withLevel(int i) {
        return withDepth - Conditioned.dot(level, whitened[i]);
    }

    private double covariance(int a, int b) {
        double prior = bottom.covariance().between(places, a, places, b);
        return bottom.conditioned().covariance(prior, whitened[a], whitened[b], 1, 1);
    }

    private double apart(int a, int b) {
        Sounding one = candidates.get(a);
        Sounding other = candidates.get(b);
        return Math.hypot(one.xMetres() - other.xMetres(), one.yMetres() - other.yMetres());
    }
}

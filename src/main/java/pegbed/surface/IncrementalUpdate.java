package pegbed.surface;

import java.util.List;
import java.util.Optional;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * A bottom with one reading more, at once: what was learned from the readings before is kept, the new one is
 * conditioned on exactly. The Cholesky factor and the grid each get one row more: with l = L⁻¹k(X, x) and l_nn² = k(x,
 * x) + noise − lᵀl the grid's row is v = (k(x, ·) − lᵀV) / l_nn, and the reading's share β = (y − μ(x)) / l_nn.
 *
 * @param bottom the bottom with the reading
 * @param grid the grid of it, provisional
 * @param check the reading beside what the others expected
 */
public record IncrementalUpdate(FittedBottom bottom, BottomGrid grid, ReadingCheck check) {
    /**
     * Adds a reading.
     *
     * @param before the bottom without it
     * @param grid its grid
     * @param now the survey with it
     * @return empty where that is not all that is new, or where the grid is provisional itself: then all has to be
     *     worked out anew
     */
    public static Optional<IncrementalUpdate> of(FittedBottom before, BottomGrid grid, Survey now) {
        int added = added(before.survey().soundings(), now.soundings());
        if (added < 0
                || before.survey().shown() != now.shown()
                || before.survey().levels().visits() != now.levels().visits()
                || before.fittedSoundings() != before.soundings()) {
            return Optional.empty();
        }
        return grid.isProvisional()
                ? Optional.empty()
                : BottomModel.withOneMore(before, now, added).map(bottom -> of(before, grid, bottom, added));
    }

    /**
     * Index of the one sounding of the longer list that the shorter does not have; -1 if that is not the difference.
     */
    private static int added(List<Sounding> before, List<Sounding> now) {
        if (now.size() != before.size() + 1) {
            return -1;
        }
        int at = 0;
        while (at < before.size() && before.get(at).equals(now.get(at))) {
            at++;
        }
        boolean sameAfter = before.subList(at, before.size()).equals(now.subList(at + 1, now.size()));
        return sameAfter && now.get(at).isUsed() ? at : -1;
    }

    private static IncrementalUpdate of(FittedBottom before, BottomGrid grid, FittedBottom bottom, int sounding) {
        int own = bottom.observation(sounding).orElseThrow();
        int[] counting = before.counting();
        double[][] rows = new double[counting.length][];
        double[] beta = new double[counting.length];
        double expected = 0;
        double square = 0;
        double residual = 0;
        for (int p = 0; p < counting.length; p++) {
            StructureFit fitBefore = before.fits().get(counting[p]);
            StructureFit fit = bottom.fits().get(p);
            GridSolution solution = grid.parts().get(p).solution();
            Observations observations = fit.observations();
            double[] all = new double[observations.count];
            fit.observationCovariances(own, all);
            double[] others = without(all, own);
            double mean = observations.mean[own] + fitBefore.process().mean(others);
            fitBefore.process().whiten(others);
            double variance = all[own] - GaussianProcess.dot(others, others);
            double last = Math.sqrt(variance);
            rows[p] = new double[solution.mean().length];
            fit.covariancesWith(own, solution.places(), rows[p]);
            fitBefore.process().nextRow(rows[p], others, last, solution.whitened());
            beta[p] = (observations.mean[own] + observations.residual[own] - mean) / last;
            double weight = bottom.weight(p);
            expected += weight * mean;
            square += weight * (variance + mean * mean);
            residual += weight * beta[p] / last * fit.observationNoise(own);
        }
        Observations observations = bottom.fits().get(0).observations();
        double read = observations.mean[own] + observations.residual[own];
        double variance = square - expected * expected;
        ReadingCheck check = new ReadingCheck(
                sounding,
                residual,
                expected,
                Math.sqrt(variance),
                read,
                GrossErrors.probability(read - expected, variance));
        return new IncrementalUpdate(bottom, grid.withRows(rows, beta), check);
    }

    private static double[] without(double[] all, int index) {
        double[] rest = new double[all.length - 1];
        System.arraycopy(all, 0, rest, 0, index);
        System.arraycopy(all, index + 1, rest, index, rest.length - index);
        return rest;
    }
}

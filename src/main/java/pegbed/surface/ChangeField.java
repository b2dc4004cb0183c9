package pegbed.surface;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.Monitor;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.gaussian.Matern;
import pegbed.surface.survey.BlockAveraging;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * How the bottom of a later visit differs from that of an earlier one, everywhere, after the water's levels are allowed
 * for.
 *
 * <p>The later readings are taken to see the earlier bottom and a change g of it, a Gaussian field of mean 0 with
 * covariance 0.15²·M32(r/1.0 m) (empirical), estimated from the differences between the later readings and what the
 * readings up to the earlier visit predict for them ({@link ExpectedReadings}), so that its variance includes that of
 * bottom, levels and readings. Where nothing was read g is 0 ± 15 cm. Immutable and thread-safe.
 */
public final class ChangeField {
    /** Standard deviation of the bottom's change where nothing is known, metres. */
    private static final double SD_METRES = 0.15;

    private static final double LENGTH_METRES = 1.0;

    private final ExpectedReadings expected;
    private final GaussianProcess conditioned;

    private ChangeField(FittedBottom bottom, int later) {
        expected = ExpectedReadings.of(bottom, visit -> visit == later);
        int n = expected.count();
        double[] k = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                k[i * n + j] = expected.calibratedCovariance(i, j)
                        + covariance(expected.x[i], expected.y[i], j)
                        + (i == j ? expected.calibratedNoise(i) : 0);
            }
        }
        conditioned = new GaussianProcess(k, expected.difference, false);
    }

    /**
     * The change between two visits.
     *
     * @param survey of the peg
     * @param earlier index of the earlier visit; what was read before it counts with it
     * @param later index of the later visit, above {@code earlier}
     */
    public static ChangeField of(Survey survey, int earlier, int later, Monitor monitor) {
        if (earlier < 0 || later <= earlier || later >= survey.levels().visits()) {
            throw new IllegalArgumentException("Visits " + earlier + " and " + later + " can't be compared.");
        }
        // What is known before has its own changes heeded; what the later visit says must not weaken it.
        List<Sounding> before = new ArrayList<>();
        for (Sounding s : survey.soundings()) {
            if (s.visit() <= earlier) {
                before.add(s);
            }
        }
        List<Sounding> both = new ArrayList<>(
                BottomModel.fit(survey.withSoundings(before), monitor).survey().soundings());
        survey.soundings().stream().filter(s -> s.visit() == later).forEach(both::add);
        return new ChangeField(
                BottomModel.fitExactly(BlockAveraging.of(survey.withSoundings(both)), NeighbouringPegs.NONE, monitor),
                later);
    }

    private double covariance(double x, double y, int j) {
        double r = Math.hypot(x - expected.x[j], y - expected.y[j]);
        return SD_METRES * SD_METRES * Matern.threeHalves(r / LENGTH_METRES);
    }

    /**
     * The change at a place.
     *
     * @param deeperMetres how much deeper the bottom lies at the later visit, metres; negative if it silted up
     * @param sdMetres standard deviation of that, metres
     */
    public record Change(double deeperMetres, double sdMetres) {
        /** Whether it is more than twice its doubt. */
        public boolean isShown() {
            return Math.abs(deeperMetres) > 2 * sdMetres;
        }
    }

    /** The change at a place. */
    public Change at(double xMetres, double yMetres) {
        double[] k = new double[expected.count()];
        for (int j = 0; j < k.length; j++) {
            k[j] = covariance(xMetres, yMetres, j);
        }
        double mean = GaussianProcess.dot(k, conditioned.alpha());
        conditioned.whiten(k);
        double variance = conditioned.covariance(SD_METRES * SD_METRES, k, k, 0, 0);
        return new Change(mean, Math.sqrt(Math.max(0, variance)));
    }
}

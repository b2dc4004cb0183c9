package pegbed.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.survey.Levels;
import pegbed.surface.survey.Sounding;

/**
 * Every sounding of a survey beside what the model makes of it. What is expected is the mixture's over the structures,
 * as are its mean and standard deviation.
 */
final class ReadingChecks {
    private final FittedBottom bottom;

    private ReadingChecks(FittedBottom bottom) {
        this.bottom = bottom;
    }

    /**
     * In the survey's order. Where the bottom was fitted to the soundings themselves, what is expected is the
     * leave-one-out mean (Rasmussen & Williams 2006, eq. 5.12); where they were averaged, one sounding is such a small
     * part of its cell's mean that the prediction with it serves.
     */
    static List<ReadingCheck> of(FittedBottom bottom) {
        ReadingChecks checks = new ReadingChecks(bottom);
        return bottom.fittedSoundings() == bottom.soundings() ? checks.leftOut() : checks.predicted();
    }

    private List<ReadingCheck> leftOut() {
        Observations observations = bottom.fits().get(0).observations();
        int real = observations.real;
        double[] residual = new double[real];
        double[] expected = new double[real];
        double[] square = new double[real];
        for (int s : bottom.counting()) {
            StructureFit fit = bottom.fits().get(s);
            double weight = bottom.weight(s);
            double[] precision = fit.process().inverseDiagonal();
            for (int i = 0; i < real; i++) {
                double pull = fit.process().alpha()[i];
                double read = fit.observations().read(i);
                double used = fit.observations().mean[i] + fit.observations().residual[i];
                double mean = used - pull / precision[i];
                double variance = 1 / precision[i] - GrossErrors.doubtedBy(bottom, fit, i);
                residual[i] += weight * (read - used + pull * fit.observationNoise(i));
                expected[i] += weight * mean;
                square[i] += weight * (variance + mean * mean);
            }
        }
        double[] wrong = new double[real];
        bottom.calls().forEach(call -> wrong[call.observation()] = call.probability());
        List<ReadingCheck> checks = new ArrayList<>();
        for (int i = 0; i < real; i++) {
            checks.add(new ReadingCheck(
                    observations.sounding[i],
                    residual[i],
                    expected[i],
                    Math.sqrt(Math.max(0, square[i] - expected[i] * expected[i])),
                    observations.read(i),
                    wrong[i]));
        }
        checks.sort(Comparator.comparingInt(ReadingCheck::sounding));
        return checks;
    }

    private List<ReadingCheck> predicted() {
        List<Sounding> soundings = bottom.survey().soundings();
        List<ReadingCheck> checks = new ArrayList<>(soundings.size());
        for (int i = 0; i < soundings.size(); i++) {
            Sounding sounding = soundings.get(i);
            if (!sounding.isUsed()) {
                continue;
            }
            double expected = 0;
            double square = 0;
            for (int s : bottom.counting()) {
                StructureFit fit = bottom.fits().get(s);
                double[] meanAndVariance = predicted(fit, sounding);
                expected += bottom.weight(s) * meanAndVariance[0];
                square += bottom.weight(s) * (meanAndVariance[1] + meanAndVariance[0] * meanAndVariance[0]);
            }
            double variance = Math.max(0, square - expected * expected) + bottom.readingVariance(sounding);
            double off = sounding.depthMetres() - expected;
            checks.add(new ReadingCheck(
                    i,
                    off,
                    expected,
                    Math.sqrt(variance),
                    sounding.depthMetres(),
                    GrossErrors.probability(off, variance)));
        }
        return checks;
    }

    /** Mean and variance of the depth at a sounding's place, at the level of its visit. */
    private static double[] predicted(StructureFit fit, Sounding sounding) {
        GaussianProcess process = fit.process();
        Levels levels = fit.survey().levels();
        int visit = sounding.visit();
        PlaceCoordinates place = fit.places(new double[] {sounding.xMetres()}, new double[] {sounding.yMetres()});
        double[] k = new double[fit.observations().count];
        fit.covariances(place, 0, k);
        double[] level = fit.levelCovariances(visit);
        for (int j = 0; j < k.length; j++) {
            k[j] += level[j];
        }
        double mean = fit.prior().depth(place, 0)
                + levels.mean(visit)
                - levels.mean(fit.survey().shown())
                + process.mean(k);
        process.whiten(k);
        double prior = fit.covariance().between(place, 0, place, 0)
                + levels.covariance(visit, visit)
                - fit.levelWithShown(fit.survey().shown());
        return new double[] {mean, Math.max(0, process.covariance(prior, k, k, 1, 1))};
    }
}

package pegbed.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.survey.Levels;
import pegbed.surface.survey.Sounding;

/** Every sounding of a survey beside what the model makes of it. */
final class ReadingChecks {
    private final FittedBottom bottom;
    private final Observations observations;
    private final GaussianProcess conditioned;

    private ReadingChecks(FittedBottom bottom) {
        this.bottom = bottom;
        observations = bottom.observations();
        conditioned = bottom.conditioned();
    }

    /**
     * In the survey's order. Where the bottom was fitted to the soundings themselves, what is expected is the leave-one-out
     * mean (Rasmussen & Williams 2006, eq. 5.12); where they were condensed, one sounding is such a small part of its
     * cell's mean that the prediction with it serves.
     */
    static List<ReadingCheck> of(FittedBottom bottom) {
        ReadingChecks checks = new ReadingChecks(bottom);
        return bottom.fittedSoundings() == bottom.soundings() ? checks.leftOut() : checks.predicted();
    }

    private List<ReadingCheck> leftOut() {
        double[] inverse = conditioned.inverse();
        List<ReadingCheck> checks = new ArrayList<>();
        int n = observations.count;
        for (int i = 0; i < observations.real; i++) {
            double pull = conditioned.alpha()[i];
            double precision = inverse[i * n + i];
            double read = observations.mean[i] + observations.residual[i];
            checks.add(new ReadingCheck(
                    observations.sounding[i],
                    pull * bottom.observationNoise(i),
                    read - pull / precision,
                    Math.sqrt(1 / precision),
                    read));
        }
        checks.sort(Comparator.comparingInt(ReadingCheck::sounding));
        return checks;
    }

    private List<ReadingCheck> predicted() {
        List<Sounding> soundings = bottom.survey().soundings();
        Levels levels = bottom.survey().levels();
        List<ReadingCheck> checks = new ArrayList<>(soundings.size());
        double[] k = new double[observations.count];
        for (int s = 0; s < soundings.size(); s++) {
            Sounding sounding = soundings.get(s);
            if (!sounding.isUsed()) {
                continue;
            }
            int visit = sounding.visit();
            PlaceCoordinates place =
                    bottom.places(new double[] {sounding.xMetres()}, new double[] {sounding.yMetres()});
            bottom.covariances(place, 0, k);
            double[] level = bottom.levelCovariances(visit);
            for (int j = 0; j < k.length; j++) {
                k[j] += level[j];
            }
            double expected = bottom.tub().depth(place, 0)
                    + levels.mean(visit)
                    - levels.mean(bottom.survey().shown())
                    + conditioned.mean(k);
            conditioned.whiten(k);
            double prior = bottom.covariance().between(place, 0, place, 0)
                    + levels.covariance(visit, visit)
                    - bottom.levelWithShown(bottom.survey().shown());
            double variance = Math.max(0, conditioned.covariance(prior, k, k, 1, 1)) + bottom.readingVariance(sounding);
            checks.add(new ReadingCheck(
                    s, sounding.depthMetres() - expected, expected, Math.sqrt(variance), sounding.depthMetres()));
        }
        return checks;
    }
}

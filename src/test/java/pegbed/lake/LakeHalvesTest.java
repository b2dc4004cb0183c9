package pegbed.lake;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Precision;
import pegbed.model.SoundingLog;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.TestPegs;
import pegbed.surface.gaussian.KrigingReferenceTest;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * A real lake, each half of its 1,027 soundings told from the other. Data: Hay, C. R. J. (IISD Experimental Lakes
 * Area), doi:10.5281/zenodo.18237230, CC BY 4.0; see {@code lake227/SOURCE.txt}.
 */
@Tag("slow")
class LakeHalvesTest {
    private static final double NINETY = 1.6449;

    /** How well a solver tells the half that it has not seen. */
    private record Score(double rmse, double covered, double sd) {}

    @Test
    void tellsTheOtherHalfOfARealLakeAsWellAsTheCondensedSolver() throws IOException, InputException {
        List<double[]> all = new ArrayList<>();
        for (String file : List.of("/lake227/train_every20.csv", "/lake227/test_every20_with_gstat.csv")) {
            KrigingReferenceTest.lines(file).stream().skip(1).forEach(line -> {
                String[] cells = line.split(",");
                all.add(new double[] {
                    Double.parseDouble(cells[0]), Double.parseDouble(cells[1]), Double.parseDouble(cells[2])
                });
            });
        }
        for (int half = 0; half < 2; half++) {
            List<double[]> known = new ArrayList<>();
            List<double[]> asked = new ArrayList<>();
            for (int i = 0; i < all.size(); i++) {
                // Runs of 20 soundings by turns: neighbours on a track alone would be too easy.
                (i / 20 % 2 == half ? known : asked).add(all.get(i));
            }
            Score local = local(known, asked);
            Score condensed = condensed(known, asked);
            String said = String.format(Locale.ROOT, "half %d: local %s, condensed %s", half, local, condensed);
            if (Boolean.getBoolean("pegbed.print")) {
                System.out.println(said);
            }
            assertTrue(local.rmse < 1.03 * condensed.rmse, said);
            assertTrue(local.covered > 0.82 && local.covered < 0.97, said);
        }
    }

    private static Score local(List<double[]> known, List<double[]> asked) throws InputException {
        SoundingLog log = SoundingLog.placedWithin(SoundingLog.BOAT_SD_METRES);
        known.forEach(s -> log.add(s[0], s[1], s[2]));
        LakeBottom lake = LakeModel.fit(log, Monitor.NONE);
        LakeDepths depths = lake.depths(
                asked.stream().mapToDouble(s -> s[0]).toArray(),
                asked.stream().mapToDouble(s -> s[1]).toArray(),
                Monitor.NONE);
        double noise = lake.hyperparameters().noise()
                * Sounding.FIRM_SD_METRES
                * lake.scale().vertical();
        double error2 = 0;
        double covered = 0;
        double sd = 0;
        for (int i = 0; i < asked.size(); i++) {
            double error = depths.depthMetres()[i] - asked.get(i)[2];
            double slope = Math.hypot(depths.slopeX()[i], depths.slopeY()[i]);
            double variance = asked(depths.sdMetres()[i], depths.slopeX()[i], depths.slopeY()[i], noise, slope);
            error2 += error * error;
            covered += Math.abs(error) < NINETY * Math.sqrt(variance) ? 1 : 0;
            sd += Math.sqrt(variance);
        }
        return new Score(Math.sqrt(error2 / asked.size()), covered / asked.size(), sd / asked.size());
    }

    private static Score condensed(List<double[]> known, List<double[]> asked) {
        List<Sounding> soundings = new ArrayList<>();
        for (double[] s : known) {
            double degrees = Math.min(45, Math.toDegrees(SoundingLog.BOAT_SD_METRES / Math.hypot(s[0], s[1])));
            soundings.add(new Sounding(
                    s[0], s[1], s[2], Sounding.FIRM_SD_METRES, new Precision(SoundingLog.BOAT_SD_METRES, degrees), 0));
        }
        FittedBottom lake = BottomModel.fit(Survey.open(soundings), Monitor.NONE);
        double noise = TestPegs.basin(lake).noise()
                * Sounding.FIRM_SD_METRES
                * lake.scale().vertical();
        double error2 = 0;
        double covered = 0;
        double sd = 0;
        for (double[] s : asked) {
            Prediction p = lake.at(s[0], s[1]);
            double error = p.depthMetres() - s[2];
            double variance = asked(p.sdMetres(), p.slopeX(), p.slopeY(), noise, Math.hypot(p.slopeX(), p.slopeY()));
            error2 += error * error;
            covered += Math.abs(error) < NINETY * Math.sqrt(variance) ? 1 : 0;
            sd += Math.sqrt(variance);
        }
        return new Score(Math.sqrt(error2 / asked.size()), covered / asked.size(), sd / asked.size());
    }

    /** What an asked sounding may be off by: the bottom's doubt, its own depth noise and its own place. */
    private static double asked(double sd, double slopeX, double slopeY, double noise, double slope) {
        double placed = SoundingLog.BOAT_SD_METRES * slope;
        return sd * sd - FittedBottom.placingVariance(slopeX, slopeY) + noise * noise + placed * placed;
    }
}

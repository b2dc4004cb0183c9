package pegbed.lake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pegbed.model.Monitor;
import pegbed.model.Precision;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.gaussian.KrigingReferenceTest;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * A whole lake as open water: 51 echo soundings to fit, 976 to check. Data: Hay, C. R. J. (IISD Experimental Lakes
 * Area), doi:10.5281/zenodo.18237230, CC BY 4.0; see {@code lake227/SOURCE.txt}.
 */
class LakeTest {
    /**
     * How well the boat's echo is placed, each way: a consumer satellite fix lies within 5 m 19 times in 20 (2 m each
     * way, from memory), and the boat moves, and the beam spreads, by some 1.5 m between fix and echo (from memory).
     */
    private static final double POSITION_SD = Math.hypot(2.0, 1.5);

    /** The exact thin-plate spline of the same 51 soundings, computed with an independent program. */
    private static final double SPLINE_RMSE = 0.461;

    private static final double NINETY = 1.6449;

    private static List<Sounding> fit;
    private static List<Sounding> check;
    private static FittedBottom lake;

    @BeforeAll
    static void fit() throws IOException {
        fit = soundings("/lake227/train_every20.csv");
        check = soundings("/lake227/test_every20_with_gstat.csv");
        lake = BottomModel.fit(Survey.open(fit), Monitor.NONE);
    }

    @Test
    void isTheWholeDataSet() {
        assertEquals(51, fit.size());
        assertEquals(976, check.size());
        assertEquals(51, lake.soundings());
        assertTrue(lake.learned());
    }

    @Test
    void beatsTheThinPlateSpline() {
        assertTrue(rmse(lake) < SPLINE_RMSE, "root mean square error " + rmse(lake));
    }

    /**
     * What a check sounding may be off by is the model's doubt of the bottom and the sounding's own depth noise and
     * placing; nobody lays a rig there, so what that would add is left out.
     */
    @Test
    void ninetyPerCentIntervalsHoldNinetyPerCent() {
        double covered = check.stream()
                        .filter(s -> Math.abs(error(lake, s))
                                < NINETY * Math.sqrt(bottomVariance(s) + lake.readingVariance(s)))
                        .count()
                / (double) check.size();
        assertTrue(covered > 0.85 && covered < 0.95, "covered " + covered);
    }

    private static double bottomVariance(Sounding s) {
        Prediction p = lake.at(s.xMetres(), s.yMetres());
        return p.sdMetres() * p.sdMetres() - FittedBottom.placingVariance(p.slopeX(), p.slopeY());
    }

    /** Depths are told beside 3 m, the extent beside 32 m; the deepest of the 51 but two is 10.33 m. */
    @Test
    void saysWhichScaleItUsed() {
        assertEquals(10.33 / 3, lake.scale().vertical(), 1e-9);
        double widest = 0;
        for (Sounding a : fit) {
            for (Sounding b : fit) {
                widest = Math.max(widest, Math.hypot(a.xMetres() - b.xMetres(), a.yMetres() - b.yMetres()));
            }
        }
        assertEquals(widest / 32, lake.scale().horizontal(), 1e-12);
        assertTrue(widest > 250, "the lake is some 270 m long");
    }

    /** It does not hang on the placing that is assumed: exact places, or twice as unsure ones, do as well. */
    @Test
    void theSurfaceHardlyHangsOnHowSureThePlacesAre() {
        for (double sd : new double[] {0.01, 5}) {
            List<Sounding> others = fit.stream()
                    .map(s -> at(s.xMetres(), s.yMetres(), s.depthMetres(), sd))
                    .toList();
            assertTrue(rmse(BottomModel.fit(Survey.open(others), Monitor.NONE)) < SPLINE_RMSE);
        }
    }

    /** Open water has no direction and no origin: a turned and shifted map gives the same depths. */
    @Test
    void turningAndShiftingTheMapChangesNothing() {
        double c = Math.cos(0.7);
        double s = Math.sin(0.7);
        List<Sounding> turned = fit.stream()
                .map(a -> at(
                        c * a.xMetres() - s * a.yMetres() + 400,
                        s * a.xMetres() + c * a.yMetres() - 90,
                        a.depthMetres(),
                        POSITION_SD))
                .toList();
        FittedBottom other = BottomModel.fit(Survey.open(turned), Monitor.NONE);
        for (Sounding a : check.subList(0, 100)) {
            double expected = lake.at(a.xMetres(), a.yMetres()).depthMetres();
            double found = other.at(c * a.xMetres() - s * a.yMetres() + 400, s * a.xMetres() + c * a.yMetres() - 90)
                    .depthMetres();
            // Gradients of the noisy places are differences along the axes.
            assertEquals(expected, found, 0.01);
        }
    }

    private static double rmse(FittedBottom bottom) {
        return Math.sqrt(check.stream()
                .mapToDouble(s -> error(bottom, s) * error(bottom, s))
                .average()
                .orElseThrow());
    }

    private static double error(FittedBottom bottom, Sounding s) {
        return bottom.at(s.xMetres(), s.yMetres()).depthMetres() - s.depthMetres();
    }

    private static List<Sounding> soundings(String resource) throws IOException {
        return KrigingReferenceTest.lines(resource).stream()
                .skip(1)
                .map(line -> Arrays.stream(line.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .map(v -> at(v[0], v[1], v[2], POSITION_SD))
                .toList();
    }

    /** A sounding whose place is as unsure in all directions. */
    private static Sounding at(double x, double y, double depth, double sd) {
        double degrees = Math.min(45, Math.toDegrees(sd / Math.hypot(x, y)));
        return new Sounding(x, y, depth, Sounding.FIRM_SD_METRES, new Precision(sd, degrees), 0);
    }
}

package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pegbed.geometry.PegWater;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Precision;
import pegbed.surface.survey.BlockAveraging;
import pegbed.surface.survey.Levels;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/** Many soundings, such as a boat's log. */
class BlockAveragingTest {
    private static PegWater water() throws InputException {
        List<BankPoint> near = List.of(BankPoint.at(-14, -1), BankPoint.at(14, -1));
        List<BankPoint> far = List.of(BankPoint.at(-14, 11), BankPoint.at(14, 11));
        return PegWater.of(Peg.EMPTY.withBanks(new Banks(near, far, List.of())));
    }

    private static double depth(double x, double y) {
        return 1.2 + 0.4 * Math.sin(y / 2) + 0.1 * Math.cos(x / 3);
    }

    private static Survey survey(int count, long seed) throws InputException {
        Random random = new Random(seed);
        List<Sounding> soundings = new ArrayList<>();
        while (soundings.size() < count) {
            double x = -13 + 26 * random.nextDouble();
            double y = -0.5 + 11 * random.nextDouble();
            soundings.add(
                    new Sounding(x, y, depth(x, y) + 0.02 * random.nextGaussian(), 0.02, new Precision(0.05, 0.2), 0));
        }
        return new Survey(soundings, Optional.of(water()), Levels.same(1));
    }

    @Test
    void aSmallSurveyStaysAsItIs() throws InputException {
        Survey survey = survey(BlockAveraging.MOST, 1);
        assertSame(survey, BlockAveraging.of(survey));
    }

    @Test
    void agreesWithTheExactSolverWhereBothRun() throws InputException {
        Survey survey = survey(700, 2);
        Survey small = BlockAveraging.of(survey);
        assertTrue(small.soundings().size() <= BlockAveraging.MOST);
        FittedBottom condensed = BottomModel.fit(survey, Monitor.NONE);
        FittedBottom exact = TestPegs.refitted(condensed, survey);
        assertEquals(700, condensed.soundings());
        assertEquals(small.soundings().size(), condensed.fittedSoundings());
        double worst = 0;
        for (double x = -8; x <= 8; x += 2) {
            for (double y = 0; y <= 10; y += 1) {
                worst = Math.max(
                        worst,
                        Math.abs(condensed.at(x, y).depthMetres()
                                - exact.at(x, y).depthMetres()));
                assertEquals(exact.at(x, y).sdMetres(), condensed.at(x, y).sdMetres(), 0.02);
            }
        }
        assertTrue(worst < 0.03, "worst difference " + worst);
    }

    @Test
    void tenThousandSoundingsAreMappedToTheirNoise() throws InputException {
        FittedBottom bottom = BottomModel.fit(survey(10_000, 3), Monitor.NONE);
        double sum = 0;
        int count = 0;
        for (double x = -10; x <= 10; x += 1) {
            for (double y = 0; y <= 10; y += 1) {
                double error = bottom.at(x, y).depthMetres() - depth(x, y);
                sum += error * error;
                count++;
            }
        }
        assertTrue(Math.sqrt(sum / count) < 0.02, "rms " + Math.sqrt(sum / count));
        assertEquals(10_000, bottom.readings().size());
    }

    @Test
    void aNarrowHoleIsNotAveragedAway() throws InputException {
        List<Sounding> soundings = new ArrayList<>(survey(5000, 4).soundings());
        soundings.add(new Sounding(2, 5, 3.4, 0.02, new Precision(0.05, 0.2), 0));
        Survey small = BlockAveraging.of(new Survey(soundings, Optional.of(water()), Levels.same(1)));
        assertTrue(small.soundings().stream().anyMatch(s -> s.depthMetres() == 3.4));
    }

    @Test
    void soundingsFarFromTheReachAreLeftOut() throws InputException {
        List<Sounding> soundings = new ArrayList<>(survey(500, 5).soundings());
        for (int i = 0; i < 500; i++) {
            soundings.add(new Sounding(200 + i, 500, 9, 0.02, Precision.PLAIN, 0));
        }
        Survey small = BlockAveraging.of(new Survey(soundings, Optional.of(water()), Levels.same(1)));
        assertTrue(small.soundings().stream().allMatch(s -> s.xMetres() < 25));
    }

    @Test
    void aSlipAmongManyIsSuspicious() throws InputException {
        List<Sounding> soundings = new ArrayList<>(survey(2000, 6).soundings());
        Sounding right = soundings.get(777);
        soundings.set(
                777,
                new Sounding(right.xMetres(), right.yMetres(), right.depthMetres() + 0.8, 0.02, right.precision(), 0));
        FittedBottom bottom =
                BottomModel.fit(new Survey(soundings, Optional.of(water()), Levels.same(1)), Monitor.NONE);
        assertTrue(Math.abs(bottom.readings().get(777).standardised()) > 3);
        long others = bottom.readings().stream()
                .filter(check -> check.sounding() != 777 && Math.abs(check.standardised()) > 4)
                .count();
        assertTrue(others <= 10, others + " others of 1999");
    }
}

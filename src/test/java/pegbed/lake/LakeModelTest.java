package pegbed.lake;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.bench.speed.InventedLake;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Precision;
import pegbed.model.SoundingLog;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.NeighbouringPegs;
import pegbed.surface.TestPegs;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/** Logs of a whole lake. */
@Tag("slow")
class LakeModelTest {
    /** Places in the invented lake, some at its very edge. */
    private static double[][] places(int count, long seed) {
        Random random = new Random(seed);
        double[][] places = new double[2][count];
        for (int i = 0; i < count; ) {
            double x = InventedLake.HALF_LENGTH * (2 * random.nextDouble() - 1);
            double y = InventedLake.HALF_WIDTH * (2 * random.nextDouble() - 1);
            if (InventedLake.isWater(x, y)) {
                places[0][i] = x;
                places[1][i++] = y;
            }
        }
        return places;
    }

    private static Survey survey(SoundingLog log) {
        List<Sounding> soundings = new ArrayList<>();
        for (int i = 0; i < log.size(); i++) {
            double x = log.xMetres(i);
            double y = log.yMetres(i);
            double degrees = Math.min(45, Math.toDegrees(log.placeSdMetres() / Math.hypot(x, y)));
            soundings.add(new Sounding(
                    x, y, log.depthMetres(i), Sounding.FIRM_SD_METRES, new Precision(log.placeSdMetres(), degrees), 0));
        }
        return Survey.open(soundings);
    }

    /** With the same hyperparameters; what is learned is compared below. */
    @ParameterizedTest
    @ValueSource(ints = {300, 700})
    void agreesWithTheExactSolverWhereBothRun(int count) throws InputException {
        SoundingLog log = InventedLake.scattered(count, 5);
        LakeBottom lake = LakeModel.fit(log, Monitor.NONE);
        FittedBottom exact = BottomModel.fitWith(survey(log), lake.hyperparameters(), Monitor.NONE);
        double[][] places = places(400, 9);
        LakeDepths depths = lake.depths(places[0], places[1], Monitor.NONE);
        double difference2 = 0;
        double variance = 0;
        double ratio2 = 0;
        for (int i = 0; i < 400; i++) {
            Prediction p = exact.at(places[0][i], places[1][i]);
            difference2 += Math.pow(depths.depthMetres()[i] - p.depthMetres(), 2);
            variance += p.sdMetres() * p.sdMetres();
            ratio2 += Math.pow(depths.sdMetres()[i] / p.sdMetres() - 1, 2);
            assertEquals(p.slopeX(), depths.slopeX()[i], 0.02);
            assertEquals(p.slopeY(), depths.slopeY()[i], 0.02);
        }
        assertTrue(Math.sqrt(difference2 / variance) < 0.08, "rms " + Math.sqrt(difference2 / variance) + " of the sd");
        assertTrue(Math.sqrt(ratio2 / 400) < 0.02, "sd " + Math.sqrt(ratio2 / 400));
    }

    /** Of a few soundings the likelihood is the exact one, and so is what is learned. */
    @Test
    void learnsWhatTheExactSolverLearns() throws InputException {
        SoundingLog log = InventedLake.scattered(200, 4);
        Hyperparameters.Variable[] learned = {
            Hyperparameters.Variable.ISOTROPIC_SD,
            Hyperparameters.Variable.ISOTROPIC_LENGTH,
            Hyperparameters.Variable.LOCAL_SD,
            Hyperparameters.Variable.LOCAL_LENGTH,
            Hyperparameters.Variable.NOISE
        };
        double[] lake = LakeModel.fit(log, Monitor.NONE).hyperparameters().logs(learned);
        double[] exact = TestPegs.basin(BottomModel.fitExactly(survey(log), NeighbouringPegs.NONE, Monitor.NONE))
                .logs(learned);
        assertArrayEquals(exact, lake, 0.15);
    }

    @Test
    void manySoundingsAreMappedWithHonestDoubt() throws InputException {
        LakeBottom lake = LakeModel.fit(InventedLake.tracked(40_000, 3), Monitor.NONE);
        double[][] places = places(1500, 8);
        LakeDepths depths = lake.depths(places[0], places[1], Monitor.NONE);
        double error2 = 0;
        int covered = 0;
        for (int i = 0; i < 1500; i++) {
            double error = depths.depthMetres()[i] - InventedLake.depth(places[0][i], places[1][i]);
            error2 += error * error;
            covered += Math.abs(error) < 1.6449 * depths.sdMetres()[i] ? 1 : 0;
        }
        assertTrue(Math.sqrt(error2 / 1500) < 0.07, "rms " + Math.sqrt(error2 / 1500));
        assertTrue(covered > 0.75 * 1500 && covered < 0.97 * 1500, "covered " + covered / 1500.0);
    }

    @Test
    void anEmptyLogIsRefused() {
        assertThrows(InputException.class, () -> LakeModel.fit(SoundingLog.placedWithin(1), Monitor.NONE));
    }

    @Test
    void isTheSameWithOneThreadAndWithFour() throws InputException, InterruptedException, ExecutionException {
        SoundingLog log = InventedLake.scattered(1500, 6);
        double[][] places = places(300, 2);
        double[][] answers = new double[2][];
        for (int t = 0; t < 2; t++) {
            ForkJoinPool pool = new ForkJoinPool(1 + 3 * t);
            LakeDepths depths = pool.submit(
                            () -> LakeModel.fit(log, Monitor.NONE).depths(places[0], places[1], Monitor.NONE))
                    .get();
            pool.shutdown();
            answers[t] = depths.depthMetres();
        }
        assertArrayEquals(answers[0], answers[1], 0);
    }

    @Test
    void isGivenUpWhenNobodyWantsItAnyMore() throws InputException {
        SoundingLog log = InventedLake.scattered(3000, 6);
        AtomicInteger asked = new AtomicInteger();
        LakeBottom lake = LakeModel.fit(log, new Ending(asked, Integer.MAX_VALUE));
        int inFit = asked.get();
        for (int after : new int[] {0, 3, inFit / 2, inFit - 5}) {
            asked.set(0);
            assertThrows(Monitor.Cancelled.class, () -> LakeModel.fit(log, new Ending(asked, after)));
        }
        double[][] places = places(2000, 2);
        asked.set(0);
        assertThrows(Monitor.Cancelled.class, () -> lake.depths(places[0], places[1], new Ending(asked, 20)));
        assertTrue(asked.get() < 200, "went on for " + asked);
    }

    /** Wanted until it has been asked so often. */
    private record Ending(AtomicInteger asked, int after) implements Monitor {
        @Override
        public void progress(double share) {
            assertTrue(share >= 0 && share <= 1);
        }

        @Override
        public boolean cancelled() {
            return asked.getAndIncrement() >= after;
        }
    }
}

package pegbed.lake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.bench.speed.InventedLake;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.SoundingLog;

/** Odd logs of a whole lake, and what must not change its bottom. */
@Tag("slow")
class LakeEdgesTest {
    private static LakeDepths depths(SoundingLog log, double[] x, double[] y) throws InputException {
        return LakeModel.fit(log, Monitor.NONE).depths(x, y, Monitor.NONE);
    }

    /** The log with other places, one for one. */
    private static SoundingLog moved(SoundingLog log, double mirror, double right, double out) {
        SoundingLog moved = SoundingLog.placedWithin(log.placeSdMetres());
        for (int i = 0; i < log.size(); i++) {
            moved.add(mirror * log.xMetres(i) + right, log.yMetres(i) + out, log.depthMetres(i));
        }
        return moved;
    }

    private static double[] each(double[] values, ToDoubleFunction<Double> change) {
        return Arrays.stream(values).map(change::applyAsDouble).toArray();
    }

    @Test
    void aLoneHoleAmongAHundredThousandSoundingsIsInTheGrid() throws InputException {
        SoundingLog log = InventedLake.scattered(100_000, 12);
        double holeX = 301.7;
        double holeY = -202.4;
        log.add(holeX, holeY, InventedLake.depth(holeX, holeY) + 1);
        LakeBottom lake = LakeModel.fit(log, Monitor.NONE);
        double[] x = new double[169];
        double[] y = new double[169];
        for (int i = 0; i < 169; i++) {
            x[i] = 270 + 5 * (i % 13);
            y[i] = -230 + 5 * (i / 13);
        }
        LakeDepths depths = lake.depths(x, y, Monitor.NONE);
        double deepest = 0;
        for (int i = 0; i < 169; i++) {
            double deeper = depths.depthMetres()[i] - InventedLake.depth(x[i], y[i]);
            double way = Math.hypot(x[i] - holeX, y[i] - holeY);
            deepest = way < 4 ? Math.max(deepest, deeper) : deepest;
            assertTrue(way < 15 || Math.abs(deeper) < 0.25, "the hole is felt " + way + " m away: " + deeper);
        }
        assertTrue(deepest > 0.4, "the hole is " + deepest + " deep in the grid");
        LakeDepths at = lake.depths(new double[] {holeX}, new double[] {holeY}, Monitor.NONE);
        assertEquals(1, at.depthMetres()[0] - InventedLake.depth(holeX, holeY), 0.2);
        assertTrue(lake.standsOut().stream()
                .anyMatch(s -> Math.hypot(s.xMetres() - holeX, s.yMetres() - holeY) < 0.01));
        assertTrue(lake.standsOut().size() < 20, lake.standsOut().size() + " stand out");
    }

    /** A hole of a few soundings is not averaged away with its neighbours where a million become fewer. */
    @Test
    void whatDiffersWithinACellIsKeptWhenManyAreCondensed() throws InputException {
        Random random = new Random(3);
        SoundingLog log = SoundingLog.placedWithin(0.1);
        for (int i = 0; i < 400_000; i++) {
            log.add(1000 * random.nextDouble(), 1000 * random.nextDouble(), 2 + 0.02 * random.nextGaussian());
        }
        for (int i = 0; i < 5; i++) {
            log.add(500.3 + 0.2 * i, 499.1, 3 + 0.02 * random.nextGaussian());
        }
        log.add(200, 200, 0.5);
        LakeSoundings condensed = LakeBlockAveraging.of(log, Monitor.NONE);
        assertTrue(condensed.count <= 1.5 * LakeBlockAveraging.MOST, condensed.count + " left");
        double[] sorted = condensed.depth.clone();
        Arrays.sort(sorted);
        assertEquals(3, sorted[sorted.length - 1], 0.05);
        assertEquals(0.5, sorted[0], 1e-12);
    }

    @Test
    void mirroringAndShiftingTheLogMirrorsAndShiftsTheBottom() throws InputException {
        SoundingLog log = InventedLake.scattered(1500, 21);
        double[] x = {-900, -210.5, 0, 333, 1200};
        double[] y = {100, -700, 3, 512, -200};
        LakeDepths here = depths(log, x, y);
        LakeDepths mirrored = depths(moved(log, -1, 0, 0), each(x, v -> -v), y);
        LakeDepths shifted =
                depths(moved(log, 1, 430_000, 5_600_000), each(x, v -> v + 430_000), each(y, v -> v + 5_600_000));
        for (int i = 0; i < x.length; i++) {
            assertEquals(here.depthMetres()[i], mirrored.depthMetres()[i], 1e-6);
            assertEquals(here.sdMetres()[i], mirrored.sdMetres()[i], 1e-6);
            assertEquals(here.slopeX()[i], -mirrored.slopeX()[i], 1e-6);
            // Large coordinates are rounded, and learning stops a little earlier or later.
            assertEquals(here.depthMetres()[i], shifted.depthMetres()[i], 2e-3);
            assertEquals(here.sdMetres()[i], shifted.sdMetres()[i], 2e-3);
        }
    }

    @Test
    void theOrderOfTheLogDoesNotMatter() throws InputException {
        SoundingLog log = InventedLake.scattered(1200, 22);
        SoundingLog backwards = SoundingLog.placedWithin(log.placeSdMetres());
        for (int i = log.size() - 1; i >= 0; i--) {
            backwards.add(log.xMetres(i), log.yMetres(i), log.depthMetres(i));
        }
        double[] x = {-900, 0, 1200};
        double[] y = {100, 3, -200};
        LakeDepths one = depths(log, x, y);
        LakeDepths other = depths(backwards, x, y);
        for (int i = 0; i < x.length; i++) {
            assertEquals(one.depthMetres()[i], other.depthMetres()[i], 1e-9);
        }
    }

    /** A step of a millimetre over a border between patches changes no more than one elsewhere. */
    @Test
    void patchesLeaveNoSeams() throws InputException {
        LakeBottom lake = LakeModel.fit(InventedLake.tracked(2500, 23), Monitor.NONE);
        LakeSoundings soundings = LakeBlockAveraging.of(InventedLake.tracked(2500, 23), Monitor.NONE);
        double apart = 2 * soundings.spacing;
        double atBorders = 0;
        double inside = 0;
        for (int column = -12; column <= 12; column++) {
            double border = soundings.frame.originX() + column * apart;
            atBorders = Math.max(atBorders, step(lake, border));
            inside = Math.max(inside, step(lake, border + 0.4 * apart));
        }
        assertTrue(atBorders < 1.3 * inside, atBorders + " at borders, " + inside + " inside");
        assertTrue(inside < 0.001, "a slope of one in one is not in this lake");
    }

    /** Greatest change of the depth over a millimetre in x, along a line. */
    private static double step(LakeBottom lake, double x) {
        double[] y = new double[60];
        Arrays.setAll(y, i -> 25.0 * (i - 30));
        double[] left = new double[60];
        double[] right = new double[60];
        Arrays.fill(left, x - 0.0005);
        Arrays.fill(right, x + 0.0005);
        LakeDepths before = lake.depths(left, y, Monitor.NONE);
        LakeDepths after = lake.depths(right, y, Monitor.NONE);
        double largest = 0;
        for (int i = 0; i < 60; i++) {
            largest = Math.max(largest, Math.abs(after.depthMetres()[i] - before.depthMetres()[i]));
        }
        return largest;
    }

    /** An anchored boat says the same a thousand times: it is one place, better known. */
    @Test
    void duplicatesAreOneBetterKnownSounding() throws InputException {
        SoundingLog log = InventedLake.scattered(400, 24);
        SoundingLog anchored = moved(log, 1, 0, 0);
        for (int i = 0; i < 1000; i++) {
            anchored.add(log.xMetres(7), log.yMetres(7), log.depthMetres(7));
        }
        assertEquals(
                LakeBlockAveraging.of(log, Monitor.NONE).count, LakeBlockAveraging.of(anchored, Monitor.NONE).count, 2);
        double[] x = {log.xMetres(7)};
        double[] y = {log.yMetres(7)};
        double before = depths(log, x, y).sdMetres()[0];
        LakeDepths after = depths(anchored, x, y);
        assertTrue(after.sdMetres()[0] <= before + 0.01);
        assertEquals(log.depthMetres(7), after.depthMetres()[0], 0.1);
    }

    @Test
    void soundingsAllInALineAreAnswered() throws InputException {
        SoundingLog log = SoundingLog.placedWithin(0.5);
        for (int i = 0; i < 2000; i++) {
            log.add(0.5 * i, 0.25 * i, 2 + Math.sin(i / 200.0));
        }
        LakeDepths depths = depths(log, new double[] {500, 500, 500}, new double[] {250, 260, 275});
        assertEquals(2 + Math.sin(5), depths.depthMetres()[0], 0.05);
        double[] sd = depths.sdMetres();
        assertTrue(sd[0] < sd[1] && sd[1] < sd[2], Arrays.toString(sd));
    }

    @Test
    void oneSoundingIsAnswered() throws InputException {
        SoundingLog log = SoundingLog.placedWithin(0.5);
        log.add(3, 4, 1.5);
        LakeBottom lake = LakeModel.fit(log, Monitor.NONE);
        LakeDepths depths = lake.depths(new double[] {3, 60}, new double[] {4, 4}, Monitor.NONE);
        assertEquals(1.5, depths.depthMetres()[0], 0.1);
        assertTrue(depths.sdMetres()[0] < depths.sdMetres()[1]);
        assertTrue(lake.tells(depths, 0));
        assertTrue(!lake.tells(depths, 1), "sd " + depths.sdMetres()[1]);
    }
}

package pegbed.lake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.SoundingLog;

/** No depth is told where no sounding bears it, however smooth the bottom is where it was sounded. */
class FarFromSoundingsTest {
    /** Two gently falling patches of 60 m by 60 m, 1 km apart, sounded every 4 m with an error of 3 cm. */
    private static SoundingLog patches() {
        Random random = new Random(3);
        SoundingLog log = SoundingLog.placedWithin(SoundingLog.BOAT_SD_METRES);
        for (int patch = 0; patch <= 1; patch++) {
            for (int x = 0; x <= 60; x += 4) {
                for (int y = 0; y <= 60; y += 4) {
                    log.add(1000 * patch + x, y, 2 + 0.003 * x + 0.002 * y + 0.03 * random.nextGaussian());
                }
            }
        }
        return log;
    }

    @Test
    void nothingIsToldBetweenTwoPatches() throws InputException {
        LakeBottom lake = LakeModel.fit(patches(), Monitor.NONE);
        double[] x = {30, 64, 75, 160, 300, 500, 760, 900, 1030};
        double[] y = new double[x.length];
        java.util.Arrays.fill(y, 30);
        LakeDepths depths = lake.depths(x, y, Monitor.NONE);
        boolean[] told = {true, true, true, false, false, false, false, false, true};
        for (int i = 0; i < x.length; i++) {
            assertEquals(told[i], lake.tells(depths, i), "at x " + x[i] + ", sd " + depths.sdMetres()[i]);
        }
    }

    @Test
    void betweenTracksItIsTold() throws InputException {
        Random random = new Random(5);
        SoundingLog log = SoundingLog.placedWithin(SoundingLog.BOAT_SD_METRES);
        for (int track = 0; track <= 6; track++) {
            for (int x = 0; x <= 400; x += 4) {
                log.add(x, 25 * track, 3 + Math.sin(x / 90.0) + Math.cos(track / 2.5) + 0.03 * random.nextGaussian());
            }
        }
        LakeBottom lake = LakeModel.fit(log, Monitor.NONE);
        LakeDepths depths = lake.depths(new double[] {200, 90, 200}, new double[] {62.5, 87.5, 700}, Monitor.NONE);
        assertTrue(lake.tells(depths, 0) && lake.tells(depths, 1));
        assertFalse(lake.tells(depths, 2));
    }

    @Test
    void aGridOverAThinStripOfManyMilesIsRefused() throws InputException {
        SoundingLog log = SoundingLog.placedWithin(SoundingLog.BOAT_SD_METRES);
        log.add(0, 0, 1);
        log.add(1_000_000, 1_000_000, 2);
        LakeBottom lake = LakeModel.fit(log, Monitor.NONE);
        assertThrows(InputException.class, () -> LakeGrid.over(lake, 1));
    }
}

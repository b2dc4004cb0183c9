package pegbed.reliability;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pegbed.model.InputException;

/** Whatever the disk does, what was confirmed is there at the next start. More of it runs at night. */
@Tag("slow")
class FaultyDiskTest {
    private static final int RUNS = 20;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(FaultyDisk.Fault.class)
    void nothingThatWasConfirmedIsLost(FaultyDisk.Fault fault) throws IOException, InputException {
        int failed = 0;
        for (int seed = 0; seed < RUNS; seed++) {
            boolean powerCut = seed % 2 == 0 && fault.forcesFolders();
            Path own = Files.createDirectory(folder.resolve("run" + seed));
            try {
                failed += FaultRun.of(own, fault, powerCut, seed % 3 == 0, seed).failed();
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError(fault + ", seed " + seed + (powerCut ? ", power cut" : ", killed"), e);
            }
        }
        assertTrue(failed > 2, "only " + failed + " steps failed");
    }
}

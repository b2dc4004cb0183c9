package pegbed.reliability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;

/** Real processes, killed at random moments or at odds over one file. More of it runs at night. */
@Tag("slow")
class ProcessesTest {
    @TempDir
    private Path folder;

    @Test
    void nothingThatWasConfirmedIsLostByThirtyKills() throws IOException, InterruptedException, InputException {
        Kills.Result result = Kills.run(folder, 30, 20261126, false);
        assertTrue(result.confirmed() >= 30, result::toString);
    }

    @Test
    void twoProcessesThatAddToOneFileLoseNothing() throws IOException, InterruptedException, InputException {
        assertEquals(80, Races.run(folder, 40));
    }

    @Test
    void eightCommandsAtOnceAreAllKept() throws IOException, InterruptedException, InputException {
        assertEquals(80, Writers.run(folder, 10, 8, false));
    }
}

package pegbed.session;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;

@Tag("slow")
class LongUseTest {
    private static final long LONGEST_JOURNAL_BYTES = 4_000_000;

    @TempDir
    private Path folder;

    @Test
    void threeThousandEditsFillNeitherMemoryNorDisk() throws IOException, InputException {
        LongUse.Result result = LongUse.run(folder, 3_000);
        assertTrue(result.heapAtEndBytes() < result.heapAtTenthBytes() + 5_000_000, result::toString);
        assertTrue(
                result.longestJournalBytes() > LONGEST_JOURNAL_BYTES / 2
                        && result.longestJournalBytes() <= LONGEST_JOURNAL_BYTES,
                result::toString);
    }
}

package pegbed.storage.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgramLogTest {
    @TempDir
    Path folder;

    @Test
    void theLogHoldsTheTraceAndTheSentenceNamesIt() throws IOException {
        ProgramLog log = new ProgramLog(folder.resolve("own 100%g"));
        assertFalse(Files.exists(log.file().getParent()), "nothing is made before there is something to write");
        String words = log.report("The card could not be drawn", new IllegalStateException("no paper"));
        assertEquals("The card could not be drawn; what went wrong is in the log " + log.file() + ".", words);
        log.report("Nor could this", new StackOverflowError());
        String text = Files.readString(log.file());
        assertTrue(text.contains("The card could not be drawn"), text);
        assertTrue(text.contains("java.lang.IllegalStateException: no paper"), text);
        assertTrue(text.contains("at pegbed.storage.disk.ProgramLogTest.theLogHoldsTheTrace"), text);
        assertTrue(text.contains("java.lang.StackOverflowError"), text);
        assertEquals(List.of(log.file()), files(log.file().getParent()), "no lock is left behind");
    }

    @Test
    void theLogDoesNotGrowWithoutEnd() throws IOException {
        ProgramLog log = new ProgramLog(folder);
        String much = "x".repeat(200_000);
        for (int i = 0; i < 20; i++) {
            log.report("Error " + i, new IllegalStateException(much));
        }
        long bytes = 0;
        for (Path file : files(folder)) {
            bytes += Files.size(file);
        }
        assertTrue(bytes < 3_500_000, bytes + " bytes");
        assertTrue(Files.readString(log.file()).contains("Error 19"));
    }

    @Test
    void aLogThatCannotBeWrittenIsSaidAndTheErrorWithIt() throws IOException {
        Path taken = Files.writeString(folder.resolve("own"), "a file where the folder should be");
        String words = new ProgramLog(taken).report("This failed", new IllegalStateException("why"));
        assertTrue(words.startsWith("This failed, for java.lang.IllegalStateException: why; the log "), words);
        assertTrue(words.contains("can't be written"), words);
    }

    private static List<Path> files(Path in) throws IOException {
        try (Stream<Path> list = Files.list(in)) {
            return list.sorted().toList();
        }
    }
}

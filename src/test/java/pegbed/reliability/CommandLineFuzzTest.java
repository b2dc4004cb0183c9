package pegbed.reliability;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever words a command is given, it ends with a status and a sentence, and makes no file that nobody named. */
@Tag("slow")
class CommandLineFuzzTest {
    @Test
    void anyWordsAreAnswered(@TempDir Path folder) throws IOException {
        CommandLineFuzz.Result result = CommandLineFuzz.run(Files.createDirectory(folder.resolve("pegs")), 20_000, 1);
        assertTrue(result.done() > 500 && result.refused() > 10_000, result.toString());
    }
}

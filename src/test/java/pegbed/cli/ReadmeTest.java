package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What the README shows is what the program prints. */
class ReadmeTest {
    @Test
    void theWorkedExampleIsRealOutput() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        int start = readme.indexOf("```\n") + 4;
        String shown = readme.substring(start, readme.indexOf("```\n", start));
        assertEquals(
                Ran.pegbed("lines", "sample-pegs/tansy-cut-14.peg.json").out().strip(), shown.strip());
    }

    @Test
    void everyCommandIsListed() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        String help = Ran.pegbed("--help").out();
        help.lines()
                .filter(line -> line.matches("  [a-z]+ {2,}[A-Z].*"))
                .map(line -> line.strip().split(" ")[0])
                .forEach(command -> assertTrue(readme.contains("| `" + command + " "), command));
    }
}

package pegbed.reliability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing that the program does asks for the network. */
@Tag("slow")
class OfflineTest {
    @TempDir
    private Path folder;

    @Test
    void noCommandAndNoSessionTriesTheNetwork() throws IOException, InterruptedException {
        Path peg = folder.resolve("nine.peg.json");
        Files.copy(Path.of("sample-pegs", "tansy-cut-9.peg.json"), peg);
        Process process = Children.start(
                Offline.class,
                List.of(
                        "-Djava.awt.headless=true",
                        "-Djava.nio.channels.spi.SelectorProvider=" + Offline.NoChannels.class.getName()),
                folder.toString(),
                peg.toString());
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        List<String> lines = said.lines().toList();
        int bars = lines.indexOf("bars: 0");
        assertEquals(2, bars, "The bars do not hold: " + said);
        List<String> after = lines.subList(bars + 1, lines.size());
        assertTrue(after.stream().noneMatch(line -> line.startsWith("tried")), said);
        assertEquals(
                11, after.stream().filter(line -> line.matches("[a-z]+: [01]")).count(), said);
        assertTrue(after.contains("session: true"), said);
    }
}

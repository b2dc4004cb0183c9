package pegbed.cli;

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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Arguments that nobody means get one sentence and exit status 2, not an error of the program's own. */
class OddArgumentsTest {
    private static final String SAMPLE =
            Path.of("sample-pegs", "tansy-cut-9.peg.json").toString();

    @TempDir
    private Path folder;

    static Stream<List<String>> odd() {
        return Stream.of(
                List.of("map", SAMPLE, "--out", "/"),
                List.of("map", SAMPLE, "--out", ""),
                List.of("card", SAMPLE, "--out", "/"),
                List.of("card", SAMPLE, "--out", ""),
                List.of("card", "/", "--out", "/"),
                List.of("check", "/"),
                List.of("bench", "visits", "--practice", "nofolder"),
                List.of("bench", "quality", "--practice", "nofolder"),
                List.of("bench", "quality", "--practice", "nofolder", "--guided"),
                List.of("bench", "quality", "--practice", "nofolder", "--gross"));
    }

    @ParameterizedTest
    @MethodSource("odd")
    void areRefusedWithOneSentence(List<String> words) {
        Ran ran = Ran.pegbed(words.toArray());
        assertEquals(2, ran.status(), ran.out());
        assertEquals("", ran.out());
        assertEquals(1, ran.err().strip().lines().count(), ran.err());
        assertFalse(ran.err().contains("error of the program's own"), ran.err());
        assertTrue(ran.err().strip().endsWith("."), ran.err());
    }

    @Test
    void aDistanceNextToNothingIsTheSeat() throws IOException {
        Path peg = folder.resolve("peg.peg.json");
        Files.writeString(peg, """
                {
                "format": "pegbed-peg", "version": 1,
                "near_bank": [{"x_m": -9, "y_m": -0.5}, {"x_m": 9, "y_m": -0.5}],
                "far_bank": [{"x_m": -9, "y_m": 12}, {"x_m": 9, "y_m": 12}],
                "visits": [{"readings": [
                {"distance_m": 1e-170, "angle_deg": 30, "depth_m": 1.2},
                {"distance_m": 1e-170, "angle_deg": -50, "depth_m": 1.2},
                {"distance_m": 8, "angle_deg": 10, "depth_m": 1.6}]}]
                }
                """);
        for (String command : List.of("check", "lines", "next", "level")) {
            Ran ran = Ran.pegbed(command, peg);
            assertEquals("", ran.err(), command);
            assertEquals(0, ran.status(), command);
        }
        assertEquals(0, Ran.pegbed("add", peg, "5m 0 1.5m").status());
    }

    /** Only the options of the commands that are asked for are known; nobody can tell. */
    @Test
    void theSameIsSaidAsIfAllOptionsOfAllCommandsWereKnown() {
        String peg = "sample-pegs/tansy-cut-14.peg.json";
        for (List<String> words : List.of(
                List.<String>of(),
                List.of("--help"),
                List.of("--version"),
                List.of("linse", peg),
                List.of("nxt", "--help"),
                List.of("--json", "lines", peg),
                List.of("nothing", "lines", peg),
                List.of("--help", "lines"),
                List.of("--version", "next", peg),
                List.of("-x", "map", "--out"),
                List.of("lines"),
                List.of("lines", "--help"),
                List.of("lines", "--out", "next"),
                List.of("add", "lines", "next"),
                List.of("", "\u200e", "map"))) {
            assertEquals(
                    Ran.knowingEverything(words.toArray()), Ran.pegbed(words.toArray()), () -> String.join(" ", words));
        }
    }
}

package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can't be meant is refused with what would be right, and what a file says commands no terminal. */
class RefusedLinesTest {
    @TempDir
    private Path folder;

    private Path peg;

    @BeforeEach
    void sample() throws IOException {
        peg = folder.resolve("peg.peg.json");
        Files.copy(Path.of("sample-pegs", "tansy-cut-14.peg.json"), peg);
    }

    private void assertRefused(List<Object> words, String sentence) throws IOException {
        byte[] before = Files.readAllBytes(peg);
        Ran ran = Ran.pegbed(words.toArray());
        assertEquals(2, ran.status(), ran.out());
        assertEquals(sentence, ran.err().strip());
        assertArrayEquals(before, Files.readAllBytes(peg));
    }

    @Test
    void aReadingBeyondThePole() throws IOException {
        assertRefused(
                List.of("add", peg, "5 0 4'6", "100 5 4'6"),
                "'100 5 4'6' is 100.0 m out, beyond the pole's 16.0 m; type a distance between 0 and 16.0 m, or give the"
                        + " peg a longer pole first.");
        assertEquals(0, Ran.pegbed("add", peg, "16 5 4'").status());
    }

    @Test
    void anEdgeAtTheSeat() throws IOException {
        assertRefused(
                List.of("add", peg, "edge 0 0"),
                "'edge 0 0' is an edge at the seat itself; type how far out the water's edge is and in which direction,"
                        + " such as edge 13 20L.");
    }

    @Test
    void aTargetWithABottom() throws IOException {
        assertRefused(
                List.of("lines", peg, "--target", "2'9 silt"),
                "--target: '2'9 silt' is not a depth; give metres as 0.84, or a unit as 2'9, 33in or 84cm.");
    }

    @Test
    void escapesOfAFileAreShown() throws IOException {
        Files.writeString(
                peg,
                Files.readString(peg).replaceFirst("\"water\": \"", "\"water\": \"\\\\u001b[31mred\\\\u202e\\\\u009b"));
        for (List<Object> words : List.<List<Object>>of(
                List.of("lines", peg), List.of("lines", peg, "--json"), List.of("shelf", folder))) {
            Ran ran = Ran.pegbed(words.toArray());
            assertEquals(0, ran.status(), ran.err());
            for (char sign : new char[] {'\u001b', '\u202e', '\u009b'}) {
                assertFalse(ran.out().indexOf(sign) >= 0, ran.out());
            }
        }
        assertTrue(Ran.pegbed("lines", peg).out().contains("\\u001b[31mred\\u202e\\u009b"));
    }
}

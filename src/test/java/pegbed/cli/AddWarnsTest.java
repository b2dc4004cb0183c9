package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.storage.disk.PegFile;

/** A reading far from what the others expect is added, and that is said with by how much. */
class AddWarnsTest {
    @TempDir
    private Path folder;

    private Path peg;

    @BeforeEach
    void sample() throws IOException {
        peg = folder.resolve("peg.peg.json");
        Files.copy(Path.of("sample-pegs", "tansy-cut-14.peg.json"), peg);
    }

    @Test
    void aForgottenFootMarkIsSaid() throws InputException {
        int before = PegFile.read(peg).peg().readings().size();
        Ran ran = Ran.pegbed("add", peg, "6.5 5 46");
        assertEquals(0, ran.status(), ran.err());
        assertTrue(
                ran.err()
                        .matches("Warning: Reading " + (before + 1)
                                + " says 46 ft; the others expect 5 ft .* in, give or take"
                                + " .*: it is 40 ft .* deeper than that\\. It was added; .*\\.\\R"),
                ran.err());
        assertEquals(before + 1, PegFile.read(peg).peg().readings().size());
    }

    @Test
    void onlyTheLinesOfThisCommandAreWarnedOf() {
        assertTrue(Ran.pegbed("add", peg, "6.5 5 2'").err().contains("shallower than that"));
        Ran sound = Ran.pegbed("add", peg, "4.5 5 5'", "edge 1 180 0");
        assertEquals(0, sound.status(), sound.err());
        assertTrue(!sound.err().contains("the others expect"), sound.err());
    }

    @Test
    void whatTheOthersExpectIsNotWarnedOf() {
        Ran ran = Ran.pegbed("add", peg, "6.5 5 5'6", "7 5 5'6");
        assertEquals(0, ran.status());
        assertEquals("", ran.err());
    }
}

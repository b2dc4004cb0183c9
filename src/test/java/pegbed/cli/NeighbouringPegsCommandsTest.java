package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.storage.disk.PegFile;

/** A peg starts from the others of its water that lie in the same folder, says so, and can be told not to. */
class NeighbouringPegsCommandsTest {
    private static final String SENTENCE = "Started from 1 other peg of Tansy Cut.";

    @TempDir
    private Path folder;

    private Path nine;
    private Path alone;

    @BeforeEach
    void pegs() throws IOException {
        Path samples = Path.of("sample-pegs");
        nine = Files.copy(samples.resolve("tansy-cut-9.peg.json"), folder.resolve("nine.peg.json"));
        Files.copy(samples.resolve("tansy-cut-14.peg.json"), folder.resolve("fourteen.peg.json"));
        Files.copy(samples.resolve("hobbrel-pond-3.peg.json"), folder.resolve("three.peg.json"));
        alone = Files.copy(
                nine, Files.createDirectories(folder.resolve("alone")).resolve("nine.peg.json"));
    }

    @Test
    void everyAnswerSaysFromWhomItStarted() throws IOException {
        assertTrue(Ran.pegbed("lines", nine).out().contains("\n" + SENTENCE + "\n"));
        assertTrue(Ran.pegbed("next", nine).out().startsWith(SENTENCE + "\n"));
        assertTrue(
                Ran.pegbed("map", nine, "--out", folder.resolve("m.svg")).out().contains(SENTENCE));
        assertTrue(
                Ran.pegbed("card", nine, "--out", folder.resolve("c.svg")).out().contains(SENTENCE));
        Path points = Files.writeString(folder.resolve("p.csv"), "x_m,y_m\n0,5\n");
        Ran depths = Ran.pegbed("depths", nine, "--points", points);
        assertEquals(SENTENCE + "\n", depths.err());
        assertTrue(depths.out().startsWith("x_m,y_m,"), "the table is a contract");
        assertTrue(Ran.pegbed("lines", nine, "--json").out().contains("\"other_pegs\""));
    }

    @Test
    void theSameFolderGivesTheSameAnswer() {
        assertEquals(
                Ran.pegbed("lines", nine, "--json").out(),
                Ran.pegbed("lines", nine, "--json").out());
    }

    @Test
    void byItselfItAnswersAsInAFolderOfItsOwn() throws InputException {
        Ran lone = Ran.pegbed("lines", alone, "--json");
        assertFalse(lone.out().contains("other_pegs"));
        assertEquals(
                lone.out(), Ran.pegbed("lines", nine, "--json", "--by-itself").out());

        Peg peg = PegFile.read(nine).peg();
        PegFile.save(nine, peg.withWishes(peg.wishes().withByItself(true)), Optional.empty());
        assertEquals(lone.out(), Ran.pegbed("lines", nine, "--json").out());
    }

    @Test
    void aBrokenNeighbourIsNamedAndTheAnswerStands() throws IOException {
        Files.writeString(folder.resolve("fourteen.peg.json"), "{\"format\": \"pegbed-peg\", ");
        Ran ran = Ran.pegbed("lines", nine);
        assertEquals(0, ran.status());
        assertEquals(Ran.pegbed("lines", alone).out(), ran.out());
        assertTrue(ran.err().startsWith("Warning: fourteen.peg.json could not be read"), ran.err());
    }
}

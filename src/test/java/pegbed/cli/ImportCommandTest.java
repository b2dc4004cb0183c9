package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.storage.disk.PegFile;

class ImportCommandTest {
    @TempDir
    private Path folder;

    @Test
    void readingsAreShownFirstAndTakenWhenThatIsSaid() throws Exception {
        Path peg = folder.resolve("14.peg.json");
        Files.copy(Path.of("sample-pegs/tansy-cut-14.peg.json"), peg);
        byte[] before = Files.readAllBytes(peg);
        Path table =
                Files.writeString(folder.resolve("t.csv"), "Dist (m);Direction;Depth (ft);Bites\n10,0;-20;4,5;1\n");
        Ran shown = Ran.pegbed("import", peg, table);
        assertEquals(0, shown.status(), shown.err());
        assertTrue(shown.out().contains("Depth (ft): depth in feet"), shown.out());
        assertTrue(shown.out().contains("Not used: Bites."), shown.out());
        assertTrue(shown.out().contains("s6 20L 4'6"), shown.out());
        assertTrue(shown.out().contains("Nothing was taken; say --take"), shown.out());
        assertArrayEquals(before, Files.readAllBytes(peg));
        int readings = PegFile.read(peg).peg().today().readings().size();
        Ran taken = Ran.pegbed("import", peg, table, "--take", "--json");
        JsonNode json = new ObjectMapper().readTree(taken.out());
        assertTrue(json.path("taken").asBoolean(), taken.err());
        assertEquals(readings + 1, PegFile.read(peg).peg().today().readings().size());
        Files.writeString(table, "Dist (m);Direction;Depth (ft)\n80;-20;4,5\n");
        Ran far = Ran.pegbed("import", peg, table, "--take");
        assertEquals(2, far.status());
        assertEquals(1, far.err().strip().lines().count(), far.err());
        assertEquals(readings + 1, PegFile.read(peg).peg().today().readings().size());
    }
}

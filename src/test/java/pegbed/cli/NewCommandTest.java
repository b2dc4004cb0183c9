package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.RigTemplate;
import pegbed.storage.disk.PegFile;
import pegbed.storage.shelf.OwnRigs;

/** New pegs begin with the person's own rigs. */
class NewCommandTest {
    private static final List<RigTemplate> MINE = RigTemplate.USUAL.subList(1, 3);

    @TempDir
    private Path folder;

    private Path own;
    private Path peg;

    @BeforeEach
    void tables() throws IOException {
        own = folder.resolve("own");
        peg = folder.resolve("new.peg.json");
        Files.writeString(folder.resolve("r.csv"), "distance_m,angle_deg,depth_m\n6,0,1.5\n");
        Files.writeString(folder.resolve("b.csv"), "bank,x_m,y_m\nnear,-9,0\nnear,9,0\nfar,-9,12\nfar,9,12\n");
    }

    private Ran make(String... more) {
        Object[] words = new Object[6 + more.length];
        List<Object> usual =
                List.of("new", peg, "--readings", folder.resolve("r.csv"), "--banks", folder.resolve("b.csv"));
        for (int i = 0; i < words.length; i++) {
            words[i] = i < 6 ? usual.get(i) : more[i - 6];
        }
        return Ran.by(own, words);
    }

    private List<RigTemplate> templates() throws InputException {
        return PegFile.read(peg).peg().wishes().rigs().templates();
    }

    @Test
    void theyAreCopiedIntoThePegFile() throws InputException {
        new OwnRigs(own).save(MINE);
        Ran made = make();
        assertEquals(0, made.status(), made.err());
        assertEquals("", made.err());
        assertEquals(MINE, templates());
    }

    @Test
    void usualRigsLeavesThemOut() throws InputException {
        new OwnRigs(own).save(MINE);
        assertEquals(0, make("--usual-rigs").status());
        assertEquals(List.of(), templates());
    }

    @Test
    void withoutAnyTheUsualOnesAreTiedAndNoFolderIsMade() throws InputException {
        assertEquals(0, make().status());
        assertEquals(List.of(), templates());
        assertTrue(Files.notExists(own));
    }

    @Test
    void damagedOnesAreSaidAndThePegIsMadeWithTheUsualOnes() throws IOException, InputException {
        Files.createDirectories(own);
        Files.writeString(
                own.resolve(OwnRigs.FILE), "{ \"format\": \"pegbed-peg\", \"version\": 1, \"wishes\": { \"ri");
        Ran made = make();
        assertEquals(0, made.status(), made.err());
        assertTrue(made.err().startsWith("Warning: Your own rigs in "), made.err());
        assertTrue(made.err().strip().endsWith("This peg begins with the usual rigs."), made.err());
        assertEquals(List.of(), templates());
        assertTrue(make("--replace", "--usual-rigs").err().isEmpty());
    }
}

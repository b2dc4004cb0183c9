package pegbed.storage.shelf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.RigTemplate;
import pegbed.storage.disk.FaultyFiles;
import pegbed.storage.disk.PegFile;

class OwnRigsTest {
    private static final List<RigTemplate> MINE = RigTemplate.USUAL.subList(1, 3);
    private static final List<RigTemplate> OTHERS = RigTemplate.USUAL.subList(3, 7);

    @TempDir
    private Path folder;

    private Path own;
    private OwnRigs rigs;

    @BeforeEach
    void none() {
        own = folder.resolve("in").resolve("here");
        rigs = new OwnRigs(own);
    }

    @Test
    void whereNoneAreKeptThereAreNoneAndNothingIsMade() throws InputException {
        assertEquals(List.of(), rigs.read());
        assertSame(Peg.EMPTY, rigs.into(Peg.EMPTY));
        assertFalse(Files.exists(own));
    }

    @Test
    void whatIsKeptIsReadAgainAndIsAPegFileWithNothingButWishes() throws InputException {
        rigs.save(OTHERS);
        rigs.save(MINE);
        assertEquals(MINE, new OwnRigs(own).read());
        Peg kept = PegFile.read(own.resolve(OwnRigs.FILE)).peg();
        assertEquals(Peg.EMPTY, kept.withWishes(Peg.EMPTY.wishes()));
        assertEquals(MINE, rigs.into(Peg.EMPTY).wishes().rigs().templates());
        assertEquals(1, PegFile.earlier(own.resolve(OwnRigs.FILE)).size());
    }

    @Test
    void theUsualOnesCanBeTakenAgain() throws InputException {
        rigs.save(MINE);
        rigs.save(List.of());
        assertEquals(List.of(), rigs.read());
        assertSame(Peg.EMPTY, rigs.into(Peg.EMPTY));
    }

    @Test
    void aDamagedFileIsSaidAndNeverWrittenOver() throws IOException, InputException {
        rigs.save(MINE);
        Path file = own.resolve(OwnRigs.FILE);
        byte[] whole = Files.readAllBytes(file);
        byte[] cut = java.util.Arrays.copyOf(whole, whole.length / 2);
        Files.write(file, cut);
        InputException unread = assertThrows(InputException.class, rigs::read);
        assertTrue(unread.getMessage().startsWith("Your own rigs in " + file + " are damaged at line "));
        assertThrows(InputException.class, () -> rigs.into(Peg.EMPTY));
        assertThrows(InputException.class, () -> rigs.save(OTHERS));
        assertArrayEquals(cut, Files.readAllBytes(file));
    }

    @Test
    void whatALaterVersionWroteStays() throws IOException, InputException {
        rigs.save(MINE);
        Path file = own.resolve(OwnRigs.FILE);
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("\"version\": 1,", "\"version\": 1,\n  \"later\": [1, 2],"));
        rigs.save(OTHERS);
        assertEquals(OTHERS, rigs.read());
        assertTrue(Files.readString(file).contains("\"later\": [1, 2]"));
    }

    /** Whatever step of keeping goes wrong: the old ones or the new ones are there whole, and a failure is said. */
    @Test
    void whateverGoesWrongTheOldOnesOrTheNewOnesAreThere() throws InputException {
        for (FaultyFiles.Fault fault : FaultyFiles.Fault.values()) {
            int refused = 0;
            int steps;
            int failing = 0;
            do {
                rigs.save(MINE);
                FaultyFiles files = new FaultyFiles(failing, fault);
                boolean done = true;
                try {
                    new OwnRigs(own, files).save(OTHERS);
                } catch (InputException e) {
                    done = false;
                    refused++;
                    assertTrue(e.getMessage().endsWith("."), e.getMessage());
                }
                assertEquals(done ? OTHERS : MINE, rigs.read(), fault + " at step " + failing + " of " + files.steps);
                steps = files.steps.size();
            } while (failing++ < steps);
            assertTrue(refused > 3, fault + " was never met");
        }
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws IOException {
        Files.writeString(folder.resolve("in"), "a file where a folder should be");
        InputException refused = assertThrows(InputException.class, () -> rigs.save(MINE));
        assertTrue(refused.getMessage().contains("could not be made"), refused.getMessage());
    }
}

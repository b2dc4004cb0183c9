package pegbed.storage.shelf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Reading;
import pegbed.storage.disk.PegFile;

class ShelfTest {
    @TempDir
    private Path folder;

    private Path nine;

    @BeforeEach
    void pegs() throws InputException, IOException {
        nine = peg(folder, "a", "9");
        peg(folder, "b", "14");
        Files.createDirectories(folder.resolve("ponds"));
        peg(folder.resolve("ponds"), "c", "3");
    }

    private static Path peg(Path in, String file, String number) throws InputException {
        Path path = in.resolve(file + PegFile.ENDING);
        Peg peg = Peg.EMPTY
                .withName(new PegName("Mallowfield Pools", "Tansy Cut", number))
                .withReading(Reading.of(4, 0, 1.2))
                .withReading(Reading.of(6, 0, 1.5));
        PegFile.save(path, peg, Optional.empty());
        return path;
    }

    private ShelfPeg only(String text) throws InputException {
        List<ShelfPeg> found = Shelf.of(folder).find(text);
        assertEquals(1, found.size(), text);
        return found.get(0);
    }

    @Test
    void listsByNumberWithWhatTheFileTells() throws InputException {
        List<ShelfPeg> pegs = Shelf.of(folder).pegs();
        assertEquals(
                List.of("3", "9", "14"),
                pegs.stream().map(p -> p.name().number()).toList());
        assertEquals(2, pegs.get(0).readings());
        assertEquals(1.5, pegs.get(0).deepestReadingMetres().getAsDouble());
        assertEquals(Optional.empty(), pegs.get(0).trouble());
    }

    @Test
    void findsAnyPartInAnyOrderCapitalsAndAccentsAside() throws InputException {
        assertEquals("14", only("cut 14").name().number());
        assertEquals("14", only("14 TÀNSY").name().number());
        assertEquals("9", only("a.peg").name().number());
        assertEquals(3, Shelf.of(folder).find(" ").size());
        assertEquals(0, Shelf.of(folder).find("tansy 15").size());
    }

    @Test
    void aDamagedFileIsOnTheShelfWithItsTrouble() throws InputException, IOException {
        Files.writeString(folder.resolve("d.peg.json"), "nonsense");
        String text = Files.readString(nine);
        Files.writeString(nine, text.substring(0, text.length() - 30));
        Shelf shelf = Shelf.of(folder);
        assertEquals(4, shelf.pegs().size());
        assertEquals(
                2, shelf.pegs().stream().filter(p -> p.trouble().isPresent()).count());
    }

    @Test
    void aCopyIsTheSameBytesUnderAFreeName() throws InputException, IOException {
        Path copy = ShelfFiles.duplicate(only("a.peg"));
        Path second = ShelfFiles.duplicate(only("a.peg"));
        assertTrue(!copy.equals(second));
        assertArrayEquals(Files.readAllBytes(nine), Files.readAllBytes(copy));
        assertEquals(3, Shelf.of(folder).twins().size());
    }

    @Test
    void renamingChangesTheNameAndNothingElse() throws InputException {
        Peg before = PegFile.read(nine).peg();
        PegName name = new PegName("Mallowfield Pools", "Hobbrel Pond", "2");
        ShelfFiles.rename(only("a.peg"), name);
        assertEquals(before.withName(name), PegFile.read(nine).peg());
    }

    @Test
    void whatIsDeletedIsKeptWithItsEarlierVersionsAndNeverWrittenOver() throws InputException, IOException {
        ShelfFiles.rename(only("a.peg"), new PegName("", "", "90"));
        byte[] bytes = Files.readAllBytes(nine);
        Path deleted = ShelfFiles.delete(only("a.peg"));
        assertEquals(folder.resolve("deleted"), deleted.getParent());
        assertArrayEquals(bytes, Files.readAllBytes(deleted));
        assertEquals(1, PegFile.earlier(deleted).size());
        assertEquals(2, Shelf.of(folder).pegs().size());
        peg(folder, "a", "9");
        Path again = ShelfFiles.delete(only("a.peg"));
        assertTrue(!again.equals(deleted));
        assertArrayEquals(bytes, Files.readAllBytes(deleted));
    }

    @Test
    void movesToAnotherFolder() throws InputException {
        Path now = ShelfFiles.move(only("a.peg"), folder.resolve("cuts"));
        assertEquals(folder.resolve("cuts").resolve("a.peg.json"), now);
        assertEquals("9", only("a.peg").name().number());
    }

    @Test
    void aFileThatAnotherChangedIsNoticedAndLeftAlone() throws InputException, IOException {
        Shelf before = Shelf.of(folder);
        ShelfPeg stale = only("a.peg");
        String theirs = Files.readString(nine).replace("Tansy", "Pansy");
        Files.writeString(nine, theirs + "\n");
        assertThrows(InputException.class, () -> ShelfFiles.rename(stale, new PegName("", "", "1")));
        assertThrows(InputException.class, () -> ShelfFiles.delete(stale));
        assertThrows(InputException.class, () -> ShelfFiles.duplicate(stale));
        assertEquals(theirs + "\n", Files.readString(nine));
        Files.delete(folder.resolve("b.peg.json"));
        Shelf now = before.refreshed();
        assertEquals(List.of(nine, folder.resolve("b.peg.json")), now.changedSince(before));
        assertEquals("Pansy Cut", now.find("a.peg").get(0).name().water());
        assertEquals(List.of(), now.refreshed().changedSince(now));
    }

    @Test
    void noFolderIsOneSentence() {
        assertThrows(InputException.class, () -> Shelf.of(folder.resolve("none")));
    }
}

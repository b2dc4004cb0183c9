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
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.storage.disk.FaultyFiles;
import pegbed.storage.disk.PegFile;

/** A peg and its earlier versions go to another folder all or not at all, also to another disk. */
class MoveTest {
    @TempDir
    private Path folder;

    private Path file;
    private Path to;
    private byte[] latest;
    private byte[] earlier;

    @BeforeEach
    void twoVersions() throws IOException, InputException {
        file = folder.resolve("here").resolve("a.peg.json");
        to = folder.resolve("there");
        prepare();
    }

    private void prepare() throws IOException, InputException {
        for (Path each : List.of(file.getParent(), to)) {
            try (Stream<Path> old = Files.exists(each) ? Files.walk(each) : Stream.empty()) {
                for (Path path : old.filter(Files::isRegularFile).toList()) {
                    Files.delete(path);
                }
            }
        }
        Files.createDirectories(file.getParent());
        Peg peg = Peg.EMPTY.withReading(Reading.of(4, 0, 1.2));
        PegFile.save(file, peg, Optional.empty());
        earlier = Files.readAllBytes(file);
        PegFile.save(file, peg.withReading(Reading.of(6, 0, 1.5)), Optional.empty());
        latest = Files.readAllBytes(file);
    }

    private ShelfPeg peg() throws InputException {
        return Shelf.of(file.getParent()).pegs().get(0);
    }

    private static void assertWhole(Path at, byte[] latest, byte[] earlier) throws IOException, InputException {
        assertArrayEquals(latest, Files.readAllBytes(at));
        assertArrayEquals(earlier, Files.readAllBytes(PegFile.earlier(at).get(0)));
    }

    @Test
    void theCopiesAreForcedBeforeTheFirstOriginalIsRemoved() throws IOException, InputException {
        FaultyFiles files = new FaultyFiles(Integer.MAX_VALUE, FaultyFiles.Fault.REFUSED);
        Path now = ShelfFiles.move(peg(), to, files);
        assertWhole(now, latest, earlier);
        assertTrue(Files.notExists(file));
        assertEquals(0, PegFile.earlier(file).size());
        int firstRemoved = files.steps.indexOf("delete");
        assertTrue(files.steps.lastIndexOf("write") < firstRemoved, files.steps::toString);
        assertTrue(files.steps.lastIndexOf("read") < firstRemoved, files.steps::toString);
        assertTrue(files.steps.lastIndexOf("forceFolder") < firstRemoved, files.steps::toString);
    }

    @Test
    void whateverStepFailsAllIsHereOrAllIsThere() throws IOException, InputException {
        FaultyFiles sound = new FaultyFiles(Integer.MAX_VALUE, FaultyFiles.Fault.REFUSED);
        ShelfFiles.move(peg(), to, sound);
        for (FaultyFiles.Fault fault : FaultyFiles.Fault.values()) {
            for (int step = 0; step < sound.steps.size(); step++) {
                prepare();
                FaultyFiles files = new FaultyFiles(step, fault);
                String what = sound.steps.get(step);
                ShelfPeg peg = peg();
                if (what.equals("forceFolder") || (fault == FaultyFiles.Fault.GARBLED && what.equals("delete"))) {
                    assertWhole(ShelfFiles.move(peg, to, files), latest, earlier);
                } else if (fault == FaultyFiles.Fault.FULL || !(fault == FaultyFiles.Fault.GARBLED)) {
                    String sentence = assertThrows(InputException.class, () -> ShelfFiles.move(peg, to, files))
                            .getMessage();
                    if (what.equals("delete") && step > sound.steps.indexOf("delete")) {
                        assertTrue(
                                sentence.startsWith("a.peg.json is now in " + to + " with its earlier versions, but "),
                                sentence);
                        assertTrue(Files.notExists(file), sentence);
                        assertWhole(to.resolve("a.peg.json"), latest, earlier);
                    } else {
                        assertWhole(file, latest, earlier);
                        assertTrue(Files.notExists(to.resolve("a.peg.json")), sentence);
                        assertEquals(
                                0, PegFile.earlier(to.resolve("a.peg.json")).size());
                    }
                }
            }
        }
    }
}

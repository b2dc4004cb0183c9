package pegbed.storage.shelf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Reading;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.FaultyFiles;
import pegbed.storage.disk.FileOps;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Opened;

/** Whatever step of a deed on a peg file fails, and however, the peg is whole: as it was, or as it was to be. */
class EveryStepFailsTest {
    private static final Peg PEG = Peg.EMPTY.withReading(Reading.of(4, 0, 1.2));
    private static final PegName NAME = new PegName("Mallowfield Pools", "Tansy Cut", "9");

    @TempDir
    private Path folder;

    /** Something that is done to the one peg on a shelf. */
    private interface Deed {
        void to(ShelfPeg peg, FileOps files) throws InputException;
    }

    private Path file() {
        return folder.resolve("a.peg.json");
    }

    private void prepare() throws IOException, InputException {
        try (Stream<Path> old = Files.walk(folder)) {
            for (Path path : old.filter(Files::isRegularFile).toList()) {
                Files.delete(path);
            }
        }
        PegFile.save(file(), PEG, Optional.empty());
        PegFile.save(file(), PEG.withReading(Reading.of(6, 0, 1.5)), Optional.empty());
    }

    private ShelfPeg peg() throws InputException {
        return Shelf.of(folder).pegs().get(0);
    }

    private List<Path> whole() throws IOException, InputException {
        List<Path> found;
        try (Stream<Path> all = Files.walk(folder)) {
            found = all.filter(path -> path.toString().endsWith(PegFile.ENDING)).toList();
        }
        for (Path each : found) {
            assertTrue(PegFile.read(each) instanceof Opened.Whole, each.toString());
            assertEquals(2, PegFile.read(each).peg().readings().size(), each.toString());
        }
        return found;
    }

    private void everyStep(Deed deed, int most) throws IOException, InputException {
        prepare();
        FaultyFiles sound = new FaultyFiles(Integer.MAX_VALUE, FaultyFiles.Fault.REFUSED);
        deed.to(peg(), sound);
        assertTrue(sound.steps.size() > 3, sound.steps::toString);
        for (FaultyFiles.Fault fault : FaultyFiles.Fault.values()) {
            for (int step = 0; step < sound.steps.size(); step++) {
                prepare();
                byte[] before = Files.readAllBytes(file());
                String what = fault + " at step " + step + ", " + sound.steps.get(step);
                boolean refused = false;
                try {
                    deed.to(peg(), new FaultyFiles(step, fault));
                } catch (InputException e) {
                    refused = true;
                    assertTrue(e.getMessage().endsWith("."), e.getMessage());
                }
                List<Path> whole = whole();
                assertTrue(!whole.isEmpty() && whole.size() <= most, what + ": " + whole);
                if (refused && Files.exists(file())) {
                    assertArrayEquals(before, Files.readAllBytes(file()), what);
                    assertEquals(1, whole.size(), what + ": " + whole);
                }
            }
        }
    }

    @Test
    void renaming() throws IOException, InputException {
        everyStep((peg, files) -> ShelfFiles.rename(peg, NAME, files), 1);
    }

    @Test
    void duplicating() throws IOException, InputException {
        everyStep(ShelfFiles::duplicate, 2);
    }

    @Test
    void deleting() throws IOException, InputException {
        everyStep(ShelfFiles::delete, 1);
    }

    @Test
    void making() throws IOException, InputException {
        Path made = folder.resolve("new.peg.json");
        byte[] bytes = "made".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        FaultyFiles sound = new FaultyFiles(Integer.MAX_VALUE, FaultyFiles.Fault.REFUSED);
        new AtomicFileWriter(sound).create(made, bytes);
        for (FaultyFiles.Fault fault : FaultyFiles.Fault.values()) {
            for (int step = 0; step < sound.steps.size(); step++) {
                Files.deleteIfExists(made);
                String what = fault + " at step " + step + ", " + sound.steps.get(step);
                boolean refused = false;
                try {
                    new AtomicFileWriter(new FaultyFiles(step, fault)).create(made, bytes);
                } catch (InputException e) {
                    refused = true;
                }
                if (refused) {
                    assertTrue(Files.notExists(made), what);
                } else {
                    assertArrayEquals(bytes, Files.readAllBytes(made), what);
                }
            }
        }
    }
}

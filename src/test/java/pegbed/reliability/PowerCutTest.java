package pegbed.reliability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Reading;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Opened;
import pegbed.storage.shelf.Shelf;
import pegbed.storage.shelf.ShelfFiles;
import pegbed.storage.shelf.ShelfPeg;

/**
 * Power is cut at every step of what is done to a peg file: nothing more reaches the disk from there on, and what was
 * not forced by then may be lost. The peg is whole after that, as it was or as it was to be.
 */
@Tag("slow")
class PowerCutTest {
    private static final Peg PEG = Peg.EMPTY.withReading(Reading.of(4, 0, 1.2));
    private static final Peg LATER = PEG.withReading(Reading.of(6, 0, 1.5));
    private static final Peg LATEST = LATER.withReading(Reading.of(8, 0, 1.8));
    private static final PegName NAME = new PegName("Mallowfield Pools", "Tansy Cut", "9");

    /** What is lost of what was not forced differs from one power cut to another. */
    private static final int CUTS_AT_EACH_STEP = 6;

    @TempDir
    private Path folder;

    /** Something that is done to the peg of a file, which was looked at before. */
    private interface Deed {
        void to(ShelfPeg peg) throws InputException;
    }

    /** Cuts power at each step in turn; the last run is the first in which nothing failed. */
    private void everyStep(Deed deed) throws IOException, InputException {
        int step = 0;
        boolean done = false;
        while (!done) {
            for (int seed = 0; seed < CUTS_AT_EACH_STEP; seed++) {
                String what = "step " + step + ", seed " + seed;
                Path pegs = Files.createDirectories(folder.resolve(step + "-" + seed));
                PegFile.save(pegs.resolve("a.peg.json"), PEG, Optional.empty());
                PegFile.save(pegs.resolve("a.peg.json"), LATER, Optional.empty());
                FaultyDisk disk = new FaultyDisk();
                ShelfPeg peg = Shelf.of(disk.path(pegs)).pegs().get(0);
                disk.breakWith(FaultyDisk.Fault.DEAD, step, Integer.MAX_VALUE, 0);
                attempt(deed, peg);
                done = disk.failed() == 0;
                disk.cutPower(new Random(seed));
                assertWhole(pegs, what);
                Nightly.delete(pegs);
            }
            step++;
        }
        assertTrue(step > 5, "only " + step + " steps");
    }

    private static void attempt(Deed deed, ShelfPeg peg) {
        try {
            deed.to(peg);
        } catch (InputException e) {
            assertTrue(e.getMessage().endsWith("."), e.getMessage());
        }
    }

    private static void assertWhole(Path pegs, String what) throws IOException, InputException {
        List<Path> found;
        try (Stream<Path> all = Files.walk(pegs)) {
            found = all.filter(path -> path.toString().endsWith(PegFile.ENDING)).toList();
        }
        assertFalse(found.isEmpty(), what);
        boolean kept = false;
        for (Path each : found) {
            Opened opened = PegFile.read(each);
            assertTrue(opened instanceof Opened.Whole, what + ": " + each);
            kept |= opened.peg().readings().size() >= 2;
        }
        assertTrue(kept, what);
    }

    @Test
    void saving() throws IOException, InputException {
        everyStep(peg -> PegFile.save(peg.file(), LATEST, Optional.empty()));
    }

    @Test
    void making() throws IOException, InputException {
        everyStep(peg -> PegFile.create(peg.file().resolveSibling("b.peg.json"), LATEST));
    }

    @Test
    void renaming() throws IOException, InputException {
        everyStep(peg -> ShelfFiles.rename(peg, NAME));
    }

    @Test
    void duplicating() throws IOException, InputException {
        everyStep(ShelfFiles::duplicate);
    }

    @Test
    void moving() throws IOException, InputException {
        everyStep(peg -> ShelfFiles.move(peg, peg.file().resolveSibling("there")));
    }

    @Test
    void deleting() throws IOException, InputException {
        everyStep(ShelfFiles::delete);
    }

    @Test
    void aConfirmedSaveIsThereAfterACut() throws IOException, InputException {
        for (int seed = 0; seed < CUTS_AT_EACH_STEP; seed++) {
            Path file = folder.resolve("c" + seed + ".peg.json");
            FaultyDisk disk = new FaultyDisk();
            PegFile.save(disk.path(file), LATEST, Optional.empty());
            disk.cutPower(new Random(seed));
            assertEquals(3, PegFile.read(file).peg().readings().size(), "seed " + seed);
        }
    }
}

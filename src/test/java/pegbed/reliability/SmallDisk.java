package pegbed.reliability;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import pegbed.model.InputException;
import pegbed.session.Pegs;
import pegbed.storage.disk.PegFile;

/** Lives on a disk that is truly full: a small one of its own, filled up and freed while the program works. */
final class SmallDisk {
    /** A larger disk is not filled up. */
    private static final long LARGEST_BYTES = 64L << 20;

    /**
     * What came of it.
     *
     * @param lives how many there were
     * @param confirmed how many edits and saves were confirmed
     * @param refused how many could not be, and were said so
     */
    record Result(int lives, int confirmed, int refused) {}

    private SmallDisk() {}

    /**
     * @param folder on a file system of 64 MB at most
     * @throws AssertionError if something that was confirmed is not there, or anything stops the next start
     */
    static Result run(Path folder, int lives, long seed) throws IOException, InputException {
        FileStore store = Files.getFileStore(folder);
        if (store.getTotalSpace() > LARGEST_BYTES) {
            throw new IllegalArgumentException("The disk of " + folder + " is too large to be filled up.");
        }
        Random random = new Random(seed);
        Path filler = folder.resolve("filler");
        int confirmed = 0;
        int refused = 0;
        for (int life = 0; life < lives; life++) {
            Path own = Files.createDirectories(folder.resolve("life"));
            Path file = Files.createDirectories(own.resolve("pegs")).resolve("nine.peg.json");
            PegFile.save(file, Pegs.plumbed(5), Optional.empty());
            WorkRecord record = new WorkRecord(PegFile.read(file).peg(), Optional.of(file));
            RandomEditor editor = new RandomEditor(own.resolve("journals"), random, false, FaultRun.listener(record));
            if (random.nextInt(4) == 0) {
                fill(filler, store, random.nextInt(20_000));
            }
            if (!editor.open(file)) {
                throw new AssertionError("Not opened on a full disk: " + editor.refusals());
            }
            for (int step = 0; step < 60; step++) {
                if (random.nextInt(15) == 0) {
                    fill(filler, store, random.nextInt(60_000));
                } else if (random.nextInt(15) == 0) {
                    Files.deleteIfExists(filler);
                }
                editor.step();
            }
            editor.close(false);
            Files.deleteIfExists(filler);
            Reopening.of(own.resolve("journals"), own.resolve("pegs"), record);
            confirmed += record.confirmations();
            refused += editor.refusals().size();
            Nightly.delete(own);
        }
        return new Result(lives, confirmed, refused);
    }

    private static void fill(Path filler, FileStore store, int left) throws IOException {
        Files.deleteIfExists(filler);
        long bytes = store.getUsableSpace() - left;
        if (bytes > 0) {
            Files.write(filler, new byte[(int) bytes]);
        }
    }
}

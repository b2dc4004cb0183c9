package pegbed.reliability;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import pegbed.model.InputException;
import pegbed.session.Pegs;
import pegbed.storage.disk.PegFile;

/**
 * One life of a program on a disk that fails: opens a peg, works on it, dies, and is started again on a sound disk.
 *
 * @param failed how many steps of the disk failed
 * @param confirmed how many edits and saves were confirmed all the same
 */
record FaultRun(int failed, int confirmed) {
    /**
     * @param folder an empty folder
     * @param fault what goes wrong
     * @param powerCut whether the life ends with a power cut, by which what was not forced may be lost; else by a kill
     * @throws AssertionError if something that was confirmed is not there, or anything stops the next start
     */
    static FaultRun of(Path folder, FaultyDisk.Fault fault, boolean powerCut, boolean clockGoesBack, long seed)
            throws IOException, InputException {
        Random random = new Random(seed);
        Path journals = folder.resolve("journals");
        Path pegs = Files.createDirectories(folder.resolve("pegs"));
        Path file = pegs.resolve("nine.peg.json");
        PegFile.save(file, Pegs.plumbed(1 + random.nextInt(8)), Optional.empty());
        FaultyDisk disk = new FaultyDisk();
        boolean named = random.nextInt(5) > 0;
        WorkRecord record = named
                ? new WorkRecord(PegFile.read(file).peg(), Optional.of(file))
                : new WorkRecord(Pegs.bare(), Optional.empty());
        if (named && random.nextBoolean()) {
            workBefore(journals, file, random, record);
        }
        RandomEditor editor = new RandomEditor(disk.path(journals), random, clockGoesBack, listener(record));
        int steps = 5 + random.nextInt(40);
        int breaks = random.nextInt(steps) - steps / 8;
        int heals = breaks + random.nextInt(steps);
        if (breaks < 0) {
            breakDisk(disk, fault, random);
        }
        arrive(editor, disk, named ? Optional.of(file) : Optional.empty());
        int names = 0;
        for (int i = 0; i < steps; i++) {
            if (i == breaks) {
                breakDisk(disk, fault, random);
            }
            if (i == heals) {
                disk.heal();
            }
            if (random.nextInt(25) == 0) {
                editor.saveAs(disk.path(pegs.resolve("other" + names++ + ".peg.json")));
            } else {
                editor.step();
            }
        }
        if (powerCut) {
            disk.cutPower(random);
        } else {
            disk.kill();
        }
        Reopening.of(journals, pegs, record);
        return new FaultRun(disk.failed(), record.confirmations());
    }

    /** An earlier life on a sound disk, which leaves edits in the journal. */
    private static void workBefore(Path journals, Path file, Random random, WorkRecord record) {
        RandomEditor editor = new RandomEditor(journals, random, false, listener(record));
        editor.open(file);
        for (int i = random.nextInt(8); i > 0; i--) {
            editor.step();
        }
        editor.close(false);
    }

    private static void breakDisk(FaultyDisk disk, FaultyDisk.Fault fault, Random random) {
        int failing = random.nextBoolean() ? 1 + random.nextInt(4) : Integer.MAX_VALUE;
        disk.breakWith(fault, random.nextInt(6), failing, random.nextInt(4000));
    }

    /** Opens the peg; where the disk refuses, it must be possible once the disk is well. */
    private static void arrive(RandomEditor editor, FaultyDisk disk, Optional<Path> file) {
        if (file.isEmpty()) {
            editor.begin(Pegs.bare());
        } else if (!editor.open(disk.path(file.get()))) {
            disk.heal();
            if (!editor.open(disk.path(file.get()))) {
                throw new AssertionError("Could not be opened on a sound disk: " + editor.refusals());
            }
        }
    }

    /** Writes down what an editor tells. */
    static RandomEditor.Listener listener(WorkRecord record) {
        return new RandomEditor.Listener() {
            @Override
            public void tries(String state) {
                record.tries(state);
            }

            @Override
            public void confirms(String state) {
                record.confirms(state);
            }

            @Override
            public void moves(Path to) {
                record.moves(FaultyPath.real(to));
            }

            @Override
            public void moved(boolean done) {
                if (done) {
                    record.moved();
                } else {
                    record.stayed();
                }
            }
        };
    }
}

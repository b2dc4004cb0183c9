package pegbed.cli;

import java.io.Closeable;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import pegbed.geometry.Doubts;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.Opened;

/**
 * A peg file that a command works on.
 *
 * @param path the file
 * @param peg what it holds
 * @param fingerprint of the file as it was read
 */
record PegArgument(Path path, Peg peg, Fingerprint fingerprint) {
    /** Reads a file to look at; a damaged one is read as far as it goes, and that is said. */
    static PegArgument look(Path path, PrintWriter err) throws InputException {
        Opened opened = PegFile.read(path);
        if (opened instanceof Opened.Recovered damaged) {
            err.println("Warning: " + path.getFileName() + " is damaged at " + damaged.where() + ": " + damaged.why()
                    + damaged.lostReadings().map(sentence -> " " + sentence).orElse("")
                    + " What follows uses what could be read; run 'pegbed check' to see what was lost.");
        }
        return new PegArgument(path, opened.peg(), opened.fingerprint());
    }

    /** Reads a file to change it; a damaged one is refused. */
    private static PegArgument change(Path path) throws InputException {
        Opened opened = PegFile.read(path);
        if (opened instanceof Opened.Recovered damaged) {
            throw new InputException(path.getFileName() + " is damaged at " + damaged.where() + ": " + damaged.why()
                    + " It was not changed; run 'pegbed check' to see what could be recovered.");
        }
        return new PegArgument(path, opened.peg(), opened.fingerprint());
    }

    /** What a command makes of a peg, and answers. */
    interface Change<A> {
        Changed<A> of(Peg peg) throws InputException;
    }

    /** A changed peg, and what is answered about it. */
    record Changed<A>(Peg peg, A answer) {}

    /**
     * Changes a peg file: tried on what it holds now, and saved with nobody else between reading and saving. Where
     * another program has saved it meanwhile, it is read again and changed as it then is, so that both changes are
     * kept.
     *
     * @throws InputException if the change is refused, the file is damaged or can't be saved, or another program holds
     *     it for longer than five seconds; the file is then as it was
     */
    static <A> Changed<A> change(Path path, PrintWriter err, Change<A> change) throws InputException {
        PegArgument tried = change(path);
        Changed<A> first = checked(change.of(tried.peg()));
        Changed<A> changed;
        Closeable alone = PegFile.lock(path);
        try {
            PegArgument now = change(path);
            changed = now.fingerprint().equals(tried.fingerprint()) ? first : checked(change.of(now.peg()));
            PegFile.save(path, changed.peg(), Optional.of(now.fingerprint()));
        } finally {
            release(alone);
        }
        warnOfMisplaced(changed.peg(), err);
        return changed;
    }

    private static <A> Changed<A> checked(Changed<A> changed) throws InputException {
        check(changed.peg());
        return changed;
    }

    private static void release(Closeable lock) {
        try {
            lock.close();
        } catch (IOException e) {
            // Whether it was saved is said by what came before; the lock ends with this program.
        }
    }

    /**
     * Makes a peg file.
     *
     * @param replace whether a file that is there may be written over
     * @throws InputException if the banks can't be used, readings contradict each other, or it can't be saved
     */
    static void make(Path path, Peg peg, boolean replace, PrintWriter err) throws InputException {
        check(peg);
        if (replace) {
            PegFile.save(path, peg, Optional.empty());
        } else {
            PegFile.create(path, peg);
        }
        warnOfMisplaced(peg, err);
    }

    /** Refuses banks that can't be used, and readings that contradict each other. */
    private static void check(Peg peg) throws InputException {
        PegWater.of(peg);
        Optional<String> contradiction = Doubts.contradiction(peg);
        if (contradiction.isPresent()) {
            throw new InputException(contradiction.get());
        }
    }

    private static void warnOfMisplaced(Peg peg, PrintWriter err) throws InputException {
        Doubts.sentences(Doubts.misplaced(peg, PegWater.of(peg))).forEach(odd -> err.println("Warning: " + odd));
    }
}

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
        Changed<A> first = change.of(tried.peg());
        Closeable alone = PegFile.lock(path);
        try {
            PegArgument now = change(path);
            Changed<A> changed = now.fingerprint().equals(tried.fingerprint()) ? first : change.of(now.peg());
            save(path, changed.peg(), to -> PegFile.save(to, changed.peg(), Optional.of(now.fingerprint())), err);
            return changed;
        } finally {
            release(alone);
        }
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
        if (replace) {
            save(path, peg, to -> PegFile.save(to, peg, Optional.empty()), err);
        } else {
            save(path, peg, to -> PegFile.create(to, peg), err);
        }
    }

    private interface Saving {
        void to(Path path) throws InputException;
    }

    /** Looks a peg over, saves it, and warns of misplaced readings. */
    private static void save(Path path, Peg peg, Saving saving, PrintWriter err) throws InputException {
        PegWater water = PegWater.of(peg);
        Optional<String> contradiction = Doubts.contradiction(peg);
        if (contradiction.isPresent()) {
            throw new InputException(contradiction.get());
        }
        saving.to(path);
        Doubts.sentences(Doubts.misplaced(peg, water)).forEach(odd -> err.println("Warning: " + odd));
    }
}

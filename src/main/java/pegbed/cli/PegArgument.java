package pegbed.cli;

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
                    + " What follows uses what could be read; run 'pegbed check' to see what was lost.");
        }
        return new PegArgument(path, opened.peg(), opened.fingerprint());
    }

    /** Reads a file to change it; a damaged one is refused. */
    static PegArgument change(Path path) throws InputException {
        Opened opened = PegFile.read(path);
        if (opened instanceof Opened.Recovered damaged) {
            throw new InputException(path.getFileName() + " is damaged at " + damaged.where() + ": " + damaged.why()
                    + " It was not changed; run 'pegbed check' to see what could be recovered.");
        }
        return new PegArgument(path, opened.peg(), opened.fingerprint());
    }

    /**
     * Looks a changed peg over, warns of misplaced readings, and saves it.
     *
     * @param expected the fingerprint of the file that is written over; empty for a new file
     * @throws InputException if the banks can't be used, readings contradict each other, or it can't be saved
     */
    static void save(Path path, Peg peg, Optional<Fingerprint> expected, PrintWriter err) throws InputException {
        PegWater water = PegWater.of(peg);
        Optional<String> contradiction = Doubts.contradiction(peg);
        if (contradiction.isPresent()) {
            throw new InputException(contradiction.get());
        }
        PegFile.save(path, peg, expected);
        Doubts.sentences(Doubts.misplaced(peg, water)).forEach(odd -> err.println("Warning: " + odd));
    }
}

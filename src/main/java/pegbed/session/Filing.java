package pegbed.session;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.storage.disk.Journal;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.Opened;
import pegbed.storage.peg.PegWriter;

/**
 * Where the open peg lives on the disk: its file, and its journal between saves. Every call waits for the disk, so all
 * of them belong to one thread of their own.
 */
final class Filing {
    private final Path journals;
    private Optional<Path> file = Optional.empty();
    private Optional<Fingerprint> fingerprint = Optional.empty();
    private Optional<Journal> journal = Optional.empty();

    /** @param journals the folder in which journals are kept */
    Filing(Path journals) {
        this.journals = journals;
    }

    /**
     * What opening gave.
     *
     * @param peg the peg to go on with
     * @param saved what its file holds; empty where it has to be saved anew
     * @param file its file; empty where it has to be given a name
     * @param news what the person should hear, one sentence; empty if nothing
     */
    record Arrival(Peg peg, Optional<Peg> saved, Optional<Path> file, String news) {}

    /** A peg without a file. */
    Arrival begin(Peg peg) throws InputException {
        moveTo(Optional.empty());
        file = Optional.empty();
        fingerprint = Optional.empty();
        journal = unnamedJournal();
        return new Arrival(peg, Optional.of(peg), file, "");
    }

    /**
     * The peg as the journal of a file has it whose file is no use; the journal stays as it is, and so does the file.
     *
     * @param trouble what is wrong with the file, one sentence
     */
    private Optional<Arrival> keptOf(Path path, String trouble) throws InputException {
        String name = journalName(path);
        Optional<Journal> left = Journal.exists(journals, name) ? readable(name) : Optional.empty();
        if (left.isEmpty()) {
            return Optional.empty();
        }
        Peg kept = left.get().last().orElseThrow().peg();
        closeQuietly(left.get());
        begin(kept);
        return Optional.of(new Arrival(
                kept,
                Optional.empty(),
                file,
                trouble
                        + " The peg is here as it was when it was last edited; the file stays as it was, and saving asks for"
                        + " a new name."));
    }

    private Optional<Journal> unnamedJournal() throws InputException {
        return Journal.open(journals, Journal.UNNAMED + UUID.randomUUID());
    }

    /**
     * Opens a file, with the edits that were kept since it was last saved. Opening the open file again gives those up.
     * Of a file that is damaged or can't be read, the edits that were kept are the peg as it was last.
     *
     * @throws InputException if it can't be read, or is open elsewhere; the peg that was open stays so
     */
    Arrival open(Path path) throws InputException {
        Opened opened;
        try {
            opened = PegFile.read(path);
        } catch (InputException e) {
            Optional<Arrival> kept = keptOf(path, e.getMessage());
            if (kept.isEmpty()) {
                throw e;
            }
            return kept.get();
        }
        if (opened instanceof Opened.Recovered damaged) {
            Optional<Arrival> kept = keptOf(path, damagedAt(path, damaged));
            if (kept.isPresent()) {
                return kept.get();
            }
            begin(damaged.peg());
            return new Arrival(damaged.peg(), Optional.empty(), file, damagedNews(path, damaged));
        }
        if (file.filter(path::equals).isPresent()) {
            clear();
            fingerprint = Optional.of(opened.fingerprint());
            return new Arrival(opened.peg(), Optional.of(opened.peg()), file, "");
        }
        Claim claim = claim(
                path, path.getFileName() + " is already open in another window; go on there, or close it there first.");
        moveTo(claim.journal());
        file = Optional.of(path);
        fingerprint = Optional.of(opened.fingerprint());
        Optional<Journal.Entry> kept = claim.kept();
        if (kept.isEmpty() || sameOnDisk(kept.get().peg(), opened.peg())) {
            return new Arrival(opened.peg(), Optional.of(opened.peg()), file, claim.trouble());
        }
        boolean sameBase = kept.get().base().equals(fingerprint);
        fingerprint = kept.get().base();
        return new Arrival(
                kept.get().peg(),
                Optional.of(opened.peg()),
                file,
                sameBase
                        ? "Edits that had not been saved were kept and are back; save them, or undo by opening an earlier version."
                        : "Edits that had not been saved are back, but the file was changed by somebody else since; save under another name to keep both.");
    }

    /**
     * The journal of a file.
     *
     * @param journal empty where none can be had, such as on a full disk
     * @param kept what it holds
     * @param trouble what the person should hear about it, one sentence; empty if nothing
     */
    private record Claim(Optional<Journal> journal, Optional<Journal.Entry> kept, String trouble) {}

    /**
     * Takes the journal of a file. A peg can be worked on without one, but not past edits that are kept in one.
     *
     * @param elsewhere the sentence for when it is open in another window
     */
    private Claim claim(Path path, String elsewhere) throws InputException {
        String name = journalName(path);
        Optional<Journal> own;
        try {
            own = Journal.open(journals, name);
        } catch (InputException e) {
            if (Journal.exists(journals, name)) {
                throw e;
            }
            return new Claim(Optional.empty(), Optional.empty(), e.getMessage());
        }
        if (own.isEmpty()) {
            throw new InputException(elsewhere);
        }
        try {
            return new Claim(own, own.get().last(), "");
        } catch (InputException e) {
            if (e.getCause() instanceof IOException) {
                closeQuietly(own.get());
                throw e;
            }
            return setAside(own.get());
        }
    }

    private static Claim setAside(Journal unreadable) throws InputException {
        try {
            Path aside = unreadable.setAside();
            return new Claim(
                    Optional.of(unreadable),
                    Optional.empty(),
                    "Edits that had not been saved can't be read by this Pegbed, and were set aside as " + aside + ".");
        } catch (InputException e) {
            closeQuietly(unreadable);
            throw e;
        }
    }

    private static void closeQuietly(Journal journal) {
        try {
            journal.close();
        } catch (InputException e) {
            // It is unlocked all the same, and what it holds stays.
        }
    }

    /** Places are kept as distance and direction, by which their last binary digit may change. */
    private static boolean sameOnDisk(Peg a, Peg b) {
        return PegWriter.text(a).equals(PegWriter.text(b));
    }

    private static String damagedAt(Path path, Opened.Recovered damaged) {
        return path.getFileName() + " is damaged at " + damaged.where() + ": " + damaged.why();
    }

    private static String damagedNews(Path path, Opened.Recovered damaged) {
        return damaged.inWords(path.getFileName().toString())
                + "; what could be read is here, the file stays as it was, and saving asks for a new name.";
    }

    /** Edits of pegs without a file that an earlier run left behind, the first that nobody else has open. */
    Optional<Arrival> leftBehind() throws InputException {
        for (String name : Journal.names(journals)) {
            Optional<Journal> left = name.startsWith(Journal.UNNAMED) ? readable(name) : Optional.empty();
            if (left.isEmpty()) {
                continue;
            }
            Peg kept = left.get().last().orElseThrow().peg();
            moveTo(left);
            file = Optional.empty();
            fingerprint = Optional.empty();
            return Optional.of(new Arrival(
                    kept,
                    Optional.empty(),
                    file,
                    "A peg that had not been saved was kept and is back; save it under a name."));
        }
        return Optional.empty();
    }

    /** A journal that is open nowhere else and holds something; one that can't be read is passed over. */
    private Optional<Journal> readable(String name) {
        try {
            Optional<Journal> found = Journal.open(journals, name);
            if (found.isEmpty() || holdsAPeg(found.get())) {
                return found;
            }
            found.get().close();
        } catch (InputException e) {
            // It stays where it is; another peg may still be taken up.
        }
        return Optional.empty();
    }

    private static boolean holdsAPeg(Journal journal) {
        try {
            return journal.last().isPresent();
        } catch (InputException unreadable) {
            return false;
        }
    }

    /** Keeps the peg in the journal, making one where there was none; once this returns, it is on the disk. */
    void keep(Peg peg) throws InputException {
        if (journal.isEmpty()) {
            journal = file.isPresent() ? Journal.open(journals, journalName(file.get())) : unnamedJournal();
        }
        if (journal.isEmpty()) {
            throw new InputException(
                    "Edits can't be kept safe between saves: another window has the file open. Save under another name.");
        }
        journal.get().append(new Journal.Entry(peg, fingerprint));
    }

    /** Saves to the peg's own file, unless somebody else has changed it. */
    void save(Peg peg) throws InputException {
        Path path = file.orElseThrow(() -> new InputException("This peg has no file yet; save it under a name."));
        fingerprint = Optional.of(PegFile.save(path, peg, fingerprint));
        journal.ifPresent(Filing::clearQuietly);
    }

    /** Saves under a name, which is the peg's own from then on; what was there becomes an earlier version. */
    void saveAs(Path path, Peg peg) throws InputException {
        if (file.filter(path::equals).isPresent()) {
            fingerprint = Optional.of(PegFile.save(path, peg, Optional.empty()));
            journal.ifPresent(Filing::clearQuietly);
            return;
        }
        Claim claim = claim(path, path.getFileName() + " is open in another window; choose another name.");
        Fingerprint saved;
        try {
            saved = PegFile.save(path, peg, Optional.empty());
        } catch (InputException e) {
            claim.journal().ifPresent(Filing::closeQuietly);
            throw e;
        }
        claim.journal().ifPresent(Filing::clearQuietly);
        journal.ifPresent(Filing::clearQuietly);
        moveTo(claim.journal());
        file = Optional.of(path);
        fingerprint = Optional.of(saved);
    }

    /** The peg is in its file; a journal that can't be emptied holds the same and does no harm. */
    private static void clearQuietly(Journal journal) {
        try {
            journal.clear();
        } catch (InputException e) {
            // If edits can't be kept either, the next one says so.
        }
    }

    /** Whether the file no longer holds what it held when it was opened or saved here. */
    boolean changedByAnother() {
        if (file.isEmpty() || fingerprint.isEmpty()) {
            return false;
        }
        try {
            return !PegFile.read(file.get()).fingerprint().equals(fingerprint.get());
        } catch (InputException goneOrUnreadable) {
            return false;
        }
    }

    /** The edits since the last save are given up. */
    void giveUp() throws InputException {
        clear();
    }

    private void clear() throws InputException {
        if (journal.isPresent()) {
            journal.get().clear();
        }
    }

    private void moveTo(Optional<Journal> other) {
        journal.ifPresent(Filing::closeQuietly);
        journal = other;
    }

    /** Lets go of the journal; edits kept in it stay kept. */
    void leave() throws InputException {
        if (journal.isPresent()) {
            Journal old = journal.get();
            journal = Optional.empty();
            old.close();
        }
    }

    private static String journalName(Path path) {
        String whole = path.toAbsolutePath().normalize().toString();
        return "peg-"
                + Fingerprint.of(whole.getBytes(StandardCharsets.UTF_8))
                        .sha256()
                        .substring(0, 32);
    }
}

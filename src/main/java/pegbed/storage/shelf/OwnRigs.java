package pegbed.storage.shelf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.RigTemplate;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.FileOps;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Opened;

/**
 * The person's own rig templates, with which new pegs begin. They are kept like a peg, as a peg file that holds nothing
 * but its wishes, {@value #FILE} in the program's own folder.
 */
public final class OwnRigs {
    /** The name of the file. */
    public static final String FILE = "own-rigs" + PegFile.ENDING;

    private final Path file;
    private final FileOps files;

    /** @param folder the program's own folder, see {@code Folders} */
    public OwnRigs(Path folder) {
        this(folder, FileOps.DISK);
    }

    OwnRigs(Path folder, FileOps files) {
        this.file = folder.resolve(FILE);
        this.files = files;
    }

    /**
     * The person's own templates; empty where none are kept.
     *
     * @throws InputException if the file is damaged or can't be read
     */
    public List<RigTemplate> read() throws InputException {
        return whole().map(kept -> templates(kept.peg())).orElse(List.of());
    }

    /**
     * A new peg with the person's own templates; as it was where none are kept.
     *
     * @throws InputException if the file is damaged or can't be read
     */
    public Peg into(Peg peg) throws InputException {
        List<RigTemplate> own = read();
        return own.isEmpty() ? peg : with(peg, own);
    }

    /**
     * Keeps templates, all or nothing, as {@link AtomicFileWriter} tells; earlier ones are kept beside. Whatever else a
     * later version wrote into the file stays.
     *
     * @param templates empty to begin new pegs with {@link RigTemplate#USUAL} again
     * @throws InputException if they could not be kept, or what is there is damaged; the file is then as it was
     */
    public void save(List<RigTemplate> templates) throws InputException {
        Optional<Opened.Whole> before = whole();
        if (before.isEmpty()) {
            makeFolder();
        }
        PegFile.save(
                file,
                with(before.map(Opened.Whole::peg).orElse(Peg.EMPTY), templates),
                before.map(Opened.Whole::fingerprint),
                files);
    }

    private Optional<Opened.Whole> whole() throws InputException {
        if (!files.exists(file)) {
            return Optional.empty();
        }
        Opened opened = PegFile.read(file, files);
        if (opened instanceof Opened.Whole whole) {
            return Optional.of(whole);
        }
        Opened.Recovered damaged = (Opened.Recovered) opened;
        throw new InputException("Your own rigs in " + file + " are damaged at " + damaged.where() + ": "
                + damaged.why() + " Put that right or move the file away.");
    }

    private void makeFolder() throws InputException {
        try {
            files.createFolder(file.toAbsolutePath().getParent());
        } catch (IOException | SecurityException e) {
            throw new InputException(
                    "The folder of " + file + " could not be made: " + AtomicFileWriter.reason(e) + ".", e);
        }
    }

    private static List<RigTemplate> templates(Peg peg) {
        return peg.wishes().rigs().templates();
    }

    private static Peg with(Peg peg, List<RigTemplate> templates) {
        return peg.withWishes(peg.wishes().withRigs(peg.wishes().rigs().withTemplates(templates)));
    }
}

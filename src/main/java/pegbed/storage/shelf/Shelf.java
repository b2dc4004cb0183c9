package pegbed.storage.shelf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import pegbed.model.InputException;
import pegbed.model.Parallel;
import pegbed.model.PegName;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.FileOps;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.Opened;
import pegbed.storage.peg.OtherPegs;
import pegbed.storage.peg.PegReader;

/**
 * The person's own pegs: all peg files of a folder and the folders in it, as they were when it was looked at. Folders
 * whose names begin with a point, and those named {@value ShelfFiles#DELETED_FOLDER}, are passed over.
 *
 * <p>Immutable. {@link #refreshed()} looks again and reads only the files whose time or size has changed.
 */
public final class Shelf {
    private final Path folder;
    private final List<Kept> kept;

    private Shelf(Path folder, List<Kept> kept) {
        this.folder = folder;
        this.kept = kept;
    }

    /** A peg with what tells whether its file has changed. */
    private record Kept(ShelfPeg peg, String searched, long modifiedMillis, long bytes) {}

    private record Found(Path file, long modifiedMillis, long bytes) {}

    /**
     * Looks at a folder. Files that can't be read are on the shelf too, with their trouble.
     *
     * @throws InputException if there is no such folder or it can't be listed
     */
    public static Shelf of(Path folder) throws InputException {
        return look(folder, Map.of());
    }

    /**
     * This shelf as it is now.
     *
     * @throws InputException if the folder has gone or can't be listed
     */
    public Shelf refreshed() throws InputException {
        Map<Path, Kept> known = new HashMap<>();
        kept.forEach(each -> known.put(each.peg().file(), each));
        return look(folder, known);
    }

    private static Shelf look(Path folder, Map<Path, Kept> known) throws InputException {
        if (!Files.isDirectory(folder)) {
            throw new InputException("There is no folder " + folder + "; give the folder that your peg files are in.");
        }
        try {
            List<Kept> kept = Parallel.map(found(folder), found -> read(found, known)).stream()
                    .filter(Objects::nonNull)
                    .sorted(Comparator.comparing(Kept::peg, ORDER))
                    .toList();
            return new Shelf(folder, kept);
        } catch (IOException | UncheckedIOException | SecurityException e) {
            throw new InputException(
                    "The folder " + folder + " can't be listed: " + AtomicFileWriter.reason(e) + ".", e);
        }
    }

    /** By venue, water and number, numbers by their value. */
    private static final Comparator<ShelfPeg> ORDER = Comparator.comparing(
                    (ShelfPeg peg) -> peg.name().venue(), String.CASE_INSENSITIVE_ORDER)
            .thenComparing(peg -> peg.name().water(), String.CASE_INSENSITIVE_ORDER)
            .thenComparingLong(peg -> OtherPegs.leadingNumber(peg.name()))
            .thenComparing(peg -> peg.name().number(), String.CASE_INSENSITIVE_ORDER)
            .thenComparing(ShelfPeg::file);

    private static List<Found> found(Path folder) throws IOException {
        List<Found> found = new ArrayList<>();
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
                String name = AtomicFileWriter.name(dir);
                boolean passed = name.startsWith(".") || name.equals(ShelfFiles.DELETED_FOLDER);
                return passed && !dir.equals(folder) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                String name = AtomicFileWriter.name(file);
                if (name.endsWith(PegFile.ENDING) && !name.startsWith(".") && attributes.isRegularFile()) {
                    found.add(new Found(file, attributes.lastModifiedTime().toMillis(), attributes.size()));
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
                return FileVisitResult.CONTINUE;
            }
        });
        return found;
    }

    private static Kept read(Found found, Map<Path, Kept> known) {
        Kept before = known.get(found.file());
        if (before != null && before.modifiedMillis() == found.modifiedMillis() && before.bytes() == found.bytes()) {
            return before;
        }
        ShelfPeg peg = read(found.file());
        return new Kept(peg, peg.searched(), found.modifiedMillis(), found.bytes());
    }

    private static ShelfPeg read(Path file) {
        byte[] bytes;
        try {
            bytes = FileOps.DISK.read(file);
        } catch (IOException | SecurityException e) {
            return ShelfPeg.unreadable(
                    file,
                    Fingerprint.of(new byte[0]),
                    AtomicFileWriter.name(file) + " could not be read: " + AtomicFileWriter.reasonOfReading(e) + ".");
        }
        try {
            Opened opened = PegReader.read(AtomicFileWriter.name(file), bytes);
            Optional<String> trouble = opened instanceof Opened.Recovered damaged
                    ? Optional.of("It is damaged at " + damaged.where() + ": " + damaged.why())
                    : Optional.empty();
            return ShelfPeg.of(file, opened.peg(), opened.fingerprint(), trouble);
        } catch (InputException e) {
            return ShelfPeg.unreadable(file, Fingerprint.of(bytes), e.getMessage());
        } catch (RuntimeException unforeseen) {
            // One file must not take the others off the shelf.
            return ShelfPeg.unreadable(
                    file,
                    Fingerprint.of(bytes),
                    AtomicFileWriter.name(file) + " holds something that can't be read; take an earlier version from "
                            + AtomicFileWriter.EARLIER_FOLDER + ".");
        }
    }

    /** The folder that was looked at. */
    public Path folder() {
        return folder;
    }

    /** All pegs by venue, water and number. */
    public List<ShelfPeg> pegs() {
        return kept.stream().map(Kept::peg).toList();
    }

    /**
     * The pegs of which every word of a text is part of the venue, water, number or file name, capitals and accents
     * aside; in the same order, all of them for a blank text.
     */
    public List<ShelfPeg> find(String text) {
        List<String> words = List.of(ShelfPeg.plain(text).split("\\s+"));
        return kept.stream()
                .filter(each -> words.stream().allMatch(each.searched()::contains))
                .map(Kept::peg)
                .toList();
    }

    /** The files that are new, gone or hold something else than on an earlier look, in the order of their paths. */
    public List<Path> changedSince(Shelf earlier) {
        Map<Path, Fingerprint> before = new HashMap<>();
        earlier.kept.forEach(each -> before.put(each.peg().file(), each.peg().fingerprint()));
        List<Path> changed = new ArrayList<>();
        for (Kept each : kept) {
            if (!each.peg().fingerprint().equals(before.remove(each.peg().file()))) {
                changed.add(each.peg().file());
            }
        }
        changed.addAll(before.keySet());
        changed.sort(Comparator.naturalOrder());
        return changed;
    }

    /** The pegs that share venue, water and number with another, as a syncing folder's second copies do. */
    public List<ShelfPeg> twins() {
        Map<PegName, Integer> count = new HashMap<>();
        pegs().forEach(peg -> count.merge(peg.name(), 1, Integer::sum));
        return pegs().stream()
                .filter(peg -> peg.visits() > 0 && count.get(peg.name()) > 1)
                .toList();
    }
}

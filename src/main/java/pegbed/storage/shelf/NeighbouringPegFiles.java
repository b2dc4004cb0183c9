package pegbed.storage.shelf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import pegbed.model.InputException;
import pegbed.model.Parallel;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.NameOnly;
import pegbed.storage.peg.Opened;
import pegbed.storage.peg.OtherPegs;

/**
 * The other pegs of a peg's own water that lie in the same folder as its file; folders in it are not looked into. What
 * they are called is read of every peg file there; only the nearest by number are read whole, one file for each. The
 * same folder gives the same pegs in the same order.
 *
 * @param pegs the nearest by number first
 * @param passedOver what could not be read, and what is a copy, a sentence for each file
 */
public record NeighbouringPegFiles(List<Peg> pegs, List<String> passedOver) {
    /** No other pegs. */
    public static final NeighbouringPegFiles NONE = new NeighbouringPegFiles(List.of(), List.of());

    /** So many pegs are read at most. */
    public static final int MOST = OtherPegs.MOST;

    /** In a folder of more peg files than this the first ones by name are looked at. */
    static final int MOST_FILES = 4000;

    /** A larger file is passed over: reading it each time would take longer than it is worth, bytes. */
    static final long LARGEST_BYTES = 2_000_000;

    private static final int MOST_SENTENCES = 3;

    public NeighbouringPegFiles {
        pegs = List.copyOf(pegs);
        passedOver = List.copyOf(passedOver);
    }

    private record Found(Path file, PegName name) {}

    /**
     * The other pegs beside a file. A folder that can't be listed has none.
     *
     * @param file of the peg; it need not exist
     * @param peg its name and wishes count, not what the file holds
     */
    public static NeighbouringPegFiles beside(Path file, Peg peg) {
        if (peg.wishes().byItself() || peg.name().water().isBlank()) {
            return NONE;
        }
        List<String> passedOver = new ArrayList<>();
        List<Found> found = new ArrayList<>();
        for (Object each : names(file)) {
            if (each instanceof Found one) {
                found.add(one);
            } else {
                passedOver.add((String) each);
            }
        }
        List<Peg> pegs = new ArrayList<>();
        for (Path each : nearest(found, peg.name())) {
            try {
                Peg other = whole(each);
                refuseCopy(each, other, peg, pegs);
                pegs.add(other);
            } catch (InputException e) {
                passedOver.add(e.getMessage());
            }
        }
        return new NeighbouringPegFiles(pegs, shortened(passedOver));
    }

    /** A copy under another number would count the same readings twice. */
    private static void refuseCopy(Path file, Peg other, Peg own, List<Peg> pegs) throws InputException {
        if (OtherPegs.isCopy(other, own)) {
            throw new InputException(AtomicFileWriter.name(file)
                    + " has the same readings as this peg, as a copy has, and teaches nothing.");
        }
        for (Peg before : pegs) {
            if (OtherPegs.isCopy(other, before)) {
                throw new InputException(AtomicFileWriter.name(file) + " has the same readings as "
                        + before.name().title() + ", as a copy has, and teaches nothing more.");
            }
        }
    }

    private static List<String> shortened(List<String> sentences) {
        if (sentences.size() <= MOST_SENTENCES) {
            return sentences;
        }
        List<String> few = new ArrayList<>(sentences.subList(0, MOST_SENTENCES));
        few.add((sentences.size() - MOST_SENTENCES) + " more files could not be used either.");
        return few;
    }

    /** What the other peg files of a folder are called, or a sentence, in the order of their names. */
    private static List<Object> names(Path file) {
        Path whole = file.toAbsolutePath();
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> entries =
                Files.newDirectoryStream(Objects.requireNonNullElse(whole.getParent(), whole))) {
            for (Path entry : entries) {
                String name = AtomicFileWriter.name(entry);
                if (name.endsWith(PegFile.ENDING)
                        && !name.startsWith(".")
                        && !name.equals(AtomicFileWriter.name(whole))) {
                    files.add(entry);
                }
            }
        } catch (IOException | java.nio.file.DirectoryIteratorException | SecurityException | UncheckedIOException e) {
            return List.of();
        }
        files.sort(Comparator.comparing(AtomicFileWriter::name));
        return Parallel.map(
                        files.subList(0, Math.min(files.size(), MOST_FILES)),
                        entry -> Files.isRegularFile(entry) ? name(entry) : Optional.empty())
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Object> name(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return NameOnly.of(in).map(name -> new Found(file, name));
        } catch (IOException | RuntimeException e) {
            return Optional.of(unreadable(file));
        }
    }

    private static String unreadable(Path file) {
        return AtomicFileWriter.name(file)
                + " could not be read and was passed over; run 'pegbed check' on it to see what is wrong.";
    }

    /** Files of other pegs of a water, the nearest by number first; of several of one peg the shortest name. */
    private static List<Path> nearest(List<Found> found, PegName own) {
        Set<String> seen = new HashSet<>(Set.of(ShelfPeg.plain(own.number())));
        return found.stream()
                .filter(each -> same(each.name().venue(), own.venue())
                        && same(each.name().water(), own.water()))
                .sorted(Comparator.comparingInt((Found each) ->
                                AtomicFileWriter.name(each.file()).length())
                        .thenComparing(each -> AtomicFileWriter.name(each.file())))
                .filter(each -> seen.add(ShelfPeg.plain(each.name().number())))
                .sorted(Comparator.comparingLong((Found each) -> OtherPegs.apart(each.name(), own))
                        .thenComparing(each -> each.name().number())
                        .thenComparing(each -> AtomicFileWriter.name(each.file())))
                .limit(MOST)
                .map(Found::file)
                .toList();
    }

    private static boolean same(String a, String b) {
        return ShelfPeg.plain(a).equals(ShelfPeg.plain(b));
    }

    private static Peg whole(Path file) throws InputException {
        String name = AtomicFileWriter.name(file);
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new InputException(name + " has " + (Files.size(file) >> 20)
                        + " MB, too much to be read beside another peg, and was passed over.");
            }
        } catch (IOException e) {
            throw new InputException(
                    name + " could not be read and was passed over: " + AtomicFileWriter.reasonOfReading(e) + ".", e);
        }
        try {
            if (PegFile.read(file) instanceof Opened.Whole sound) {
                return sound.peg();
            }
        } catch (RuntimeException unforeseen) {
            // One file must not stop the answers about the pegs beside it.
            throw new InputException(unreadable(file), unforeseen);
        }
        throw new InputException(
                name + " is damaged and was passed over; run 'pegbed check' on it to see what could be recovered.");
    }
}

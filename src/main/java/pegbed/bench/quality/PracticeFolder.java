package pegbed.bench.quality;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbed.bench.practice.PracticePeg;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Peg;

/**
 * A folder of practice pegs.
 *
 * @param path of it
 * @param pegs those whose banks can be used
 * @param refused the others
 */
record PracticeFolder(Path path, List<PracticePeg> pegs, List<BenchReport.LeftOut> refused) {
    static PracticeFolder read(Path path) throws IOException, InputException {
        List<PracticePeg> usable = new ArrayList<>();
        List<BenchReport.LeftOut> refused = new ArrayList<>();
        for (PracticePeg peg : PracticePeg.all(path)) {
            try {
                PegWater.of(peg.empty());
                usable.add(peg);
            } catch (InputException e) {
                refused.add(new BenchReport.LeftOut(name(path), peg.name(), e.getMessage()));
            }
        }
        if (usable.isEmpty()) {
            throw new InputException("No peg of " + path + " has banks that can be used. The first: "
                    + refused.get(0).reason());
        }
        return new PracticeFolder(path, List.copyOf(usable), List.copyOf(refused));
    }

    static List<PracticeFolder> all(List<Path> paths) throws IOException, InputException {
        List<PracticeFolder> folders = new ArrayList<>();
        for (Path path : paths) {
            folders.add(read(path));
        }
        return folders;
    }

    private static String name(Path path) {
        return path.toAbsolutePath().normalize().getFileName().toString();
    }

    String name() {
        return name(path);
    }

    /** A peg with the readings of one of its tables; empty where it has no such table. */
    Optional<Peg> with(PracticePeg peg, String readings) throws InputException {
        Path file = path.resolve(peg.name()).resolve(readings + ".csv");
        return Files.exists(file) ? Optional.of(peg.with(file)) : Optional.empty();
    }

    BenchReport.LeftOut without(PracticePeg peg, String readings) {
        return new BenchReport.LeftOut(name(), peg.name(), "It has no " + readings + ".csv.");
    }
}

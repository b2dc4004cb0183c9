package pegbed.bench.speed;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.PegWriter;
import pegbed.storage.shelf.NeighbouringPegFiles;
import pegbed.storage.shelf.Shelf;
import pegbed.storage.shelf.ShelfPeg;

/** A shelf of two thousand pegs in one folder: 40 waters of 50 pegs with 38 readings each. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ShelfBenchmark {
    private static final int PEGS = 2000;
    private static final int A_WATER = 50;

    private Path folder;
    private Shelf shelf;
    private Peg peg;

    @Setup
    public void fill() throws InputException, IOException {
        folder = Files.createTempDirectory("shelf");
        peg = PegFile.read(Path.of("sample-pegs/tansy-cut-14.peg.json")).peg();
        for (int i = 0; i < PEGS; i++) {
            PegName name = new PegName("Mallowfield Pools", "Water " + i / A_WATER, "" + (1 + i % A_WATER));
            Files.write(file(i), PegWriter.bytes(peg.withName(name)));
        }
        peg = PegFile.read(file(PEGS / 2)).peg();
        shelf = Shelf.of(folder);
    }

    private Path file(int i) {
        return folder.resolve("peg-" + i + PegFile.ENDING);
    }

    @TearDown
    public void remove() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).forEach(path -> {
                try {
                    Files.delete(path);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }

    /** The first look: every file is read. */
    @Benchmark
    public Shelf listed() throws InputException {
        return Shelf.of(folder);
    }

    /** Another look, with nothing changed. */
    @Benchmark
    public Shelf lookedAtAgain() throws InputException {
        return shelf.refreshed();
    }

    /** One search as it is typed. */
    @Benchmark
    public List<ShelfPeg> searched() {
        return shelf.find("water 17 4");
    }

    /** What one command looks for: the other pegs of a water, read whole. */
    @Benchmark
    public NeighbouringPegFiles otherPegs() {
        return NeighbouringPegFiles.beside(file(PEGS / 2), peg);
    }
}

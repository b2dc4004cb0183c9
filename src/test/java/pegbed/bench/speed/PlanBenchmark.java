package pegbed.bench.speed;

import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.LineCounts;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Wishes;
import pegbed.plan.Plan;
import pegbed.storage.disk.PegFile;

/** What follows on a changed wish, on one core: candidates, the choice of the lines, rigs, words not counted. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PlanBenchmark {
    private Findings findings;

    @Setup
    public void load() throws InputException {
        Peg peg = PegFile.read(Path.of("sample-pegs/tansy-cut-14.peg.json")).peg();
        findings = Findings.of(PegMap.of(peg, Monitor.NONE), OptionalDouble.empty());
    }

    /** One line in each of four zones, as usual: up to 32 candidates. */
    @Benchmark
    public Plan usual() {
        return Plan.of(findings, Wishes.NONE);
    }

    /** One line in each of the five zones: up to 40 candidates. */
    @Benchmark
    public Plan everyZone() {
        return Plan.of(findings, wishing(new LineCounts(1, 1, 1, 1, 1)));
    }

    /** Eight lines out of up to 40 candidates. */
    @Benchmark
    public Plan eightLines() {
        return Plan.of(findings, wishing(new LineCounts(2, 3, 1, 1, 1)));
    }

    /** Forty candidates: the 36 of this peg, and four lines that the person has fixed. */
    @Benchmark
    public Plan fortyCandidates() {
        Wishes wishes = wishing(new LineCounts(1, 1, 1, 1, 1));
        var lines = wishes.lines()
                .fixing(Place.polar(4.5, -30))
                .fixing(Place.polar(7.5, 40))
                .fixing(Place.polar(11, 20))
                .fixing(Place.polar(10, -50));
        return Plan.of(findings, wishes.withLines(lines));
    }

    private static Wishes wishing(LineCounts counts) {
        return Wishes.NONE.withLines(Wishes.NONE.lines().withCounts(counts));
    }
}

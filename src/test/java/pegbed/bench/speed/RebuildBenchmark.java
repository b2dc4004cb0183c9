package pegbed.bench.speed;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.storage.disk.PegFile;
import pegbed.surface.BottomModel;
import pegbed.surface.IncrementalUpdate;
import pegbed.surface.contour.ContourLevels;
import pegbed.surface.contour.Contours;
import pegbed.surface.grid.CubicUpsampling;
import pegbed.surface.grid.Field;
import pegbed.surface.survey.Survey;

/** What follows on a change of a peg, on one core: fit, grid, doubt, 5 cm, flats, contours. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class RebuildBenchmark {
    /** Number of readings, the sample's own repeated around where it has fewer. */
    @Param({"30", "60", "200"})
    public int readings;

    private Peg peg;
    private PegMap map;
    private Survey more;

    @Setup
    public void load() throws InputException {
        Peg sample = PegFile.read(Path.of("sample-pegs/tansy-cut-14.peg.json")).peg();
        List<Reading> own = sample.readings();
        List<Reading> all = new java.util.ArrayList<>();
        for (int i = 0; i < readings; i++) {
            Reading reading = own.get(i % own.size());
            int round = i / own.size();
            double nudge = 0.3 * round;
            all.add(Reading.of(
                    reading.place().distanceMetres() + nudge,
                    reading.place().angleDegrees() + 5 * nudge,
                    reading.depthMetres()));
        }
        peg = sample.withToday(visit -> visit.withReadings(all));
        map = PegMap.of(peg, Monitor.NONE);
        more = Survey.of(peg.withReading(Reading.of(7.3, 8, 1.5)), map.water());
    }

    /** Fit, 25 cm grid with doubt and discs, deepest, flats, 5 cm depth and doubt, contours. */
    @Benchmark
    public void fullRebuild(Blackhole hole) throws InputException {
        rest(PegMap.of(peg, Monitor.NONE), hole);
    }

    /** The same on a bottom that is fitted already. */
    @Benchmark
    public void rebuildWithoutRefit(Blackhole hole) throws InputException {
        rest(PegMap.of(peg, map.water(), map.bottom(), Monitor.NONE), hole);
    }

    /** One more reading on what was learned before: the bottom, and the 25 cm grid with doubt and discs. */
    @Benchmark
    public Object oneReadingAdded() {
        return IncrementalUpdate.of(map.bottom(), map.grid(), more).orElseThrow();
    }

    private void rest(PegMap fresh, Blackhole hole) {
        hole.consume(Findings.of(fresh, OptionalDouble.empty()));
        Field depth = CubicUpsampling.catmullRom(fresh.grid().depth(), 5);
        hole.consume(CubicUpsampling.catmullRom(fresh.grid().sd(), 5));
        double deepest = fresh.deepest().area().deepestMetres();
        ContourLevels levels = ContourLevels.between(0, deepest, peg.units().depth());
        hole.consume(Contours.of(depth, levels.toArray()));
    }

    /** The hyperparameters and the factor alone. */
    @Benchmark
    public Object refit() throws InputException {
        return BottomModel.fit(Survey.of(peg, map.water()), Monitor.NONE);
    }

    /** One move of the target slider. */
    @Benchmark
    public Object newTarget() {
        return Findings.of(map, OptionalDouble.of(0.8));
    }
}

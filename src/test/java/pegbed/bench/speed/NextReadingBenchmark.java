package pegbed.bench.speed;

import java.util.Random;
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
import pegbed.findings.PegMap;
import pegbed.guidance.Guidance;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;

/**
 * One suggestion from a map that is there already, on one core, on a straight cut 14 m wide with a pole of 16 m
 * (invented). With 40 readings the decisions are reckoned, with 41 too, with 42 it is the map's turn; the stop rule is
 * among it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class NextReadingBenchmark {
    /** Number of readings so far. */
    @Param({"10", "20", "40", "41", "42"})
    public int readings;

    private PegMap map;

    @Setup
    public void load() throws InputException {
        Peg peg = Peg.EMPTY.withBanks(new Banks(
                java.util.List.of(BankPoint.at(-16, -0.5), BankPoint.at(16, -0.5)),
                java.util.List.of(BankPoint.at(-16, 13.5), BankPoint.at(16, 13.5)),
                java.util.List.of()));
        Random random = new Random(4);
        for (int i = 0; i < readings; i++) {
            Place place = Guidance.next(PegMap.of(peg, Monitor.NONE)).place();
            double side = Math.min(place.yMetres() + 0.5 - 2, 13.5 - place.yMetres() - 2.5);
            double t = Math.max(0, Math.min(1, side / 1.5));
            double depth = 0.8 + (0.8 + 0.01 * place.xMetres()) * t * t * (3 - 2 * t) + 0.03 * random.nextGaussian();
            peg = peg.withReading(Reading.of(place.distanceMetres(), place.angleDegrees(), depth));
        }
        map = PegMap.of(peg, Monitor.NONE);
    }

    @Benchmark
    public Object next() throws InputException {
        return Guidance.next(map);
    }
}

package pegbed.bench.waters;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.bench.practice.Fan;
import pegbed.bench.practice.PracticePeg;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Peg;

@Tag("slow")
class SimulatedWaterTest {
    private static double[] profile(PracticePeg peg) {
        return IntStream.rangeClosed(0, 16)
                .mapToDouble(i -> peg.truth().depthAt(0, 0.5 + 0.5 * i))
                .toArray();
    }

    private static double apart(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - b[i]) * (a[i] - b[i]);
        }
        return Math.sqrt(sum / a.length);
    }

    @Test
    void theSameNumberMakesTheSameWater() throws InputException {
        PracticePeg one = new SimulatedWater(7).pegs(3).get(2);
        PracticePeg two = new SimulatedWater(7).pegs(3).get(2);
        assertEquals(one.empty(), two.empty());
        Peg first = SimulatedWater.plumbed(one, Fan.of(PegWater.of(one.empty()), 12, true), 5);
        Peg second = SimulatedWater.plumbed(two, Fan.of(PegWater.of(two.empty()), 12, true), 5);
        assertEquals(first, second);
        assertEquals(12, first.readings().size());
    }

    @Test
    void pegsOfOneWaterAreMoreAlikeThanThoseOfTwo() {
        double within = 0;
        double between = 0;
        List<PracticePeg> last = new SimulatedWater(20).pegs(3);
        for (long number = 21; number < 29; number++) {
            List<PracticePeg> pegs = new SimulatedWater(number).pegs(3);
            within += apart(profile(pegs.get(1)), profile(pegs.get(2)));
            between += apart(profile(pegs.get(1)), profile(last.get(2)));
            last = pegs;
        }
        assertTrue(within > 0, "every peg has something of its own");
        assertTrue(within < 0.6 * between, within + " within, " + between + " between");
    }

    @Test
    void bottomsAreThoseOfANarrowWater() {
        for (long number = 1; number <= 10; number++) {
            for (PracticePeg peg : new SimulatedWater(number).pegs(2)) {
                double deepest = IntStream.rangeClosed(0, 70)
                        .mapToDouble(i -> peg.truth().depthAt(0, 0.2 * i))
                        .filter(depth -> !Double.isNaN(depth))
                        .max()
                        .orElseThrow();
                assertTrue(deepest > 0.9 && deepest < 3, peg.name() + ": " + deepest);
                assertTrue(Double.isNaN(peg.truth().depthAt(0, -2)), "land behind the seat");
            }
        }
    }
}

package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.prior.Structure;

/** Which structure counts how much. */
class StackingTest {
    private static Peg fan(int count, long seed, DoubleBinaryOperator depth) {
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double distance = 1 + 10 * random.nextDouble();
            double angle = -60 + 120 * random.nextDouble();
            Place place = Place.polar(distance, angle);
            double z = depth.applyAsDouble(place.xMetres(), place.yMetres()) + 0.02 * random.nextGaussian();
            readings.add(Reading.of(distance, angle, Math.max(0.02, z)));
        }
        return TestPegs.with(TestPegs.bend(), readings);
    }

    /** A cut: ledges of 0.6 m, steep slopes, a level track of 1.8 m. */
    private static double cut(double x, double y) {
        double near = -0.4 + 0.05 * x + 0.01 * x * x;
        double far = 11.8 + 0.1 * x - 0.005 * x * x;
        double edge = 1 - Math.exp(-Math.min(y - near, far - y) / 0.25);
        double t = 1 / (1 + Math.exp(-(y - near - 2.1) / 0.4)) / (1 + Math.exp(-(far - y - 2.5) / 0.4));
        return 0.2 + 0.5 * edge + 1.1 * t;
    }

    /** Ground that owes nothing to the banks. */
    private static double plane(double x, double y) {
        return 0.9 + 0.06 * x + 0.03 * y;
    }

    private static double weight(FittedBottom bottom, Structure structure) {
        return bottom.structures().stream()
                .filter(each -> each.structure() == structure)
                .mapToDouble(FittedBottom.Weighted::weight)
                .sum();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aCutIsATub(long seed) throws InputException {
        FittedBottom bottom = TestPegs.fit(fan(30, seed, StackingTest::cut));
        assertEquals(Structure.TUB, bottom.structures().get(0).structure());
        assertTrue(weight(bottom, Structure.TUB) > 0.5, bottom.structures().toString());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aPlaneIsNoTub(long seed) throws InputException {
        FittedBottom bottom = TestPegs.fit(fan(30, seed, StackingTest::plane));
        assertTrue(weight(bottom, Structure.TUB) < 0.25, bottom.structures().toString());
    }

    @Test
    void withNothingReadAllCountAlike() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.bend());
        assertArrayEquals(new double[] {1.0 / 3, 1.0 / 3, 1.0 / 3}, bottom.weights(), 1e-12);
    }

    /** With the counts beforehand one reading leaves each structure at least 0.6 of 2.8. */
    @Test
    void oneReadingDecidesLittle() throws InputException {
        FittedBottom bottom = TestPegs.fit(fan(1, 4, StackingTest::cut));
        for (double weight : Stacking.unreduced(bottom.fits())) {
            assertTrue(weight > 0.6 / 2.8 - 1e-9 && weight < 1.6 / 2.8 + 1e-9, "weight " + weight);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 5, 14, 30})
    void theWeightsAddUpToOneAndSmallOnesAreLeftOut(int count) throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bendWithIsland(), TestPegs.fan(count, 7)));
        assertEquals(1, Arrays.stream(bottom.weights()).sum(), 1e-12);
        assertEquals(1, Arrays.stream(Stacking.unreduced(bottom.fits())).sum(), 1e-12);
        assertEquals(
                1,
                bottom.structures().stream()
                        .mapToDouble(FittedBottom.Weighted::weight)
                        .sum(),
                1e-12);
        for (double weight : bottom.weights()) {
            assertTrue(weight == 0 || weight >= 0.1, "weight " + weight);
        }
    }

    /**
     * They are where expectation maximisation stands still: w = (Σ r + 0.6)/(n + 1.8), r the share of each structure in the
     * leave-one-out density of each reading, worked from what each expects without it.
     */
    @Test
    void theWeightsStandStill() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(20, 7)));
        List<StructureFit> fits = bottom.fits();
        double[] weights = Stacking.unreduced(fits);
        int n = fits.get(0).observations().real;
        double[] counts = new double[fits.size()];
        for (int i = 0; i < n; i++) {
            double[] density = new double[fits.size()];
            double sum = 0;
            for (int s = 0; s < density.length; s++) {
                // Of one structure alone the check is the leave-one-out mean and deviation.
                var check = TestPegs.alone(fits.get(s)).readings().get(fits.get(s).observations().sounding[i]);
                double z = Math.min(4, Math.abs(check.standardised()));
                density[s] = weights[s] * Math.exp(-z * z / 2) / check.expectedSdMetres();
                sum += density[s];
            }
            for (int s = 0; s < density.length; s++) {
                counts[s] += density[s] / sum;
            }
        }
        for (int s = 0; s < counts.length; s++) {
            assertEquals((counts[s] + 0.6) / (n + 1.8), weights[s], 1e-4);
        }
    }

    /** A deep hole that every structure misses says little of which of them is right: z² counts up to 16 only. */
    @Test
    void oneReadingFarOffDoesNotDecide() throws InputException {
        List<Reading> readings = new ArrayList<>(fan(30, 2, StackingTest::cut).readings());
        double tub = weight(TestPegs.fit(TestPegs.with(TestPegs.bend(), readings)), Structure.TUB);
        readings.add(Reading.of(6, 5, 3.4));
        double with = weight(TestPegs.fit(TestPegs.with(TestPegs.bend(), readings)), Structure.TUB);
        assertEquals(tub, with, 0.25);
    }
}

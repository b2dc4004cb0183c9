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
    private static Peg fan(Peg peg, int count, long seed, DoubleBinaryOperator depth) {
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double distance = 1 + 10 * random.nextDouble();
            double angle = -60 + 120 * random.nextDouble();
            Place place = Place.polar(distance, angle);
            double z = depth.applyAsDouble(place.xMetres(), place.yMetres()) + 0.02 * random.nextGaussian();
            readings.add(Reading.of(distance, angle, Math.max(0.02, z)));
        }
        return TestPegs.with(peg, readings);
    }

    private static double inside(double x, double y) {
        double near = -0.4 + 0.05 * x + 0.01 * x * x;
        double far = 11.8 + 0.1 * x - 0.005 * x * x;
        return Math.min(y - near, far - y);
    }

    /** A cut: ledges of 0.6 m, steep slopes, a level track of 1.8 m. */
    private static double cut(double x, double y) {
        double near = -0.4 + 0.05 * x + 0.01 * x * x;
        double far = 11.8 + 0.1 * x - 0.005 * x * x;
        double edge = 1 - Math.exp(-inside(x, y) / 0.25);
        double t = 1 / (1 + Math.exp(-(y - near - 2.1) / 0.4)) / (1 + Math.exp(-(far - y - 2.5) / 0.4));
        return 0.2 + 0.5 * edge + 1.1 * t;
    }

    /** Falls steadily away from whichever bank is nearer. */
    private static double trough(double x, double y) {
        return 0.05 + 0.22 * inside(x, y);
    }

    /** Falls away from a pond's only bank, tilted a little. */
    private static double plane(double x, double y) {
        return 0.1 * (y + 0.5) + 0.03 * x;
    }

    /** Waves that owe nothing to the banks. */
    private static double waves(double x, double y) {
        return 0.8 + 0.5 * Math.sin((x + y) / 3) + 0.3 * Math.cos((x - 0.5 * y) / 2.5);
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
        FittedBottom bottom = TestPegs.fit(fan(TestPegs.bend(), 30, seed, StackingTest::cut));
        assertEquals(Structure.TUB, bottom.structures().get(0).structure());
        assertTrue(weight(bottom, Structure.TUB) > 0.5, bottom.structures().toString());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatFallsFromTheNearerBankIsAFall(long seed) throws InputException {
        FittedBottom bottom = TestPegs.fit(fan(TestPegs.bend(), 30, seed, StackingTest::trough));
        assertEquals(Structure.FALL, bottom.structures().get(0).structure());
        assertTrue(weight(bottom, Structure.FALL) > 0.5, bottom.structures().toString());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void aPlaneIsNoTub(long seed) throws InputException {
        FittedBottom bottom = TestPegs.fit(fan(TestPegs.pond(), 30, seed, StackingTest::plane));
        assertTrue(
                bottom.structures().get(0).structure() != Structure.TUB,
                bottom.structures().toString());
        assertTrue(weight(bottom, Structure.TUB) < 0.5, bottom.structures().toString());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void wavesAreOpenGround(long seed) throws InputException {
        FittedBottom bottom = TestPegs.fit(fan(TestPegs.bend(), 30, seed, StackingTest::waves));
        assertEquals(Structure.OPEN, bottom.structures().get(0).structure());
    }

    @Test
    void withNothingReadAllCountAlike() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.bend());
        assertArrayEquals(new double[] {1.0 / 3, 1.0 / 3, 1.0 / 3}, bottom.weights(), 1e-12);
    }

    /** With the counts beforehand one reading leaves each structure at least 0.6 of 2.8. */
    @Test
    void oneReadingDecidesLittle() throws InputException {
        FittedBottom bottom = TestPegs.fit(fan(TestPegs.bend(), 1, 4, StackingTest::cut));
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
     * They are where expectation maximisation stands still: w = (Σ r + 0.6)/(n + 1.8), r the share of each structure in
     * the leave-one-out density of each reading, worked from what each expects without it.
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
                var check =
                        TestPegs.alone(fits.get(s)).readings().get(fits.get(s).observations().sounding[i]);
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
        List<Reading> readings =
                new ArrayList<>(fan(TestPegs.bend(), 30, 2, StackingTest::cut).readings());
        double tub = weight(TestPegs.fit(TestPegs.with(TestPegs.bend(), readings)), Structure.TUB);
        readings.add(Reading.of(6, 5, 3.4));
        double with = weight(TestPegs.fit(TestPegs.with(TestPegs.bend(), readings)), Structure.TUB);
        assertEquals(tub, with, 0.25);
    }
}

package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.prior.Structure;
import pegbed.surface.survey.Survey;

class DoubtfulReadingsTest {
    private static final double[] ONE = {1};

    /** A plane, but for one reading in its middle that is off by so much. */
    private static List<Reading> plane(double off) {
        List<Reading> readings = new ArrayList<>();
        for (double angle = -50; angle <= 50; angle += 25) {
            for (double distance = 3; distance <= 9; distance += 2) {
                Place place = Place.polar(distance, angle);
                readings.add(Reading.of(distance, angle, 1 + 0.05 * place.xMetres()));
            }
        }
        readings.add(Reading.of(6, 10, 1 + 0.05 * Place.polar(6, 10).xMetres() + off));
        return readings;
    }

    private static StructureFit open(List<Reading> readings) throws InputException {
        FittedBottom bottom = BottomModel.fitExactly(
                Survey.of(TestPegs.with(TestPegs.bend(), readings)), NeighbouringPegs.NONE, Monitor.NONE);
        return TestPegs.fit(bottom, Structure.OPEN);
    }

    private static int observation(StructureFit fit, int sounding) {
        int i = 0;
        while (fit.observations().sounding[i] != sounding) {
            i++;
        }
        return i;
    }

    @Test
    void readingsThatAgreeAreLeftAsTheyAre() throws InputException {
        List<StructureFit> fits = List.of(open(plane(0)));
        assertSame(fits, DoubtfulReadings.moved(fits, ONE));
    }

    /**
     * At the fixed point of expectation propagation mean and variance of the bottom at a doubtful reading's place are
     * those under the contaminated error, given what the others say: here by summing the densities over many depths.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, -0.25, 0.35})
    void aReadingHasTheMomentsOfTheContaminatedError(double off) throws InputException {
        StructureFit fit = open(plane(off));
        int i = observation(fit, plane(off).size() - 1);

        StructureFit moved = DoubtfulReadings.moved(List.of(fit), ONE).get(0);

        assertNotSame(fit, moved);
        double alpha = moved.process().alpha()[i];
        double left = 1 / moved.process().inverseDiagonal()[i];
        double used = moved.observationNoise(i);
        double shift = moved.observations().residual[i] - fit.observations().residual[i];
        double noise = fit.observationNoise(i);
        double variance = left - used;
        double difference = alpha * left - shift;
        double right = density(difference, variance + noise);
        double wrong = density(difference, variance + noise + 0.25);
        double p = 0.5 * wrong / 60 / (wrong / 60 + right * 59 / 60);
        double[] sums = new double[6];
        for (int step = -40_000; step <= 40_000; step++) {
            double depth = step * 1e-4;
            double prior = density(depth, variance);
            double[] both = {
                prior * density(difference - depth, noise), prior * density(difference - depth, noise + 0.25)
            };
            for (int k = 0; k < 2; k++) {
                sums[3 * k] += both[k];
                sums[3 * k + 1] += both[k] * depth;
                sums[3 * k + 2] += both[k] * depth * depth;
            }
        }
        double mean = (1 - p) * sums[1] / sums[0] + p * sums[4] / sums[3];
        double square = (1 - p) * sums[2] / sums[0] + p * sums[5] / sums[3];
        assertEquals(mean, difference + shift - alpha * used, 2e-3);
        // A normal error can't leave more doubt than there is without the reading.
        double expected = Math.min(Math.sqrt(square - mean * mean), Math.sqrt(1 / (1 / variance + 1 / (noise + 1))));
        assertEquals(expected, Math.sqrt(used - used * used / left), 2e-3);
        assertEquals(fit.observations().read(i), moved.observations().read(i), 1e-12, "what was read stays known");
        assertTrue(Math.abs(mean) < Math.abs(difference), "drawn to what the others say");
    }

    private static double density(double off, double variance) {
        return Math.exp(-off * off / (2 * variance)) / Math.sqrt(variance);
    }
}

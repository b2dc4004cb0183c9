package pegbed.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pegbed.findings.InventedWater;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Peg;

class StopRuleTest {
    @Test
    void itNeverStopsBeforeTheDecisionsAreReckoned() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 10);

        assertFalse(Guidance.next(InventedWater.map(peg)).stop());
    }

    @Test
    void onAPlainBottomItStopsInTheEndAndOnlyAfterTwoSmallGains() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 15);
        double before = Double.POSITIVE_INFINITY;
        boolean stopped = false;
        for (int i = 15; i < 60 && !stopped; i++) {
            NextReading next = Guidance.next(InventedWater.map(peg));
            stopped = next.stop();
            if (stopped) {
                assertTrue(next.gain() < StopRule.MIN_GAIN);
                // The earlier gain is reckoned again with what has been learned since, so that it may differ a little.
                assertTrue(before < 2 * StopRule.MIN_GAIN, "gain before: " + before);
            }
            before = next.gain();
            peg = peg.withReading(InventedWater.read(next.place(), InventedWater::cutDepth));
        }
        assertTrue(stopped);
    }

    @Test
    void oneLargeGainOfTheTwoGoesOn() {
        assertTrue(StopRule.stops(0.05, () -> 0.06));
        assertFalse(StopRule.stops(0.05, () -> 0.5));
        assertFalse(StopRule.stops(0.5, () -> 0.05));
        assertFalse(StopRule.stops(Double.NaN, () -> 0.05));
    }

    @Test
    void theGainBeforeIsWhatAnAppraisalWithoutTheLastReadingTells() throws InputException {
        for (int count = 18; count < 30; count += 3) {
            Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, count);
            PegMap map = InventedWater.map(peg);
            double told = ValueOfInformation.of(
                            map, Candidates.of(peg, map.water()).open(), GuidanceWeights.USUAL)
                    .maxBefore();
            Peg fewer = peg.withToday(visit -> visit.withReadings(
                    visit.readings().subList(0, visit.readings().size() - 1)));
            PegMap earlier = InventedWater.map(fewer);
            double most = ValueOfInformation.of(
                            earlier, Candidates.of(fewer, earlier.water()).open(), GuidanceWeights.USUAL)
                    .max();

            // The earlier one has learned its own hyperparameters and looks at its own nodes.
            assertEquals(most, told, 0.05, "with " + count);
        }
    }
}

package pegbed.analysis;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Peg;

class StopRuleTest {
    @Test
    void itNeverStopsBeforeTheDecisionsAreReckoned() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 10);

        assertFalse(Guidance.next(InventedWater.map(peg)).stop());
        assertFalse(StopRule.stops(InventedWater.map(peg), 0, Blend.USUAL));
    }

    @Test
    void onAPlainBottomItStopsInTheEndAndOnlyAfterTwoSmallGains() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 15);
        double before = Double.POSITIVE_INFINITY;
        boolean stopped = false;
        for (int i = 15; i < 45 && !stopped; i++) {
            NextReading next = Guidance.next(InventedWater.map(peg));
            stopped = next.stop();
            if (stopped) {
                assertTrue(next.gain() < StopRule.LEAST_GAIN);
                // The earlier gain is reckoned again with what has been learned since, so that it may differ a little.
                assertTrue(before < 2 * StopRule.LEAST_GAIN, "gain before: " + before);
            }
            before = next.gain();
            peg = peg.withReading(InventedWater.read(next.place(), InventedWater::cutDepth));
        }
        assertTrue(stopped);
    }

    @Test
    void aLargeGainGoesOn() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 16);

        assertFalse(StopRule.stops(InventedWater.map(peg), 0.5, Blend.USUAL));
        assertFalse(StopRule.stops(InventedWater.map(peg), Double.NaN, Blend.USUAL));
    }
}

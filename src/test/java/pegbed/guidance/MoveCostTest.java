package pegbed.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import pegbed.model.Pole;

/** Seconds from memory: 20 a reading, 6 a section shipped, 4 for 20° of swing. */
class MoveCostTest {
    @Test
    void aReadingAtTheSamePlaceCostsTheReadingAlone() {
        assertEquals(20, MoveCost.seconds(Pole.USUAL, 8.5, -20, 8.5, -20), 1e-9);
    }

    @Test
    void sectionsAreCountedByTheJointThatReaches() {
        // Joints at 2.6, 4, 5.5, 7: 3 m needs the second section, 7 m the fourth.
        assertEquals(20 + 2 * 6, MoveCost.seconds(Pole.USUAL, 3, 0, 7, 0), 1e-9);
        assertEquals(20 + 2 * 6, MoveCost.seconds(Pole.USUAL, 7, 0, 3, 0), 1e-9);
    }

    @Test
    void swingingCostsByTheDegree() {
        assertEquals(20 + 8, MoveCost.seconds(Pole.USUAL, 8.5, -20, 8.5, 20), 1e-9);
    }
}

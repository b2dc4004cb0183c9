package pegbed.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbed.findings.InventedWater;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;

class ConfirmingReadingTest {
    private static final Place SHELF = new Place(-1, 9.5);

    @Test
    void itLiesAtTheLineOrNearIt() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 14);
        ConfirmingReading reading =
                ConfirmingReading.of(InventedWater.map(peg), SHELF, 0.8).orElseThrow();

        assertTrue(reading.place().distanceTo(SHELF) <= 2.5);
        assertTrue(reading.now() >= 0 && reading.now() <= 1);
        assertTrue(reading.change() > 0);
    }

    @Test
    void onceTakenThereIsLessLeftToTell() throws InputException {
        Peg peg = InventedWater.guided(InventedWater.cut(), InventedWater::cutDepth, 14);
        double before = ConfirmingReading.of(InventedWater.map(peg), SHELF, 0.8)
                .orElseThrow()
                .change();
        for (int i = 0; i < 3; i++) {
            Place place = ConfirmingReading.of(InventedWater.map(peg), SHELF, 0.8)
                    .orElseThrow()
                    .place();
            peg = peg.withReading(InventedWater.read(place, InventedWater::cutDepth));
        }

        assertTrue(ConfirmingReading.of(InventedWater.map(peg), SHELF, 0.8)
                        .orElseThrow()
                        .change()
                < before);
    }

    @Test
    void onTheBankThereIsNothingToConfirm() throws InputException {
        Peg peg = InventedWater.cut().withReading(Reading.of(5, 0, 1.6));

        assertEquals(Optional.empty(), ConfirmingReading.of(InventedWater.map(peg), new Place(0, 40), 0.8));
        assertEquals(Optional.empty(), ConfirmingReading.of(InventedWater.map(peg), new Place(0, -3), 0.8));
    }
}

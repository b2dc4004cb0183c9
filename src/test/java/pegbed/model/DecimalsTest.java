package pegbed.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DecimalsTest {
    @Test
    void halvesAreRoundedAwayFromZero() {
        assertEquals("19", Decimals.text(18.5, 0));
        assertEquals("1.01", Decimals.text(1.005, 2));
        assertEquals("-2.5", Decimals.text(-2.45, 1));
        assertEquals("0", Decimals.text(-0.4, 0));
        assertEquals("NaN", Decimals.text(Double.NaN, 1));
    }

    /** Java's own formatter rounds in the same way. */
    @Test
    void itIsTheTextOfJavasFormatter() {
        Random random = new Random(1);
        for (int i = 0; i < 20_000; i++) {
            double value = Math.round(random.nextDouble() * 1e5) / 1e3;
            for (int decimals = 0; decimals < 3; decimals++) {
                assertEquals(String.format(Locale.ROOT, "%." + decimals + "f", value), Decimals.text(value, decimals));
            }
        }
    }
}

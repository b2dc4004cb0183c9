package pegbed.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Charnov 1976: the best stay is where the tangent from the time of leaving the last patch touches the gain. */
class MarginalValueTest {
    /**
     * A patch that empties, G = Gmax(1 − e^(−ct)). G'(t)(t + way) = G(t) gives way = (e^(ct) − 1)/c − t; with c = 0.1 a
     * minute, a way of 10(e − 2) = 7.1828 minutes has the best stay 10 minutes, at Gmax·c/e a minute.
     */
    @Test
    void aPatchThatEmpties() {
        MarginalValue value = MarginalValue.of(t -> 20 * (1 - Math.exp(-0.1 * t)), 10 * (Math.E - 2), 120);
        assertEquals(10, value.stayMinutes(), 1e-3);
        assertEquals(20 * 0.1 / Math.E, value.averageAMinute(), 1e-9);
    }

    /** G = Gmax·t/(b + t): by hand the best stay is √(b · way). */
    @Test
    void aPatchWithDiminishingReturns() {
        MarginalValue value = MarginalValue.of(t -> 5 * t / (9 + t), 4, 120);
        assertEquals(6, value.stayMinutes(), 1e-3);
        assertEquals(5 * 6.0 / 15 / 10, value.averageAMinute(), 1e-9);
    }

    @Test
    void aLongerWayMeansALongerStay() {
        double near = MarginalValue.of(Math::sqrt, 2, 120).stayMinutes();
        double far = MarginalValue.of(Math::sqrt, 8, 120).stayMinutes();
        assertEquals(2, near, 1e-3, "√t: the stay is as long as the way");
        assertEquals(8, far, 1e-3);
    }

    @Test
    void withoutEndOfGainOneStaysAsLongAsOneMay() {
        assertEquals(30, MarginalValue.of(t -> t, 3, 30).stayMinutes(), 1e-3);
    }

    @Test
    void noTimeTurnsBack() {
        assertThrows(IllegalArgumentException.class, () -> MarginalValue.of(t -> t, -1, 30));
    }
}

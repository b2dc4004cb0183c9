package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MaternTest {
    /** Rasmussen & Williams (2006), eq. 4.17; values computed with an independent program. */
    @ParameterizedTest
    @CsvSource({
        "0,   1,            1",
        "0.5, 0.784887654,  0.8286491424",
        "1,   0.4833577246, 0.5239941088",
        "2,   0.1397313502, 0.1386602191"
    })
    void agreesWithOutsideValues(double r, double threeHalves, double fiveHalves) {
        assertEquals(threeHalves, Matern.threeHalves(r), 5e-11);
        assertEquals(fiveHalves, Matern.fiveHalves(r), 5e-11);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.7, 1.3, 4})
    void derivativesByTheLogarithmOfTheScale(double r) {
        assertEquals(slope(s -> Matern.threeHalves(r * Math.exp(-s))), Matern.threeHalvesByLogScale(r), 1e-8);
        assertEquals(slope(s -> Matern.fiveHalves(r * Math.exp(-s))), Matern.fiveHalvesByLogScale(r), 1e-8);
    }

    @Test
    void productIsTheProduct() {
        assertEquals(Matern.fiveHalves(0.4) * Matern.fiveHalves(1.9), Matern.fiveHalvesProduct(0.4, 1.9), 1e-15);
    }

    private static double slope(DoubleUnaryOperator f) {
        double h = 1e-5;
        return (f.applyAsDouble(h) - f.applyAsDouble(-h)) / (2 * h);
    }
}

package pegbed.ui.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import pegbed.model.Units;

class DepthTicksTest {
    private static final double HIGH_POINTS = 60;

    @ParameterizedTest
    @EnumSource(Units.Depth.class)
    void theirLettersNeverTouch(Units.Depth unit) {
        for (double deepest = 0.3; deepest <= 30; deepest *= 1.1) {
            double scale = HIGH_POINTS / deepest;
            List<Double> ticks = DepthTicks.metres(deepest, scale, unit);
            assertEquals(0, ticks.get(0));
            for (int i = 1; i < ticks.size(); i++) {
                assertTrue(
                        (ticks.get(i) - ticks.get(i - 1)) * scale >= DepthTicks.CLOSEST_POINTS - 1e-9,
                        unit + " to " + deepest + " m: " + ticks);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"FEET, 1.7, 4", "FEET, 6.8, 20", "CENTIMETRES, 1.7, 1.5", "METRES, 6.8, 6"})
    void theyAreRoundInThePersonsUnit(Units.Depth unit, double deepest, double last) {
        List<Double> ticks = DepthTicks.metres(deepest, HIGH_POINTS / deepest, unit);
        double unitMetres = unit == Units.Depth.FEET ? 0.3048 : 1;
        assertEquals(last, ticks.get(ticks.size() - 1) / unitMetres, 1e-9);
    }
}

package pegbed.surface.contour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pegbed.model.Units;

class ContourLevelsTest {
    /** A peg down to 5 ft 6 in (the depth of the worked figure of common practice): every 6 in. */
    @Test
    void aPegInFeetHasALineEverySixInches() {
        ContourLevels levels = ContourLevels.between(0.2, 66 * 0.0254, Units.Depth.FEET);
        assertEquals(0.1524, levels.stepMetres(), 1e-15);
        assertEquals(9, levels.metres().size(), "1 ft to 5 ft");
        assertEquals(0.3048, levels.metres().get(0), 1e-15);
        assertEquals(1.524, levels.metres().get(8), 1e-15);
    }

    @Test
    void shallowWaterHasALineEveryThreeInches() {
        assertEquals(0.0762, ContourLevels.between(0, 0.9, Units.Depth.FEET).stepMetres(), 1e-15);
    }

    @Test
    void deepWaterHasALineEveryFoot() {
        ContourLevels levels = ContourLevels.between(0, 3, Units.Depth.FEET);
        assertEquals(0.3048, levels.stepMetres(), 1e-15);
        assertEquals(9, levels.metres().size());
    }

    @Test
    void metricStepsAreRound() {
        assertEquals(List.of(0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.1), metric(0.05, 1.15));
        assertEquals(List.of(0.2, 0.4, 0.6, 0.8, 1.0, 1.2, 1.4, 1.6), metric(0.1, 1.75));
        assertEquals(List.of(0.25, 0.5, 0.75, 1.0, 1.25, 1.5, 1.75, 2.0, 2.25, 2.5), metric(0, 2.7));
        assertEquals(List.of(0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5), metric(0, 4));
        assertEquals(
                metric(0.1, 1.75),
                ContourLevels.between(0.1, 1.75, Units.Depth.CENTIMETRES).metres());
    }

    private static List<Double> metric(double shallowest, double deepest) {
        return ContourLevels.between(shallowest, deepest, Units.Depth.METRES).metres();
    }

    @Test
    void aLevelAtEitherEndIsNoLevel() {
        assertEquals(List.of(0.3, 0.4), metric(0.2, 0.5));
        assertEquals(List.of(), metric(0.42, 0.48));
        assertEquals(List.of(), metric(1, 1));
    }

    @Property
    void levelsLieBetweenTheDepthsAndAreFew(
            @ForAll @DoubleRange(max = 100) double shallowest,
            @ForAll @DoubleRange(max = 80) double range,
            @ForAll Units.Depth unit) {
        ContourLevels levels = ContourLevels.between(shallowest, shallowest + range, unit);
        assertTrue(levels.metres().size() <= 12);
        for (double level : levels.metres()) {
            assertTrue(level > shallowest && level < shallowest + range);
            double steps = level / levels.stepMetres();
            assertEquals(Math.rint(steps), steps, 1e-9);
        }
        if (range > 1) {
            assertTrue(levels.metres().size() >= 3, "levels: " + levels.metres());
        }
    }

    @Test
    void depthsInTheWrongOrderAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> ContourLevels.between(2, 1, Units.Depth.FEET));
        assertThrows(IllegalArgumentException.class, () -> ContourLevels.between(Double.NaN, 1, Units.Depth.FEET));
    }
}

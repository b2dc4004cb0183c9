package pegbed.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import pegbed.model.Units;

class DepthFiguresTest {
    @Test
    void feetAndInches() {
        assertEquals("4'6", DepthFigures.depth(54 * 0.0254, Units.Depth.FEET));
        assertEquals("5'0", DepthFigures.depth(60 * 0.0254, Units.Depth.FEET));
        assertEquals("5'0", DepthFigures.depth(59.6 * 0.0254, Units.Depth.FEET), "Twelve inches are a foot.");
        assertEquals("9\"", DepthFigures.depth(9 * 0.0254, Units.Depth.FEET));
        assertEquals("0\"", DepthFigures.depth(0, Units.Depth.FEET));
        assertEquals("-2\"", DepthFigures.depth(-2 * 0.0254, Units.Depth.FEET));
    }

    @Test
    void metric() {
        assertEquals("137", DepthFigures.depth(1.3721, Units.Depth.CENTIMETRES));
        assertEquals("1.37", DepthFigures.depth(1.3721, Units.Depth.METRES));
    }
}

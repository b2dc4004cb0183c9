package pegbed.report.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

class LabelBoxTest {
    @Test
    void boxesSideBySideDoNotOverlap() {
        LabelBox box = new LabelBox(0, 0, 10, 4, 0);
        assertFalse(box.overlaps(new LabelBox(10, 0, 10, 4, 0)));
        assertFalse(box.overlaps(new LabelBox(0, 4, 10, 4, 0)));
        assertTrue(box.overlaps(new LabelBox(9.9, 3.9, 10, 4, 0)));
    }

    @Test
    void turnedBoxesAreJudgedByTheirOwnSides() {
        LabelBox box = new LabelBox(0, 0, 10, 10, 0);
        // Its corner reaches 10/√2 = 7.07 to the left of its middle.
        assertTrue(box.overlaps(new LabelBox(12, 0, 10, 10, 45)));
        assertFalse(box.overlaps(new LabelBox(12.1, 0, 10, 10, 45)));
        // Their envelopes overlap, they don't.
        assertFalse(box.overlaps(new LabelBox(10, 10, 10, 10, 45)));
    }

    /** Against the polygons: two boxes overlap where their outlines share an area. */
    @Property(tries = 300)
    void agreesWithPolygons(
            @ForAll @DoubleRange(min = -30, max = 30) double x,
            @ForAll @DoubleRange(min = -30, max = 30) double y,
            @ForAll @DoubleRange(min = -90, max = 90) double turn,
            @ForAll @DoubleRange(min = -90, max = 90) double other) {
        LabelBox one = new LabelBox(0, 0, 30, 9, turn);
        LabelBox two = new LabelBox(x, y, 20, 12, other);
        double shared = one.outline().intersection(two.outline()).getArea();
        if (shared > 1e-6) {
            assertTrue(one.overlaps(two));
        } else if (one.outline().distance(two.outline()) > 1e-6) {
            assertFalse(one.overlaps(two));
        }
        assertEquals(one.overlaps(two), two.overlaps(one));
        assertTrue(two.envelope().contains(new Envelope(two.outline().getEnvelopeInternal()).centre()));
    }

    @Test
    void whoComesFirstHasThePlace() {
        LabelSpace space = new LabelSpace(new Envelope(0, 100, 0, 50));
        LabelBox first = new LabelBox(50, 25, 20, 10, 0);
        assertTrue(space.isFree(first));
        space.take(first);
        assertFalse(space.isFree(new LabelBox(60, 25, 20, 10, 0)));
        assertTrue(space.isFree(new LabelBox(80, 25, 20, 10, 0)));
        assertFalse(space.isFree(new LabelBox(95, 25, 20, 10, 0)), "It would stand out of the area.");
    }
}

package pegbed.report.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class LinesTest {
    /** Lines of spacing s over an area A have together a length of about A/s. */
    @Test
    void hatchingCoversAnAreaEvenly() throws ParseException {
        Geometry area = new WKTReader().read("POLYGON ((0 0, 20 0, 20 12, 0 12, 0 0), (5 5, 5 9, 9 9, 9 5, 5 5))");
        for (boolean rising : new boolean[] {true, false}) {
            MultiLineString lines = Lines.hatch(area, 0.5, 0, rising);
            assertEquals(area.getArea() / 0.5, lines.getLength(), 4);
            assertTrue(area.buffer(1e-6).covers(lines));
        }
    }

    @Test
    void hatchingStaysTheSameWhereTheAreaIsCutInTwo() throws ParseException {
        Geometry whole = new WKTReader().read("POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0))");
        Geometry halves =
                new WKTReader().read("MULTIPOLYGON (((0 0, 10 0, 10 4, 0 4, 0 0)), ((0 4, 10 4, 10 10, 0 10, 0 4)))");
        assertEquals(
                Lines.hatch(whole, 0.7, 0, true).getLength(),
                Lines.hatch(halves, 0.7, 0, true).getLength(),
                1e-9);
    }

    @Test
    void nothingToHatchGivesNothing() throws ParseException {
        assertTrue(Lines.hatch(new WKTReader().read("MULTIPOLYGON EMPTY"), 1, 0, true)
                .isEmpty());
    }

    @Test
    void piecesAreJoined() throws ParseException {
        Geometry pieces =
                new WKTReader().read("GEOMETRYCOLLECTION (LINESTRING (0 0, 1 0), LINESTRING (1 0, 2 1), POINT (5 5))");
        MultiLineString lines = Lines.of(pieces);
        assertEquals(1, lines.getNumGeometries());
        assertEquals(3, lines.getNumPoints());
    }
}

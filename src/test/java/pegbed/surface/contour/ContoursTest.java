package pegbed.surface.contour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;

/** Surfaces with known contours. */
class ContoursTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    @Test
    void aPlaneHasOneStraightLine() {
        Field plane = field(new GridFrame(-2, 0, 0.25, 17, 9), (x, y) -> 0.5 * y + 0.1);
        Contour contour = Contours.of(plane, 0.66);
        assertEquals(1, contour.lines().getNumGeometries());
        Coordinate[] line = contour.lines().getCoordinates();
        assertEquals(17, line.length);
        for (Coordinate point : line) {
            assertEquals(1.12, point.y, 1e-12);
        }
        assertEquals(2, line[0].x, 1e-12, "it deepens outwards, so the line runs leftwards");
        assertEquals(-2, line[16].x, 1e-12);
    }

    @Test
    void aLevelOnTheNodesMakesOneCleanLineAndAnArea() {
        GridFrame frame = new GridFrame(0, 0, 1, 5, 5);
        Field plane = field(frame, (x, y) -> y);
        Contour contour = Contours.of(plane, 2);
        assertEquals(1, contour.lines().getNumGeometries());
        for (Coordinate point : contour.lines().getCoordinates()) {
            assertEquals(2, point.y, 1e-4);
        }
        Geometry area = areaAbove(plane, 2, box(0, 4, 0, 4));
        assertEquals(8, area.getArea(), 1e-3, "the nodes at the level count as above");
        assertTrue(area.isValid());
    }

    /** Depth 2 − r²/8 is a round bowl; the line of depth z is the circle r² = 8 (2 − z). */
    @Test
    void aBowlHasCircles() {
        double cell = 0.05;
        Field bowl = field(new GridFrame(-4, -4, cell, 161, 161), (x, y) -> 2 - (x * x + y * y) / 8);
        for (double level : new double[] {0.5, 1, 1.5, 1.9}) {
            double radius = Math.sqrt(8 * (2 - level));
            Contour contour = Contours.of(bowl, level);
            assertEquals(1, contour.lines().getNumGeometries());
            LineString ring = (LineString) contour.lines().getGeometryN(0);
            assertTrue(ring.isClosed());
            for (Coordinate point : ring.getCoordinates()) {
                assertEquals(radius, Math.hypot(point.x, point.y), cell * cell / radius);
            }
            assertTrue(!Orientation.isCCW(ring.getCoordinates()), "deep inside");
            double area = areaAbove(bowl, level, box(-4, 4, -4, 4)).getArea();
            assertEquals(Math.PI * radius * radius, area, 2 * Math.PI * cell * cell);
        }
    }

    @Test
    void aHumpIsAHoleInTheDeep() {
        Field hump = field(new GridFrame(-4, -4, 0.05, 161, 161), (x, y) -> 1 + (x * x + y * y) / 8);
        Geometry area = areaAbove(hump, 1.5, box(-4, 4, -4, 4));
        assertEquals(1, area.getNumGeometries());
        assertEquals(64 - Math.PI * 4, area.getArea(), 0.01);
        LineString ring = (LineString) Contours.of(hump, 1.5).lines().getGeometryN(0);
        assertTrue(Orientation.isCCW(ring.getCoordinates()), "deep outside");
    }

    /** Rings of deep and shallow by turns: each hole finds the nearest shell round it. */
    @Test
    void ringsWithinRingsNest() {
        Field waves = field(new GridFrame(-7, -7, 0.05, 281, 281), (x, y) -> 1 + Math.cos(2 * Math.hypot(x, y)));
        assertTrue(
                new Rings(FACTORY, 0.05).area(new Tracer(waves, true).trace(1)).isValid(), "before it is clipped");
        Geometry area = areaAbove(waves, 1, disc(6.5));
        // cos 2r is 0 or more up to q = π/4, from 3q to 5q, and from 7q on.
        assertEquals(3, area.getNumGeometries());
        assertTrue(area.isValid());
        double expected = Math.PI * (Math.pow(Math.PI / 4, 2) * (1 + 25 - 9 - 49) + 6.5 * 6.5);
        assertEquals(expected, area.getArea(), 0.1);
    }

    @Test
    void aLonePeakAtTheLevelIsNoSliver() {
        double[] values = new double[25];
        values[12] = 1;
        Field peak = new Field(new GridFrame(0, 0, 1, 5, 5), values);
        assertTrue(Contours.of(peak, 1).lines().isEmpty());
        assertTrue(areaAbove(peak, 1, box(0, 4, 0, 4)).isEmpty());
        assertEquals(1, Contours.of(peak, 0.5).lines().getNumGeometries());
    }

    @Test
    void aFieldAllAboveFillsItsOutlineAndHasNoLine() {
        Field level = field(new GridFrame(0, 0, 0.5, 9, 9), (x, y) -> 1.2);
        Geometry outline = FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(0, 0), new Coordinate(4, 0), new Coordinate(4, 3), new Coordinate(1, 4), new Coordinate(0, 0)
        });
        for (double depth : new double[] {0.5, 1.2}) {
            assertTrue(Contours.of(level, depth).lines().isEmpty());
            assertEquals(outline.getArea(), areaAbove(level, depth, outline).getArea(), 1e-9);
        }
        assertTrue(areaAbove(level, 1.21, outline).isEmpty());
    }

    @Test
    void linesEndWhereTheFieldEnds() {
        Field half = field(new GridFrame(0, 0, 1, 6, 6), (x, y) -> x > 3 ? Double.NaN : y);
        Contour contour = Contours.of(half, 2.5);
        assertEquals(1, contour.lines().getNumGeometries());
        Coordinate[] line = contour.lines().getCoordinates();
        assertEquals(3, line[0].x, 1e-12);
        assertEquals(0, line[line.length - 1].x, 1e-12);
        Field none = field(new GridFrame(0, 0, 1, 6, 6), (x, y) -> Double.NaN);
        assertTrue(Contours.of(none, 2.5).lines().isEmpty());
    }

    /** The field is known one cell beyond the outline and no further: the areas do not notice. */
    @Test
    void areasNeedTheFieldNoFurtherThanOneCellBeyondTheOutline() {
        DoubleBinaryOperator slope = (x, y) -> 0.3 * x + 0.1 * y;
        GridFrame frame = new GridFrame(-3, -3, 0.1, 61, 61);
        Geometry outline = disc(2);
        Field whole = field(frame, slope);
        Field cut = field(frame, (x, y) -> Math.hypot(x, y) > 2.15 ? Double.NaN : slope.applyAsDouble(x, y));
        for (double level : new double[] {-0.4, 0, 0.31}) {
            Geometry expected = areaAbove(whole, level, outline);
            Geometry found = areaAbove(cut, level, outline);
            assertEquals(0, expected.symDifference(found).getArea(), 1e-9);
        }
    }

    @Test
    void severalLevelsComeInTheirOrder() {
        Field plane = field(new GridFrame(0, 0, 0.5, 9, 9), (x, y) -> y);
        double[] levels = {3, 1, 9};
        List<Contour> contours = Contours.of(plane, levels);
        List<DepthArea> areas = Contours.polygons(plane, levels, box(0, 4, 0, 4));
        for (int k = 0; k < levels.length; k++) {
            assertEquals(levels[k], contours.get(k).levelMetres());
            assertEquals(levels[k], areas.get(k).levelMetres());
        }
        assertEquals(4, areas.get(0).area().getArea(), 1e-3);
        assertEquals(12, areas.get(1).area().getArea(), 1e-3);
        assertTrue(areas.get(2).area().isEmpty());
        assertTrue(contours.get(2).lines().isEmpty());
    }

    @Test
    void anOutlineIsAnArea() {
        Field plane = field(new GridFrame(0, 0, 0.5, 9, 9), (x, y) -> y);
        Geometry line = FACTORY.createLineString(new Coordinate[] {new Coordinate(0, 0), new Coordinate(1, 1)});
        assertThrows(IllegalArgumentException.class, () -> Contours.polygons(plane, new double[] {1}, line));
    }

    private static Geometry areaAbove(Field field, double level, Geometry outline) {
        return Contours.polygons(field, new double[] {level}, outline).get(0).area();
    }

    private static Geometry box(double xMin, double xMax, double yMin, double yMax) {
        return FACTORY.toGeometry(new Envelope(xMin, xMax, yMin, yMax));
    }

    private static Geometry disc(double radius) {
        return FACTORY.createPoint(new Coordinate(0, 0)).buffer(radius, 64);
    }

    static Field field(GridFrame frame, DoubleBinaryOperator depth) {
        double[] values = new double[frame.size()];
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                values[frame.index(column, row)] = depth.applyAsDouble(frame.x(column), frame.y(row));
            }
        }
        return new Field(frame, values);
    }
}

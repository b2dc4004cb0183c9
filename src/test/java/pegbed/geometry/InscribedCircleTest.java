package pegbed.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class InscribedCircleTest {
    /** Published in the JTS test suite. */
    @Test
    void triangle() throws ParseException {
        check("POLYGON ((1 1, 1 7, 9 1, 1 1))", 3, 3, 2);
    }

    /** Published in the JTS test suite. */
    @Test
    void kite() throws ParseException {
        check("POLYGON ((100 0, 200 200, 300 200, 300 100, 100 0))", 238.1966, 138.1966, 61.8034);
    }

    /** Published in the JTS test suite. */
    @Test
    void kiteWithAHole() throws ParseException {
        check(
                "POLYGON ((100 0, 200 200, 300 200, 300 100, 100 0), (200 150, 200 100, 260 100, 200 150))",
                257.47,
                157.47,
                42.529);
    }

    private static void check(String wkt, double x, double y, double radius) throws ParseException {
        InscribedCircle circle = InscribedCircle.of(read(wkt), 0.001);
        assertEquals(x, circle.xMetres(), 0.01);
        assertEquals(y, circle.yMetres(), 0.01);
        assertEquals(radius, circle.radiusMetres(), 0.001);
    }

    /** Every place on a strip's middle line has the same room; its own middle is chosen. */
    @Test
    void ofEqualsTheOneNearestTheCentroidIsTaken() throws ParseException {
        InscribedCircle circle = InscribedCircle.of(read("POLYGON ((1 2, 6 2, 6 3, 1 3, 1 2))"), 0.05);
        assertEquals(3.5, circle.xMetres(), 1e-9);
        assertEquals(2.5, circle.yMetres(), 1e-9);
        assertEquals(0.5, circle.radiusMetres(), 1e-9);
    }

    /** A strip of 2 m by 0.6 m, the shape of a narrow flat: the radius is half its width. */
    @Test
    void theRadiusIsWithinTheStatedTolerance() throws ParseException {
        InscribedCircle circle = InscribedCircle.of(read("POLYGON ((0 0, 2 0, 2 0.6, 0 0.6, 0 0))"));
        assertEquals(0.3, circle.radiusMetres(), InscribedCircle.TOLERANCE_METRES);
    }

    @Test
    void ofSeveralAreasTheWidestCounts() throws ParseException {
        InscribedCircle circle = InscribedCircle.of(
                read("MULTIPOLYGON (((0 0, 1 0, 1 1, 0 1, 0 0)), ((5 5, 8 5, 8 8, 5 8, 5 5)))"), 0.001);
        assertEquals(6.5, circle.xMetres(), 0.01);
        assertEquals(6.5, circle.yMetres(), 0.01);
        assertEquals(1.5, circle.radiusMetres(), 0.001);
    }

    @Test
    void whatIsNoAreaIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> InscribedCircle.of(read("LINESTRING (0 0, 1 1)")));
        assertThrows(IllegalArgumentException.class, () -> InscribedCircle.of(read("POLYGON EMPTY")));
        assertThrows(
                IllegalArgumentException.class, () -> InscribedCircle.of(read("POLYGON ((0 0, 1 0, 1 1, 0 0))"), 0));
    }

    private static Geometry read(String wkt) throws ParseException {
        return new WKTReader().read(wkt);
    }
}

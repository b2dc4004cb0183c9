package pegbed.report.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import pegbed.findings.PegMap;
import pegbed.geometry.Shapes;
import pegbed.model.Peg;
import pegbed.model.Units;

class GroundTest {
    private static final Peg SEVEN = Pegs.withReadings(Pegs.cut(), Pegs.fan(7));

    @Test
    void contoursCloseOrEndAtTheRimOfWhatIsKnown() {
        for (Peg peg : List.of(SEVEN, Pegs.withIsland(Pegs.withReadings(Pegs.cut(), Pegs.fan(30))))) {
            Ground ground = Ground.of(Pegs.map(peg));
            Geometry rim = ground.known().getBoundary();
            int lines = 0;
            for (var contour : ground.contours()) {
                for (int i = 0; i < contour.lines().getNumGeometries(); i++) {
                    LineString line = (LineString) contour.lines().getGeometryN(i);
                    lines++;
                    if (!line.isClosed()) {
                        assertTrue(line.getStartPoint().distance(rim) < 0.02, line.toText());
                        assertTrue(line.getEndPoint().distance(rim) < 0.02, line.toText());
                    }
                }
            }
            assertTrue(lines > 3);
        }
    }

    @Test
    void bandsLieInEachOther() {
        Ground ground = Ground.of(Pegs.map(SEVEN));
        assertEquals(ground.levels().metres().size() + 1, ground.bands().size());
        for (int i = 1; i < ground.bands().size(); i++) {
            assertTrue(ground.bands().get(i).isValid());
            assertTrue(
                    ground.bands().get(i - 1).buffer(0.02).covers(ground.bands().get(i)), "band " + i);
        }
    }

    @Test
    void bandsHoldTheDepthsThatTheySay() {
        PegMap map = Pegs.map(SEVEN);
        Ground ground = Ground.of(map);
        int checked = 0;
        for (double x = -8; x <= 8; x += 0.5) {
            for (double y = 0.5; y < 10; y += 0.5) {
                double depth = map.bottom().at(x, y).depthMetres();
                Geometry place = Shapes.FACTORY.createPoint(new Coordinate(x, y));
                for (int i = 0; i < ground.levels().metres().size() && ground.isKnown(x, y); i++) {
                    double level = ground.levels().metres().get(i);
                    if (Math.abs(depth - level) > 0.02) {
                        assertEquals(depth > level, ground.bands().get(i + 1).intersects(place), x + ", " + y);
                        checked++;
                    }
                }
            }
        }
        assertTrue(checked > 1000);
    }

    @Test
    void whatIsNotKnownIsLeftOut() {
        PegMap map = Pegs.map(Pegs.cut());
        Ground ground = Ground.of(map);
        assertFalse(ground.isKnown(0, 5), "Nobody plumbed here.");
        int unknown = 0;
        for (int i = 0; i < map.grid().frame().size(); i++) {
            if (map.grid().isWater(i) && map.grid().sd().at(i) > Ground.UNKNOWN_METRES + 0.03) {
                double x = map.grid().frame().x(i % map.grid().frame().columns());
                double y = map.grid().frame().y(i / map.grid().frame().columns());
                assertFalse(ground.isKnown(x, y), x + ", " + y);
                unknown++;
            }
        }
        assertTrue(unknown > 500);
    }

    @Test
    void doubtDeepensTowardsWhatIsNotKnown() {
        Ground ground = Ground.of(Pegs.map(SEVEN));
        assertTrue(ground.guess().getArea() > ground.roughGuess().getArea());
        assertTrue(ground.roughGuess().getArea() > 0);
        assertTrue(ground.known().buffer(0.02).covers(ground.guess()));
        assertTrue(ground.guess().buffer(0.05).covers(ground.roughGuess()));
    }

    @Test
    void wholeFeetAndHalfMetresAreHeavier() {
        Ground ground = Ground.of(Pegs.map(SEVEN));
        assertTrue(ground.isIndex(2 * 0.3048, Units.Depth.FEET));
        assertFalse(ground.isIndex(2.5 * 0.3048, Units.Depth.FEET));
        Ground metric = Ground.of(Pegs.map(SEVEN.withUnits(new Units(Units.Depth.METRES, Units.Distance.METRES))));
        assertTrue(metric.isIndex(1.5, Units.Depth.METRES));
        assertFalse(metric.isIndex(1.2, Units.Depth.METRES));
    }
}

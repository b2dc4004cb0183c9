package pegbed.report.map;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;
import pegbed.geometry.Shapes;

class LineWalkTest {
    @Test
    void findsThePlacesThatTheLibraryFinds() {
        Random chance = new Random(5);
        Coordinate[] places = new Coordinate[40];
        for (int i = 0; i < places.length; i++) {
            places[i] = new Coordinate(100 * chance.nextDouble(), 100 * chance.nextDouble());
        }
        places[20] = places[19].copy();
        LineString line = Shapes.FACTORY.createLineString(places);
        LineWalk walk = new LineWalk(line);
        LengthIndexedLine library = new LengthIndexedLine(line);
        assertEquals(line.getLength(), walk.length(), 1e-9);
        for (double at = 0; at <= line.getLength(); at += 0.7) {
            Coordinate there = library.extractPoint(at);
            assertEquals(there.x, walk.at(at).x, 1e-9);
            assertEquals(there.y, walk.at(at).y, 1e-9);
        }
        assertEquals(places[0], walk.at(-1));
        assertEquals(places[39], walk.at(line.getLength() + 1));
    }
}

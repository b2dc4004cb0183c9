package pegbed.report.map;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import pegbed.geometry.Overlay;
import pegbed.geometry.Shapes;
import pegbed.report.drawing.View;

class MaskedTest {
    /** A point is a metre; y is turned over. */
    private static final View VIEW = new View(100, 100, 1, 0, 100);

    private static LabelBox onWater(double x, double y, double width, double height, double turn) {
        return new LabelBox(VIEW.x(x), VIEW.y(y), width, height, turn);
    }

    @Test
    void aLineThroughATextIsCutInTwo() {
        Geometry left = new Masked(VIEW, List.of(onWater(50, 50, 20, 8, 0))).of(Symbols.line(10, 50, 90, 50));
        assertEquals("MULTILINESTRING ((10 50, 40 50), (60 50, 90 50))", left.toText());
    }

    @Test
    void cornersUnderATextAreLeftOut() {
        LineString bend = Shapes.FACTORY.createLineString(
                new Coordinate[] {new Coordinate(10, 50), new Coordinate(50, 50), new Coordinate(50, 90)});
        Geometry left = new Masked(VIEW, List.of(onWater(50, 50, 20, 8, 0))).of(bend);
        assertEquals("MULTILINESTRING ((10 50, 40 50), (50 54, 50 90))", left.toText());
    }

    @Test
    void textsSideBySideLeaveOneGap() {
        Masked masked = new Masked(VIEW, List.of(onWater(45, 50, 20, 8, 0), onWater(60, 50, 20, 8, 0)));
        assertEquals(
                "MULTILINESTRING ((10 50, 35 50), (70 50, 90 50))",
                masked.of(Symbols.line(10, 50, 90, 50)).toText());
    }

    @Test
    void nothingIsLeftOfALineUnderAText() {
        assertEquals(
                0,
                new Masked(VIEW, List.of(onWater(50, 50, 20, 8, 0)))
                        .of(Symbols.line(45, 50, 55, 51))
                        .getLength());
    }

    /** The same as taking the rectangles away with a general overlay. */
    @Test
    void whatIsLeftIsTheDifference() {
        Random random = new Random(5);
        for (int round = 0; round < 200; round++) {
            Coordinate[] places = new Coordinate[12];
            for (int i = 0; i < places.length; i++) {
                places[i] = new Coordinate(100 * random.nextDouble(), 100 * random.nextDouble());
            }
            LineString line = Shapes.FACTORY.createLineString(places);
            List<LabelBox> texts = random.doubles(4, 0, 100)
                    .mapToObj(x -> onWater(
                            x,
                            100 * random.nextDouble(),
                            5 + 30 * random.nextDouble(),
                            5 + 10 * random.nextDouble(),
                            360 * random.nextDouble()))
                    .toList();
            Geometry wanted = line;
            for (LabelBox text : texts) {
                LabelBox onSheet = text;
                Geometry box = org.locationtech.jts.geom.util.AffineTransformation.scaleInstance(1, -1)
                        .translate(0, 100)
                        .transform(onSheet.outline());
                wanted = Overlay.difference(wanted, box);
            }
            Geometry left = new Masked(VIEW, texts).of(line);
            assertEquals(wanted.getLength(), left.getLength(), 1e-6, "round " + round);
            assertEquals(
                    0, left.isEmpty() ? 0 : left.difference(wanted.buffer(1e-6)).getLength(), 1e-6);
        }
    }
}

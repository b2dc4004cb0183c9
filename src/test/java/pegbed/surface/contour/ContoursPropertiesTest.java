package pegbed.surface.contour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;

/** What holds for the contours of any field: smooth ones, rough ones, and ones rounded so that levels fall on nodes. */
class ContoursPropertiesTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final GridFrame FRAME = new GridFrame(-6, -1, 0.25, 49, 45);
    private static final double[] LEVELS = {0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75};

    enum Kind {
        SMOOTH,
        ROUGH,
        ROUNDED
    }

    @Property(tries = 150)
    void areasAreValidWithoutSliversAndNested(@ForAll Kind kind, @ForAll @IntRange(max = 1_000_000) int seed) {
        Geometry outline = outline(seed);
        Geometry shallower = outline;
        for (DepthArea area : Contours.polygons(field(kind, seed), LEVELS, outline)) {
            assertTrue(area.area().isValid());
            for (Object part : PolygonExtracter.getPolygons(area.area())) {
                assertTrue(area.area().isEmpty() || ((Polygon) part).getArea() >= 0.01 * 0.25 * 0.25);
            }
            assertEquals(
                    0, overlay(area.area(), shallower, OverlayNG.DIFFERENCE).getArea(), 1e-9);
            shallower = area.area();
        }
    }

    /** The bands between neighbouring levels, cut out as shapes, fill the outline; slivers are the only change. */
    @Property(tries = 150)
    void theBandsFillTheOutline(@ForAll Kind kind, @ForAll @IntRange(max = 1_000_000) int seed) {
        Geometry outline = outline(seed);
        List<Geometry> steps = new ArrayList<>(List.of(outline));
        Contours.polygons(field(kind, seed), LEVELS, outline).forEach(area -> steps.add(area.area()));
        steps.add(FACTORY.createPolygon());
        double sum = 0;
        for (int k = 1; k < steps.size(); k++) {
            sum += overlay(steps.get(k - 1), steps.get(k), OverlayNG.DIFFERENCE).getArea();
        }
        assertEquals(outline.getArea(), sum, 1e-8);
    }

    /** Every place deep in a cell of one side lies in the area or out of it as its corners say. */
    @Property(tries = 100)
    void nodesLieOnTheirSide(@ForAll Kind kind, @ForAll @IntRange(max = 1_000_000) int seed) {
        Field field = field(kind, seed);
        Geometry whole = FACTORY.toGeometry(new Envelope(FRAME.x(0), FRAME.x(48), FRAME.y(0), FRAME.y(44)));
        Geometry area = Contours.polygons(field, new double[] {1}, whole).get(0).area();
        IndexedPointInAreaLocator within = new IndexedPointInAreaLocator(area);
        for (int row = 1; row < FRAME.rows() - 1; row++) {
            for (int column = 1; column < FRAME.columns() - 1; column++) {
                boolean above = field.at(column, row) >= 1;
                if (agrees(field, column, row, above)) {
                    int place = within.locate(new Coordinate(FRAME.x(column), FRAME.y(row)));
                    assertEquals(above, place == Location.INTERIOR);
                }
            }
        }
    }

    /** Whether a neighbour along the grid is on the same side, so that the node is no speck of its own. */
    private static boolean agrees(Field field, int column, int row, boolean above) {
        return field.at(column + 1, row) >= 1 == above && field.at(column, row + 1) >= 1 == above;
    }

    /** A line's ends lie on the rim of the grid; all else is closed. Nothing is drawn twice. */
    @Property(tries = 100)
    void linesRunFromRimToRimOrClose(@ForAll Kind kind, @ForAll @IntRange(max = 1_000_000) int seed) {
        for (Contour contour : Contours.of(field(kind, seed), LEVELS)) {
            assertTrue(contour.lines().isSimple());
            for (int k = 0; k < contour.lines().getNumGeometries(); k++) {
                Coordinate[] line = contour.lines().getGeometryN(k).getCoordinates();
                if (!line[0].equals2D(line[line.length - 1])) {
                    assertTrue(onRim(line[0]) && onRim(line[line.length - 1]));
                }
            }
        }
    }

    private static boolean onRim(Coordinate place) {
        return place.x == FRAME.x(0)
                || place.x == FRAME.x(FRAME.columns() - 1)
                || place.y == FRAME.y(0)
                || place.y == FRAME.y(FRAME.rows() - 1);
    }

    private static Geometry overlay(Geometry a, Geometry b, int operation) {
        return OverlayNGRobust.overlay(a, b, operation);
    }

    private static Field field(Kind kind, int seed) {
        Random random = new Random(seed);
        double[][] waves = new double[6][];
        Arrays.setAll(waves, k -> new double[] {
            random.nextGaussian(), random.nextGaussian(), 6 * random.nextDouble(), 0.3 * random.nextDouble()
        });
        return ContoursTest.field(FRAME, (x, y) -> {
            double depth = 1;
            for (double[] wave : waves) {
                depth += wave[3] * Math.sin(wave[0] * x + wave[1] * y + wave[2]);
            }
            return switch (kind) {
                case SMOOTH -> depth;
                case ROUGH -> depth + 0.5 * random.nextGaussian();
                case ROUNDED -> Math.rint(4 * depth) / 4;
            };
        });
    }

    /** A star of water with an island in it, within the frame. */
    private static Geometry outline(int seed) {
        Random random = new Random(~seed);
        Coordinate[] rim = new Coordinate[31];
        for (int k = 0; k < 30; k++) {
            double angle = 2 * Math.PI * k / 30;
            double radius = 2.5 + 2 * random.nextDouble();
            rim[k] = new Coordinate(radius * Math.sin(angle), 4.5 + radius * Math.cos(angle));
        }
        rim[30] = rim[0];
        Geometry island = FACTORY.createPoint(new Coordinate(0.3, 4)).buffer(0.7 + random.nextDouble());
        return FACTORY.createPolygon(rim).difference(island);
    }
}

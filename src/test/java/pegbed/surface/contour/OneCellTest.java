package pegbed.surface.contour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;

/** All the ways in which a contour can run through one cell of side 1. */
class OneCellTest {
    private static final double LEVEL = 1;
    private static final Geometry CELL = new GeometryFactory().toGeometry(new Envelope(0, 1, 0, 1));

    /**
     * A cell as it is drawn: # a corner above the level, o one below, the first line far, the last near. A piece of
     * contour runs from a small letter to its capital; deeper water lies at its right.
     *
     * @param far the far side
     * @param middle the left and the right side
     * @param near the near side
     * @param above how far the corners above are above the level
     * @param below how far the corners below are below the level
     * @param areaAbove area at or above the level
     */
    record Drawing(String far, String middle, String near, double above, double below, double areaAbove) {
        Field field() {
            String corners = "" + near.charAt(0) + near.charAt(4) + far.charAt(0) + far.charAt(4);
            return new Field(
                    new GridFrame(0, 0, 1, 2, 2),
                    corners.chars()
                            .mapToDouble(c -> c == '#' ? LEVEL + above : LEVEL - below)
                            .toArray());
        }

        /** The ends of the pieces, worked out side by side with the straight run of depth between corners. */
        List<String> pieces() {
            TreeMap<Character, Coordinate> ends = new TreeMap<>();
            double share = above / (above + below);
            double nearAt = near.charAt(0) == '#' ? share : 1 - share;
            double farAt = far.charAt(0) == '#' ? share : 1 - share;
            double leftAt = near.charAt(0) == '#' ? share : 1 - share;
            double rightAt = near.charAt(4) == '#' ? share : 1 - share;
            ends.put(near.charAt(2), new Coordinate(nearAt, 0));
            ends.put(far.charAt(2), new Coordinate(farAt, 1));
            ends.put(middle.charAt(0), new Coordinate(0, leftAt));
            ends.put(middle.charAt(4), new Coordinate(1, rightAt));
            List<String> pieces = new ArrayList<>();
            for (char name = 'a'; name <= 'b'; name++) {
                if (ends.containsKey(name)) {
                    pieces.add(text(ends.get(name)) + " > " + text(ends.get(Character.toUpperCase(name))));
                }
            }
            return pieces;
        }
    }

    static List<Drawing> drawings() {
        return List.of(
                even("o---o", "|   |", "o---o", 0),
                even("o---o", "a   |", "#-A-o", 1 / 8.0),
                even("o---o", "|   A", "o-a-#", 1 / 8.0),
                even("o---o", "a   A", "#---#", 1 / 2.0),
                even("o-A-#", "|   a", "o---o", 1 / 8.0),
                even("o-A-#", "|   |", "o-a-#", 1 / 2.0),
                even("o-A-#", "a   |", "#---#", 7 / 8.0),
                even("#-a-o", "A   |", "o---o", 1 / 8.0),
                even("#-a-o", "|   |", "#-A-o", 1 / 2.0),
                even("#-a-o", "|   A", "#---#", 7 / 8.0),
                even("#---#", "A   a", "o---o", 1 / 2.0),
                even("#---#", "|   a", "#-A-o", 7 / 8.0),
                even("#---#", "A   |", "o-a-#", 7 / 8.0),
                even("#---#", "|   |", "#---#", 1),
                // Saddles. The corners above stand 1 above the level and those below 3 below it, or the other way
                // round: the saddle point lies below the level, or above it. The corners cut off are triangles with two
                // sides of 1/4.
                new Drawing("o-B-#", "a   b", "#-A-o", 1, 3, 1 / 16.0),
                new Drawing("o-A-#", "a   b", "#-B-o", 3, 1, 15 / 16.0),
                new Drawing("#-a-o", "A   B", "o-b-#", 1, 3, 1 / 16.0),
                new Drawing("#-b-o", "A   B", "o-a-#", 3, 1, 15 / 16.0));
    }

    private static Drawing even(String far, String middle, String near, double areaAbove) {
        return new Drawing(far, middle, near, 1, 1, areaAbove);
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void runsAsDrawn(Drawing drawing) {
        List<String> pieces = new ArrayList<>();
        Geometry lines = Contours.of(drawing.field(), LEVEL).lines();
        for (int k = 0; k < lines.getNumGeometries(); k++) {
            Coordinate[] line = lines.getGeometryN(k).getCoordinates();
            assertEquals(2, line.length);
            pieces.add(text(line[0]) + " > " + text(line[1]));
        }
        assertEquals(
                drawing.pieces().stream().sorted().toList(),
                pieces.stream().sorted().toList());
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void holdsTheAreaAbove(Drawing drawing) {
        Geometry area = Contours.polygons(drawing.field(), new double[] {LEVEL}, CELL)
                .get(0)
                .area();
        assertTrue(area.isValid());
        assertEquals(drawing.areaAbove(), area.getArea(), 1e-12);
    }

    /** Both diagonals alike: the saddle point is exactly at the level and counts as above. */
    @Test
    void aSaddlePointAtTheLevelCountsAsAbove() {
        Drawing drawing = new Drawing("o-A-#", "a   b", "#-B-o", 1, 1, 3 / 4.0);
        runsAsDrawn(drawing);
        holdsTheAreaAbove(drawing);
    }

    /** Saddle value (f00·f11 − f10·f01)/(f00 + f11 − f10 − f01) = (6·3 − 0·1)/(6 + 3 − 0 − 1) = 2.25. */
    @Test
    void theSaddleValueDecides() {
        Field saddle = new Field(new GridFrame(0, 0, 1, 2, 2), new double[] {6, 0, 1, 3});
        assertTrue(joins(saddle, 2.24), "the corners above hang together below the saddle value");
        assertTrue(!joins(saddle, 2.26), "and come apart above it");
    }

    private static boolean joins(Field saddle, double level) {
        return Contours.polygons(saddle, new double[] {level}, CELL)
                        .get(0)
                        .area()
                        .getNumGeometries()
                == 1;
    }

    @Test
    void aCellWithoutOneOfItsValuesHasNoLine() {
        for (int missing = 0; missing < 4; missing++) {
            double[] values = {0, 0, 2, 2};
            values[missing] = Double.NaN;
            Field field = new Field(new GridFrame(0, 0, 1, 2, 2), values);
            assertTrue(Contours.of(field, LEVEL).lines().isEmpty());
        }
    }

    private static String text(Coordinate place) {
        return String.format(Locale.ROOT, "%.6f %.6f", place.x, place.y);
    }
}

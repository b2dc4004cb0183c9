package pegbed.report.map;

import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import pegbed.geometry.Shapes;
import pegbed.model.Place;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.View;

/** The sign of the next place to read: four wedges that point at it from all sides, in a colour of their own. */
public final class NextSign {
    private static final double LENGTH_POINTS = 7;
    private static final double HALF_POINTS = 3.6;

    /** From the place to the tips at most, points: letters are kept off so much and the wedges. */
    public static final double FARTHEST_POINTS = MapOptions.NEXT_POINTS - LENGTH_POINTS;

    private NextSign() {}

    /**
     * The sign at a place.
     *
     * @param radiusPoints from the place to the tips, above 0, at most {@link #FARTHEST_POINTS}
     */
    public static Drawing at(Place place, double radiusPoints, View view) {
        Geometry wedges = Shapes.FACTORY.createMultiPolygon(IntStream.range(0, 4)
                .mapToObj(side -> wedge(radiusPoints, side * Math.PI / 2))
                .toArray(Polygon[]::new));
        Frame at = Frame.at(place.xMetres(), place.yMetres());
        return new Drawing(
                List.of(
                        new Stroke(Role.NEXT_READING_BADGE, Layer.NEXT, at, wedges.getBoundary()),
                        new Fill(Role.NEXT_READING, Layer.NEXT, at, wedges)),
                view);
    }

    private static Polygon wedge(double radius, double turn) {
        double sin = Math.sin(turn);
        double cos = Math.cos(turn);
        double far = radius + LENGTH_POINTS;
        return Shapes.polygon(List.of(
                new Coordinate(radius * sin, -radius * cos),
                new Coordinate(far * sin + HALF_POINTS * cos, -far * cos + HALF_POINTS * sin),
                new Coordinate(far * sin - HALF_POINTS * cos, -far * cos - HALF_POINTS * sin)));
    }
}

package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import pegbed.geometry.Shapes;
import pegbed.model.Place;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;

/** The sign of the next place to read: four wedges that point at it from all sides, in a colour of their own. */
public final class NextSign {
    private static final double LENGTH_POINTS = 9;
    private static final double HALF_POINTS = 4.2;

    private NextSign() {}

    /**
     * The sign at a place.
     *
     * @param place on the water
     * @param radiusPoints from the place to the tips, above 0
     */
    public static List<Item> at(Place place, double radiusPoints) {
        double near = radiusPoints;
        double far = radiusPoints + LENGTH_POINTS;
        double half = HALF_POINTS;
        Geometry wedges = Shapes.FACTORY.createMultiPolygon(new Polygon[] {
            Symbols.polygon(0, -near, -half, -far, half, -far),
            Symbols.polygon(0, near, -half, far, half, far),
            Symbols.polygon(-near, 0, -far, -half, -far, half),
            Symbols.polygon(near, 0, far, -half, far, half)
        });
        Frame at = Frame.at(place.xMetres(), place.yMetres());
        List<Item> items = new ArrayList<>();
        items.add(new Stroke(Role.NEXT_READING_BADGE, Layer.NEXT, at, wedges.getBoundary()));
        items.add(new Fill(Role.NEXT_READING, Layer.NEXT, at, wedges));
        return items;
    }
}

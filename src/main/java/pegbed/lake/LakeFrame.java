package pegbed.lake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import pegbed.geometry.Shapes;
import pegbed.model.SoundingLog;
import pegbed.surface.survey.Scale;

/**
 * Where a log lies, how far it reaches and how deep it goes.
 *
 * @param originX the middle of what was sounded, metres in the log's frame
 * @param originY as originX
 * @param hull the smallest convex shape about all soundings, in the log's frame
 * @param scale how much larger the water is than a peg
 * @param extentMetres largest distance between two soundings, metres
 * @param logged number of soundings
 */
record LakeFrame(double originX, double originY, Geometry hull, Scale scale, double extentMetres, int logged) {
    /** The hull grows by so many soundings at a time. */
    private static final int PIECE = 10_000;

    /** Where all soundings lie at one place, the whole is taken to be so large, metres. */
    private static final double LEAST_SPACING = 0.5;

    static LakeFrame of(SoundingLog log) {
        double minX = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        double[] depths = new double[log.size()];
        for (int i = 0; i < log.size(); i++) {
            minX = Math.min(minX, log.xMetres(i));
            maxX = Math.max(maxX, log.xMetres(i));
            minY = Math.min(minY, log.yMetres(i));
            maxY = Math.max(maxY, log.yMetres(i));
            depths[i] = log.depthMetres(i);
        }
        Arrays.parallelSort(depths);
        Geometry hull = hull(log);
        double extent = Scale.extent(hull.getCoordinates());
        return new LakeFrame((minX + maxX) / 2, (minY + maxY) / 2, hull, Scale.of(depths, extent), extent, log.size());
    }

    /** The hull, some soundings at a time: those inside what is known of it are passed over. */
    private static Geometry hull(SoundingLog log) {
        Geometry hull = Shapes.FACTORY.createPolygon();
        List<Coordinate> outside = new ArrayList<>();
        IndexedPointInAreaLocator locator = null;
        for (int i = 0; i < log.size(); i++) {
            Coordinate place = new Coordinate(log.xMetres(i), log.yMetres(i));
            if (locator == null || locator.locate(place) == Location.EXTERIOR) {
                outside.add(place);
            }
            if (outside.size() == PIECE) {
                hull = with(hull, outside);
                outside.clear();
                locator = hull instanceof Polygon ? new IndexedPointInAreaLocator(hull) : null;
            }
        }
        return with(hull, outside);
    }

    private static Geometry with(Geometry hull, List<Coordinate> places) {
        List<Coordinate> all = new ArrayList<>(places);
        all.addAll(List.of(hull.getCoordinates()));
        return new ConvexHull(all.toArray(Coordinate[]::new), Shapes.FACTORY).getConvexHull();
    }

    /** Usual distance between neighbours where so many soundings cover the water, metres. */
    double spacing(int count) {
        double byArea = Math.sqrt(hull.getArea() / count);
        double byLength = hull.getArea() > 0 ? 0 : extentMetres / count;
        return Math.max(Math.max(byArea, byLength), LEAST_SPACING);
    }
}

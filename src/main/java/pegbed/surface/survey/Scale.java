package pegbed.surface.survey;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import pegbed.geometry.Shapes;

/**
 * How much larger a water is than a peg; all lengths and depths of the priors are multiplied by it.
 *
 * @param vertical 1 for depths up to 3 m, else the 95th percentile of the depths over 3 m
 * @param horizontal 1 for readings within 32 m of each other, else the largest distance between two of them over 32 m
 */
public record Scale(double vertical, double horizontal) {
    /** A peg within reach of a pole. */
    public static final Scale PEG = new Scale(1, 1);

    private static final double PEG_DEPTH = 3;
    private static final double PEG_EXTENT = 32;

    /** The scale that soundings show. */
    public static Scale of(List<Sounding> soundings) {
        if (soundings.isEmpty()) {
            return PEG;
        }
        double[] depths =
                soundings.stream().mapToDouble(Sounding::depthMetres).sorted().toArray();
        return of(depths, extent(soundings));
    }

    /**
     * The scale that soundings show.
     *
     * @param depths in rising order, one at least, metres
     * @param extent largest distance between two of them, metres
     */
    public static Scale of(double[] depths, double extent) {
        double deep = depths[(int) Math.min(depths.length - 1, Math.floor(0.95 * depths.length))];
        return new Scale(Math.max(1, deep / PEG_DEPTH), Math.max(1, extent / PEG_EXTENT));
    }

    private static double extent(List<Sounding> soundings) {
        Coordinate[] hull = Shapes.FACTORY
                .createMultiPointFromCoords(soundings.stream()
                        .map(s -> new Coordinate(s.xMetres(), s.yMetres()))
                        .toArray(Coordinate[]::new))
                .convexHull()
                .getCoordinates();
        return extent(hull);
    }

    /** Largest distance between two corners of a hull. */
    public static double extent(Coordinate[] hull) {
        double largest = 0;
        for (Coordinate a : hull) {
            for (Coordinate b : hull) {
                largest = Math.max(largest, a.distance(b));
            }
        }
        return largest;
    }
}

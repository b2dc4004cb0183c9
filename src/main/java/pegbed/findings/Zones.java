package pegbed.findings;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import pegbed.geometry.PegWater;
import pegbed.model.Pole;
import pegbed.surface.BottomGrid;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;

/**
 * Which nodes of a peg's grid lie in which zone, and in which of them a rig may be fished.
 *
 * <p><em>Across</em>: beyond the track's deepest line (without a far bank: more than 5 m out), within 62° of straight
 * out. <em>Margins</em>: within 2.6 m of the near bank, more than 1.3 m to the side, within 7 m. <em>Short</em>: within
 * 20° of straight out, from 1 m to the end of the third section. <em>Track</em>: within 1 m of the deepest line, within
 * 62°. (Common practice; the figures are empirical.)
 *
 * <p>Immutable.
 */
public final class Zones {
    /** Directions further to the side than this are not fished across, degrees. */
    public static final double WIDEST_DEGREES = 62;

    /** Width of the margins' strip along the near bank, metres. */
    public static final double MARGIN_METRES = 2.6;

    private static final double MARGIN_LEAST_X = 1.3;
    private static final double MARGIN_REACH = 7;
    private static final double OPEN_ACROSS_METRES = 5;
    private static final double WIDEST = Math.tan(Math.toRadians(WIDEST_DEGREES));
    private static final double SHORT = Math.tan(Math.toRadians(20));
    private static final double SHORT_LEAST_METRES = 1;
    private static final double TRACK_HALF_METRES = 1;

    /** Standard deviation along the water with which the deepest line is smoothed, metres. */
    private static final double SMOOTHING_METRES = 1;

    private final GridFrame frame;
    private final PegWater water;
    private final double shortReach;
    private final boolean[] fishable;
    /** y of the deepest line by column, NaN where a column has no fishable node. */
    private final double[] track;

    private final Map<Zone, int[]> nodes = new EnumMap<>(Zone.class);

    private Zones(GridFrame frame, PegWater water, double shortReach, boolean[] fishable, double[] track) {
        this.frame = frame;
        this.water = water;
        this.shortReach = shortReach;
        this.fishable = fishable;
        this.track = track;
        int[] candidates =
                IntStream.range(0, frame.size()).filter(i -> fishable[i]).toArray();
        for (Zone zone : Zone.values()) {
            nodes.put(
                    zone,
                    Arrays.stream(candidates).filter(i -> contains(zone, i)).toArray());
        }
    }

    static Zones of(BottomGrid grid, PegWater water, Pole pole) {
        boolean[] fishable = fishable(grid, water);
        double shortReach =
                pole.jointMetres().get(Math.min(2, pole.jointMetres().size() - 1));
        return new Zones(grid.frame(), water, shortReach, fishable, deepestLine(grid, water, fishable));
    }

    private static boolean[] fishable(BottomGrid grid, PegWater water) {
        // A disc that touches the outline with less than a fifth of its radius is still fished.
        Geometry inner = water.fishable().buffer(-0.8 * Disc.RADIUS_METRES, 4);
        IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(inner);
        GridFrame frame = grid.frame();
        boolean[] fishable = new boolean[frame.size()];
        for (int i = 0; i < fishable.length; i++) {
            double x = frame.x(i % frame.columns());
            double y = frame.y(i / frame.columns());
            fishable[i] = grid.isWater(i) && locator.locate(new Coordinate(x, y)) == Location.INTERIOR;
        }
        return fishable;
    }

    private static double[] deepestLine(BottomGrid grid, PegWater water, boolean[] fishable) {
        GridFrame frame = grid.frame();
        double[] raw = new double[frame.columns()];
        Arrays.fill(raw, Double.NaN);
        if (water.hasFarBank()) {
            for (int column = 0; column < frame.columns(); column++) {
                double best = Double.NEGATIVE_INFINITY;
                for (int row = 0; row < frame.rows(); row++) {
                    int i = frame.index(column, row);
                    if (fishable[i] && grid.discDepth(i) > best) {
                        best = grid.discDepth(i);
                        raw[column] = frame.y(row);
                    }
                }
            }
        }
        return smoothed(raw, frame.cellMetres());
    }

    private static double[] smoothed(double[] raw, double cell) {
        int window = (int) Math.ceil(3 * SMOOTHING_METRES / cell);
        double[] smooth = new double[raw.length];
        for (int i = 0; i < raw.length; i++) {
            double sum = 0;
            double weights = 0;
            for (int k = -window; k <= window; k++) {
                if (i + k >= 0 && i + k < raw.length && !Double.isNaN(raw[i + k])) {
                    double z = k * cell / SMOOTHING_METRES;
                    double w = Math.exp(-z * z / 2);
                    sum += w * raw[i + k];
                    weights += w;
                }
            }
            smooth[i] = weights > 0 && !Double.isNaN(raw[i]) ? sum / weights : Double.NaN;
        }
        return smooth;
    }

    /** Whether a rig may be fished at a node: its disc lies in the fishable water. */
    public boolean isFishable(int index) {
        return fishable[index];
    }

    /**
     * Whether a node may be fished and lies in front: within 62° of straight out, or within 7 m. Further to the side a
     * long pole is not fished, and nothing is plumbed.
     */
    public boolean isInFront(int index) {
        double x = frame.x(index % frame.columns());
        double y = frame.y(index / frame.columns());
        return fishable[index] && (distance(x, y) <= MARGIN_REACH || isWithin(WIDEST, x, y));
    }

    /** The nodes of a zone that may be fished, in rising order. Shared, not to be changed. */
    public int[] nodes(Zone zone) {
        return nodes.get(zone);
    }

    /** Whether a node lies in a zone and may be fished. */
    public boolean contains(Zone zone, int index) {
        if (!fishable[index]) {
            return false;
        }
        int column = index % frame.columns();
        double x = frame.x(column);
        double y = frame.y(index / frame.columns());
        double r = distance(x, y);
        return switch (zone) {
            case ACROSS -> isWithin(WIDEST, x, y) && (water.hasFarBank() ? y > track[column] : r > OPEN_ACROSS_METRES);
            case LEFT_MARGIN -> x < -MARGIN_LEAST_X && inMargin(x, y, r);
            case RIGHT_MARGIN -> x > MARGIN_LEAST_X && inMargin(x, y, r);
            case SHORT -> r >= SHORT_LEAST_METRES && r <= shortReach && isWithin(SHORT, x, y);
            case TRACK -> Math.abs(y - track[column]) <= TRACK_HALF_METRES && isWithin(WIDEST, x, y);
        };
    }

    private static double distance(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }

    /** Whether a place is no further to the side of straight out than by an angle, below 90°, of this tangent. */
    private static boolean isWithin(double tangent, double x, double y) {
        return Math.abs(x) <= tangent * y;
    }

    private boolean inMargin(double x, double y, double r) {
        return r <= MARGIN_REACH && water.fromNear(x, y) <= MARGIN_METRES;
    }
}

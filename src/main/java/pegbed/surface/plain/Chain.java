package pegbed.surface.plain;

import java.util.Arrays;
import java.util.Comparator;
import org.locationtech.jts.geom.Coordinate;

/** Sites in one line: one spot, or a polyline with straight depth between neighbours. */
final class Chain {
    private final Coordinate[] sites;
    private final Integer[] order;
    private final double aside;
    private final double beyond;

    private Chain(Coordinate[] sites, Coordinate start, double length) {
        this.sites = sites;
        order = new Integer[sites.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> sites[i].distance(start)));
        aside = Tolerance.TOUCHING * length;
        // Less than half the least distance between sites, so that every site is its own.
        beyond = Tolerance.SAME_SITE / 4 * length;
    }

    /** The chain of the sites, or null if they are not in one line. There is at least one site. */
    static Chain of(Coordinate[] sites) {
        Coordinate start = farthest(sites, sites[0]);
        Coordinate end = farthest(sites, start);
        double length = start.distance(end);
        for (Coordinate site : sites) {
            if (Math.abs(Mesh.cross(start, end, site.x, site.y)) > Tolerance.TOUCHING * length * length) {
                return null;
            }
        }
        return new Chain(sites, start, length);
    }

    private static Coordinate farthest(Coordinate[] sites, Coordinate from) {
        Coordinate best = from;
        for (Coordinate site : sites) {
            if (site.distance(from) > best.distance(from)) {
                best = site;
            }
        }
        return best;
    }

    Weights weightsAt(double x, double y) {
        if (sites.length == 1) {
            return sites[0].x == x && sites[0].y == y ? Weights.one(0) : Weights.NONE;
        }
        for (int k = 1; k < order.length; k++) {
            Coordinate a = sites[order[k - 1]];
            Coordinate b = sites[order[k]];
            double length = a.distance(b);
            double along = ((x - a.x) * (b.x - a.x) + (y - a.y) * (b.y - a.y)) / length;
            double off = Mesh.cross(a, b, x, y) / length;
            if (Math.abs(off) <= aside && along >= -beyond && along <= length + beyond) {
                return Weights.between(order[k - 1], order[k], along / length);
            }
        }
        return Weights.NONE;
    }
}

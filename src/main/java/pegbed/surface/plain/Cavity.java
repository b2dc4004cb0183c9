package pegbed.surface.plain;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.triangulate.quadedge.TrianglePredicate;

/**
 * The triangles whose circumcircle holds a place, seen from inside: the edges crossed to reach them, and the rim of
 * edges round them in counter-clockwise order. The triangles of a cavity hang together as a tree, since no site lies
 * inside it; so each is reached once.
 */
final class Cavity {
    /** Bound of the rounding error of the in-circle determinant (Shewchuk 1997, error bound A): (10 + 96ε)ε. */
    private static final double ROUNDING = (10 + 96 * 0x1p-53) * 0x1p-53;

    private final Mesh mesh;
    private final double x;
    private final double y;
    private int[] crossed = new int[8];
    private int crossedCount;
    private int[] rim = new int[16];
    private int rimCount;

    Cavity(Mesh mesh, int start, double x, double y) {
        this.mesh = mesh;
        this.x = x;
        this.y = y;
        int[] open = {3 * start + 2, 3 * start + 1, 3 * start};
        int count = 3;
        while (count > 0) {
            int edge = open[--count];
            int twin = mesh.twin(edge);
            if (twin != Mesh.NONE && inCircle(twin / 3)) {
                crossed = put(crossed, crossedCount++, edge);
                int onward = mesh.next(twin);
                open = put(open, count++, mesh.next(onward));
                open = put(open, count++, onward);
            } else {
                rim = put(rim, rimCount++, edge);
            }
        }
    }

    private static int[] put(int[] array, int at, int value) {
        int[] roomy = at < array.length ? array : Arrays.copyOf(array, 2 * array.length);
        roomy[at] = value;
        return roomy;
    }

    /** Number of edges between two triangles of the cavity. */
    int crossedCount() {
        return crossedCount;
    }

    /** The k-th edge between two triangles of the cavity. */
    int crossed(int k) {
        return crossed[k];
    }

    /** Number of edges, and of sites, of the rim. */
    int rimCount() {
        return rimCount;
    }

    /** The k-th edge of the rim, the place at its left. */
    int rim(int k) {
        return rim[k];
    }

    /** The sites round the rim: where each of its edges begins. */
    int[] rimSites() {
        int[] sites = new int[rimCount];
        Arrays.setAll(sites, k -> mesh.from(rim[k]));
        return sites;
    }

    /** Centre of the circle through the place and the k-th edge of the rim, seen from the place: x. */
    double newCentreX(int k) {
        Coordinate a = mesh.place(mesh.from(rim[k]));
        Coordinate b = mesh.place(mesh.to(rim[k]));
        return ((b.y - y) * squared(a) - (a.y - y) * squared(b)) / twiceCross(a, b);
    }

    /** Centre of the circle through the place and the k-th edge of the rim, seen from the place: y. */
    double newCentreY(int k) {
        Coordinate a = mesh.place(mesh.from(rim[k]));
        Coordinate b = mesh.place(mesh.to(rim[k]));
        return ((a.x - x) * squared(b) - (b.x - x) * squared(a)) / twiceCross(a, b);
    }

    private double squared(Coordinate a) {
        return (a.x - x) * (a.x - x) + (a.y - y) * (a.y - y);
    }

    private double twiceCross(Coordinate a, Coordinate b) {
        return 2 * ((a.x - x) * (b.y - y) - (a.y - y) * (b.x - x));
    }

    /** Whether a triangle's circle holds the place, in doubles where they suffice, else with twice their digits. */
    private boolean inCircle(int triangle) {
        Coordinate a = mesh.corner(triangle, 0);
        Coordinate b = mesh.corner(triangle, 1);
        Coordinate c = mesh.corner(triangle, 2);
        double ax = a.x - x;
        double ay = a.y - y;
        double bx = b.x - x;
        double by = b.y - y;
        double cx = c.x - x;
        double cy = c.y - y;
        double aa = ax * ax + ay * ay;
        double bb = bx * bx + by * by;
        double cc = cx * cx + cy * cy;
        double determinant = aa * (bx * cy - by * cx) + bb * (cx * ay - cy * ax) + cc * (ax * by - ay * bx);
        double size = aa * (Math.abs(bx * cy) + Math.abs(by * cx))
                + bb * (Math.abs(cx * ay) + Math.abs(cy * ax))
                + cc * (Math.abs(ax * by) + Math.abs(ay * bx));
        if (Math.abs(determinant) > ROUNDING * size) {
            return determinant > 0;
        }
        return TrianglePredicate.isInCircleDDFast(a, b, c, new Coordinate(x, y));
    }
}

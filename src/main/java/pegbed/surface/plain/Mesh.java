package pegbed.surface.plain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.CGAlgorithmsDD;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;
import org.locationtech.jts.triangulate.quadedge.Vertex;

/**
 * The Delaunay triangulation of at least three sites not in one line, as arrays: triangles run counter-clockwise, edge
 * e of triangle t is number 3t+e and runs from its corner e to its corner e+1. Immutable.
 */
final class Mesh {
    /** No triangle here: the hull's outside, or a place in no triangle. */
    static final int NONE = -1;

    private final Coordinate[] sites;
    private final int[] corners;
    private final int[] twins;
    private final int[] hullEdges;
    private final Envelope box = new Envelope();
    private final STRtree index = new STRtree();

    /** @param sites places that differ and are not in one line; kept, not copied */
    Mesh(Coordinate[] sites) {
        this.sites = sites;
        List<int[]> triangles = delaunay(sites);
        corners = new int[3 * triangles.size()];
        twins = new int[corners.length];
        for (int t = 0; t < triangles.size(); t++) {
            System.arraycopy(triangles.get(t), 0, corners, 3 * t, 3);
        }
        joinTwins();
        boolean[] flat = flatAtHull();
        hullEdges = hull(flat);
        for (int t = 0; t < corners.length / 3; t++) {
            if (!flat[t]) {
                Envelope triangle = new Envelope(corner(t, 0), corner(t, 1));
                triangle.expandToInclude(corner(t, 2));
                box.expandToInclude(triangle);
                index.insert(triangle, t);
            }
        }
        index.build();
    }

    /**
     * The triangles as JTS finds them. Its tests lose their way among sites that are in line but for rounding (a grid
     * that is turned, readings along a mark); so it is shown the sites on a fine lattice, where sites are in line, or
     * are out of line by far more than rounding.
     */
    private static List<int[]> delaunay(Coordinate[] sites) {
        double step = Tolerance.latticeStep(sites);
        Map<Coordinate, Integer> numbers = new HashMap<>();
        for (int i = 0; i < sites.length; i++) {
            numbers.put(new Coordinate(Math.rint(sites[i].x / step) * step, Math.rint(sites[i].y / step) * step), i);
        }
        DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
        builder.setSites(numbers.keySet());
        List<int[]> triangles = new ArrayList<>();
        for (Object found : builder.getSubdivision().getTriangleVertices(false)) {
            Vertex[] vertices = (Vertex[]) found;
            triangles.add(new int[] {
                numbers.get(vertices[0].getCoordinate()),
                numbers.get(vertices[1].getCoordinate()),
                numbers.get(vertices[2].getCoordinate())
            });
        }
        return triangles;
    }

    private void joinTwins() {
        Map<Long, Integer> byEnds = new HashMap<>();
        for (int edge = 0; edge < corners.length; edge++) {
            byEnds.put(key(from(edge), to(edge)), edge);
        }
        for (int edge = 0; edge < corners.length; edge++) {
            twins[edge] = byEnds.getOrDefault(key(to(edge), from(edge)), NONE);
        }
    }

    private long key(int from, int to) {
        return (long) from * sites.length + to;
    }

    /**
     * Finds the triangles that exist by rounding alone: sites along a straight hull are never quite in line, and the
     * triangle between them has no height. They are cut off the mesh, edge by edge from outside.
     */
    private boolean[] flatAtHull() {
        boolean[] flat = new boolean[corners.length / 3];
        boolean found = true;
        while (found) {
            found = false;
            for (int t = 0; t < flat.length; t++) {
                if (!flat[t] && isFlatAtHull(t)) {
                    flat[t] = true;
                    found = true;
                    for (int edge = 3 * t; edge < 3 * t + 3; edge++) {
                        if (twins[edge] != NONE) {
                            twins[twins[edge]] = NONE;
                        }
                    }
                }
            }
        }
        return flat;
    }

    private boolean isFlatAtHull(int triangle) {
        int outer = NONE;
        for (int edge = 3 * triangle; edge < 3 * triangle + 3; edge++) {
            if (twins[edge] == NONE) {
                if (outer != NONE) {
                    return false;
                }
                outer = edge;
            }
        }
        if (outer == NONE) {
            return false;
        }
        Coordinate a = sites[from(outer)];
        Coordinate b = sites[to(outer)];
        Coordinate c = sites[from(next(next(outer)))];
        double length = a.distance(b);
        return cross(a, b, c.x, c.y) <= Tolerance.FLAT * length * length;
    }

    private int[] hull(boolean[] flat) {
        int[] edges = new int[corners.length];
        int count = 0;
        for (int edge = 0; edge < corners.length; edge++) {
            if (twins[edge] == NONE && !flat[edge / 3]) {
                edges[count++] = edge;
            }
        }
        return Arrays.copyOf(edges, count);
    }

    /** The number of the site at a triangle's corner 0, 1 or 2. */
    int site(int triangle, int corner) {
        return corners[3 * triangle + corner];
    }

    Coordinate corner(int triangle, int corner) {
        return sites[corners[3 * triangle + corner]];
    }

    Coordinate place(int site) {
        return sites[site];
    }

    /** The site where an edge begins. */
    int from(int edge) {
        return corners[edge];
    }

    /** The site where an edge ends. */
    int to(int edge) {
        return corners[next(edge)];
    }

    /** The next edge of the same triangle, counter-clockwise. */
    int next(int edge) {
        return edge % 3 == 2 ? edge - 2 : edge + 1;
    }

    /** The same edge as the triangle on its other side has it; {@link #NONE} on the hull. */
    int twin(int edge) {
        return twins[edge];
    }

    /** A triangle that holds a place, its rim included; {@link #NONE} if there is none. */
    int locate(double x, double y) {
        if (!box.contains(x, y)) {
            return NONE;
        }
        for (Object candidate : index.query(new Envelope(x, x, y, y))) {
            int t = (Integer) candidate;
            if (turn(3 * t, x, y) >= 0 && turn(3 * t + 1, x, y) >= 0 && turn(3 * t + 2, x, y) >= 0) {
                return t;
            }
        }
        return NONE;
    }

    /** The weights at a place that touches the hull from outside; none if it does not touch it. */
    Weights touchingHull(double x, double y) {
        Envelope wide = new Envelope(box);
        wide.expandBy(Tolerance.TOUCHING * box.getDiameter());
        if (!wide.contains(x, y)) {
            return Weights.NONE;
        }
        for (int edge : hullEdges) {
            if (touches(edge, x, y)) {
                return along(from(edge), to(edge), x, y);
            }
        }
        return Weights.NONE;
    }

    /** The nearest site of a triangle if a place lies on it, within the tolerance; else {@link #NONE}. */
    int siteTouched(int triangle, double x, double y) {
        int nearest = 3 * triangle;
        for (int edge = nearest + 1; edge < 3 * triangle + 3; edge++) {
            if (distance(edge, x, y) < distance(nearest, x, y)) {
                nearest = edge;
            }
        }
        Coordinate corner = sites[from(nearest)];
        double longer =
                Math.max(corner.distance(sites[to(nearest)]), corner.distance(sites[from(next(next(nearest)))]));
        return distance(nearest, x, y) <= Tolerance.TOUCHING * longer ? from(nearest) : NONE;
    }

    private double distance(int edge, double x, double y) {
        return Math.hypot(x - sites[from(edge)].x, y - sites[from(edge)].y);
    }

    /** Whether a place lies on an edge, within the tolerance. */
    boolean touches(int edge, double x, double y) {
        Coordinate a = sites[from(edge)];
        Coordinate b = sites[to(edge)];
        double length = a.distance(b);
        double share = share(a, b, x, y);
        return Math.abs(cross(a, b, x, y)) <= Tolerance.TOUCHING * length * length
                && share >= -Tolerance.TOUCHING
                && share <= 1 + Tolerance.TOUCHING;
    }

    /** The weights at a place on the straight line between two sites. */
    Weights along(int first, int second, double x, double y) {
        return Weights.between(first, second, share(sites[first], sites[second], x, y));
    }

    private static double share(Coordinate a, Coordinate b, double x, double y) {
        double dx = b.x - a.x;
        double dy = b.y - a.y;
        return ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy);
    }

    /** Twice the area of the triangle from a over b to a place, positive if the place is left of a to b. */
    static double cross(Coordinate a, Coordinate b, double x, double y) {
        return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
    }

    /**
     * The exact side of an edge on which a place lies: 1 left, 0 on its line, −1 right. Both triangles of an edge ask
     * for it in the same direction, so that no place falls between them.
     */
    private int turn(int edge, double x, double y) {
        int first = Math.min(from(edge), to(edge));
        Coordinate a = sites[first];
        Coordinate b = sites[from(edge) + to(edge) - first];
        int turn = CGAlgorithmsDD.orientationIndex(a.x, a.y, b.x, b.y, x, y);
        return first == from(edge) ? turn : -turn;
    }
}

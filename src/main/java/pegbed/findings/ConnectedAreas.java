package pegbed.findings;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.CoverageUnion;
import pegbed.geometry.Shapes;
import pegbed.surface.BottomGrid;
import pegbed.surface.grid.GridFrame;

/** Connected parts of a grid: nodes that share a side. */
public final class ConnectedAreas {
    private ConnectedAreas() {}

    /** All nodes connected with one node through nodes that pass; the first must pass itself. */
    public static List<Integer> from(GridFrame frame, int start, IntPredicate passes) {
        List<Integer> found = new ArrayList<>();
        boolean[] seen = new boolean[frame.size()];
        ArrayDeque<Integer> open = new ArrayDeque<>();
        seen[start] = true;
        open.add(start);
        while (!open.isEmpty()) {
            int i = open.remove();
            found.add(i);
            int column = i % frame.columns();
            int row = i / frame.columns();
            for (int[] step : new int[][] {{-1, 0}, {1, 0}, {0, -1}, {0, 1}}) {
                int c = column + step[0];
                int r = row + step[1];
                if (c >= 0 && r >= 0 && c < frame.columns() && r < frame.rows()) {
                    int next = frame.index(c, r);
                    if (!seen[next] && passes.test(next)) {
                        seen[next] = true;
                        open.add(next);
                    }
                }
            }
        }
        return found;
    }

    /** The area of whole cells about nodes. */
    static Area area(BottomGrid grid, List<Integer> nodes) {
        GridFrame frame = grid.frame();
        double shallowest = Double.POSITIVE_INFINITY;
        double deepest = Double.NEGATIVE_INFINITY;
        for (int i : nodes) {
            shallowest = Math.min(shallowest, grid.discDepth(i));
            deepest = Math.max(deepest, grid.discDepth(i));
        }
        int[] sorted = nodes.stream().mapToInt(i -> i).sorted().toArray();
        List<Geometry> strips = new ArrayList<>();
        for (int from = 0, to = 1; from < sorted.length; from = to, to++) {
            while (to < sorted.length && follows(frame, sorted[to - 1], sorted[to])) {
                to++;
            }
            strips.add(strip(frame, sorted[from], to - from));
        }
        Geometry shape = CoverageUnion.union(Shapes.FACTORY.buildGeometry(strips));
        return new Area(shape, nodes.size() * frame.cellMetres() * frame.cellMetres(), shallowest, deepest);
    }

    private static boolean follows(GridFrame frame, int node, int next) {
        return next == node + 1 && next % frame.columns() != 0;
    }

    /** Cells side by side as one strip, with all their corners: where it meets other strips both must have the same. */
    private static Geometry strip(GridFrame frame, int first, int cells) {
        double half = frame.cellMetres() / 2;
        int column = first % frame.columns();
        int row = first / frame.columns();
        double near = frame.y(row) - half;
        double far = frame.y(row + 1) - half;
        Coordinate[] ring = new Coordinate[2 * cells + 3];
        for (int corner = 0; corner <= cells; corner++) {
            double x = frame.x(column + corner) - half;
            ring[corner] = new Coordinate(x, near);
            ring[2 * cells + 1 - corner] = new Coordinate(x, far);
        }
        ring[ring.length - 1] = ring[0].copy();
        return Shapes.FACTORY.createPolygon(ring);
    }
}

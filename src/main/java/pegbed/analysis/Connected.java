package pegbed.analysis;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.CoverageUnion;
import pegbed.geometry.Shapes;
import pegbed.surface.BottomGrid;
import pegbed.surface.GridFrame;

/** Connected parts of a grid: nodes that share a side. */
final class Connected {
    private Connected() {}

    /** All nodes connected with one node through nodes that pass; the first must pass itself. */
    static List<Integer> from(GridFrame frame, int start, IntPredicate passes) {
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
        double half = frame.cellMetres() / 2;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        List<Geometry> cells = new ArrayList<>();
        for (int i : nodes) {
            double x = frame.x(i % frame.columns());
            double y = frame.y(i / frame.columns());
            cells.add(Shapes.FACTORY.toGeometry(new Envelope(x - half, x + half, y - half, y + half)));
            least = Math.min(least, grid.discDepth(i));
            most = Math.max(most, grid.discDepth(i));
        }
        Geometry shape = CoverageUnion.union(Shapes.FACTORY.buildGeometry(cells));
        return new Area(shape, nodes.size() * frame.cellMetres() * frame.cellMetres(), least, most);
    }
}

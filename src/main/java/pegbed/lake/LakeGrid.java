package pegbed.lake;

import java.io.IOException;
import java.util.Arrays;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import pegbed.model.Decimals;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.surface.grid.GridFrame;

/**
 * A grid over all that was sounded: the nodes, at whole multiples of its step, that lie within half a step of the
 * smallest convex shape about the soundings. It is answered some rows at a time, so that its size is not bounded by the
 * memory.
 */
public final class LakeGrid {
    public static final double LEAST_STEP = 0.1;
    public static final double MOST_STEP = 1000;

    /** More nodes than this are refused. */
    private static final long MOST_NODES = 100_000_000;

    /** Rows are answered together up to about so many nodes. */
    private static final int BAND = 250_000;

    /** So many places beside the water are passed over in the time of one node. */
    private static final double PASSED_OVER = 50;

    private final double step;
    private final Geometry area;
    private final Envelope box;

    private LakeGrid(Geometry area, double step) {
        this.area = area;
        this.step = step;
        box = area.getEnvelopeInternal();
    }

    /**
     * The grid over a water.
     *
     * @param stepMetres distance between nodes, {@value #LEAST_STEP} to {@value #MOST_STEP} m
     * @throws InputException if it has too many nodes
     */
    public static LakeGrid over(LakeBottom bottom, double stepMetres) throws InputException {
        LakeGrid grid = new LakeGrid(bottom.hull().buffer(stepMetres / 2), stepMetres);
        // The rows of a long and slanting strip are looked through, which is quick but not free.
        double nodes = Math.max(grid.area.getArea(), grid.box.getArea() / PASSED_OVER) / (stepMetres * stepMetres);
        if (nodes > MOST_NODES) {
            throw new InputException("A grid of " + stepMetres + " m has " + Decimals.text(nodes / 1e6, 0)
                    + " million nodes here; one of "
                    + Decimals.text(Math.ceil(10 * stepMetres * Math.sqrt(nodes / MOST_NODES)) / 10, 1)
                    + " m or more is small enough.");
        }
        return grid;
    }

    /** The smallest frame that has all nodes. */
    public GridFrame frame() {
        long firstColumn = (long) Math.ceil(box.getMinX() / step);
        long firstRow = (long) Math.ceil(box.getMinY() / step);
        long columns = (long) Math.floor(box.getMaxX() / step) - firstColumn + 1;
        long rows = (long) Math.floor(box.getMaxY() / step) - firstRow + 1;
        return new GridFrame(
                node(firstColumn), node(firstRow), step, (int) Math.min(Integer.MAX_VALUE, Math.max(2, columns)), (int)
                        Math.min(Integer.MAX_VALUE, Math.max(2, rows)));
    }

    /** Is given the nodes of some rows. */
    public interface Band {
        void nodes(double[] x, double[] y, LakeDepths depths) throws IOException;
    }

    /** Answers all nodes, row by row from the lowest y, x rising. */
    public void forEach(LakeBottom bottom, Monitor monitor, Band band) throws IOException {
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(area);
        long first = (long) Math.ceil(box.getMinY() / step);
        long last = (long) Math.floor(box.getMaxY() / step);
        double[] x = new double[1024];
        double[] y = new double[1024];
        int count = 0;
        for (long row = first; row <= last; row++) {
            for (long c = (long) Math.ceil(box.getMinX() / step); c * step <= box.getMaxX(); c++) {
                if (inside.locate(new Coordinate(node(c), node(row))) == Location.EXTERIOR) {
                    continue;
                }
                if (count == x.length) {
                    x = Arrays.copyOf(x, 2 * count);
                    y = Arrays.copyOf(y, 2 * count);
                }
                x[count] = node(c);
                y[count++] = node(row);
            }
            if (count >= BAND || row == last) {
                double[] bandX = Arrays.copyOf(x, count);
                double[] bandY = Arrays.copyOf(y, count);
                band.nodes(bandX, bandY, bottom.depths(bandX, bandY, part(monitor, row, count, first, last)));
                count = 0;
            }
        }
    }

    /** 0.1 times 3 is 0.3, not a little more. */
    private double node(long number) {
        return Math.rint(number * step * 1e6) / 1e6;
    }

    /** Tells the progress of all while a band is worked on. */
    private Monitor part(Monitor whole, long row, int count, long first, long last) {
        double end = (row - first + 1.0) / (last - first + 1.0);
        double rows = Math.min(end, (count * step * step) / Math.max(area.getArea(), step * step));
        return new Monitor() {
            @Override
            public void progress(double share) {
                whole.progress(end - rows * (1 - share));
            }

            @Override
            public boolean cancelled() {
                return whole.cancelled();
            }
        };
    }
}

package pegbed.lake;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import pegbed.model.Monitor;
import pegbed.model.SoundingLog;
import pegbed.surface.survey.BlockAveraging;
import pegbed.surface.survey.Sounding;

/**
 * Makes the log of a whole water small enough to solve without losing what stands out: soundings that share a small
 * cell become one, at their mean place and depth, with what the mean of so many is worth, where they agree with a
 * plane; where one of them does not, the cell is cut in four, and so on, so that no hole and no hump is averaged away.
 * Within a cell much smaller than the length over which the bottom varies the mean loses next to nothing, which is the
 * argument of block kriging (Isaaks & Srivastava 1989, ch. 13).
 *
 * <p>Work grows as n log n: soundings are put in the order of their cells, a few times over.
 */
final class LakeBlockAveraging {
    /** About so many soundings are left at most. */
    static final int MOST = 60_000;

    /** Cells are no smaller than this part of the usual distance between neighbours: twins become one. */
    private static final double TWINS = 0.1;

    /** Usual errors of soundings in their cells that do not make one stand out. */
    private static final double STANDS_OUT = 6;

    /** As many standard deviations of its own depth noise never make a sounding stand out. */
    private static final double NOISE = 4;

    private static final double MOST_CELLS_ACROSS = 500_000;

    private static final double CELL_GROWTH = 1.25;

    /** How many times a cell is cut in four at most. */
    private static final int DEEPEST_CUT = 8;

    private final SoundingLog log;
    private final LakeFrame frame;
    private final Monitor monitor;
    private final double noise;

    private LakeBlockAveraging(SoundingLog log, Monitor monitor) {
        this.log = log;
        this.monitor = monitor;
        frame = LakeFrame.of(log);
        noise = Sounding.FIRM_SD_METRES * frame.scale().vertical();
    }

    /** The log's soundings as the solver is to see them; those of a small log that lie apart stay as they are. */
    static LakeSoundings of(SoundingLog log, Monitor monitor) {
        return new LakeBlockAveraging(log, monitor).soundings();
    }

    private LakeSoundings soundings() {
        double cell = Math.max(TWINS * frame.spacing(log.size()), frame.extentMetres() / MOST_CELLS_ACROSS);
        CellOrder order = order(cell);
        while (order.cells() > MOST) {
            // Cells shrink in number at most as the square of their side grows.
            cell *= Math.max(CELL_GROWTH, 0.95 * Math.sqrt((double) order.cells() / MOST));
            order = order(cell);
        }
        double tolerance = Math.max(NOISE * noise, STANDS_OUT * usualError(order));
        Means means = means(order, tolerance);
        while (means.count > MOST + MOST / 2) {
            // Where nearly every cell would be cut, what stands out is what stands out among all that.
            tolerance *= CELL_GROWTH;
            means = means(order, tolerance);
        }
        return means.inCanonicalOrder();
    }

    private CellOrder order(double cell) {
        monitor.check();
        return CellOrder.of(log, frame.originX(), frame.originY(), cell);
    }

    private double x(int i) {
        return log.xMetres(i) - frame.originX();
    }

    private double y(int i) {
        return log.yMetres(i) - frame.originY();
    }

    /** The median distance of soundings from the plane of their cell, as a standard deviation; 0 if none share one. */
    private double usualError(CellOrder order) {
        double[] errors = new double[log.size()];
        int count = 0;
        for (int c = 0; c < order.cells(); c++) {
            int from = order.start(c);
            int to = order.start(c + 1);
            if (to - from >= CellPlane.LEAST) {
                CellPlane plane = plane(order.soundings(), from, to);
                for (int k = from; k < to; k++) {
                    errors[count++] = Math.abs(error(plane, order.soundings()[k]));
                }
            }
        }
        Arrays.parallelSort(errors, 0, count);
        // For normal errors half lie within 0.6745 standard deviations.
        return count == 0 ? 0 : errors[count / 2] / 0.6745;
    }

    private CellPlane plane(int[] soundings, int from, int to) {
        CellPlane.Sums sums = new CellPlane.Sums();
        int first = soundings[from];
        for (int k = from; k < to; k++) {
            int i = soundings[k];
            sums.add(x(i) - x(first), y(i) - y(first), log.depthMetres(i));
        }
        return sums.plane(x(first), y(first));
    }

    private double error(CellPlane plane, int i) {
        return log.depthMetres(i) - plane.depth(x(i), y(i));
    }

    private Means means(CellOrder order, double tolerance) {
        monitor.check();
        Means means = new Means(order.cells());
        int[] soundings = order.soundings().clone();
        for (int c = 0; c < order.cells(); c++) {
            cut(soundings, order.start(c), order.start(c + 1), tolerance, 0, means);
        }
        return means;
    }

    /** One mean where all agree, else those of four quarters. Puts the soundings of the range in another order. */
    private void cut(int[] soundings, int from, int to, double tolerance, int depth, Means means) {
        if (from == to) {
            return;
        }
        CellPlane plane = plane(soundings, from, to);
        boolean agree = true;
        for (int k = from; k < to && agree; k++) {
            agree = Math.abs(error(plane, soundings[k])) <= tolerance;
        }
        if (agree || depth == DEEPEST_CUT) {
            means.add(soundings, from, to);
            return;
        }
        int middle = parted(soundings, from, to, true, plane.middleX());
        int low = parted(soundings, from, middle, false, plane.middleY());
        int high = parted(soundings, middle, to, false, plane.middleY());
        cut(soundings, from, low, tolerance, depth + 1, means);
        cut(soundings, low, middle, tolerance, depth + 1, means);
        cut(soundings, middle, high, tolerance, depth + 1, means);
        cut(soundings, high, to, tolerance, depth + 1, means);
    }

    /** Those below the border first; returns where the others begin. */
    private int parted(int[] soundings, int from, int to, boolean byX, double border) {
        int next = from;
        for (int k = from; k < to; k++) {
            int i = soundings[k];
            if ((byX ? x(i) : y(i)) < border) {
                soundings[k] = soundings[next];
                soundings[next++] = i;
            }
        }
        return next;
    }

    /** The means, as they are found. */
    private final class Means {
        private double[] x;
        private double[] y;
        private double[] depth;
        private double[] variance;
        private double[] varX;
        private double[] varY;
        private double[] covXY;
        private int count;

        Means(int capacity) {
            resize(capacity);
        }

        private void resize(int capacity) {
            x = resized(x, capacity);
            y = resized(y, capacity);
            depth = resized(depth, capacity);
            variance = resized(variance, capacity);
            varX = resized(varX, capacity);
            varY = resized(varY, capacity);
            covXY = resized(covXY, capacity);
        }

        private static double[] resized(double[] values, int capacity) {
            return values == null ? new double[capacity] : Arrays.copyOf(values, capacity);
        }

        void add(int[] soundings, int from, int to) {
            if (count == x.length) {
                resize(2 * count + 16);
            }
            int n = to - from;
            double sumX = 0;
            double sumY = 0;
            double sumDepth = 0;
            double sumVarX = 0;
            double sumVarY = 0;
            double sumCov = 0;
            for (int k = from; k < to; k++) {
                int i = soundings[k];
                sumX += x(i);
                sumY += y(i);
                sumDepth += log.depthMetres(i);
                Sounding s = new Sounding(log.xMetres(i), log.yMetres(i), 0, 0, log.fromSeat(), 0);
                sumVarX += s.varX();
                sumVarY += s.varY();
                sumCov += s.covXY();
            }
            x[count] = sumX / n;
            y[count] = sumY / n;
            depth[count] = sumDepth / n;
            double own = n == 1 ? noise : Math.max(noise / Math.sqrt(n), BlockAveraging.LEAST_SD_METRES);
            variance[count] = own * own;
            // As a mean of places with their own errors, but never better than one sounding's least.
            double each = log.placeSdMetres() * log.placeSdMetres();
            double least = n == 1 ? 0 : BlockAveraging.LEAST_PLACE_SD_METRES * BlockAveraging.LEAST_PLACE_SD_METRES;
            varX[count] = Math.max(least, (each + sumVarX / n) / n);
            varY[count] = Math.max(least, (each + sumVarY / n) / n);
            covXY[count] = sumCov / n / n;
            count++;
        }

        /** In an order that neither the log's nor a mirror changes. */
        LakeSoundings inCanonicalOrder() {
            int[] order = IntStream.range(0, count)
                    .boxed()
                    .sorted(Comparator.<Integer>comparingDouble(i -> y[i])
                            .thenComparingDouble(i -> Math.abs(x[i]))
                            .thenComparingDouble(i -> x[i])
                            .thenComparingDouble(i -> depth[i]))
                    .mapToInt(i -> i)
                    .toArray();
            return new LakeSoundings(
                    frame,
                    LakeSoundings.chosen(x, order),
                    LakeSoundings.chosen(y, order),
                    LakeSoundings.chosen(depth, order),
                    LakeSoundings.chosen(variance, order),
                    LakeSoundings.chosen(varX, order),
                    LakeSoundings.chosen(varY, order),
                    LakeSoundings.chosen(covXY, order));
        }
    }
}

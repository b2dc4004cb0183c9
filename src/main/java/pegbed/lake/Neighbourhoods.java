package pegbed.lake;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The soundings that a place is conditioned on: the nearest, but some from every side, so that a dense track does not
 * take all (an octant search: Isaaks & Srivastava 1989, ch. 14). Immutable and thread-safe.
 */
final class Neighbourhoods {
    private static final int SIDES = 8;

    /** First so many times as many as are wanted are looked at, and where a side is poor, so many. */
    private static final int NEAR = 3;

    private static final int FAR = 10;

    /** How far soundings lie apart is looked at for so many of them. */
    private static final int SAMPLE = 300;

    private final LakeSoundings soundings;
    private final KdTree tree;

    Neighbourhoods(LakeSoundings soundings) {
        this.soundings = soundings;
        tree = new KdTree(soundings.x, soundings.y);
    }

    /** The nearest one first, without regard to sides. */
    int[] nearest(double x, double y, int most) {
        return tree.nearest(x, y, most);
    }

    /** Metres from a place to the nearest sounding. */
    double toNearest(double x, double y) {
        return distance(tree.nearest(x, y, 1)[0], x, y);
    }

    /**
     * How far soundings lie apart, metres, where {@value #SAMPLE} of them at most, spread over the water, cover it: the
     * median over them of the median distance to the nearest on every side. So few, as along a track soundings lie much
     * closer than tracks do.
     */
    double apart() {
        int step = 1 + (soundings.count - 1) / SAMPLE;
        int[] sample =
                IntStream.iterate(0, i -> i < soundings.count, i -> i + step).toArray();
        double[] medians = Arrays.stream(sample)
                .mapToDouble(i -> apart(i, sample))
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        return medians.length == 0 ? soundings.spacing : medians[medians.length / 2];
    }

    /** The median distance to the nearest on every side where there is one; infinite where there is none at all. */
    private double apart(int sounding, int[] sample) {
        double x = soundings.x[sounding];
        double y = soundings.y[sounding];
        double[] nearest = new double[SIDES];
        Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        for (int i : sample) {
            double distance = distance(i, x, y);
            int side = side(soundings.x[i] - x, soundings.y[i] - y);
            if (distance > 0 && distance < nearest[side]) {
                nearest[side] = distance;
            }
        }
        double[] there =
                Arrays.stream(nearest).filter(Double::isFinite).sorted().toArray();
        return there.length == 0 ? Double.POSITIVE_INFINITY : there[there.length / 2];
    }

    private double distance(int sounding, double x, double y) {
        return Math.hypot(soundings.x[sounding] - x, soundings.y[sounding] - y);
    }

    /** So many from around a place, the nearest first; all where there are not so many. */
    int[] around(double x, double y, int wanted) {
        if (wanted >= soundings.count) {
            return tree.nearest(x, y, wanted);
        }
        int[] candidates = tree.nearest(x, y, NEAR * wanted);
        boolean[] taken = new boolean[candidates.length];
        if (taken(candidates, x, y, wanted / SIDES, taken) < wanted / SIDES * SIDES) {
            candidates = tree.nearest(x, y, FAR * wanted);
            taken = new boolean[candidates.length];
            taken(candidates, x, y, wanted / SIDES, taken);
        }
        // Those on the very place may be more than are wanted.
        int left = wanted;
        for (boolean each : taken) {
            left -= each ? 1 : 0;
        }
        for (int k = taken.length - 1; left < 0; k--) {
            left += taken[k] ? 1 : 0;
            taken[k] = false;
        }
        for (int k = 0; k < taken.length && left > 0; k++) {
            left -= taken[k] ? 0 : 1;
            taken[k] = true;
        }
        int[] chosen = new int[wanted - left];
        int at = 0;
        for (int k = 0; k < taken.length; k++) {
            if (taken[k]) {
                chosen[at++] = candidates[k];
            }
        }
        return chosen;
    }

    /** Takes so many of each side, the nearest, and returns how many were found. */
    private int taken(int[] candidates, double x, double y, int each, boolean[] taken) {
        int[] count = new int[SIDES];
        int found = 0;
        for (int k = 0; k < candidates.length; k++) {
            double dx = soundings.x[candidates[k]] - x;
            double dy = soundings.y[candidates[k]] - y;
            if (dx == 0 && dy == 0) {
                // It lies on no side.
                taken[k] = true;
                continue;
            }
            int side = side(dx, dy);
            if (count[side] < each) {
                count[side]++;
                taken[k] = true;
                found++;
            }
        }
        return found;
    }

    /** Which eighth of the round a direction lies in. */
    private static int side(double dx, double dy) {
        return (dx > 0 ? 1 : 0) + (dy > 0 ? 2 : 0) + (Math.abs(dx) > Math.abs(dy) ? 4 : 0);
    }
}

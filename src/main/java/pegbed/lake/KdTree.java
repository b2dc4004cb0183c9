package pegbed.lake;

/**
 * Finds the soundings nearest to a place: a k-d tree (Bentley 1975, Multidimensional binary search trees used for
 * associative searching, Communications of the ACM 18(9)) laid out in one array of indices, so that a hundred thousand
 * soundings need no objects. Immutable and thread-safe.
 */
final class KdTree {
    private static final int LEAF = 8;

    private final double[] x;
    private final double[] y;
    private final int[] order;
    /** Whether the range whose middle this is was parted by x. */
    private final boolean[] byX;

    KdTree(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        order = new int[x.length];
        byX = new boolean[x.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        part(0, order.length);
    }

    private void part(int from, int to) {
        if (to - from <= LEAF) {
            return;
        }
        double minX = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (int k = from; k < to; k++) {
            minX = Math.min(minX, x[order[k]]);
            maxX = Math.max(maxX, x[order[k]]);
            minY = Math.min(minY, y[order[k]]);
            maxY = Math.max(maxY, y[order[k]]);
        }
        int middle = (from + to) >>> 1;
        boolean wide = maxX - minX >= maxY - minY;
        select(wide ? x : y, from, to - 1, middle);
        byX[middle] = wide;
        part(from, middle);
        part(middle + 1, to);
    }

    /** Puts the k-th smallest of a range in its place, smaller ones before it (Hoare 1961, Find). */
    private void select(double[] values, int from, int to, int k) {
        int left = from;
        int right = to;
        while (left < right) {
            double pivot = values[order[(left + right) >>> 1]];
            int i = left;
            int j = right;
            while (i <= j) {
                while (values[order[i]] < pivot) {
                    i++;
                }
                while (values[order[j]] > pivot) {
                    j--;
                }
                if (i <= j) {
                    int swap = order[i];
                    order[i++] = order[j];
                    order[j--] = swap;
                }
            }
            if (k <= j) {
                right = j;
            } else if (k >= i) {
                left = i;
            } else {
                return;
            }
        }
    }

    /** The nearest soundings to a place, the nearest first; fewer where there are not so many. */
    int[] nearest(double atX, double atY, int most) {
        Nearest found = new Nearest(Math.min(most, order.length));
        search(0, order.length, atX, atY, found);
        return found.inOrder();
    }

    private void search(int from, int to, double atX, double atY, Nearest found) {
        if (to - from <= LEAF) {
            for (int k = from; k < to; k++) {
                offer(order[k], atX, atY, found);
            }
            return;
        }
        int middle = (from + to) >>> 1;
        int i = order[middle];
        double beyond = byX[middle] ? atX - x[i] : atY - y[i];
        if (beyond <= 0) {
            search(from, middle, atX, atY, found);
        } else {
            search(middle + 1, to, atX, atY, found);
        }
        if (beyond * beyond < found.farthest2()) {
            offer(i, atX, atY, found);
            if (beyond <= 0) {
                search(middle + 1, to, atX, atY, found);
            } else {
                search(from, middle, atX, atY, found);
            }
        }
    }

    private void offer(int i, double atX, double atY, Nearest found) {
        double dx = x[i] - atX;
        double dy = y[i] - atY;
        found.offer(i, dx * dx + dy * dy);
    }

    /** The nearest so far: a heap with the farthest of them on top. */
    private static final class Nearest {
        private final int[] which;
        private final double[] distance2;
        private int size;

        Nearest(int most) {
            which = new int[most];
            distance2 = new double[most];
        }

        double farthest2() {
            return size < which.length ? Double.POSITIVE_INFINITY : distance2[0];
        }

        void offer(int i, double d2) {
            if (size < which.length) {
                int at = size++;
                while (at > 0 && distance2[(at - 1) / 2] < d2) {
                    put(at, (at - 1) / 2);
                    at = (at - 1) / 2;
                }
                which[at] = i;
                distance2[at] = d2;
            } else if (size > 0 && d2 < distance2[0]) {
                sink(i, d2);
            }
        }

        private void sink(int i, double d2) {
            int at = 0;
            for (int child = 1; child < size; child = 2 * at + 1) {
                if (child + 1 < size && distance2[child + 1] > distance2[child]) {
                    child++;
                }
                if (distance2[child] <= d2) {
                    break;
                }
                put(at, child);
                at = child;
            }
            which[at] = i;
            distance2[at] = d2;
        }

        private void put(int to, int from) {
            which[to] = which[from];
            distance2[to] = distance2[from];
        }

        int[] inOrder() {
            int[] sorted = new int[size];
            while (size > 0) {
                sorted[size - 1] = which[0];
                size--;
                if (size > 0) {
                    sink(which[size], distance2[size]);
                }
            }
            return sorted;
        }
    }
}

package pegbed.lake;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import pegbed.model.Monitor;
import pegbed.model.Parallel;

/**
 * Answers places by overlapping square patches, each conditioned on its own soundings. A place lies in four patches,
 * and what they say is weighted by how near their middles are, smoothly and to 1 in all, so that the bottom has no
 * seams (a partition of unity: Wendland 2005, Scattered Data Approximation, ch. 15, from memory). The variance is
 * weighted in the same way; that of a weighted mean is never larger.
 *
 * <p>Patches of one of four colours share no place. They are worked on in parallel, colour by colour, so that the
 * answers are the same however many threads there are.
 */
final class PartitionOfUnity {
    /** Soundings that a patch is conditioned on. */
    private static final int NEIGHBOURS = 56;

    /** Distance between the middles of two patches, in the usual distances between soundings. */
    private static final double APART = 2;

    private static final int SIDE_BITS = 31;
    private static final long HALF = 1L << (SIDE_BITS - 1);

    private final LakeField field;
    private final double[] x;
    private final double[] y;
    private final double apart;
    /** Places in the order of the squares between four middles. */
    private final int[] order;
    /** Keys of the squares that hold places, in order. */
    private final long[] squares;

    private final int[] starts;

    private PartitionOfUnity(LakeField field, double[] x, double[] y) {
        this.field = field;
        this.x = x;
        this.y = y;
        apart = APART * field.soundings().spacing;
        long[] keys = new long[x.length];
        Arrays.setAll(keys, i -> key((long) Math.floor(x[i] / apart), (long) Math.floor(y[i] / apart)));
        order = IntStream.range(0, x.length)
                .boxed()
                .sorted(java.util.Comparator.<Integer>comparingLong(i -> keys[i]))
                .mapToInt(i -> i)
                .toArray();
        squares = Arrays.stream(keys).sorted().distinct().toArray();
        starts = new int[squares.length + 1];
        int square = 0;
        for (int k = 1; k < order.length; k++) {
            if (keys[order[k]] != keys[order[k - 1]]) {
                starts[++square] = k;
            }
        }
        starts[squares.length] = order.length;
    }

    /** The bottom at places, metres in the water's own frame. */
    static LakeDepths depths(LakeField field, double[] x, double[] y, Monitor monitor) {
        PartitionOfUnity patches = new PartitionOfUnity(field, x, y);
        LakeDepths.Sums sums = new LakeDepths.Sums(x.length);
        patches.addTo(sums, monitor);
        return sums.depths();
    }

    private void addTo(LakeDepths.Sums sums, Monitor monitor) {
        long[] middles = Arrays.stream(squares)
                .flatMap(key -> java.util.stream.LongStream.of(
                        key,
                        key(column(key) + 1, row(key)),
                        key(column(key), row(key) + 1),
                        key(column(key) + 1, row(key) + 1)))
                .sorted()
                .distinct()
                .toArray();
        AtomicInteger done = new AtomicInteger();
        for (int colour = 0; colour < 4; colour++) {
            int wanted = colour;
            long[] keys = Arrays.stream(middles)
                    .filter(key -> Math.floorMod(column(key), 2) + 2 * Math.floorMod(row(key), 2) == wanted)
                    .toArray();
            Parallel.each(keys.length, i -> {
                monitor.check();
                patch(column(keys[i]), row(keys[i]), sums);
                if (done.incrementAndGet() % 64 == 0) {
                    monitor.progress((double) done.get() / middles.length);
                }
            });
        }
    }

    private void patch(long column, long row, LakeDepths.Sums sums) {
        double middleX = column * apart;
        double middleY = row * apart;
        int[] places = new int[0];
        for (long r = row - 1; r <= row; r++) {
            for (long c = column - 1; c <= column; c++) {
                int square = Arrays.binarySearch(squares, key(c, r));
                if (square >= 0) {
                    int count = starts[square + 1] - starts[square];
                    places = Arrays.copyOf(places, places.length + count);
                    System.arraycopy(order, starts[square], places, places.length - count, count);
                }
            }
        }
        double[] weights = new double[places.length];
        for (int p = 0; p < weights.length; p++) {
            weights[p] = weight((x[places[p]] - middleX) / apart) * weight((y[places[p]] - middleY) / apart);
        }
        int[] chosen = field.near().around(middleX, middleY, NEIGHBOURS);
        new LocalConditioning(field, chosen).add(places, x, y, weights, sums);
    }

    /** 1 in the middle, 0 where the next patch has its own, smooth between, and with that of the next 1 in all. */
    static double weight(double way) {
        double left = Math.max(0, 1 - Math.abs(way));
        return left * left * (3 - 2 * left);
    }

    private static long key(long column, long row) {
        return ((row + HALF) << SIDE_BITS) | (column + HALF);
    }

    private static long column(long key) {
        return (key & ((1L << SIDE_BITS) - 1)) - HALF;
    }

    private static long row(long key) {
        return (key >> SIDE_BITS) - HALF;
    }
}

package pegbed.lake;

import java.util.Arrays;
import pegbed.model.SoundingLog;

/**
 * The soundings of a log in the order of square cells, symmetric about an origin.
 *
 * @param soundings indices of the soundings, cell by cell
 * @param starts where each cell's begin; one more than there are cells
 */
record CellOrder(int[] soundings, int[] starts) {
    /** A key is row, column and index of a sounding, in so many bits. */
    private static final int INDEX_BITS = 22;

    private static final int SIDE_BITS = 21;

    static CellOrder of(SoundingLog log, double originX, double originY, double cell) {
        int n = log.size();
        long[] keys = new long[n];
        long half = 1L << (SIDE_BITS - 1);
        for (int i = 0; i < n; i++) {
            long column = Math.round(Math.rint((log.xMetres(i) - originX) / cell)) + half;
            long row = Math.round(Math.rint((log.yMetres(i) - originY) / cell)) + half;
            keys[i] = (clipped(row) << (SIDE_BITS + INDEX_BITS)) | (clipped(column) << INDEX_BITS) | i;
        }
        Arrays.parallelSort(keys);
        int[] soundings = new int[n];
        int[] starts = new int[n + 1];
        int cells = 0;
        for (int k = 0; k < n; k++) {
            soundings[k] = (int) (keys[k] & ((1L << INDEX_BITS) - 1));
            if (k == 0 || keys[k] >> INDEX_BITS != keys[k - 1] >> INDEX_BITS) {
                starts[cells++] = k;
            }
        }
        starts[cells] = n;
        return new CellOrder(soundings, Arrays.copyOf(starts, cells + 1));
    }

    /** Where cells are too small beside the water for the bits to distinguish them, the outermost share one. */
    private static long clipped(long side) {
        return Math.max(0, Math.min((1L << SIDE_BITS) - 1, side));
    }

    int cells() {
        return starts.length - 1;
    }

    int start(int cell) {
        return starts[cell];
    }
}

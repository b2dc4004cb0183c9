package pegbed.model;

import java.util.Arrays;

/**
 * A log of a whole water: up to some millions of depths at places, such as a boat writes. Kept as plain numbers,
 * because so many objects would not fit in a small memory.
 *
 * <p>Filled by one thread, then only read.
 */
public final class SoundingLog {
    /** More soundings than this are not held. */
    public static final int MOST = 4_000_000;

    /** Deepest sounding that is believed, metres. */
    public static final double DEEPEST_METRES = 1000;

    /**
     * How well a boat's echo is placed where nothing is said, each way, metres: a consumer satellite fix lies within 5
     * m 19 times in 20 (2 m each way, from memory), and the boat moves, and the beam spreads, by some 1.5 m between fix
     * and echo (from memory).
     */
    public static final double BOAT_SD_METRES = 2.5;

    private final double placeSdMetres;
    private final Precision fromSeat;
    private double[] x = new double[1024];
    private double[] y = new double[1024];
    private double[] depth = new double[1024];
    private int size;

    private SoundingLog(double placeSdMetres, Precision fromSeat) {
        this.placeSdMetres = placeSdMetres;
        this.fromSeat = fromSeat;
    }

    /**
     * An empty log whose places are as unsure in every direction.
     *
     * @param sdMetres standard deviation each way, metres, 0 to 100
     */
    public static SoundingLog placedWithin(double sdMetres) {
        Check.within(sdMetres, 0, 100, "The places' standard deviation in metres");
        return new SoundingLog(sdMetres, new Precision(0, 0));
    }

    /** An empty log whose places were said as distance and direction from the seat. */
    public static SoundingLog fromSeat(Precision precision) {
        return new SoundingLog(0, precision);
    }

    /** Adds one sounding; the caller has looked at its values. */
    public void add(double xMetres, double yMetres, double depthMetres) {
        if (size == MOST) {
            throw new IllegalStateException("A log holds " + MOST + " soundings at most.");
        }
        if (size == x.length) {
            int larger = Math.min(MOST, size * 2);
            x = Arrays.copyOf(x, larger);
            y = Arrays.copyOf(y, larger);
            depth = Arrays.copyOf(depth, larger);
        }
        x[size] = xMetres;
        y[size] = yMetres;
        depth[size] = depthMetres;
        size++;
    }

    public int size() {
        return size;
    }

    public double xMetres(int i) {
        return x[i];
    }

    public double yMetres(int i) {
        return y[i];
    }

    public double depthMetres(int i) {
        return depth[i];
    }

    /** Standard deviation of a place in every direction, metres; beside what {@link #fromSeat()} adds. */
    public double placeSdMetres() {
        return placeSdMetres;
    }

    /** How well distance and direction are known where places were said from the seat; else nothing is added. */
    public Precision fromSeat() {
        return fromSeat;
    }
}

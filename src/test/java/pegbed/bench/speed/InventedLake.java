package pegbed.bench.speed;

import java.util.Random;
import pegbed.model.SoundingLog;

/** A lake that does not exist, 3.2 by 2 km, and the log of a boat that goes over it line by line. */
public final class InventedLake {
    /** Half its length and width, metres: 205,000 nodes of 5 m lie in it. */
    public static final double HALF_LENGTH = 1600;

    public static final double HALF_WIDTH = 1020;

    /** How well the boat's places and depths are known in the log, metres. */
    public static final double PLACE_SD = 1;

    public static final double DEPTH_SD = 0.05;

    private InventedLake() {}

    /** A basin of some 9 m with bars and hollows of 50 to 700 m. */
    public static double depth(double x, double y) {
        double way = square(x / HALF_LENGTH) + square(y / HALF_WIDTH);
        double basin = 9 * (1 - way) / (1 + 0.8 * way) + 1;
        return basin
                + 0.9 * Math.sin(x / 110 + 0.7 * Math.sin(y / 170)) * Math.cos(y / 90 + 1)
                + 0.35 * Math.sin(x / 31 + 2) * Math.sin(y / 37 + Math.sin(x / 60))
                + 0.12 * Math.sin((x + 2 * y) / 17) * Math.cos((2 * x - y) / 23);
    }

    public static boolean isWater(double x, double y) {
        return square(x / HALF_LENGTH) + square(y / HALF_WIDTH) <= 1;
    }

    /** Soundings scattered over all of it. */
    public static SoundingLog scattered(int count, long seed) {
        Random random = new Random(seed);
        SoundingLog log = SoundingLog.placedWithin(PLACE_SD);
        while (log.size() < count) {
            double x = HALF_LENGTH * (2 * random.nextDouble() - 1);
            double y = HALF_WIDTH * (2 * random.nextDouble() - 1);
            if (isWater(x, y)) {
                add(log, x, y, random);
            }
        }
        return log;
    }

    /** Soundings along lines across the lake, three times as far apart as the soundings on them, not quite straight. */
    public static SoundingLog tracked(int count, long seed) {
        Random random = new Random(seed);
        SoundingLog log = SoundingLog.placedWithin(PLACE_SD);
        double step = Math.sqrt(Math.PI * HALF_LENGTH * HALF_WIDTH / count / 3) * 1.02;
        // What is left of the count after all lines goes on between them.
        for (double begin = 0; log.size() < count; begin += 1.5) {
            for (double x = -HALF_LENGTH + begin * step; x <= HALF_LENGTH && log.size() < count; x += 3 * step) {
                for (double y = -HALF_WIDTH; y <= HALF_WIDTH && log.size() < count; y += step) {
                    double wandered = x + 0.8 * step * Math.sin(y / 70 + x);
                    if (isWater(wandered, y)) {
                        add(log, wandered, y, random);
                    }
                }
            }
        }
        return log;
    }

    private static void add(SoundingLog log, double x, double y, Random random) {
        log.add(
                x + PLACE_SD * random.nextGaussian(),
                y + PLACE_SD * random.nextGaussian(),
                Math.max(0, depth(x, y) + DEPTH_SD * random.nextGaussian()));
    }

    private static double square(double value) {
        return value * value;
    }
}

package pegbed.bench.practice;

import java.util.Random;

/**
 * One invented bottom: from either bank an edge, a ledge and a slope that run along the water with wandering widths and
 * depths, the shallower of the two sides counting; a dished track whose depth wanders along the water; small unevenness
 * everywhere; and up to four holes and humps. Open water has one bank, and a fall or a second drop further out.
 */
public final class MadeBottom {
    private static final int WAVES = 40;

    private final Random random;
    private final boolean open;
    private final double width;
    private final Side near;
    private final Side far;
    private final RandomMeander nearBank;
    private final RandomMeander farBank;
    private final RandomMeander track;
    private final double trackMetres;
    private final double dish;
    private final double bend;
    private final double taper;
    private final Wave[] local = new Wave[WAVES];
    private final double localSd;
    private final double[][] spots;

    /** One wave of the unevenness. */
    private record Wave(double kx, double ky, double phase) {}

    public MadeBottom(Random random, boolean open) {
        this.random = random;
        this.open = open;
        width = in(9.5, 15);
        near = new Side(in(0.6, 2.2), in(1.0, 2.6));
        far = new Side(in(0.8, 3), in(1.2, 3.2));
        nearBank = new RandomMeander(random, WAVES, in(0.05, 0.25), in(4, 8));
        farBank = new RandomMeander(random, WAVES, in(0.05, 0.4), in(4, 8));
        track = new RandomMeander(random, WAVES, in(0.02, 0.13), in(2.5, 8));
        trackMetres = open ? in(1.7, 2.8) : in(1.3, 2.1);
        dish = in(0, 0.15);
        bend = in(-0.012, 0.012);
        taper = in(-0.06, 0.06);
        localSd = in(0.015, 0.05);
        double length = in(0.9, 2);
        for (int i = 0; i < WAVES; i++) {
            local[i] = new Wave(
                    random.nextGaussian() / length, random.nextGaussian() / length, 2 * Math.PI * random.nextDouble());
        }
        spots = new double[random.nextInt(5)][];
        for (int i = 0; i < spots.length; i++) {
            double metres = in(0.08, 0.28) * (random.nextBoolean() ? 1 : -1);
            spots[i] = new double[] {in(-10, 10), in(2, open ? 13 : width - 2), in(0.7, 1.8), metres};
        }
    }

    private double in(double least, double most) {
        return MadePegs.between(random, least, most);
    }

    Random random() {
        return random;
    }

    boolean isOpen() {
        return open;
    }

    int reachMetres() {
        return open || width > 12.5 ? 16 : 13;
    }

    double nearAt(double x) {
        return -0.7 + (open ? 0 : bend * x * x) + nearBank.at(x);
    }

    double farAt(double x) {
        return -0.7 + width + bend * x * x + taper * x + farBank.at(x);
    }

    /** Depth, metres; NaN on land. */
    double depthAt(double x, double y) {
        double fromNear = y - nearAt(x);
        double fromFar = open ? Double.POSITIVE_INFINITY : farAt(x) - y;
        if (fromNear < 0 || fromFar < 0) {
            return Double.NaN;
        }
        double full = trackMetres + track.at(x + 0.3 * y);
        double depth = Math.min(near.depth(x, fromNear, full), open ? full : far.depth(x, fromFar, full));
        double across = open ? Math.min(1, fromNear / 16) : 4 * fromNear * fromFar / Math.pow(fromNear + fromFar, 2);
        depth += dish * (across - 0.7) * depth / full;
        double edge = Math.min(1, Math.min(fromNear, fromFar));
        double uneven = 0;
        for (Wave wave : local) {
            uneven += Math.sqrt(2.0 / WAVES) * Math.cos(wave.kx * x + wave.ky * y + wave.phase);
        }
        depth += edge * localSd * uneven;
        for (double[] spot : spots) {
            double r = Math.hypot(x - spot[0], y - spot[1]) / spot[2];
            depth += edge * spot[3] * Math.exp(-r * r);
        }
        return Math.max(0.05, depth);
    }

    /** One bank's edge, ledge and slope. */
    private final class Side {
        private final double ledgeWidth;
        private final double run;
        private final double edge = in(0.1, 0.35);
        private final double ledge = in(0.35, 0.7);
        private final RandomMeander widths = new RandomMeander(random, WAVES, in(0.1, 0.5), in(3, 8));
        private final RandomMeander depths = new RandomMeander(random, WAVES, in(0.02, 0.1), in(3, 8));

        Side(double ledgeWidth, double run) {
            this.ledgeWidth = ledgeWidth;
            this.run = run;
        }

        double depth(double x, double d, double full) {
            double onLedge = ledge * trackMetres * (1 + depths.at(x));
            double step = edge + (onLedge - edge) * (1 - Math.exp(-d / 0.3));
            double t = Math.max(0, Math.min(1, (d - Math.max(0.2, ledgeWidth + widths.at(x))) / run));
            return step + (full - onLedge) * t * t * (3 - 2 * t);
        }
    }
}

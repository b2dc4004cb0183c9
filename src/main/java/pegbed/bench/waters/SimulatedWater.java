package pegbed.bench.waters;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import pegbed.bench.practice.DiscMeans;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.RandomMeander;
import pegbed.bench.practice.SimulatedPlumbing;
import pegbed.bench.practice.Truth;
import pegbed.findings.Zones;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;

/**
 * An invented narrow water (no real one) with pegs along it: one cross-profile of near ledge, slope, dished track,
 * slope, far ledge and far wall, whose measures drift slowly along the water; and at every peg its own wandering of
 * ledges, track and banks, unevenness, and up to four holes and humps. The same number makes the same water.
 */
final class SimulatedWater {
    /** Distance between the seats, metres. */
    private static final double APART_METRES = 18;

    private static final int WAVES = 30;
    private static final double CELL_METRES = 0.1;
    private static final double DISCS_METRES = 0.5;
    private static final double EDGE_METRES = 0.4;
    private static final double NEAR_METRES = 7;

    private final String name;
    private final Random random;
    private final double width;
    private final double trackMetres;
    private final double dish;
    private final Side near;
    private final Side far;
    private final RandomMeander trackAlong;
    private final RandomMeander nearBank;
    private final RandomMeander farBank;
    private final double localSd;
    private final double localLength;

    SimulatedWater(long number) {
        name = String.format(Locale.ROOT, "water-%d", number);
        random = new Random(number * 6364136223846793005L + 1442695040888963407L);
        width = in(9.5, 14.5);
        trackMetres = in(1.2, 2.2);
        dish = in(0, 0.2);
        near = new Side(in(0.7, 2.6), in(0.8, 2.6), in(0.1, 0.35));
        // A far bank is often a wall, with depth at its very foot.
        far = new Side(in(0.7, 3.2), in(0.8, 3.2), random.nextBoolean() ? in(0.1, 0.3) : in(0.35, 0.7));
        trackAlong = new RandomMeander(random, WAVES, in(0.03, 0.10), in(25, 60));
        nearBank = new RandomMeander(random, WAVES, in(0.05, 0.25), in(4, 8));
        farBank = new RandomMeander(random, WAVES, in(0.1, 0.5), in(8, 25));
        localSd = in(0.015, 0.05);
        localLength = in(0.9, 2);
    }

    private double in(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** The pegs of this water, the first of them at its middle. */
    List<PracticePeg> pegs(int count) {
        List<PracticePeg> pegs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int place = i % 2 == 0 ? i / 2 : -(i + 1) / 2;
            pegs.add(new Ground(place * APART_METRES).peg(name + " peg " + i));
        }
        return pegs;
    }

    /** The peg after readings of a staggered fan. */
    static Peg plumbed(PracticePeg peg, List<Place> places, long seed) {
        SimulatedPlumbing plumbing = new SimulatedPlumbing(peg, seed);
        List<Reading> readings = places.stream().map(plumbing::read).toList();
        return peg.with(readings);
    }

    /** One bank's edge, ledge and slope. */
    private final class Side {
        private final double ledgeWidth;
        private final double run;
        private final double edge;
        private final double ledge = in(0.3, 0.72);
        private final RandomMeander widths = new RandomMeander(random, WAVES, in(0.08, 0.35), in(25, 60));
        private final RandomMeander depths = new RandomMeander(random, WAVES, in(0.02, 0.08), in(25, 60));

        Side(double ledgeWidth, double run, double edge) {
            this.ledgeWidth = ledgeWidth;
            this.run = run;
            this.edge = edge;
        }
    }

    /** What one peg adds to the water's profile. */
    private final class Ground {
        private final double station;
        private final RandomMeander nearWidths = new RandomMeander(random, WAVES, in(0.05, 0.25), in(3, 8));
        private final RandomMeander nearDepths = new RandomMeander(random, WAVES, in(0.02, 0.06), in(3, 8));
        private final RandomMeander farWidths = new RandomMeander(random, WAVES, in(0.05, 0.25), in(3, 8));
        private final RandomMeander farDepths = new RandomMeander(random, WAVES, in(0.02, 0.06), in(3, 8));
        private final RandomMeander track = new RandomMeander(random, WAVES, in(0.01, 0.06), in(3, 8));
        private final double[][] waves = new double[WAVES][];
        private final double[][] spots;

        Ground(double station) {
            this.station = station;
            for (int i = 0; i < WAVES; i++) {
                waves[i] = new double[] {
                    random.nextGaussian() / localLength,
                    random.nextGaussian() / localLength,
                    2 * Math.PI * random.nextDouble()
                };
            }
            spots = new double[random.nextInt(5)][];
            for (int i = 0; i < spots.length; i++) {
                double metres = in(0.08, 0.28) * (random.nextBoolean() ? 1 : -1);
                spots[i] = new double[] {in(-10, 10), in(2, width - 2), in(0.7, 1.8), metres};
            }
        }

        private double nearAt(double x) {
            return -0.7 + nearBank.at(station + x) - nearBank.at(station);
        }

        private double farAt(double x) {
            return -0.7 + width + farBank.at(station + x);
        }

        private double depthAt(double x, double y) {
            double fromNear = y - nearAt(x);
            double fromFar = farAt(x) - y;
            if (fromNear < 0 || fromFar < 0) {
                return Double.NaN;
            }
            double full = trackMetres + trackAlong.at(station + x) + track.at(x);
            double depth = Math.min(
                    side(near, nearWidths, nearDepths, x, fromNear, full),
                    side(far, farWidths, farDepths, x, fromFar, full));
            double across = 4 * fromNear * fromFar / Math.pow(fromNear + fromFar, 2);
            depth += dish * (across - 0.7) * depth / full;
            double inWater = Math.min(1, Math.min(fromNear, fromFar));
            double uneven = 0;
            for (double[] wave : waves) {
                uneven += Math.sqrt(2.0 / WAVES) * Math.cos(wave[0] * x + wave[1] * y + wave[2]);
            }
            depth += inWater * localSd * uneven;
            for (double[] spot : spots) {
                double r = Math.hypot(x - spot[0], y - spot[1]) / spot[2];
                depth += inWater * spot[3] * Math.exp(-r * r);
            }
            return Math.max(0.05, depth);
        }

        private double side(Side side, RandomMeander widths, RandomMeander depths, double x, double d, double full) {
            double onLedge = side.ledge * trackMetres * (1 + side.depths.at(station + x) + depths.at(x));
            double step = side.edge + Math.max(0, onLedge - side.edge) * (1 - Math.exp(-d / 0.3));
            double ledgeWidth = Math.max(0.2, side.ledgeWidth + side.widths.at(station + x) + widths.at(x));
            double t = Math.max(0, Math.min(1, (d - ledgeWidth) / side.run));
            return step + (full - onLedge) * t * t * (3 - 2 * t);
        }

        private PracticePeg peg(String name) {
            int reach = width > 12 ? 16 : 13;
            List<BankPoint> nearPoints = new ArrayList<>();
            List<BankPoint> farPoints = new ArrayList<>();
            for (int x = -reach; x <= reach; x++) {
                nearPoints.add(BankPoint.at(x, nearAt(x) + 0.10 * random.nextGaussian()));
                farPoints.add(BankPoint.at(x, farAt(x) + 0.20 * random.nextGaussian()));
            }
            Peg empty = Peg.EMPTY
                    .withPole(Pole.USUAL.withReach(reach))
                    .withBanks(new Banks(nearPoints, farPoints, List.of()));
            return new PracticePeg(
                    name,
                    empty,
                    Truth.of(truth(reach)),
                    deepestMetres(reach),
                    new PracticePeg.ReadingNoise(in(0.10, 0.20), in(2, 4), in(0.01, 0.02)),
                    List.of());
        }

        /** The deepest disc within reach, in front or near. */
        private double deepestMetres(int reach) {
            double deepest = 0;
            for (double y = 0; y <= reach; y += DISCS_METRES) {
                for (double x = -reach; x <= reach; x += DISCS_METRES) {
                    double r = Math.hypot(x, y);
                    double angle = Math.toDegrees(Math.atan2(Math.abs(x), y));
                    if (r <= reach - EDGE_METRES && (r <= NEAR_METRES || angle <= Zones.WIDEST_DEGREES)) {
                        double depth = DiscMeans.of(this::depthAt, x, y).depth();
                        deepest = Math.max(deepest, Double.isNaN(depth) ? 0 : depth);
                    }
                }
            }
            return deepest;
        }

        private Field truth(int reach) {
            int columns = (int) Math.round(2 * reach / CELL_METRES) + 1;
            int rows = (int) Math.round((reach + 3) / CELL_METRES) + 1;
            GridFrame frame = new GridFrame(-reach, -3, CELL_METRES, columns, rows);
            double[] depths = new double[frame.size()];
            for (int i = 0; i < depths.length; i++) {
                depths[i] = depthAt(frame.x(i % columns), frame.y(i / columns));
            }
            return new Field(frame, depths);
        }
    }
}

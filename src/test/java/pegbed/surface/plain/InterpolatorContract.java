package pegbed.surface.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;

/** What every interpolator must do. The sites are invented. */
abstract class InterpolatorContract {
    private static final double EXACT = 1e-9;

    abstract Interpolator of(List<Site> sites);

    @Test
    void withoutReadingsNothingIsKnown() {
        assertEquals(Double.NaN, of(List.of()).depthAt(0, 0));
    }

    @Test
    void oneReadingIsKnownAtItsSpotAlone() {
        Interpolator one = of(List.of(new Site(1.5, 8, 1.68)));
        assertEquals(1.68, one.depthAt(1.5, 8), EXACT);
        assertEquals(Double.NaN, one.depthAt(1.6, 8));
    }

    @Test
    void betweenTwoReadingsTheDepthRunsStraight() {
        Interpolator two = of(List.of(new Site(0, 2, 0.5), new Site(4, 5, 1.5)));
        assertEquals(0.5, two.depthAt(0, 2), EXACT);
        assertEquals(0.75, two.depthAt(1, 2.75), EXACT);
        assertEquals(1.5, two.depthAt(4, 5), EXACT);
        assertEquals(Double.NaN, two.depthAt(1, 2.8), "beside the line");
        assertEquals(Double.NaN, two.depthAt(-0.4, 1.7), "before it");
        assertEquals(Double.NaN, two.depthAt(4.4, 5.3), "beyond it");
    }

    @Test
    void readingsInOneLineMakeAProfile() {
        Interpolator line =
                of(List.of(new Site(0, 7, 1.6), new Site(0, 2, 0.6), new Site(0, 11, 1.2), new Site(0, 4, 1.4)));
        assertEquals(0.6, line.depthAt(0, 2), EXACT);
        assertEquals(1.0, line.depthAt(0, 3), EXACT);
        assertEquals(1.5, line.depthAt(0, 5.5), EXACT);
        assertEquals(1.4, line.depthAt(0, 9), EXACT);
        assertEquals(Double.NaN, line.depthAt(0.1, 5));
        assertEquals(Double.NaN, line.depthAt(0, 12));
    }

    @Test
    void readingsInOneSlantedLineMakeAProfileThoughRoundingBendsIt() {
        List<Site> sites = new ArrayList<>();
        for (int i = 0; i <= 10; i++) {
            sites.add(new Site(i * Math.sin(0.7), i * Math.cos(0.7), i * 0.1));
        }
        Interpolator line = of(sites);
        assertEquals(0.35, line.depthAt(3.5 * Math.sin(0.7), 3.5 * Math.cos(0.7)), 1e-7);
        assertEquals(Double.NaN, line.depthAt(3.5 * Math.sin(0.71), 3.5 * Math.cos(0.71)));
    }

    @Test
    void readingsAtOneSpotCountWithTheirMean() {
        List<Site> sites = new ArrayList<>(scattered(12, 5));
        List<Site> once = new ArrayList<>(sites);
        sites.add(new Site(0.5, 6, 1.0));
        sites.add(new Site(0.5, 6, 1.3));
        sites.add(new Site(0.5, 6 + 1e-12, 1.6));
        once.add(new Site(0.5, 6, 1.3));
        assertEquals(1.3, of(sites).depthAt(0.5, 6), EXACT);
        assertEquals(of(once).depthAt(0.9, 5.5), of(sites).depthAt(0.9, 5.5), EXACT);
        assertEquals(
                1.3, of(List.of(new Site(2, 2, 1.2), new Site(2, 2, 1.4))).depthAt(2, 2), EXACT, "all at one spot");
    }

    @Test
    void passesThroughEveryReading() {
        List<Site> sites = scattered(60, 11);
        Interpolator interpolator = of(sites);
        for (Site site : sites) {
            assertEquals(site.depthMetres(), interpolator.depthAt(site.xMetres(), site.yMetres()), EXACT);
        }
    }

    @Test
    void outsideTheHullNothingIsKnown() {
        Interpolator square = of(square());
        assertEquals(Double.NaN, square.depthAt(-0.001, 0.5));
        assertEquals(Double.NaN, square.depthAt(0.5, 1.001));
        assertEquals(Double.NaN, square.depthAt(1e9, 0));
        assertEquals(Double.NaN, square.depthAt(Double.NaN, 0.5));
        assertEquals(Double.NaN, square.depthAt(0.5, Double.POSITIVE_INFINITY));
    }

    @Test
    void alongTheHullTheDepthRunsStraight() {
        Interpolator square = of(square());
        for (double share : new double[] {0, 0.001, 0.3, 0.5, 0.999, 1}) {
            assertEquals(1 + share, square.depthAt(share, 0), EXACT);
            assertEquals(2 + share, square.depthAt(1, share), EXACT);
        }
    }

    @Test
    void staysBetweenTheShallowestAndTheDeepestReading() {
        Interpolator interpolator = of(scattered(40, 3));
        Random random = new Random(4);
        for (int i = 0; i < 500; i++) {
            double depth = interpolator.depthAt(random.nextDouble() * 12 - 6, random.nextDouble() * 14);
            assertTrue(Double.isNaN(depth) || (depth >= 0.2 && depth <= 2.0), () -> "depth " + depth);
        }
    }

    @Test
    void aFarOutlierLeavesTheNeighbourhoodAlone() {
        for (double far : new double[] {1e3, 1e5, 1e7}) {
            List<Site> sites = new ArrayList<>();
            for (int i = 0; i < 81; i++) {
                double x = i % 9 + 0.1 * Math.sin(i);
                double y = Math.floor(i / 9.0) + 0.1 * Math.cos(3 * i);
                sites.add(new Site(x, y, 1 + 0.1 * Math.sin(x + 2 * y)));
            }
            Interpolator before = of(sites);
            sites.add(new Site(far, 0.3 * far, 40));
            Interpolator after = of(sites);
            for (int i = 0; i < 40; i++) {
                double x = 3 + i * 0.05;
                double y = 5 - i * 0.05;
                assertEquals(before.depthAt(x, y), after.depthAt(x, y), 1e-6, "outlier at " + far);
            }
            assertEquals(40, after.depthAt(far, 0.3 * far), EXACT);
        }
    }

    @Test
    void theOrderOfTheReadingsChangesNothing() {
        for (List<Site> sites : List.of(scattered(30, 21), lattice(13))) {
            Interpolator given = of(sites);
            List<Site> shuffled = new ArrayList<>(sites);
            for (int seed = 0; seed < 5; seed++) {
                Collections.shuffle(shuffled, new Random(seed));
                assertSame(given, of(shuffled), 0, 0, 0, EXACT);
            }
        }
    }

    @Test
    void shiftingEverythingChangesNothing() {
        for (double shift : new double[] {-7.25, 1000, 431_672.5}) {
            List<Site> sites = scattered(30, 22);
            List<Site> shifted = sites.stream()
                    .map(s -> new Site(s.xMetres() + shift, s.yMetres() - 2 * shift, s.depthMetres()))
                    .toList();
            assertSame(of(sites), of(shifted), 0, shift, -2 * shift, 1e-8);
        }
    }

    @Test
    void turningEverythingChangesNothing() {
        for (double angle : new double[] {0.3, 1.1, Math.PI / 2, 3}) {
            List<Site> sites = scattered(30, 23);
            List<Site> turned = sites.stream()
                    .map(s -> new Site(
                            s.xMetres() * Math.cos(angle) - s.yMetres() * Math.sin(angle),
                            s.xMetres() * Math.sin(angle) + s.yMetres() * Math.cos(angle),
                            s.depthMetres()))
                    .toList();
            assertSame(of(sites), of(turned), angle, 0, 0, 1e-8);
        }
    }

    /** Rows of readings at the joints of a pole, turned: lines that are straight but for rounding. */
    @Test
    void aTurnedLatticeIsKnownEverywhere() {
        for (int degrees = 1; degrees < 90; degrees++) {
            double angle = Math.toRadians(degrees);
            List<Site> turned = lattice(7).stream()
                    .map(s -> turnedPlane(s.xMetres(), s.yMetres(), angle))
                    .toList();
            Interpolator interpolator = of(turned);
            for (int i = 0; i < 60; i++) {
                Site place = turnedPlane(-6 + i * 0.1, 3 + 3 * Math.sin(i), angle);
                assertEquals(place.depthMetres(), interpolator.depthAt(place.xMetres(), place.yMetres()), 1e-7);
            }
        }
    }

    /** Halfway between two of these sites, found by random search, a careless test of sides finds no triangle. */
    @Test
    void noPlaceFallsBetweenTwoTriangles() {
        Site a = new Site(0.35951419679204416, 1.016189067952023, 1);
        Site b = new Site(-3.983810932047977, 4.640485803207956, 1);
        Interpolator interpolator = of(List.of(
                a,
                b,
                new Site(-0.6364385362199501, 0.9263105187540122, 1),
                new Site(-0.7263170854179611, 1.9222632517660059, 1),
                new Site(4.343325128840021, 1.3757032647440672, 1),
                new Site(-4.073689481245988, 5.63643853621995, 1)));
        double x = a.xMetres() + 0.5 * (b.xMetres() - a.xMetres());
        double y = a.yMetres() + 0.5 * (b.yMetres() - a.yMetres());
        assertEquals(1, interpolator.depthAt(x, y), EXACT);
    }

    private static Site turnedPlane(double x, double y, double angle) {
        return new Site(
                x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle), 2 + plane(x, y));
    }

    @Test
    void raisingTheWaterRaisesEveryDepth() {
        List<Site> sites = scattered(30, 24);
        List<Site> raised = sites.stream()
                .map(s -> new Site(s.xMetres(), s.yMetres(), s.depthMetres() + 0.08))
                .toList();
        Interpolator low = of(sites);
        Interpolator high = of(raised);
        for (int i = 0; i < 50; i++) {
            double x = -3 + 0.12 * i;
            assertEquals(low.depthAt(x, 6) + 0.08, high.depthAt(x, 6), EXACT);
        }
    }

    @Test
    void aPlaneComesBackOnEveryLatticePoint() {
        Interpolator plane = of(IntStream.range(0, 49)
                .mapToObj(i -> new Site(
                        i % 7 * 0.3, Math.floor(i / 7.0) * 0.3, 0.4 + plane(i % 7 * 0.3, Math.floor(i / 7.0) * 0.3)))
                .toList());
        for (double x = 0; x <= 1.8; x += 0.05) {
            for (double y = 0; y <= 1.8; y += 0.05) {
                assertEquals(0.4 + plane(x, y), plane.depthAt(x, y), EXACT);
            }
        }
    }

    @Test
    void fillsAGrid() {
        Field field = of(square()).over(new GridFrame(-0.5, 0, 0.5, 4, 3));
        assertEquals(Double.NaN, field.at(0, 0));
        assertEquals(1, field.at(1, 0), EXACT);
        assertEquals(2.5, field.at(3, 1), EXACT);
        assertEquals(3, field.at(3, 2), EXACT);
    }

    @Test
    void answersSeveralThreadsAlike() {
        Interpolator interpolator = of(scattered(60, 31));
        double[] alone = IntStream.range(0, 4000)
                .mapToDouble(i -> interpolator.depthAt(-4 + i * 0.002, 2 + i * 0.002))
                .toArray();
        double[] together = IntStream.range(0, 4000)
                .parallel()
                .mapToDouble(i -> interpolator.depthAt(-4 + i * 0.002, 2 + i * 0.002))
                .toArray();
        assertEquals(List.of(box(alone)), List.of(box(together)));
    }

    private static Double[] box(double[] values) {
        return java.util.Arrays.stream(values).boxed().toArray(Double[]::new);
    }

    private static double plane(double x, double y) {
        return 0.3 * x - 0.1 * y;
    }

    /** Depth 1 + x along the near side and 2 + y along the right one. */
    private static List<Site> square() {
        return List.of(new Site(0, 0, 1), new Site(1, 0, 2), new Site(1, 1, 3), new Site(0, 1, 2));
    }

    private static List<Site> lattice(int side) {
        return IntStream.range(0, side * side)
                .mapToObj(i -> new Site(i % side - 6, Math.floor((double) i / side), 0.2 + (i * 7 % 13) * 0.1))
                .toList();
    }

    /** Sites within 6 m to either side and 14 m out, 0.2 to 2 m deep. */
    static List<Site> scattered(int count, long seed) {
        Random random = new Random(seed);
        return IntStream.range(0, count)
                .mapToObj(i -> new Site(
                        random.nextDouble() * 12 - 6, random.nextDouble() * 14, 0.2 + 1.8 * random.nextDouble()))
                .toList();
    }

    private static void assertSame(
            Interpolator one, Interpolator other, double angle, double dx, double dy, double tolerance) {
        int known = 0;
        for (int i = 0; i < 300; i++) {
            double x = 5 * Math.sin(i * 0.37);
            double y = 6 + 5 * Math.cos(i * 0.83);
            double depth = one.depthAt(x, y);
            double moved = other.depthAt(
                    x * Math.cos(angle) - y * Math.sin(angle) + dx, x * Math.sin(angle) + y * Math.cos(angle) + dy);
            assertEquals(depth, moved, tolerance, () -> "at " + x + ", " + y);
            known += Double.isNaN(depth) ? 0 : 1;
        }
        assertTrue(known > 100, "places compared: " + known);
    }
}

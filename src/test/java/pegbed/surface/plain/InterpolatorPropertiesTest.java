package pegbed.surface.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for any sites: scattered ones and ones on a coarse lattice with its many ties and shared lines. */
class InterpolatorPropertiesTest {
    @Property(tries = 300)
    void theWeightsArePartsOfOneAndTheirMeanPlaceIsThePlace(
            @ForAll("sites") List<Site> sites,
            @ForAll @DoubleRange(min = -5, max = 5) double x,
            @ForAll @DoubleRange(min = 0, max = 10) double y) {
        LinearInterpolator interpolator = new LinearInterpolator(sites);
        Weights weights = interpolator.weightsAt(x, y);
        double sum = 0;
        double meanX = 0;
        double meanY = 0;
        for (int k = 0; k < weights.count(); k++) {
            assertTrue(weights.weight(k) >= 0);
            Site site = interpolator.sites().get(weights.site(k));
            sum += weights.weight(k);
            meanX += weights.weight(k) * site.xMetres();
            meanY += weights.weight(k) * site.yMetres();
        }
        if (weights.count() > 0) {
            assertEquals(1, sum, 1e-12);
            assertEquals(x, meanX, 1e-6);
            assertEquals(y, meanY, 1e-6);
        }
    }

    @Property(tries = 200)
    void aPlaneComesBack(
            @ForAll("sites") List<Site> sites,
            @ForAll @DoubleRange(min = -1, max = 1) double acrossSlope,
            @ForAll @DoubleRange(min = -1, max = 1) double outwardSlope) {
        List<Site> plane = sites.stream()
                .map(s -> new Site(s.xMetres(), s.yMetres(), acrossSlope * s.xMetres() + outwardSlope * s.yMetres()))
                .toList();
        LinearInterpolator interpolator = new LinearInterpolator(plane);
        for (double x = -5; x <= 5; x += 0.5) {
            for (double y = 0; y <= 10; y += 0.5) {
                double depth = interpolator.depthAt(x, y);
                if (!Double.isNaN(depth)) {
                    assertEquals(acrossSlope * x + outwardSlope * y, depth, 1e-6);
                }
            }
        }
    }

    /** A millionth of a metre on, the depth is the same to a thousandth: no jump at edges, circles or sites. */
    @Property(tries = 200)
    void theDepthDoesNotJump(
            @ForAll("lattice") List<Site> sites, @ForAll @DoubleRange(min = 0, max = 6.28) double direction) {
        LinearInterpolator interpolator = new LinearInterpolator(sites);
        for (double x = -4; x <= 4; x += 0.5) {
            for (double y = 1; y <= 9; y += 0.5) {
                double here = interpolator.depthAt(x, y);
                double there = interpolator.depthAt(x + 1e-6 * Math.sin(direction), y + 1e-6 * Math.cos(direction));
                if (!Double.isNaN(here) && !Double.isNaN(there)) {
                    assertEquals(here, there, 1e-3);
                }
            }
        }
    }

    @Property(tries = 200)
    void everySiteKeepsItsDepth(@ForAll("sites") List<Site> sites) {
        LinearInterpolator interpolator = new LinearInterpolator(sites);
        for (Site site : interpolator.sites()) {
            assertEquals(site.depthMetres(), interpolator.depthAt(site.xMetres(), site.yMetres()), 1e-12);
        }
    }

    /** Halfway between any two sites lies in the hull. */
    @Property(tries = 200)
    void theWholeHullIsKnown(@ForAll("sites") List<Site> sites) {
        LinearInterpolator interpolator = new LinearInterpolator(sites);
        for (Site a : interpolator.sites()) {
            for (Site b : interpolator.sites()) {
                for (double share : new double[] {0.5, 0.1, 1e-3}) {
                    double x = a.xMetres() + share * (b.xMetres() - a.xMetres());
                    double y = a.yMetres() + share * (b.yMetres() - a.yMetres());
                    double depth = interpolator.depthAt(x, y);
                    assertTrue(!Double.isNaN(depth), () -> "between " + a + " and " + b);
                }
            }
        }
    }

    @Provide
    Arbitrary<List<Site>> sites() {
        return Arbitraries.oneOf(scattered(), lattice(), turnedLattice());
    }

    @Provide
    Arbitrary<List<Site>> lattice() {
        return Combinators.combine(
                        Arbitraries.integers().between(-4, 4).map(i -> (double) i),
                        Arbitraries.integers().between(1, 9).map(i -> (double) i),
                        Arbitraries.doubles().between(0, 3))
                .as(Site::new)
                .list()
                .ofMinSize(3)
                .ofMaxSize(40);
    }

    /** A lattice whose lines are no longer quite straight, since its turned places are rounded. */
    private Arbitrary<List<Site>> turnedLattice() {
        return Combinators.combine(lattice(), Arbitraries.doubles().between(0, 1.57))
                .as((sites, angle) -> sites.stream()
                        .map(s -> new Site(
                                s.xMetres() * Math.cos(angle) - (s.yMetres() - 5) * Math.sin(angle),
                                s.xMetres() * Math.sin(angle) + (s.yMetres() - 5) * Math.cos(angle) + 5,
                                s.depthMetres()))
                        .toList());
    }

    private static Arbitrary<List<Site>> scattered() {
        return Combinators.combine(
                        Arbitraries.doubles().between(-5, 5).ofScale(8),
                        Arbitraries.doubles().between(0, 10).ofScale(8),
                        Arbitraries.doubles().between(0, 3))
                .as(Site::new)
                .list()
                .ofMaxSize(40);
    }
}

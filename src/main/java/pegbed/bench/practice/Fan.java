package pegbed.bench.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import pegbed.geometry.PegWater;
import pegbed.model.Place;

/**
 * What an angler does without guidance: readings on radials out from the seat, from 2 m to the last that can be
 * reached, and one or two in each margin. Staggered, every second radial starts half a step further out.
 */
public final class Fan {
    private static final double FIRST_METRES = 2;
    private static final double SIDE_DEGREES = 80;
    private static final double[] SIDE_METRES = {3, 4.5};
    private static final double WIDE_DEGREES = 50;
    private static final double NARROW_DEGREES = 35;
    private static final double SHORE_METRES = 0.3;

    private final PegWater water;

    private Fan(PegWater water) {
        this.water = water;
    }

    /** The places of a fan of so many readings, in the order in which they are taken. */
    public static List<Place> of(PegWater water, int count, boolean staggered) {
        return new Fan(water).places(count, staggered);
    }

    private List<Place> places(int count, boolean staggered) {
        List<Place> sides = sides(count <= 15 ? 1 : 2);
        int rays = count <= 15 ? 3 : count <= 20 ? 4 : count <= 30 ? 5 : count <= 38 ? 6 : 7;
        double wide = rays == 3 ? NARROW_DEGREES : WIDE_DEGREES;
        double[] angle = new double[rays];
        double[] end = new double[rays];
        for (int i = 0; i < rays; i++) {
            angle[i] = -wide + 2 * wide * i / (rays - 1);
            end[i] = lastReached(angle[i]);
        }
        int[] shares = shares(end, count - sides.size());
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < rays; i++) {
            double step = staggered ? (end[i] - FIRST_METRES) / shares[i] : (end[i] - FIRST_METRES) / (shares[i] - 1);
            for (int j = 0; j < shares[i]; j++) {
                double start = staggered ? FIRST_METRES + step * (i % 2 == 0 ? 0.25 : 0.75) : FIRST_METRES;
                places.add(inWater(start + j * step, angle[i], end[i]));
            }
        }
        places.addAll(sides);
        return places;
    }

    private List<Place> sides(int each) {
        List<Place> sides = new ArrayList<>();
        for (double angle : new double[] {-SIDE_DEGREES, SIDE_DEGREES}) {
            for (int i = 0; i < each; i++) {
                Place place = Place.polar(SIDE_METRES[i], angle);
                if (allows(place)) {
                    sides.add(place);
                }
            }
        }
        return sides;
    }

    /** Readings a radial, in proportion to its length, by greatest remainder; two at least. */
    private static int[] shares(double[] end, int count) {
        double total = 0;
        for (double e : end) {
            total += e;
        }
        int[] shares = new int[end.length];
        double[] remainder = new double[end.length];
        int given = 0;
        for (int i = 0; i < end.length; i++) {
            double share = count * end[i] / total;
            shares[i] = Math.max(2, (int) share);
            remainder[i] = share - shares[i];
            given += shares[i];
        }
        List<Integer> order = IntStream.range(0, end.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -remainder[i]))
                .toList();
        for (int i = 0; given < count; i++, given++) {
            shares[order.get(i % order.size())]++;
        }
        return shares;
    }

    private double lastReached(double angle) {
        double last = FIRST_METRES;
        for (int i = 0; i * 0.1 <= water.reachMetres() - FIRST_METRES + 1e-9; i++) {
            double r = FIRST_METRES + i * 0.1;
            if (allows(Place.polar(r, angle))) {
                last = r;
            }
        }
        return last;
    }

    /** The place, or where it lies on an island the nearest on its radial that does not. */
    private Place inWater(double r, double angle, double end) {
        for (double off = 0; off < end; off += 0.1) {
            for (double sign : new double[] {1, -1}) {
                Place place = Place.polar(r + sign * off, angle);
                if (r + sign * off > 0.5 && r + sign * off <= end + 1e-9 && allows(place)) {
                    return place;
                }
            }
        }
        return Place.polar(r, angle);
    }

    private boolean allows(Place place) {
        double x = place.xMetres();
        double y = place.yMetres();
        return water.isWater(x, y) && water.fromNear(x, y) >= SHORE_METRES && water.fromFar(x, y) >= SHORE_METRES;
    }
}

package pegbed.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Place;

/**
 * One of the lines where water meets bank, and the one rule by which a further point of the water's edge finds its line
 * and its place in it, however it was given.
 *
 * @param kind which bank
 * @param island index of the island; 0 for a bank
 */
public record Shoreline(Kind kind, int island) {
    /** What a line bounds. */
    public enum Kind {
        NEAR("near bank"),
        FAR("far bank"),
        ISLAND("island");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public static final Shoreline NEAR = new Shoreline(Kind.NEAR, 0);
    public static final Shoreline FAR = new Shoreline(Kind.FAR, 0);

    /**
     * While the far bank has no point, an edge further than this from all that is known is its first, metres
     * (empirical).
     */
    private static final double FAR_UNKNOWN_METRES = 4;

    /** The same for an edge further than {@value #BESIDE_DEGREES}° from straight out, metres (empirical). */
    private static final double FAR_UNKNOWN_BESIDE_METRES = 7;

    private static final double BESIDE_DEGREES = 60;

    private static final Place SEAT = new Place(0, 0);

    /**
     * The line that an edge belongs to where none was named: the nearest. The near bank, while it has less than two
     * points, is taken to pass the seat; the far bank, while it has none, to lie 4 m from the place, and 7 m if the
     * place is more than 60° from straight out. Of two that are as near, the near bank comes first, then the far bank.
     */
    public static Shoreline nearest(Banks banks, Place place) {
        double near = distance(banks.near(), place, false);
        if (banks.near().size() < 2) {
            near = Math.min(near, place.distanceTo(SEAT));
        }
        double far = banks.far().isEmpty() ? farUnknown(place) : distance(banks.far(), place, false);
        return nearestIsland(banks, place, Math.min(near, far), near <= far ? NEAR : FAR);
    }

    /**
     * The line that an edge belongs to where a bank was named: that bank, unless the shore of an island is nearer than
     * either bank.
     *
     * @param named the near or the far bank
     */
    public static Shoreline named(Banks banks, Place place, Shoreline named) {
        Shoreline nearest = nearest(banks, place);
        return nearest.kind() == Kind.ISLAND ? nearest : named;
    }

    private static double farUnknown(Place place) {
        return Math.abs(place.angleDegrees()) > BESIDE_DEGREES ? FAR_UNKNOWN_BESIDE_METRES : FAR_UNKNOWN_METRES;
    }

    private static Shoreline nearestIsland(Banks banks, Place place, double metres, Shoreline bank) {
        Shoreline nearest = bank;
        double least = metres;
        for (int i = 0; i < banks.islands().size(); i++) {
            double distance = distance(banks.islands().get(i), place, true);
            if (distance < least) {
                least = distance;
                nearest = new Shoreline(Kind.ISLAND, i);
            }
        }
        return nearest;
    }

    /** Metres from a place to a line; infinite if the line has no point. */
    private static double distance(List<BankPoint> points, Place place, boolean ring) {
        if (points.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        if (points.size() == 1) {
            return points.get(0).place().distanceTo(place);
        }
        List<Coordinate> corners = new ArrayList<>(
                points.stream().map(point -> Shapes.coordinate(point.place())).toList());
        if (ring) {
            corners.add(corners.get(0));
        }
        return Shapes.FACTORY
                .createLineString(corners.toArray(new Coordinate[0]))
                .distance(Shapes.FACTORY.createPoint(Shapes.coordinate(place)));
    }

    /** The points of this line, in order along it. */
    public List<BankPoint> of(Banks banks) {
        return switch (kind) {
            case NEAR -> banks.near();
            case FAR -> banks.far();
            case ISLAND -> banks.islands().get(island);
        };
    }

    /** The banks with other points in this line. */
    public Banks in(Banks banks, List<BankPoint> points) {
        return switch (kind) {
            case NEAR -> new Banks(points, banks.far(), banks.islands());
            case FAR -> new Banks(banks.near(), points, banks.islands());
            case ISLAND -> {
                List<List<BankPoint>> islands = new ArrayList<>(banks.islands());
                islands.set(island, points);
                yield new Banks(banks.near(), banks.far(), islands);
            }
        };
    }

    /**
     * The banks with one more point in this line, where it makes the line the least longer: between two points that
     * follow each other, or beyond an end. So a bay, and a bank that doubles back, keep their order. Of one point
     * alone, the other lies to the left or to the right.
     */
    public Banks with(Banks banks, BankPoint edge) {
        List<BankPoint> points = of(banks);
        List<BankPoint> longer = new ArrayList<>(points);
        longer.add(kind == Kind.ISLAND ? placeInRing(points, edge.place()) : placeInBank(points, edge.place()), edge);
        return in(banks, longer);
    }

    private static int placeInBank(List<BankPoint> points, Place edge) {
        int last = points.size() - 1;
        if (last < 1) {
            return last < 0 || edge.xMetres() < points.get(0).place().xMetres() ? 0 : 1;
        }
        int place = 0;
        double least = edge.distanceTo(points.get(0).place());
        for (int i = 1; i <= last; i++) {
            double longer = lengthened(points.get(i - 1).place(), points.get(i).place(), edge);
            if (longer < least) {
                least = longer;
                place = i;
            }
        }
        return edge.distanceTo(points.get(last).place()) < least ? last + 1 : place;
    }

    private static int placeInRing(List<BankPoint> points, Place edge) {
        int place = points.size();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < points.size(); i++) {
            double longer = lengthened(
                    points.get(i).place(), points.get((i + 1) % points.size()).place(), edge);
            if (longer < least) {
                least = longer;
                place = i + 1;
            }
        }
        return place;
    }

    private static double lengthened(Place from, Place to, Place edge) {
        return from.distanceTo(edge) + edge.distanceTo(to) - from.distanceTo(to);
    }
}

package pegbed.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Decimals;
import pegbed.model.InputException;

/**
 * Refusals of what can't be the banks of a water, with the number, from 1, and the place of the point that is wrong.
 */
final class BankChecks {
    /** Banks may meet this near to where one of them ends, metres: the end of a water. */
    private static final double MEET_METRES = 0.5;

    private BankChecks() {}

    /** The stretch of a bank from one point to the next that lies elsewhere; numbers count from 1. */
    private record Stretch(int from, Coordinate start, int to, Coordinate end) {
        double distance(Coordinate place) {
            return Distance.pointToSegment(place, start, end);
        }

        /** The places that two stretches share, none, one, or two where they run along each other. */
        List<Coordinate> shared(Stretch other) {
            LineIntersector lines = new RobustLineIntersector();
            lines.computeIntersection(start, end, other.start, other.end);
            List<Coordinate> shared = new ArrayList<>();
            for (int i = 0; i < lines.getIntersectionNum(); i++) {
                shared.add(lines.getIntersection(i).copy());
            }
            return shared;
        }

        String words() {
            return "from point " + from + " to point " + to;
        }
    }

    private static List<Stretch> stretches(List<BankPoint> points, boolean closed) {
        List<Stretch> stretches = new ArrayList<>();
        int from = 0;
        for (int i = 1; i < points.size() + (closed ? 1 : 0); i++) {
            int to = i % points.size();
            Coordinate start = place(points, from);
            Coordinate end = place(points, to);
            if (start.distance(end) > 1e-6) {
                stretches.add(new Stretch(from + 1, start, to + 1, end));
                from = to;
            }
        }
        return stretches;
    }

    private static Coordinate place(List<BankPoint> points, int index) {
        return Shapes.coordinate(points.get(index).place());
    }

    /**
     * Where a line crosses itself, as the middle of a sentence.
     *
     * @param closed whether its last point is joined to its first
     */
    static Optional<String> crossesItself(List<BankPoint> points, boolean closed) {
        List<Stretch> stretches = stretches(points, closed);
        for (int i = 0; i < stretches.size(); i++) {
            for (int j = i + 1; j < stretches.size(); j++) {
                Stretch one = stretches.get(i);
                Stretch other = stretches.get(j);
                List<Coordinate> shared = one.shared(other);
                boolean neighbours = (one.end.equals2D(other.start) && j == i + 1)
                        || (other.end.equals2D(one.start) && i == 0 && j == stretches.size() - 1);
                if (shared.size() > (neighbours ? 1 : 0)) {
                    return Optional.of("crosses itself at " + at(shared.get(0)) + ", where the stretch " + one.words()
                            + " meets the stretch " + other.words());
                }
            }
        }
        return Optional.empty();
    }

    /** Refuses banks that cross as they were given, but for where one of them ends. */
    static void refuseCrossing(Banks banks) throws InputException {
        for (Stretch near : stretches(banks.near(), false)) {
            for (Stretch far : stretches(banks.far(), false)) {
                for (Coordinate where : near.shared(far)) {
                    if (!isEnd(banks.near(), where) && !isEnd(banks.far(), where)) {
                        throw crossing(banks, where);
                    }
                }
            }
        }
    }

    private static boolean isEnd(List<BankPoint> points, Coordinate where) {
        return where.distance(place(points, 0)) <= MEET_METRES
                || where.distance(place(points, points.size() - 1)) <= MEET_METRES;
    }

    /** The refusal of banks that cross at a place. */
    static InputException crossing(Banks banks, Coordinate where) {
        Stretch near = nearest(banks.near(), where);
        Stretch far = nearest(banks.far(), where);
        return new InputException("The near and far banks cross near " + at(where) + ": the near bank on its way "
                + near.words() + ", the far bank on its way " + far.words()
                + "; the far bank must lie beyond the near bank all along.");
    }

    private static Stretch nearest(List<BankPoint> points, Coordinate where) {
        return stretches(points, false).stream()
                .min(Comparator.comparingDouble(stretch -> stretch.distance(where)))
                .orElseThrow();
    }

    /** Refuses a far bank that lies behind the near one. */
    static void refuseWrongSide(Banks banks, BankLine near, BankLine far) throws InputException {
        Coordinate middle = far.drawn().get(far.drawn().size() / 2);
        if (near.beyond(middle.x, middle.y) > 0) {
            return;
        }
        int worst = 0;
        for (int i = 1; i < banks.far().size(); i++) {
            if (beyond(near, place(banks.far(), i)) < beyond(near, place(banks.far(), worst))) {
                worst = i;
            }
        }
        throw new InputException("The far bank lies on the angler's side of the near bank, most at its "
                + point(banks.far(), worst) + "; the far bank must lie beyond the near bank.");
    }

    private static double beyond(BankLine near, Coordinate place) {
        return near.beyond(place.x, place.y);
    }

    /** How far the near bank keeps from the seat, as the middle of a sentence. */
    static String nearestToSeat(Banks banks) {
        Coordinate seat = new Coordinate(0, 0);
        Stretch stretch = nearest(banks.near(), seat);
        return "comes nearest to the seat on its way " + stretch.words() + ", "
                + Decimals.text(stretch.distance(seat), 1) + " m from it";
    }

    /** A point by its number and place. */
    static String point(List<BankPoint> points, int index) {
        return "point " + (index + 1) + " (" + at(place(points, index)) + ")";
    }

    private static String at(Coordinate place) {
        return "x " + tenths(place.x) + " m, y " + tenths(place.y) + " m";
    }

    private static double tenths(double metres) {
        return Math.round(metres * 10) / 10.0;
    }
}

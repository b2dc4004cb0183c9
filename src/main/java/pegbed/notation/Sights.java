package pegbed.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.model.BankPoint;
import pegbed.model.Place;

/**
 * Sight lines from the seat and where they meet the far bank: what "a metre to the right of the post" means.
 *
 * <p>The far bank goes straight on beyond its first and last point. Where there is none, or a sight line misses it,
 * metres are counted at the mark, square to the line of sight.
 */
public final class Sights {
    /** How far the bank goes on beyond its ends, metres: far beyond any offset. */
    private static final double BEYOND_METRES = 1000;

    /** Share of a segment by which it may be missed, so that no sight line slips between two segments. */
    private static final double SLACK = 1e-9;

    private final List<Place> bank;
    private final double[] stationMetres;

    /** @param farBank points of the far bank, in their order along it; none where there is no far bank */
    public Sights(List<BankPoint> farBank) {
        bank = extended(farBank.stream().map(BankPoint::place).distinct().toList());
        stationMetres = new double[bank.size()];
        for (int i = 1; i < bank.size(); i++) {
            stationMetres[i] = stationMetres[i - 1] + bank.get(i - 1).distanceTo(bank.get(i));
        }
    }

    /** The same direction in [-180, 180]. */
    public static double halfTurn(double angleDegrees) {
        return Math.abs(angleDegrees) <= 180 ? angleDegrees : Math.IEEEremainder(angleDegrees, 360);
    }

    private static List<Place> extended(List<Place> points) {
        if (points.size() < 2) {
            return List.of();
        }
        List<Place> longer = new ArrayList<>();
        longer.add(beyond(points.get(1), points.get(0)));
        longer.addAll(points);
        longer.add(beyond(points.get(points.size() - 2), points.get(points.size() - 1)));
        return longer;
    }

    private static Place beyond(Place before, Place end) {
        double share = BEYOND_METRES / before.distanceTo(end);
        return new Place(
                end.xMetres() + share * (end.xMetres() - before.xMetres()),
                end.yMetres() + share * (end.yMetres() - before.yMetres()));
    }

    /**
     * The direction of the place so far to the right of a mark.
     *
     * @param rightMetres metres along the far bank to the right as seen from the seat, negative to the left
     * @return degrees from straight out, -180 to 180
     */
    double angleBeside(Place mark, double rightMetres) {
        double straight = mark.angleDegrees();
        if (rightMetres == 0) {
            return straight;
        }
        Optional<Hit> hit = hit(straight, mark.distanceMetres());
        if (hit.isPresent()) {
            return at(hit.get().stationMetres + hit.get().toRight * rightMetres).angleDegrees();
        }
        return halfTurn(straight + Math.toDegrees(Math.atan2(rightMetres, mark.distanceMetres())));
    }

    /**
     * How far a direction lies to the right of a mark; the reverse of {@link #angleBeside}.
     *
     * @return metres, negative to the left; empty where the two can't be compared
     */
    public OptionalDouble rightOf(Place mark, double angleDegrees) {
        double turn = halfTurn(angleDegrees - mark.angleDegrees());
        Optional<Hit> from = hit(mark.angleDegrees(), mark.distanceMetres());
        if (from.isEmpty()) {
            return Math.abs(turn) < 90
                    ? OptionalDouble.of(mark.distanceMetres() * Math.tan(Math.toRadians(turn)))
                    : OptionalDouble.empty();
        }
        Optional<Hit> to = hit(angleDegrees, 0);
        if (to.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(from.get().toRight * (to.get().stationMetres - from.get().stationMetres));
    }

    /** Where a sight line meets the bank: on its drawn part if it can, nearest to the distance looked for. */
    private Optional<Hit> hit(double angleDegrees, double nearMetres) {
        Hit best = null;
        for (int i = 1; i < bank.size(); i++) {
            Hit hit = hit(i, angleDegrees);
            if (hit != null
                    && (best == null
                            || (best.drawn == hit.drawn
                                    ? Math.abs(hit.distanceMetres - nearMetres)
                                            < Math.abs(best.distanceMetres - nearMetres)
                                    : hit.drawn))) {
                best = hit;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Solves start + share·(end − start) = distance·(sin a, cos a). */
    private Hit hit(int segment, double angleDegrees) {
        Place start = bank.get(segment - 1);
        Place end = bank.get(segment);
        double sin = Math.sin(Math.toRadians(angleDegrees));
        double cos = Math.cos(Math.toRadians(angleDegrees));
        double dx = end.xMetres() - start.xMetres();
        double dy = end.yMetres() - start.yMetres();
        double across = dx * cos - dy * sin;
        double share = -(start.xMetres() * cos - start.yMetres() * sin) / across;
        double distance = (start.xMetres() + share * dx) * sin + (start.yMetres() + share * dy) * cos;
        if (!(share >= -SLACK && share <= 1 + SLACK && distance > 0)) {
            return null;
        }
        boolean drawn = segment > 1 && segment < bank.size() - 1;
        double station = stationMetres[segment - 1] + share * Math.hypot(dx, dy);
        return new Hit(distance, station, across > 0 ? 1 : -1, drawn);
    }

    private Place at(double station) {
        int i = 1;
        while (i < bank.size() - 1 && stationMetres[i] < station) {
            i++;
        }
        double share = (station - stationMetres[i - 1]) / (stationMetres[i] - stationMetres[i - 1]);
        Place start = bank.get(i - 1);
        Place end = bank.get(i);
        return new Place(
                start.xMetres() + share * (end.xMetres() - start.xMetres()),
                start.yMetres() + share * (end.yMetres() - start.yMetres()));
    }

    /**
     * A sight line on the bank.
     *
     * @param toRight 1 where the bank's points go to the right as seen from the seat, -1 where they go to the left
     */
    private record Hit(double distanceMetres, double stationMetres, int toRight, boolean drawn) {}
}

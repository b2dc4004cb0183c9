package pegbed.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import pegbed.model.BankPoint;
import pegbed.model.InputException;
import pegbed.model.Peg;

/** Closes bank lines and limits to areas, and refuses banks that can't be the banks of a water. */
final class WaterOutline {
    private WaterOutline() {}

    /**
     * The area between the banks; without a far bank, that beyond the near one as far as the pole reaches.
     *
     * @throws InputException if the banks cross each other, the far one lies on the wrong side, or they enclose nothing
     */
    static Geometry between(Peg peg, BankLine near, Optional<BankLine> far) throws InputException {
        boolean smooth =
                near.isFunctionOfX() && far.map(BankLine::isFunctionOfX).orElse(true);
        if (far.isPresent()) {
            if (smooth) {
                refuseCrossing(peg, near, far.get());
            } else {
                BankChecks.refuseCrossing(peg.banks());
            }
            BankChecks.refuseWrongSide(peg.banks(), near, far.get());
        }
        if (!smooth) {
            return far.map(line -> Overlay.difference(near.areaBeyond(), line.areaBeyond()))
                    .orElseGet(near::areaBeyond);
        }
        List<Coordinate> ring = new ArrayList<>(near.drawn());
        if (far.isPresent()) {
            List<Coordinate> back = new ArrayList<>(far.get().drawn());
            keepApart(ring, back);
            Collections.reverse(back);
            ring.addAll(back);
        } else {
            double top = peg.pole().reachMetres()
                    + 2
                    + near.drawn().stream().mapToDouble(c -> c.y).max().orElse(0);
            ring.add(new Coordinate(ring.get(ring.size() - 1).x, top));
            ring.add(new Coordinate(ring.get(0).x, top));
        }
        Optional<Polygon> polygon = Optional.of(ring).filter(r -> r.size() > 2).map(Shapes::polygon);
        if (polygon.isEmpty() || !polygon.get().isValid()) {
            throw new InputException(
                    "The banks leave no water straight out from the seat; the far bank must lie beyond the near bank there.");
        }
        return polygon.get();
    }

    /** Banks may meet where they are only continued beyond the points that were given: the water ends there. */
    private static void refuseCrossing(Peg peg, BankLine near, BankLine far) throws InputException {
        DoubleSummaryStatistics nearX = alongX(peg.banks().near());
        DoubleSummaryStatistics farX = alongX(peg.banks().far());
        double from = Math.max(nearX.getMin(), farX.getMin());
        double to = Math.min(nearX.getMax(), farX.getMax());
        for (Coordinate where : near.toGeometry().intersection(far.toGeometry()).getCoordinates()) {
            if (where.x >= from && where.x <= to) {
                throw BankChecks.crossing(peg.banks(), where);
            }
        }
    }

    private static DoubleSummaryStatistics alongX(List<BankPoint> points) {
        return points.stream().mapToDouble(p -> p.place().xMetres()).summaryStatistics();
    }

    /** Cuts both lines, drawn at the same x, to the stretch about the seat along which the far one lies beyond. */
    private static void keepApart(List<Coordinate> near, List<Coordinate> far) {
        int from = near.size() / 2;
        int to = from;
        while (from > 0 && far.get(from - 1).y > near.get(from - 1).y) {
            from--;
        }
        while (to < near.size() - 1 && far.get(to + 1).y > near.get(to + 1).y) {
            to++;
        }
        near.subList(to + 1, near.size()).clear();
        near.subList(0, from).clear();
        far.subList(to + 1, far.size()).clear();
        far.subList(0, from).clear();
    }

    /** The strip between the limits of the angler's own water, as far as the pole reaches. */
    static Geometry limits(Peg peg) {
        double reach = peg.pole().reachMetres();
        OptionalDouble left = peg.limits().leftMetres();
        OptionalDouble right = peg.limits().rightMetres();
        return Shapes.FACTORY.toGeometry(new Envelope(
                Math.max(-reach - 1, left.orElse(-reach - 1)),
                Math.min(reach + 1, right.orElse(reach + 1)),
                -2 * reach - 10,
                2 * reach + 10));
    }
}

package pegbed.report.map;

import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import pegbed.findings.PegMap;
import pegbed.geometry.Overlay;
import pegbed.model.Place;
import pegbed.model.Units;
import pegbed.notation.FeetAndInches;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;

/** Rings at the pole's joints, the rim at reach, and the clock round it. */
final class RingPart {

    /** Directions in which the rings' labels may stand in a column, the best first (our choice). */
    private static final List<Double> COLUMNS = List.of(
            -47.0, 47.0, -53.0, 53.0, -38.0, 38.0, -28.0, 28.0, -10.0, 10.0, -65.0, 65.0, -72.0, 72.0, -80.0, 80.0);

    /** On smaller maps than this a ring is named by one figure alone. */
    private static final double SMALL_POINTS_PER_METRE = 16;

    /** The clock's figures stand so far outside, points. */
    private static final double CLOCK_POINTS = 16;

    private RingPart() {}

    /** Draws the rings, with gaps for texts. */
    static void addRings(Composition to, Shore shore, Masked masked) {
        for (int i = 0; i < shore.rings().size(); i++) {
            Role role = i == shore.rings().size() - 1 ? Role.RIM : Role.RING;
            to.stroke(role, Layer.RINGS, Frame.WATER, masked.of(shore.rings().get(i)));
        }
    }

    /** Writes each ring's label once, in the column that has room for most of them. */
    static void addLabels(Composition to, PegMap map) {
        if (!to.shows(Layer.RINGS)) {
            return;
        }
        double best = 0;
        long max = -1;
        for (double column : COLUMNS) {
            long free = free(to, map, column);
            if (free > max) {
                best = column;
                max = free;
            }
        }
        List<Double> joints = map.peg().pole().jointMetres();
        for (int i = 0; i < joints.size(); i++) {
            Composition.Label label = label(to, map, i);
            boolean written = write(to, map, label, joints.get(i), best);
            for (int k = 0; k < COLUMNS.size() && !written; k++) {
                written = write(to, map, label, joints.get(i), COLUMNS.get(k));
            }
        }
    }

    private static long free(Composition to, PegMap map, double column) {
        List<Double> joints = map.peg().pole().jointMetres();
        long free = 0;
        for (int i = 0; i < joints.size(); i++) {
            Place at = Place.polar(joints.get(i), column);
            if (map.water().isWater(at.xMetres(), at.yMetres())
                    && to.space.isFree(to.box(label(to, map, i), at.xMetres(), at.yMetres(), 0, 0, 0))) {
                free++;
            }
        }
        return free;
    }

    private static boolean write(Composition to, PegMap map, Composition.Label label, double radius, double column) {
        Place at = Place.polar(radius, column);
        return map.water().isWater(at.xMetres(), at.yMetres()) && to.place(label, at.xMetres(), at.yMetres(), 0, 0, 0);
    }

    private static Composition.Label label(Composition to, PegMap map, int joint) {
        double metres = map.peg().pole().jointMetres().get(joint);
        String section = "s" + (joint + 1);
        String inMetres = String.format(Locale.ROOT, "%.1f m", metres).replace(".0 m", " m");
        boolean small = to.view.pointsPerMetre() < SMALL_POINTS_PER_METRE;
        String words = switch (map.peg().units().distance()) {
            case SECTIONS -> small ? section : section + " · " + inMetres;
            case METRES -> inMetres;
            case FEET -> FeetAndInches.wholeFeet(metres);
        };
        if (!small && map.peg().units().distance() != Units.Distance.SECTIONS) {
            words += " · " + section;
        }
        return new Composition.Label(Role.RING_LABEL, Layer.RINGS, Lettering.plain(8.5), words);
    }

    /** The clock stands where a direction leaves the water that can be reached: on the rim, or on the far bank. */
    static void addClock(Composition to, PegMap map, Shore shore) {
        PreparedGeometry banks = PreparedGeometryFactory.prepare(to.toSheet(shore.banks()));
        for (int minutes = -180; minutes <= 180; minutes += 30) {
            double degrees = minutes / 2.0;
            double edge = edge(map, degrees);
            Place rim = Place.polar(edge, degrees);
            if (edge == 0 || !to.space.holds(to.view.x(rim.xMetres()), to.view.y(rim.yMetres()))) {
                continue;
            }
            boolean hour = minutes % 60 == 0;
            double sin = Math.sin(Math.toRadians(degrees));
            double cos = Math.cos(Math.toRadians(degrees));
            double length = hour ? 7 : 4;
            to.stroke(
                    Role.CLOCK_TICK,
                    Layer.CLOCK,
                    Frame.at(rim.xMetres(), rim.yMetres()),
                    Symbols.line(0, 0, length * sin, -length * cos));
            if (hour) {
                String figure = Integer.toString(Math.floorMod(minutes / 60 - 1, 12) + 1);
                Composition.Label label =
                        new Composition.Label(Role.CLOCK_FIGURE, Layer.CLOCK, Lettering.bold(11), figure);
                writeHour(to, label, rim, sin, cos, banks);
            }
        }
    }

    /** Outside the rim, clear of the banks: further out or a little up or down where there is no room at once. */
    private static void writeHour(
            Composition to, Composition.Label label, Place rim, double sin, double cos, PreparedGeometry banks) {
        for (double out = CLOCK_POINTS; out <= 3 * CLOCK_POINTS; out += CLOCK_POINTS / 4) {
            for (double down : new double[] {0, -11, 11}) {
                double x = out * sin;
                double y = down - out * cos;
                boolean clear = !banks.intersects(
                        to.box(label, rim.xMetres(), rim.yMetres(), x, y, 0).outline());
                if (clear && to.place(label, rim.xMetres(), rim.yMetres(), x, y, 0)) {
                    return;
                }
            }
        }
    }

    /** Metres from the seat to the furthest water in a direction; 0 where there is none. */
    private static double edge(PegMap map, double degrees) {
        Place end = Place.polar(map.water().reachMetres() + 1, degrees);
        Geometry inside = Overlay.intersection(
                Symbols.line(0, 0, end.xMetres(), end.yMetres()), map.water().water());
        double furthest = 0;
        for (Coordinate c : inside.getCoordinates()) {
            furthest = Math.max(furthest, Math.hypot(c.x, c.y));
        }
        return furthest;
    }
}

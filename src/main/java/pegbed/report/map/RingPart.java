package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import pegbed.analysis.PegMap;
import pegbed.geometry.Shapes;
import pegbed.model.Place;
import pegbed.model.Units;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;

/** Rings at the pole's joints, the rim at reach, and the clock round it. */
final class RingPart {
    private static final double FOOT_METRES = 0.3048;

    /** Directions in which the rings' labels may stand in a column, the best first (our choice). */
    private static final List<Double> COLUMNS =
            List.of(-47.0, 47.0, -53.0, 53.0, -38.0, 38.0, -28.0, 28.0, -10.0, 10.0, -65.0, 65.0, -72.0, 72.0, -80.0, 80.0);

    /** The clock stands so far outside the rim, points. */
    private static final double CLOCK_POINTS = 13;

    private RingPart() {}

    static void addRings(Composition to, PegMap map) {
        List<Double> joints = map.peg().pole().jointMetres();
        for (int i = 0; i < joints.size(); i++) {
            boolean rim = i == joints.size() - 1;
            Geometry ring = circle(joints.get(i)).intersection(map.water().water().buffer(rim ? 0.02 : 0));
            to.stroke(rim ? Role.RIM : Role.RING, Layer.RINGS, Frame.WATER, Lines.of(ring));
        }
    }

    private static LineString circle(double radiusMetres) {
        List<org.locationtech.jts.geom.Coordinate> places = new ArrayList<>();
        for (int degrees = -180; degrees <= 180; degrees += 1) {
            places.add(Shapes.coordinate(Place.polar(radiusMetres, degrees)));
        }
        return Shapes.FACTORY.createLineString(places.toArray(org.locationtech.jts.geom.Coordinate[]::new));
    }

    /** Writes each ring's label once, in the column that has room for most of them. */
    static void addLabels(Composition to, PegMap map) {
        if (!to.shows(Layer.RINGS)) {
            return;
        }
        double best = 0;
        long most = -1;
        for (double column : COLUMNS) {
            long free = free(to, map, column);
            if (free > most) {
                best = column;
                most = free;
            }
        }
        List<Double> joints = map.peg().pole().jointMetres();
        for (int i = 0; i < joints.size(); i++) {
            Composition.Label label = label(map, i);
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
                    && to.space.isFree(to.box(label(map, i), at.xMetres(), at.yMetres(), 0, 0, turn(column)))) {
                free++;
            }
        }
        return free;
    }

    private static boolean write(Composition to, PegMap map, Composition.Label label, double radius, double column) {
        Place at = Place.polar(radius, column);
        return map.water().isWater(at.xMetres(), at.yMetres())
                && to.place(label, at.xMetres(), at.yMetres(), 0, 0, turn(column));
    }

    /** Along the ring; a label straight to the side would stand on its end and is turned back to lie. */
    private static double turn(double column) {
        return Math.abs(column) > 60 ? 0 : column;
    }

    private static Composition.Label label(PegMap map, int joint) {
        double metres = map.peg().pole().jointMetres().get(joint);
        String section = "s" + (joint + 1);
        String inMetres = String.format(Locale.ROOT, "%.1f m", metres).replace(".0 m", " m");
        String words = switch (map.peg().units().distance()) {
            case SECTIONS -> section + " · " + inMetres;
            case METRES -> inMetres;
            case FEET -> Math.round(metres / FOOT_METRES) + " ft";
        };
        if (map.peg().units().distance() != Units.Distance.SECTIONS) {
            words += " · " + section;
        }
        return new Composition.Label(Role.RING_LABEL, Layer.RINGS, Lettering.plain(8.5), words);
    }

    static void addClock(Composition to, PegMap map) {
        double reach = map.water().reachMetres();
        for (int minutes = -180; minutes <= 180; minutes += 30) {
            double degrees = minutes / 2.0;
            Place rim = Place.polar(reach, degrees);
            if (!to.space.holds(to.view.x(rim.xMetres()), to.view.y(rim.yMetres()))) {
                continue;
            }
            boolean hour = minutes % 60 == 0;
            double sin = Math.sin(Math.toRadians(degrees));
            double cos = Math.cos(Math.toRadians(degrees));
            double length = hour ? 6 : 3;
            to.stroke(
                    Role.CLOCK_TICK,
                    Layer.CLOCK,
                    Frame.at(rim.xMetres(), rim.yMetres()),
                    Symbols.line(0, 0, length * sin, -length * cos));
            if (hour) {
                int figure = Math.floorMod(minutes / 60 - 1, 12) + 1;
                to.place(
                        new Composition.Label(
                                Role.CLOCK_FIGURE, Layer.CLOCK, Lettering.bold(10), Integer.toString(figure)),
                        rim.xMetres(),
                        rim.yMetres(),
                        CLOCK_POINTS * sin,
                        -CLOCK_POINTS * cos,
                        0);
            }
        }
    }
}

package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import pegbed.findings.PegMap;
import pegbed.geometry.Overlay;
import pegbed.model.Decimals;
import pegbed.model.Place;
import pegbed.notation.FeetAndInches;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;

/** Rings at the pole's joints, the rim at reach, and the clock round it. */
final class RingPart {

    /** Directions from the seat along which the rings' names may stand, the best first, degrees (our choice). */
    private static final List<Double> RADII = radii();

    /** A name may leave the radius by so much along its ring, degrees. */
    private static final double[] ASIDE = {0, 1.5, -1.5, 3, -3, 4.5, -4.5};

    /** The clock's figures stand so far outside, points. */
    private static final double CLOCK_POINTS = 15;

    private RingPart() {}

    /** Draws the rings, with gaps for texts. */
    static void addRings(Composition to, Shore shore, Masked masked) {
        for (int i = 0; i < shore.rings().size(); i++) {
            Role role = i == shore.rings().size() - 1 ? Role.RIM : Role.RING;
            to.stroke(role, Layer.RINGS, Frame.WATER, masked.of(shore.rings().get(i)));
        }
    }

    private static List<Double> radii() {
        List<Double> radii = new ArrayList<>();
        for (double degrees : new double[] {-50, 50, -30, 30, -70, 70, -10, 10}) {
            for (double more = 0; more < 20; more += 2.5) {
                radii.add(degrees + (degrees < 0 ? -more : more));
            }
        }
        return radii.stream().filter(degrees -> Math.abs(degrees) <= 84).toList();
    }

    /** Asks for the places of the names: all along one radius, that which has room for most of them. */
    static void addLabels(Composition to, PegMap map) {
        if (to.shows(Layer.RINGS)) {
            to.placer.ask(Placer.Rank.RING_NAME, () -> names(to, map));
        }
    }

    private static void names(Composition to, PegMap map) {
        int joints = map.peg().pole().jointMetres().size();
        double best = RADII.get(0);
        long most = -1;
        for (double radius : RADII) {
            long free = IntStream.range(0, joints)
                    .filter(joint -> place(to, map, joint, radius).isPresent())
                    .count();
            if (free > most) {
                best = radius;
                most = free;
            }
        }
        for (int joint = 0; joint < joints; joint++) {
            Composition.Label label = label(map, joint);
            place(to, map, joint, best).ifPresent(at -> to.place(label, at.xMetres(), at.yMetres(), 0, 0, 0));
        }
    }

    private static Optional<Place> place(Composition to, PegMap map, int joint, double radiusDegrees) {
        for (double aside : ASIDE) {
            Place at = Place.polar(map.peg().pole().jointMetres().get(joint), radiusDegrees + aside);
            if (map.water().isWater(at.xMetres(), at.yMetres())
                    && to.space.isFreeForText(to.box(label(map, joint), at.xMetres(), at.yMetres(), 0, 0, 0))) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private static Composition.Label label(PegMap map, int joint) {
        return new Composition.Label(Role.RING_LABEL, Layer.RINGS, Lettering.plain(8.5), words(map, joint));
    }

    /** A ring's name in the person's unit, and no more: {@code s4}, {@code 7 m} or {@code 23 ft}. */
    static String words(PegMap map, int joint) {
        double metres = map.peg().pole().jointMetres().get(joint);
        return switch (map.peg().units().distance()) {
            case SECTIONS -> "s" + (joint + 1);
            case METRES -> (Decimals.text(metres, 1) + " m").replace(".0 m", " m");
            case FEET -> FeetAndInches.wholeFeet(metres);
        };
    }

    /** The clock stands where a direction leaves the water that can be reached: on the rim, or on the far bank. */
    static void addClock(Composition to, PegMap map) {
        if (to.shows(Layer.CLOCK)) {
            PreparedGeometry water =
                    PreparedGeometryFactory.prepare(to.toSheet(map.water().water()));
            for (int minutes = -180; minutes <= 180; minutes += 30) {
                int at = minutes;
                to.placer.ask(Placer.Rank.CLOCK_FIGURE, () -> clock(to, map, at, water));
            }
        }
    }

    private static void clock(Composition to, PegMap map, int minutes, PreparedGeometry water) {
        double degrees = minutes / 2.0;
        double edge = edge(map, degrees);
        Place rim = Place.polar(edge, degrees);
        if (edge == 0 || !to.space.holds(to.view.x(rim.xMetres()), to.view.y(rim.yMetres()))) {
            return;
        }
        boolean hour = minutes % 60 == 0;
        double sin = Math.sin(Math.toRadians(degrees));
        double cos = Math.cos(Math.toRadians(degrees));
        double length = hour ? 7 : 4;
        Geometry tick = Symbols.line(0, 0, length * sin, -length * cos);
        if (to.space.isFree(new LabelBox(
                to.view.x(rim.xMetres()) + length / 2 * sin,
                to.view.y(rim.yMetres()) - length / 2 * cos,
                2,
                length,
                degrees))) {
            to.stroke(Role.CLOCK_TICK, Layer.CLOCK, Frame.at(rim.xMetres(), rim.yMetres()), tick);
        }
        if (hour) {
            String figure = Integer.toString(Math.floorMod(minutes / 60 - 1, 12) + 1);
            Composition.Label label = new Composition.Label(Role.CLOCK_FIGURE, Layer.CLOCK, Lettering.bold(11), figure);
            writeHour(to, label, rim, sin, cos, water);
        }
    }

    /** Outside the water, clear of the banks: farther out, or a little aside, where there is no room at once. */
    private static void writeHour(
            Composition to, Composition.Label label, Place rim, double sin, double cos, PreparedGeometry water) {
        for (double out = CLOCK_POINTS; out <= 3 * CLOCK_POINTS; out += CLOCK_POINTS / 4) {
            for (double aside : new double[] {0, -11, 11, -18, 18, -26, 26}) {
                double x = out * sin + aside * cos;
                double y = aside * sin - out * cos;
                boolean dry = !water.intersects(
                        to.box(label, rim.xMetres(), rim.yMetres(), x, y, 0).outline());
                if (dry && to.place(label, rim.xMetres(), rim.yMetres(), x, y, 0)) {
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

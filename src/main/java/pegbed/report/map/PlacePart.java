package pegbed.report.map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import pegbed.findings.PegMap;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.model.Hazard;
import pegbed.model.Mark;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;

/** Seat, marks and hazards. */
final class PlacePart {
    private static final int LONGEST_NAME = 26;

    /** Radius of the paper under a hazard's sign, points. */
    private static final double HAZARD_POINTS = 9;

    /** Size of a mark's sign, and from its foot to its middle, points. */
    private static final double MARK_WIDTH = 10;

    private static final double MARK_HEIGHT = 17;
    private static final double MARK_DOWN = -5.2;

    private PlacePart() {}

    static void addSigns(Composition to, PegMap map) {
        to.placer.ask(Placer.Rank.SEAT, () -> seat(to));
        for (Hazard hazard : map.peg().hazards()) {
            to.placer.ask(Placer.Rank.HAZARD_SIGN, () -> hazard(to, hazard));
        }
        for (Mark mark : map.peg().marks()) {
            to.placer.ask(Placer.Rank.MARK_SIGN, () -> mark(to, map, mark));
        }
    }

    private static void seat(Composition to) {
        Frame seat = Frame.at(0, 0);
        to.fill(Role.SEAT, Layer.SEAT, seat, Symbols.seat());
        to.stroke(Role.SEAT_OUTLINE, Layer.SEAT, seat, Symbols.seat().getExteriorRing());
        to.fill(Role.ANGLER, Layer.SEAT, seat, Symbols.angler());
        to.space.takeForSign(Layer.SEAT, new LabelBox(to.view.x(0), to.view.y(0) + 7.5, 24, 17, 0));
    }

    /** Its ground, and a badge with the sign of its kind. */
    private static void hazard(Composition to, Hazard hazard) {
        to.fill(Role.HAZARD_AREA, Layer.HAZARDS, Frame.WATER, PegWater.around(hazard));
        Point middle = middle(hazard);
        double x = middle.getX();
        double y = middle.getY();
        double side = 2 * HAZARD_POINTS + 2;
        to.placer.sign(Layer.HAZARDS, x, y, side, side, 0).ifPresent(spot -> {
            Frame at = Frame.at(x, y);
            AffineTransformation there = AffineTransformation.translationInstance(spot.right(), spot.down());
            Geometry badge = there.transform(Symbols.disc(HAZARD_POINTS));
            to.fill(Role.HAZARD_BADGE, Layer.HAZARDS, at, badge);
            to.stroke(Role.HAZARD_BADGE, Layer.HAZARDS, at, badge.getBoundary());
            to.stroke(Role.HAZARD, Layer.HAZARDS, at, there.transform(Symbols.hazard(hazard.kind())));
            to.placer.ask(
                    Placer.Rank.HAZARD_NAME,
                    () -> to.placer.name(
                            hazardName(hazard), x, y, spot, HAZARD_POINTS + 1, HAZARD_POINTS + 1, Placer.USUAL_ORDER));
        });
    }

    private static Composition.Label hazardName(Hazard hazard) {
        String words = hazard.kind() == Hazard.Kind.OTHER && !hazard.note().isBlank()
                ? SingleLine.of(hazard.note(), LONGEST_NAME)
                : hazard.kind().word();
        return new Composition.Label(Role.HAZARD_LABEL, Layer.HAZARDS, Lettering.bold(9), words);
    }

    /** A mark stands where it is, or, if that is off the map, at the map's edge in its direction from the seat. */
    private static void mark(Composition to, PegMap map, Mark mark) {
        Coordinate seat = new Coordinate(to.view.x(0), to.view.y(0));
        Coordinate at = new Coordinate(
                to.view.x(mark.place().xMetres()), to.view.y(mark.place().yMetres()));
        LabelBox whole = new LabelBox(at.x, at.y + MARK_DOWN, MARK_WIDTH, MARK_HEIGHT, 0);
        boolean beyond = !to.space.contains(whole);
        if (beyond) {
            if (!to.space.holds(seat.x, seat.y)) {
                return;
            }
            at = to.space.exit(seat, at);
            // On the line of sight, far enough inside for the sign.
            double inside = Math.max(0, 1 - (MARK_HEIGHT + 8) / Math.max(1, seat.distance(at)));
            at = new Coordinate(seat.x + inside * (at.x - seat.x), seat.y + inside * (at.y - seat.y));
        }
        double x = to.view.xMetres(at.x);
        double y = to.view.yMetres(at.y);
        double height = MARK_HEIGHT + (beyond ? 6 : 0);
        double down = MARK_DOWN - (beyond ? 3 : 0);
        to.placer.sign(Layer.MARKS, x, y, MARK_WIDTH, height, down).ifPresent(spot -> {
            Frame frame = Frame.at(x, y);
            AffineTransformation there = AffineTransformation.translationInstance(spot.right(), spot.down());
            to.stroke(Role.MARK, Layer.MARKS, frame, there.transform(Symbols.mark()));
            to.fill(Role.MARK, Layer.MARKS, frame, there.transform(Symbols.markHead()));
            if (beyond) {
                to.stroke(
                        Role.MARK_BEYOND,
                        Layer.MARKS,
                        frame,
                        there.transform(Symbols.line(-4, -13.5, 0, -17, 4, -13.5)));
            }
            Composition.Label label = new Composition.Label(
                    Role.MARK_LABEL, Layer.MARKS, Lettering.italic(10.5), SingleLine.of(mark.name(), LONGEST_NAME));
            Placer.Spot middle = new Placer.Spot(spot.right(), spot.down() + down);
            to.placer.ask(Placer.Rank.MARK_NAME, () -> markName(to, map, label, x, y, middle, height / 2));
        });
    }

    /** Off the water, where there is room: what stands on land is named on land. */
    private static void markName(
            Composition to,
            PegMap map,
            Composition.Label label,
            double x,
            double y,
            Placer.Spot sign,
            double halfHeight) {
        PreparedGeometry water =
                PreparedGeometryFactory.prepare(to.toSheet(map.water().water()));
        double half = MARK_WIDTH / 2;
        boolean dry = to.placer.name(
                label, x, y, sign, half, halfHeight, Placer.ABOVE_FIRST, box -> !water.intersects(box.outline()));
        if (!dry) {
            to.placer.name(label, x, y, sign, half, halfHeight, Placer.ABOVE_FIRST);
        }
    }

    /** Draws the outlines of hazards, with gaps for texts and signs. */
    static void addOutlines(Composition to, PegMap map, Masked masked) {
        for (Hazard hazard : map.peg().hazards()) {
            Geometry around = PegWater.around(hazard);
            if (!around.isEmpty()) {
                to.strokeUnder(Role.HAZARD_OUTLINE, Layer.HAZARDS, Frame.WATER, masked.of(around.getBoundary()));
            }
        }
    }

    private static Point middle(Hazard hazard) {
        Geometry around = PegWater.around(hazard);
        if (around.isEmpty()) {
            return Shapes.FACTORY.createPoint(Shapes.coordinate(hazard.outline().get(0)));
        }
        return hazard.outline().size() == 1 ? around.getCentroid() : around.getInteriorPoint();
    }
}

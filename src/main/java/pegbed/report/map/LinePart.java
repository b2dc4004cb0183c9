package pegbed.report.map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import pegbed.geometry.Shapes;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;

/** The lines of a plan: the way to the seat, a ring that says how sure it is, and a square with the number. */
final class LinePart {
    private static final double HALF_POINTS = 8.5;

    /** The ring is so much larger than the square, points: clear of its corners. */
    private static final double RING_POINTS = 5;

    private LinePart() {}

    /** Asks for the places of the numbers. */
    static void addSigns(Composition to, Plan plan) {
        for (PlannedLine line : plan.lines()) {
            to.placer.ask(Placer.Rank.LINE_SIGN, () -> sign(to, line));
        }
    }

    private static void sign(Composition to, PlannedLine line) {
        double x = line.place().xMetres();
        double y = line.place().yMetres();
        double side = 2 * (HALF_POINTS + RING_POINTS) + 2;
        to.placer.sign(Layer.LINES, x, y, side, side, 0).ifPresent(spot -> {
            Frame at = Frame.at(x, y);
            AffineTransformation there = AffineTransformation.translationInstance(spot.right(), spot.down());
            Geometry square = there.transform(Symbols.box(-HALF_POINTS, -HALF_POINTS, HALF_POINTS, HALF_POINTS));
            to.stroke(
                    FindingPart.ring(line.candidate().confidence()),
                    Layer.LINES,
                    at,
                    there.transform(Symbols.ring(HALF_POINTS + RING_POINTS)));
            to.fill(Role.LINE_BADGE, Layer.LINES, at, square);
            to.stroke(Role.LINE_BADGE, Layer.LINES, at, square.getBoundary());
            to.write(
                    new Composition.Label(
                            Role.LINE_NUMBER, Layer.LINES, Lettering.bold(13), Integer.toString(line.number())),
                    x,
                    y,
                    spot.right(),
                    spot.down(),
                    0);
        });
    }

    /** Draws the ways to the seat, with gaps for texts and signs. */
    static void addPaths(Composition to, Plan plan, Masked masked) {
        for (PlannedLine line : plan.lines()) {
            Coordinate place = Shapes.coordinate(line.place());
            to.strokeUnder(Role.LINE_PATH, Layer.LINES, Frame.WATER, masked.of(Symbols.line(0, 0, place.x, place.y)));
        }
    }
}

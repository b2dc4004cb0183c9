package pegbed.report.map;

import org.locationtech.jts.geom.Coordinate;
import pegbed.geometry.Shapes;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.surface.posterior.Disc;

/** The lines of a plan: the way to the seat, a ring that says how sure it is, and a square with the number. */
final class LinePart {
    private static final double HALF_POINTS = 8.5;

    private LinePart() {}

    static void add(Composition to, Plan plan) {
        if (!to.shows(Layer.LINES)) {
            return;
        }
        for (PlannedLine line : plan.lines()) {
            Coordinate place = Shapes.coordinate(line.place());
            to.stroke(Role.LINE_PATH, Layer.LINES, Frame.WATER, Symbols.line(0, 0, place.x, place.y));
        }
        for (PlannedLine line : plan.lines()) {
            double x = line.place().xMetres();
            double y = line.place().yMetres();
            to.stroke(
                    FindingPart.ring(line.candidate().confidence()),
                    Layer.LINES,
                    Frame.WATER,
                    Shapes.disc(x, y, Math.max(Disc.RADIUS_METRES, (HALF_POINTS + 5) / to.view.pointsPerMetre()))
                            .getBoundary());
            Frame at = Frame.at(x, y);
            var square = Symbols.box(-HALF_POINTS, -HALF_POINTS, HALF_POINTS, HALF_POINTS);
            to.fill(Role.LINE_BADGE, Layer.LINES, at, square);
            to.stroke(Role.LINE_BADGE, Layer.LINES, at, square.getExteriorRing());
            to.write(
                    new Composition.Label(
                            Role.LINE_NUMBER, Layer.LINES, Lettering.bold(13), Integer.toString(line.number())),
                    x,
                    y,
                    0,
                    0,
                    0);
            to.takeAbout(x, y, 2 * HALF_POINTS + 12);
        }
    }
}

package pegbed.report.map;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
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

    private PlacePart() {}

    static void addSeat(Composition to) {
        Frame seat = Frame.at(0, 0);
        to.fill(Role.SEAT, Layer.SEAT, seat, Symbols.seat());
        to.stroke(Role.SEAT_OUTLINE, Layer.SEAT, seat, Symbols.seat().getExteriorRing());
        to.fill(Role.ANGLER, Layer.SEAT, seat, Symbols.angler());
        to.space.take(new LabelBox(to.view.x(0), to.view.y(0) + 7.5, 24, 17, 0));
    }

    static void addSymbols(Composition to, PegMap map) {
        for (Mark mark : map.peg().marks()) {
            double x = mark.place().xMetres();
            double y = mark.place().yMetres();
            if (to.shows(Layer.MARKS)) {
                to.stroke(Role.MARK, Layer.MARKS, Frame.at(x, y), Symbols.mark());
                to.fill(Role.MARK, Layer.MARKS, Frame.at(x, y), Symbols.markHead());
                to.space.take(new LabelBox(to.view.x(x), to.view.y(y) - 5, 9, 16, 0));
            }
        }
        for (Hazard hazard : map.peg().hazards()) {
            Geometry around = PegWater.around(hazard);
            if (!around.isEmpty()) {
                to.fill(Role.HAZARD_AREA, Layer.HAZARDS, Frame.WATER, around);
                to.stroke(Role.HAZARD_OUTLINE, Layer.HAZARDS, Frame.WATER, around.getBoundary());
            }
            Point middle = middle(hazard);
            to.stroke(
                    Role.HAZARD, Layer.HAZARDS, Frame.at(middle.getX(), middle.getY()), Symbols.hazard(hazard.kind()));
            if (to.shows(Layer.HAZARDS)) {
                to.takeAbout(middle.getX(), middle.getY(), 14);
            }
        }
    }

    static void addNames(Composition to, PegMap map) {
        for (Mark mark : map.peg().marks()) {
            Composition.Label label = new Composition.Label(
                    Role.MARK_LABEL, Layer.MARKS, Lettering.italic(10.5), SingleLine.of(mark.name(), LONGEST_NAME));
            double x = mark.place().xMetres();
            double y = mark.place().yMetres();
            double side = to.measure.widthPoints(label.words(), label.lettering()) / 2 + 9;
            to.placeFirst(label, x, y, new double[][] {
                {0, -21}, {side, -7}, {-side, -7}, {side - 9, -21}, {9 - side, -21}, {0, -32}, {0, 11}
            });
        }
        for (Hazard hazard : map.peg().hazards()) {
            Point middle = middle(hazard);
            String words = hazard.kind() == Hazard.Kind.OTHER && !hazard.note().isBlank()
                    ? SingleLine.of(hazard.note(), LONGEST_NAME)
                    : hazard.kind().word();
            Composition.Label label = new Composition.Label(Role.HAZARD_LABEL, Layer.HAZARDS, Lettering.bold(9), words);
            double x = middle.getX();
            double y = middle.getY();
            double side = to.measure.widthPoints(label.words(), label.lettering()) / 2 + 11;
            to.placeFirst(label, x, y, new double[][] {
                {0, -14}, {0, 14}, {side, 0}, {-side, 0}, {side, -14}, {-side, -14}, {side, 14}, {-side, 14}
            });
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

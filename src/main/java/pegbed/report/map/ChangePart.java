package pegbed.report.map;

import org.locationtech.jts.geom.Geometry;
import pegbed.findings.PegMap;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.surface.posterior.BottomChange;
import pegbed.wording.LevelWords;

/** Places where a later visit shows that the bottom has changed: a toothed ring, and by how much. */
final class ChangePart {
    /** The ring is no smaller on the sheet, so that a line's own ring does not hide it, points. */
    private static final double MIN_POINTS = 18;

    private static final double TOOTH_POINTS = 3.5;

    private ChangePart() {}

    /** Draws the rings whole, under the figures of readings: many of these stand where a change was found. */
    static void addRings(Composition to, PegMap map) {
        for (BottomChange change : map.bottom().changes()) {
            Frame at = Frame.at(change.xMetres(), change.yMetres());
            Geometry ring = ring(radiusPoints(to), change.deeperMetres() > 0);
            to.stroke(Role.CHANGED_BADGE, Layer.CHANGED, at, ring);
            to.stroke(Role.CHANGED, Layer.CHANGED, at, ring);
        }
    }

    private static double radiusPoints(Composition to) {
        return Math.max(MIN_POINTS, BottomChange.HALF_FELT_METRES * to.view.pointsPerMetre());
    }

    static Geometry ring(double radiusPoints, boolean deeper) {
        return Symbols.toothed(radiusPoints, TOOTH_POINTS, deeper);
    }

    /** By how much, beside each ring; there whatever lies under it, as a change is what the angler must not miss. */
    static void addLabels(Composition to, PegMap map) {
        if (!to.shows(Layer.CHANGED)) {
            return;
        }
        LevelWords words = new LevelWords(map.peg());
        double above = radiusPoints(to) + TOOTH_POINTS + 6;
        for (BottomChange change : map.bottom().changes()) {
            Composition.Label label =
                    new Composition.Label(Role.CHANGED_LABEL, Layer.CHANGED, Lettering.bold(10), words.amount(change));
            double x = change.xMetres();
            double y = change.yMetres();
            double side = above - 3 + to.measure.widthPoints(label.words(), label.lettering()) / 2;
            double[][] offsets = {
                {0, -above},
                {0, above},
                {side, 0},
                {-side, 0},
                {side, -above},
                {-side, -above},
                {side, above},
                {-side, above},
                {0, -above - 14},
                {0, above + 14}
            };
            if (!to.placeFirst(label, x, y, offsets)) {
                writeOver(to, label, x, y, offsets);
            }
        }
    }

    /** Writes a label at the first offset that lies on the sheet, over what is there. */
    private static void writeOver(Composition to, Composition.Label label, double x, double y, double[][] offsets) {
        for (double[] offset : offsets) {
            LabelBox box = to.box(label, x, y, offset[0], offset[1], 0);
            if (to.space.contains(box)) {
                to.space.takeForText(box);
                to.write(label, x, y, offset[0], offset[1], 0);
                return;
            }
        }
    }
}

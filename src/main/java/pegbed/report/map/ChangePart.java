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

    /** Draws the rings, with gaps for texts and signs: many figures of readings stand where a change was found. */
    static void addRings(Composition to, PegMap map, Masked masked) {
        for (BottomChange change : map.bottom().changes()) {
            Frame at = Frame.at(change.xMetres(), change.yMetres());
            Geometry ring =
                    masked.about(change.xMetres(), change.yMetres(), ring(radiusPoints(to), change.deeperMetres() > 0));
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

    /** By how much, beside each ring. */
    static void addLabels(Composition to, PegMap map) {
        LevelWords words = new LevelWords(map.peg());
        double half = radiusPoints(to) + TOOTH_POINTS;
        for (BottomChange change : map.bottom().changes()) {
            Composition.Label label =
                    new Composition.Label(Role.CHANGED_LABEL, Layer.CHANGED, Lettering.bold(10), words.amount(change));
            to.placer.ask(
                    Placer.Rank.CHANGE_AMOUNT,
                    () -> to.placer.name(
                            label,
                            change.xMetres(),
                            change.yMetres(),
                            Placer.Spot.HERE,
                            half,
                            half,
                            Placer.USUAL_ORDER));
        }
    }
}

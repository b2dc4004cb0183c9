package pegbed.report.map;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import pegbed.findings.PegMap;
import pegbed.geometry.Overlay;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Role;

/** Sheet, water, depth bands, the veil of doubt, land and banks. */
final class GroundPart {
    /**
     * Distance of hatching lines where the map is a guess, points; half of it where the doubt is half as much again.
     */
    static final double HATCH_POINTS = 11;

    private static final double LIMIT_METRES = 300;

    private GroundPart() {}

    static void add(Composition to, PegMap map, Ground ground, Shore shore) {
        to.fill(
                Role.BEYOND,
                Layer.GROUND,
                Frame.SHEET,
                Symbols.box(0, 0, to.view.widthPoints(), to.view.heightPoints()));
        to.fill(Role.UNKNOWN_WATER, Layer.GROUND, Frame.WATER, map.water().water());
        List<Geometry> bands = ground.bands();
        for (int i = 0; i < bands.size(); i++) {
            if (!bands.get(i).isEmpty()) {
                to.add(new Fill(Role.DEPTH_BAND, Layer.GROUND, Frame.WATER, bands.get(i), i, bands.size()));
            }
        }
        to.fill(Role.LAND, Layer.GROUND, Frame.WATER, shore.land());
        to.stroke(Role.BANK, Layer.GROUND, Frame.WATER, shore.banks());
        to.fill(Role.DOUBT_VEIL, Layer.DOUBT, Frame.WATER, ground.guess());
        to.fill(Role.STRONG_DOUBT_VEIL, Layer.DOUBT, Frame.WATER, ground.roughGuess());
    }

    /**
     * The hatching of the veil, closer where the doubt is greater, and lines across it where it is a rough guess; gaps
     * for texts and signs.
     */
    static void addHatching(Composition to, Ground ground, Masked masked) {
        if (!to.shows(Layer.DOUBT)) {
            return;
        }
        double spacing = HATCH_POINTS / to.view.pointsPerMetre();
        hatch(to, Role.DOUBT_HATCH, masked.of(Lines.hatch(ground.guess(), spacing, 0, true)));
        hatch(to, Role.MORE_DOUBT_HATCH, masked.of(Lines.hatch(ground.moreGuess(), spacing, 0.5, true)));
        hatch(to, Role.STRONG_DOUBT_HATCH, masked.of(Lines.hatch(ground.roughGuess(), spacing, 0, false)));
        to.stroke(Role.DOUBT_EDGE, Layer.DOUBT, Frame.WATER, masked.of(ground.doubtEdge()));
        to.stroke(Role.KNOWN_EDGE, Layer.DOUBT, Frame.WATER, masked.of(ground.knownEdge()));
    }

    private static void hatch(Composition to, Role role, Geometry lines) {
        to.stroke(role, Layer.DOUBT, Frame.WATER, lines);
    }

    /** The limits of the angler's own water, with gaps for texts and signs. */
    static void addLimits(Composition to, PegMap map, Shore shore, Masked masked) {
        var limits = map.peg().limits();
        for (var limit : List.of(limits.leftMetres(), limits.rightMetres())) {
            if (limit.isPresent()) {
                double x = limit.getAsDouble();
                Geometry line = Overlay.difference(Symbols.line(x, -LIMIT_METRES, x, LIMIT_METRES), shore.land());
                to.stroke(Role.LIMIT, Layer.GROUND, Frame.WATER, masked.of(Lines.of(line)));
            }
        }
    }
}

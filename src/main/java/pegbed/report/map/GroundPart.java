package pegbed.report.map;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import pegbed.findings.PegMap;
import pegbed.geometry.Overlay;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Role;

/** Sheet, water, depth bands, the veil of doubt, land and banks. */
final class GroundPart {
    /** Distance of hatching lines where the map is a guess, points; half of it where it is a rough one. */
    static final double HATCH_POINTS = 7;

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
        limits(to, map, shore);
        bankPoints(to, map.peg().banks());
        to.fill(Role.DOUBT_VEIL, Layer.DOUBT, Frame.WATER, ground.guess());
        to.fill(Role.STRONG_DOUBT_VEIL, Layer.DOUBT, Frame.WATER, ground.roughGuess());
    }

    /** The hatching of the veil, with gaps for texts. */
    static void addHatching(Composition to, Ground ground, Masked masked) {
        if (!to.shows(Layer.DOUBT)) {
            return;
        }
        double spacing = HATCH_POINTS / to.view.pointsPerMetre();
        to.stroke(Role.DOUBT_HATCH, Layer.DOUBT, Frame.WATER, masked.of(Lines.hatch(ground.guess(), spacing, true)));
        to.stroke(
                Role.STRONG_DOUBT_HATCH,
                Layer.DOUBT,
                Frame.WATER,
                masked.of(Lines.hatch(ground.roughGuess(), spacing, false)));
        to.stroke(
                Role.KNOWN_EDGE,
                Layer.DOUBT,
                Frame.WATER,
                Lines.of(ground.known().getBoundary()));
    }

    private static void limits(Composition to, PegMap map, Shore shore) {
        var limits = map.peg().limits();
        for (var limit : List.of(limits.leftMetres(), limits.rightMetres())) {
            if (limit.isPresent()) {
                double x = limit.getAsDouble();
                Geometry line = Overlay.difference(Symbols.line(x, -LIMIT_METRES, x, LIMIT_METRES), shore.land());
                to.stroke(Role.LIMIT, Layer.GROUND, Frame.WATER, Lines.of(line));
            }
        }
    }

    private static void bankPoints(Composition to, Banks banks) {
        banks.near().forEach(point -> bankPoint(to, point));
        banks.far().forEach(point -> bankPoint(to, point));
        banks.islands().forEach(island -> island.forEach(point -> bankPoint(to, point)));
    }

    private static void bankPoint(Composition to, BankPoint point) {
        double x = point.place().xMetres();
        double y = point.place().yMetres();
        if (to.space.holds(to.view.x(x), to.view.y(y))) {
            to.fill(Role.BANK_POINT, Layer.GROUND, Frame.at(x, y), Symbols.disc(1.7));
        }
    }
}

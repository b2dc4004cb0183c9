package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import pegbed.findings.Confidence;
import pegbed.findings.Deepest;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.PegMap;
import pegbed.findings.Zone;
import pegbed.geometry.Shapes;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;
import pegbed.wording.MapWords;

/** The deepest place, the flat spots with their numbers, and the zones. */
final class FindingPart {
    static final double BADGE_POINTS = 8;

    /** From the plummet's tip to the middle of the sign, points. */
    private static final double PLUMMET_DOWN = -6.5;

    private FindingPart() {}

    /** The flat spots that are drawn, in the order of their numbers. */
    static List<FlatSpot> numbered(Findings findings, Ground ground) {
        return findings.flats().stream()
                .filter(flat -> flat.confidence() != Confidence.NONE
                        && ground.isKnown(
                                flat.spot().place().xMetres(),
                                flat.spot().place().yMetres()))
                .toList();
    }

    static boolean knowsDeepest(Findings findings, Ground ground) {
        var place = findings.deepest().spot().place();
        return ground.isKnown(place.xMetres(), place.yMetres());
    }

    /** The role whose pen rings a flat spot. */
    static Role ring(Confidence confidence) {
        return switch (confidence) {
            case SURE -> Role.FLAT_SURE;
            case LIKELY -> Role.FLAT_LIKELY;
            case WORTH_A_READING, NONE -> Role.FLAT_WORTH_A_READING;
        };
    }

    /** Asks for the places of the signs and of the words beside the deepest place. */
    static void addSigns(Composition to, Findings findings, Ground ground) {
        if (knowsDeepest(findings, ground)) {
            to.placer.ask(Placer.Rank.DEEPEST_SIGN, () -> deepest(to, findings));
        }
        List<FlatSpot> flats = numbered(findings, ground);
        for (int i = 0; i < flats.size(); i++) {
            FlatSpot flat = flats.get(i);
            int number = i + 1;
            to.placer.ask(Placer.Rank.FLAT_SIGN, () -> flat(to, flat, number));
        }
    }

    private static void deepest(Composition to, Findings findings) {
        Deepest deepest = findings.deepest();
        double x = deepest.spot().place().xMetres();
        double y = deepest.spot().place().yMetres();
        to.placer.sign(Layer.DEEPEST, x, y, 20, 33, PLUMMET_DOWN).ifPresent(spot -> {
            Frame at = Frame.at(x, y);
            AffineTransformation there = AffineTransformation.translationInstance(spot.right(), spot.down());
            Geometry plummet = there.transform(Symbols.plummet());
            to.stroke(Role.DEEPEST_BADGE, Layer.DEEPEST, at, plummet.getBoundary());
            to.fill(Role.DEEPEST, Layer.DEEPEST, at, plummet);
            to.stroke(Role.DEEPEST, Layer.DEEPEST, at, there.transform(Symbols.plummetLines()));
            to.placer.ask(Placer.Rank.DEEPEST_NAME, () -> name(to, findings, spot));
        });
    }

    private static void flat(Composition to, FlatSpot flat, int number) {
        double x = flat.spot().place().xMetres();
        double y = flat.spot().place().yMetres();
        double side = 2 * BADGE_POINTS + 3;
        to.placer.sign(Layer.FLATS, x, y, side, side, 0).ifPresent(spot -> {
            Frame at = Frame.at(x, y);
            AffineTransformation there = AffineTransformation.translationInstance(spot.right(), spot.down());
            to.fill(Role.FLAT_BADGE, Layer.FLATS, at, there.transform(Symbols.disc(BADGE_POINTS)));
            to.stroke(Role.FLAT_BADGE, Layer.FLATS, at, there.transform(Symbols.ring(BADGE_POINTS)));
            to.write(
                    new Composition.Label(Role.FLAT_NUMBER, Layer.FLATS, Lettering.bold(11), Integer.toString(number)),
                    x,
                    y,
                    spot.right(),
                    spot.down(),
                    0);
        });
    }

    /** Draws the rings about the flat spots, with gaps for texts and signs. */
    static void addRings(Composition to, Findings findings, Ground ground, Masked masked) {
        for (FlatSpot flat : numbered(findings, ground)) {
            double x = flat.spot().place().xMetres();
            double y = flat.spot().place().yMetres();
            // A ring apart from its number would be nobody's.
            Geometry ring = flat.circle()
                    .filter(circle -> Math.hypot(circle.xMetres() - x, circle.yMetres() - y) <= circle.radiusMetres())
                    .map(circle -> Shapes.disc(
                            circle.xMetres(), circle.yMetres(), Math.max(circle.radiusMetres(), Disc.RADIUS_METRES)))
                    .orElse(Shapes.disc(x, y, Disc.RADIUS_METRES));
            to.strokeUnder(ring(flat.confidence()), Layer.FLATS, Frame.WATER, masked.of(ring.getBoundary()));
        }
    }

    /** The words beside the deepest place; how well it is known goes with the depth. */
    private static void name(Composition to, Findings findings, Placer.Spot sign) {
        MapWords words = MapWords.of(findings.map().peg());
        var spot = findings.deepest().spot();
        Composition.Label label = new Composition.Label(
                Role.DEEPEST_LABEL,
                Layer.DEEPEST,
                Lettering.bold(11),
                "deepest " + words.shortDepth(spot.depthMetres(), spot.sdMetres()));
        to.placer.name(
                label,
                spot.place().xMetres(),
                spot.place().yMetres(),
                new Placer.Spot(sign.right(), sign.down() + PLUMMET_DOWN),
                11,
                17,
                Placer.USUAL_ORDER);
    }

    static void addZoneLabels(Composition to, PegMap map) {
        if (to.shows(Layer.ZONES)) {
            to.placer.ask(Placer.Rank.ZONE_NAME, () -> zoneNames(to, map));
        }
    }

    private static void zoneNames(Composition to, PegMap map) {
        for (Zone zone : Zone.values()) {
            Geometry shape = shape(map, zone);
            if (!shape.isEmpty()) {
                var middle = shape.getInteriorPoint();
                Composition.Label label = new Composition.Label(
                        Role.ZONE_LABEL, Layer.ZONES, new Lettering(10, true, true), zone.words());
                to.placeFirst(label, middle.getX(), middle.getY(), new double[][] {
                    {0, 0}, {0, -14}, {0, 14}, {0, -28}, {0, 28}, {-50, 0}, {50, 0}
                });
            }
        }
    }

    /** Draws the outlines, with gaps for texts. */
    static void addZones(Composition to, PegMap map, Masked masked) {
        if (to.shows(Layer.ZONES)) {
            for (Zone zone : Zone.values()) {
                Geometry outline = masked.of(shape(map, zone).getBoundary());
                to.stroke(Role.ZONE_OUTLINE, Layer.ZONES, Frame.WATER, outline);
            }
        }
    }

    private static Geometry shape(PegMap map, Zone zone) {
        GridFrame frame = map.grid().frame();
        double half = frame.cellMetres() / 2;
        List<Geometry> runs = new ArrayList<>();
        for (int row = 0; row < frame.rows(); row++) {
            int start = -1;
            for (int column = 0; column <= frame.columns(); column++) {
                boolean inside = column < frame.columns() && map.zones().contains(zone, frame.index(column, row));
                if (inside && start < 0) {
                    start = column;
                } else if (!inside && start >= 0) {
                    runs.add(Shapes.FACTORY.toGeometry(new Envelope(
                            frame.x(start) - half,
                            frame.x(column - 1) + half,
                            frame.y(row) - half,
                            frame.y(row) + half)));
                    start = -1;
                }
            }
        }
        if (runs.isEmpty()) {
            return Shapes.FACTORY.createPolygon();
        }
        return TopologyPreservingSimplifier.simplify(UnaryUnionOp.union(runs), frame.cellMetres());
    }
}

package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import pegbed.findings.DoubtSummary;
import pegbed.findings.PegMap;
import pegbed.geometry.Overlay;
import pegbed.geometry.Shapes;
import pegbed.model.Parallel;
import pegbed.model.Units;
import pegbed.notation.FeetAndInches;
import pegbed.surface.BottomGrid;
import pegbed.surface.contour.Contour;
import pegbed.surface.contour.ContourLevels;
import pegbed.surface.contour.Contours;
import pegbed.surface.contour.DepthArea;
import pegbed.surface.grid.CubicUpsampling;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.plain.JoinedUp;

/**
 * The bottom as shapes, in metres: what does not depend on the view.
 *
 * @param known where anything is known
 * @param levels the depths of the contours
 * @param bands areas at least so deep, each inside the one before: first all that is known, then one for each level
 * @param contours one for each level, within what is known; lines end at its rim
 * @param guess where the doubt is above {@link #GUESS_METRES}, within what is known
 * @param moreGuess where it is above {@link #MORE_GUESS_METRES}
 * @param roughGuess where it is above {@link #ROUGH_GUESS_METRES}
 * @param doubtEdge the line round the guess, where that is not the edge of what is known
 * @param knownEdge the line round what is known, where that is not the edge of the water
 * @param joinedUp what the depths were joined up from; empty for the model's bottom
 */
record Ground(
        Geometry known,
        ContourLevels levels,
        List<Geometry> bands,
        List<Contour> contours,
        Geometry guess,
        Geometry moreGuess,
        Geometry roughGuess,
        Geometry doubtEdge,
        Geometry knownEdge,
        Optional<JoinedUp> joinedUp) {
    /** A standard deviation above this is drawn as a guess: 4 in. */
    static final double GUESS_METRES = DoubtSummary.GUESS_SD_METRES;

    /** Above this it is hatched twice as close: 6 in. */
    static final double MORE_GUESS_METRES = 0.15;

    /** Above this as a rough guess: 8 in. */
    static final double ROUGH_GUESS_METRES = 0.20;

    /** Above this as nothing known: about 14 in (our choice). */
    static final double UNKNOWN_METRES = 0.35;

    /** Fine cells of depth in one of the grid: 5 cm. */
    private static final int DEPTH_FACTOR = 5;

    /** Those of a provisional map, which is there for a moment only, and of the doubt. */
    private static final int COARSE_FACTOR = 2;

    /** Lines may lie so far off, a third of the width of a pen at usual scales. */
    private static final double TOLERANCE_METRES = 0.006;

    /** Cells of a joined-up bottom: fine enough that creases stay straight. */
    private static final double JOINED_UP_METRES = 0.10;

    /** Two outlines nearer than this are one. */
    private static final double SHARED_EDGE_METRES = 0.05;

    /** Patches of known or doubtful ground smaller than this would be specks, square metres. */
    private static final double SPECK_METRES2 = 0.15;

    static Ground of(PegMap map) {
        BottomGrid grid = map.grid();
        Geometry water = map.water().water();
        List<Geometry> doubt = Contours.polygons(
                        CubicUpsampling.catmullRom(grid.sd(), COARSE_FACTOR),
                        new double[] {GUESS_METRES, MORE_GUESS_METRES, ROUGH_GUESS_METRES, UNKNOWN_METRES},
                        water)
                .stream()
                .map(area -> withoutSpecks(area.area()))
                .toList();
        Geometry known = withoutSpecks(polygonal(Overlay.difference(water, doubt.get(3))));
        ContourLevels levels = levels(grid, map.peg().units().depth());
        Field depth = CubicUpsampling.catmullRom(grid.depth(), map.isProvisional() ? COARSE_FACTOR : DEPTH_FACTOR);
        Geometry guess = simple(polygonal(Overlay.intersection(doubt.get(0), known)));
        return of(
                depth,
                levels,
                known,
                List.of(
                        guess,
                        simple(polygonal(Overlay.intersection(doubt.get(1), known))),
                        simple(polygonal(Overlay.intersection(doubt.get(2), known)))),
                water,
                Optional.empty());
    }

    /**
     * The bottom of a provisional map, which is there for a moment only: depths on coarse cells, and what is known and
     * what is a guess as it was before the reading.
     *
     * @param before of the same place
     */
    static Ground provisional(PegMap map, Ground before) {
        ContourLevels levels = levels(map.grid(), map.peg().units().depth());
        Field depth = CubicUpsampling.catmullRom(map.grid().depth(), COARSE_FACTOR);
        return new Ground(
                before.known,
                levels,
                bands(depth, levels, before.known),
                contours(depth, levels, before.known),
                before.guess,
                before.moreGuess,
                before.roughGuess,
                before.doubtEdge,
                before.knownEdge,
                Optional.empty());
    }

    /** The bottom as the readings and the banks alone give it, straight between neighbours. */
    static Ground joinedUp(PegMap map) {
        JoinedUp plain = JoinedUp.of(map.peg(), map.water());
        Geometry water = map.water().water();
        Geometry known = polygonal(Overlay.intersection(plain.hull(), water));
        GridFrame coarse = map.grid().frame();
        Field depth = plain.over(GridFrame.covering(
                coarse.xMinMetres(),
                coarse.yMinMetres(),
                coarse.x(coarse.columns() - 1),
                coarse.y(coarse.rows() - 1),
                JOINED_UP_METRES));
        double min = Double.POSITIVE_INFINITY;
        double max = 0;
        for (int i = 0; i < depth.frame().size(); i++) {
            if (depth.at(i) >= 0) {
                min = Math.min(min, depth.at(i));
                max = Math.max(max, depth.at(i));
            }
        }
        ContourLevels levels =
                ContourLevels.between(Math.min(min, max), max, map.peg().units().depth());
        Geometry nowhere = Shapes.FACTORY.createMultiPolygon();
        return of(depth, levels, known, List.of(nowhere, nowhere, nowhere), water, Optional.of(plain));
    }

    private static Ground of(
            Field depth,
            ContourLevels levels,
            Geometry known,
            List<Geometry> guesses,
            Geometry water,
            Optional<JoinedUp> joinedUp) {
        // At the edge, whose depth is taken and not read, a joined-up line would run to and fro over the bank's.
        Geometry drawn = joinedUp.isPresent() ? known.buffer(-JOINED_UP_METRES) : known;
        Parallel.Both<List<Geometry>, List<Contour>> shapes =
                Parallel.both(() -> bands(depth, levels, known), () -> contours(depth, levels, drawn));
        return new Ground(
                known,
                levels,
                shapes.first(),
                shapes.second(),
                guesses.get(0),
                guesses.get(1),
                guesses.get(2),
                within(guesses.get(0), known),
                within(known, water),
                joinedUp);
    }

    /** The part of an area's outline that is not that of a wider area about it too. */
    private static Geometry within(Geometry area, Geometry wider) {
        return Lines.of(
                Overlay.difference(area.getBoundary(), wider.getBoundary().buffer(SHARED_EDGE_METRES, 2)));
    }

    private static List<Geometry> bands(Field depth, ContourLevels levels, Geometry known) {
        List<Geometry> bands = new ArrayList<>();
        bands.add(known);
        for (DepthArea area : Contours.polygons(depth, levels.toArray(), known)) {
            bands.add(simple(polygonal(area.area())));
        }
        return List.copyOf(bands);
    }

    private static List<Contour> contours(Field depth, ContourLevels levels, Geometry known) {
        List<Contour> contours = new ArrayList<>();
        for (Contour contour : Contours.of(depth, levels.toArray())) {
            Geometry inside = Overlay.intersection(fewerPoints(contour.lines()), known);
            contours.add(new Contour(contour.levelMetres(), Lines.of(inside)));
        }
        return List.copyOf(contours);
    }

    private static ContourLevels levels(BottomGrid grid, Units.Depth unit) {
        double min = Double.POSITIVE_INFINITY;
        double max = 0;
        for (int i = 0; i < grid.frame().size(); i++) {
            if (grid.isWater(i) && grid.sd().at(i) <= UNKNOWN_METRES) {
                min = Math.min(min, Math.max(0, grid.depth().at(i)));
                max = Math.max(max, grid.depth().at(i));
            }
        }
        return ContourLevels.between(Math.min(min, max), max, unit);
    }

    /**
     * Whether the line of a level is one of the heavier ones: whole feet or half metres, or every fifth step of more.
     */
    boolean isIndex(double levelMetres, Units.Depth unit) {
        double usual = unit == Units.Depth.FEET ? FeetAndInches.FOOT_METRES : 0.5;
        double every = levels.stepMetres() < usual - 1e-9 ? usual : 5 * levels.stepMetres();
        double times = levelMetres / every;
        return Math.abs(times - Math.rint(times)) < 1e-6;
    }

    /** Whether anything is known of a place. */
    boolean isKnown(double xMetres, double yMetres) {
        return known.intersects(Shapes.FACTORY.createPoint(new org.locationtech.jts.geom.Coordinate(xMetres, yMetres)));
    }

    /** A shape with fewer points, valid again: the slow way is taken only where the fast one crosses itself. */
    private static Geometry simple(Geometry shape) {
        Geometry fewer = fewerPoints(shape);
        return fewer.isValid() ? fewer : TopologyPreservingSimplifier.simplify(shape, TOLERANCE_METRES);
    }

    private static Geometry fewerPoints(Geometry shape) {
        DouglasPeuckerSimplifier simplifier = new DouglasPeuckerSimplifier(shape);
        simplifier.setDistanceTolerance(TOLERANCE_METRES);
        simplifier.setEnsureValid(false);
        return simplifier.getResultGeometry();
    }

    /** The polygons of a shape alone: overlays leave points and lines where shapes touch. */
    static Geometry polygonal(Geometry shape) {
        return polygons(shape, 0);
    }

    private static Geometry withoutSpecks(Geometry shape) {
        return polygons(shape, SPECK_METRES2);
    }

    private static Geometry polygons(Geometry shape, double minMetres2) {
        List<Polygon> parts = new ArrayList<>();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            if (shape.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > minMetres2) {
                parts.add(polygon);
            }
        }
        return Shapes.FACTORY.createMultiPolygon(parts.toArray(Polygon[]::new));
    }
}

package pegbed.report.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;
import pegbed.geometry.Shapes;
import pegbed.model.Units;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.View;
import pegbed.surface.contour.Contour;
import pegbed.wording.DepthFigures;

/** Contours with their labels: along the line, upright, in a gap of it, clear of each other and of other contours. */
final class ContourPart {
    private static final double STEP_POINTS = 6;

    /** A line shorter than so many widths of its label carries none. */
    private static final double MIN_WIDTHS = 2.2;

    /** Labels of one line are so far apart, points; those of a heavier line less. */
    private static final double APART_POINTS = 560;

    private static final double INDEX_APART_POINTS = 400;

    /** Labels keep so far from the ends of an open line, points. */
    private static final double END_POINTS = 26;

    /** Stands for the banks among the levels. */
    private static final int BANK = -1;

    /** Another line keeps so far from a label, points. */
    private static final double CLEAR_POINTS = 1.5;

    /** The line may leave its label's middle by so much, points. */
    private static final double BEND_POINTS = 2.2;

    private final Composition to;
    private final View view;
    private final Units.Depth unit;
    private final Ground ground;
    /** All contours in points of the sheet, by level. */
    private final List<Geometry> drawn = new ArrayList<>();

    private final STRtree segments = new STRtree();

    private ContourPart(Composition to, Ground ground, Units.Depth unit) {
        this.to = to;
        this.view = to.view;
        this.ground = ground;
        this.unit = unit;
    }

    /** Asks for the places of the labels. The lines follow with {@link #addLines}, when all texts lie. */
    static void addLabels(Composition to, Ground ground, Shore shore, Units.Depth unit) {
        if (to.shows(Layer.CONTOURS)) {
            to.placer.ask(Placer.Rank.CONTOUR_FIGURE, () -> new ContourPart(to, ground, unit).run(shore));
        }
    }

    /** Draws the lines, with gaps for texts. */
    static void addLines(Composition to, Ground ground, Units.Depth unit, Masked masked) {
        for (Contour contour : ground.contours()) {
            Role role = ground.isIndex(contour.levelMetres(), unit) ? Role.INDEX_CONTOUR : Role.CONTOUR;
            to.stroke(role, Layer.CONTOURS, Frame.WATER, masked.of(contour.lines()));
        }
    }

    private void run(Shore shore) {
        for (int level = 0; level < ground.contours().size(); level++) {
            Geometry lines = to.toSheet(ground.contours().get(level).lines());
            drawn.add(lines);
            index(lines, level);
        }
        index(to.toSheet(shore.banks()), BANK);
        List<Integer> order = new ArrayList<>();
        for (int level = 0; level < drawn.size(); level++) {
            order.add(level);
        }
        order.sort(Comparator.comparing((Integer level) -> !isIndex(level)));
        for (int level : order) {
            label(level);
        }
    }

    private void index(Geometry lines, int level) {
        for (int i = 0; i < lines.getNumGeometries(); i++) {
            Coordinate[] places = lines.getGeometryN(i).getCoordinates();
            for (int k = 1; k < places.length; k++) {
                LineString segment = Shapes.FACTORY.createLineString(new Coordinate[] {places[k - 1], places[k]});
                segment.setUserData(level);
                segments.insert(segment.getEnvelopeInternal(), segment);
            }
        }
    }

    private boolean isIndex(int level) {
        return ground.isIndex(ground.contours().get(level).levelMetres(), unit);
    }

    private void label(int level) {
        Composition.Label label = new Composition.Label(
                Role.CONTOUR_LABEL,
                Layer.CONTOURS,
                new Lettering(8.5, isIndex(level), false),
                DepthFigures.depth(ground.contours().get(level).levelMetres(), unit));
        Geometry lines = drawn.get(level);
        List<LineString> longest = new ArrayList<>();
        for (int i = 0; i < lines.getNumGeometries(); i++) {
            longest.add((LineString) lines.getGeometryN(i));
        }
        longest.sort(Comparator.comparingDouble(line -> -line.getLength()));
        for (LineString line : longest) {
            along(level, line, label);
        }
    }

    /** A place for a label on a line: the straighter the better. */
    private record Seat(double at, LabelBox box, double bend) {}

    private void along(int level, LineString line, Composition.Label label) {
        double width = to.measure.widthPoints(label.words(), label.lettering()) + 4;
        double height = label.lettering().sizePoints() * Lettering.CAP_HEIGHT + 2;
        LineWalk walk = new LineWalk(line);
        double length = walk.length();
        if (length < MIN_WIDTHS * width) {
            return;
        }
        List<Seat> seats = new ArrayList<>();
        double end = width / 2 + (line.isClosed() ? 2 : Math.min(END_POINTS, (length - width) / 4));
        for (double at = end; at <= length - end; at += STEP_POINTS) {
            seat(walk, at, width, height).ifPresent(seats::add);
        }
        seats.sort(Comparator.comparingDouble((Seat seat) -> Math.rint(2 * seat.bend))
                .thenComparingDouble(Seat::at));
        double apartPoints = isIndex(level) ? INDEX_APART_POINTS : APART_POINTS;
        List<Double> used = new ArrayList<>();
        for (Seat seat : seats) {
            boolean apart = used.stream().allMatch(other -> Math.abs(other - seat.at) >= apartPoints);
            if (apart && to.space.isFreeForText(seat.box) && !crossesOther(level, seat.box)) {
                used.add(seat.at);
                to.space.takeForText(seat.box);
                double x = view.xMetres(seat.box.x());
                double y = view.yMetres(seat.box.y());
                to.write(label, x, y, 0, 0, seat.box.turnDegrees());
            }
        }
    }

    private static java.util.Optional<Seat> seat(LineWalk line, double at, double width, double height) {
        Coordinate from = line.at(at - width / 2);
        Coordinate to = line.at(at + width / 2);
        Coordinate middle = line.at(at);
        double chord = from.distance(to);
        if (chord < 0.9 * width) {
            return java.util.Optional.empty();
        }
        double bend = 0;
        for (int i = 1; i < 8; i++) {
            Coordinate between = line.at(at - width / 2 + width * i / 8);
            double off = ((between.x - from.x) * (to.y - from.y) - (between.y - from.y) * (to.x - from.x)) / chord;
            bend = Math.max(bend, Math.abs(off));
        }
        if (bend > BEND_POINTS) {
            return java.util.Optional.empty();
        }
        double turn = Math.toDegrees(Math.atan2(to.y - from.y, to.x - from.x));
        if (turn > 90) {
            turn -= 180;
        } else if (turn < -90) {
            turn += 180;
        }
        double x = (from.x + to.x + 2 * middle.x) / 4;
        double y = (from.y + to.y + 2 * middle.y) / 4;
        return java.util.Optional.of(new Seat(at, new LabelBox(x, y, width, height, turn), bend));
    }

    private boolean crossesOther(int level, LabelBox box) {
        LabelBox clear = box.grown(CLEAR_POINTS);
        PreparedGeometry outline = PreparedGeometryFactory.prepare(clear.outline());
        @SuppressWarnings("unchecked")
        List<LineString> near = segments.query(clear.envelope());
        return near.stream().anyMatch(segment -> !segment.getUserData().equals(level) && outline.intersects(segment));
    }
}

package pegbed.report.map;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.drawing.View;

/** A drawing in the making: items by layer, and the places that labels have taken. Parts are added by one thread. */
final class Composition {
    final View view;
    final TextMeasure measure;
    final Envelope area;
    final LabelSpace space;
    final Placer placer = new Placer();
    private final MapOptions options;
    private final Map<Layer, List<Item>> items = new EnumMap<>(Layer.class);
    private final List<Leader> leaders = new ArrayList<>();

    /** @param area the part of the sheet that the map has, points */
    Composition(View view, Envelope area, TextMeasure measure, MapOptions options) {
        this.view = view;
        this.measure = measure;
        this.options = options;
        this.area = area;
        this.space = new LabelSpace(area);
    }

    boolean shows(Layer layer) {
        return options.layers().contains(layer);
    }

    void add(Item item) {
        if (shows(item.layer())) {
            items.computeIfAbsent(item.layer(), key -> new ArrayList<>()).add(item);
        }
    }

    /** Lines, if there are any, under all that their layer has so far. */
    void strokeUnder(Role role, Layer layer, Frame frame, Geometry lines) {
        if (!lines.isEmpty() && shows(layer)) {
            items.computeIfAbsent(layer, key -> new ArrayList<>()).add(0, new Stroke(role, layer, frame, lines));
        }
    }

    /** Lines in metres as points of the sheet. */
    Geometry toSheet(Geometry water) {
        return new AffineTransformation(view.pointsPerMetre(), 0, view.x(0), 0, -view.pointsPerMetre(), view.y(0))
                .transform(water);
    }

    /** An area, if there is any of it. */
    void fill(Role role, Layer layer, Frame frame, Geometry shape) {
        if (!shape.isEmpty()) {
            add(new Fill(role, layer, frame, shape));
        }
    }

    /** Lines, if there are any. */
    void stroke(Role role, Layer layer, Frame frame, Geometry lines) {
        if (!lines.isEmpty()) {
            add(new Stroke(role, layer, frame, lines));
        }
    }

    /**
     * Where a sign or a name stands against the place that it belongs to.
     *
     * @param right points
     * @param down points
     */
    record Spot(double right, double down) {
        static final Spot HERE = new Spot(0, 0);
    }

    /** A sign may move so far from its place, points, before it stays there whatever lies under it. */
    private static final double FARTHEST_POINTS = 110;

    private static final double STEP_POINTS = 7;
    private static final double SMALL_STEP_POINTS = 3;
    private static final double LEADER_ROOM_POINTS = 4;

    /**
     * Takes the place of a sign: where it belongs if that is free, else beside it, with a line to its place.
     *
     * @param width of the sign, points
     * @param height of the sign, points
     * @param middleDown from the place to the middle of the sign, points
     * @return by how much it has moved; empty if its place is not on the map
     */
    Optional<Spot> sign(Layer layer, double xMetres, double yMetres, double width, double height, double middleDown) {
        double x = view.x(xMetres);
        double y = view.y(yMetres);
        if (!shows(layer) || !space.holds(x, y)) {
            return Optional.empty();
        }
        LabelBox here = new LabelBox(x, y + middleDown, width, height, 0);
        Spot spot = space.isFree(here) ? Spot.HERE : elsewhere(here);
        space.takeForSign(layer, new LabelBox(here.x() + spot.right(), here.y() + spot.down(), width, height, 0));
        if (Math.hypot(spot.right(), spot.down()) > least(here)) {
            leaders.add(
                    new Leader(layer, xMetres, yMetres, Symbols.line(0, 0, spot.right(), spot.down() + middleDown)));
            LabelBox end = LabelBox.square(x, y, 5);
            if (space.isFree(end)) {
                fill(Role.LEADER_END, layer, Frame.at(xMetres, yMetres), Symbols.disc(1.8));
                space.takeForSign(layer, end);
            }
        }
        return Optional.of(spot);
    }

    /** A sign that has moved by no more still lies over its place. */
    private static double least(LabelBox sign) {
        return Math.min(sign.width(), sign.height()) / 2;
    }

    private Spot elsewhere(LabelBox here) {
        for (double far = SMALL_STEP_POINTS; far <= FARTHEST_POINTS; far += SMALL_STEP_POINTS) {
            for (double[] side : Placer.AROUND) {
                double length = Math.hypot(side[0], side[1]);
                Spot spot = new Spot(far * side[0] / length, far * side[1] / length);
                LabelBox box =
                        new LabelBox(here.x() + spot.right(), here.y() + spot.down(), here.width(), here.height(), 0);
                // What has moved away altogether leaves room for the line to its place to be seen.
                boolean away = far > least(here);
                if (space.isFree(away ? box.grown(LEADER_ROOM_POINTS) : box)) {
                    return spot;
                }
            }
        }
        return Spot.HERE;
    }

    /** From a place to the sign or name that had to move. */
    private record Leader(Layer layer, double xMetres, double yMetres, Geometry line) {}

    /** Draws the lines from signs and names to their places, with gaps for all that lies on the way. */
    void addLeaders(Masked masked) {
        for (Leader leader : leaders) {
            stroke(
                    Role.LEADER,
                    leader.layer,
                    Frame.at(leader.xMetres, leader.yMetres),
                    masked.about(leader.xMetres, leader.yMetres, leader.line));
        }
    }

    /**
     * Writes the name of a sign about it, in the order of {@link Placer#AROUND}, near it if there is room, else farther
     * off with a line to it.
     *
     * @param spot where the sign stands against the place
     * @param halfWidth of the sign, points
     * @param halfHeight of the sign, points
     * @return whether there was room
     */
    boolean name(
            Label label, double xMetres, double yMetres, Spot spot, double halfWidth, double halfHeight, int[] order) {
        return name(label, xMetres, yMetres, spot, halfWidth, halfHeight, order, box -> true);
    }

    /** As the other, in such boxes alone. */
    boolean name(
            Label label,
            double xMetres,
            double yMetres,
            Spot spot,
            double halfWidth,
            double halfHeight,
            int[] order,
            Predicate<LabelBox> suits) {
        LabelBox size = box(label, xMetres, yMetres, 0, 0, 0);
        for (double off = 0; off <= FARTHEST_POINTS; off += STEP_POINTS) {
            for (int turn : order) {
                double[] side = Placer.AROUND[turn];
                double right = spot.right() + side[0] * (halfWidth + off + size.width() / 2);
                double down = spot.down() + side[1] * (halfHeight + off + size.height() / 2);
                if (suits.test(box(label, xMetres, yMetres, right, down, 0))
                        && place(label, xMetres, yMetres, right, down, 0)) {
                    if (off >= 2 * STEP_POINTS) {
                        double endRight = right - side[0] * size.width() / 2;
                        double endDown = down - Math.signum(side[1]) * (side[0] == 0 ? size.height() / 2 : 0);
                        leaders.add(new Leader(
                                label.layer(),
                                xMetres,
                                yMetres,
                                Symbols.line(
                                        spot.right() + side[0] * halfWidth,
                                        spot.down() + side[1] * halfHeight,
                                        endRight,
                                        endDown)));
                    }
                    return true;
                }
            }
        }
        return false;
    }

    /** All directions of {@link Placer#AROUND}, the best first. */
    static final int[] USUAL_ORDER = {0, 1, 2, 3, 4, 5, 6, 7};

    /** Above first: for names on the land, whose signs stand upright. */
    static final int[] ABOVE_FIRST = {6, 1, 4, 0, 3, 2, 5, 7};

    /** The box of a text with its middle so many points from a place on the water. */
    LabelBox box(Label label, double xMetres, double yMetres, double right, double down, double turnDegrees) {
        return new LabelBox(
                view.x(xMetres) + right,
                view.y(yMetres) + down,
                measure.widthPoints(label.words(), label.lettering()) + 3,
                label.lettering().sizePoints() * Lettering.CAP_HEIGHT + 3,
                turnDegrees);
    }

    /**
     * Writes a label with its middle so many points from a place on the water, if there is room.
     *
     * @return whether there was
     */
    boolean place(Label label, double xMetres, double yMetres, double right, double down, double turnDegrees) {
        LabelBox box = box(label, xMetres, yMetres, right, down, turnDegrees);
        if (!shows(label.layer()) || !space.isFreeForText(box)) {
            return false;
        }
        space.takeForText(box);
        write(label, xMetres, yMetres, right, down, turnDegrees);
        return true;
    }

    /** Writes a label at the first of some offsets, right and down in points, where there is room. */
    boolean placeFirst(Label label, double xMetres, double yMetres, double[][] offsets) {
        for (double[] offset : offsets) {
            if (place(label, xMetres, yMetres, offset[0], offset[1], 0)) {
                return true;
            }
        }
        return false;
    }

    /** Writes a label whether there is room or not, and takes no place. */
    void write(Label label, double xMetres, double yMetres, double right, double down, double turnDegrees) {
        double half = label.lettering().sizePoints() * Lettering.CAP_HEIGHT / 2;
        double turn = Math.toRadians(turnDegrees);
        add(new Text(
                label.role(),
                label.layer(),
                Frame.at(xMetres, yMetres),
                right - half * Math.sin(turn),
                down + half * Math.cos(turn),
                Text.Align.MIDDLE,
                turnDegrees,
                label.lettering(),
                label.words()));
    }

    /** All items, layer by layer. */
    Drawing drawing() {
        return new Drawing(items.values().stream().flatMap(List::stream).toList(), view);
    }

    /** A text to be placed. */
    record Label(Role role, Layer layer, Lettering lettering, String words) {}
}

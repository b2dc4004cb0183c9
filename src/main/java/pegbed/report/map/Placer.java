package pegbed.report.map;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Geometry;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Role;

/**
 * Decides who chooses a place on the map first: all signs before all letters, and of each the weightier before the
 * lighter. Every sign and label of a map comes through here; each then takes the best place that is left to it.
 *
 * <p>The order, and the places that a name tries about its sign ({@link #AROUND}), follow the rules of Imhof, E.
 * (1975), "Positioning names on maps", The American Cartographer 2(2):128–144, and for soundings those of the
 * International Hydrographic Organization's S-4, B-412 (the number from memory): a sounding's figure is its place, or
 * stands beside it with a line to it.
 */
final class Placer {
    /** Who comes first has the place. */
    enum Rank {
        SEAT,
        NEXT_SIGN,
        HAZARD_SIGN,
        LINE_SIGN,
        DEEPEST_SIGN,
        FLAT_SIGN,
        MARK_SIGN,
        DEEPEST_NAME,
        HAZARD_NAME,
        CHANGE_AMOUNT,
        CLOCK_FIGURE,
        MARK_NAME,
        DOUBTED_READING,
        READING,
        EARLIER_READING,
        RING_NAME,
        ZONE_NAME,
        CONTOUR_FIGURE
    }

    /**
     * Directions from a sign to its name, right and down, the best first: to the right and a little up, to the right,
     * to the right and down, the same to the left, above, below.
     */
    static final double[][] AROUND = {{1, -0.6}, {1, 0}, {1, 0.6}, {-1, -0.6}, {-1, 0}, {-1, 0.6}, {0, -1}, {0, 1}};

    /** All directions of {@link #AROUND}, the best first. */
    static final int[] USUAL_ORDER = {0, 1, 2, 3, 4, 5, 6, 7};

    /** Above first: for names on the land, whose signs stand upright. */
    static final int[] ABOVE_FIRST = {6, 1, 4, 0, 3, 2, 5, 7};

    /** A sign may move so far from its place, points, before it stays there whatever lies under it. */
    private static final double FARTHEST_POINTS = 110;

    private static final double STEP_POINTS = 7;
    private static final double SMALL_STEP_POINTS = 3;
    private static final double LEADER_ROOM_POINTS = 4;

    private final Composition to;
    private final Map<Rank, List<Runnable>> asked = new EnumMap<>(Rank.class);
    private final List<Leader> leaders = new ArrayList<>();

    /** @param to what signs and names are drawn on */
    Placer(Composition to) {
        this.to = to;
    }

    /** Asks to choose a place when the turn of a rank has come; of one rank in the order of asking. */
    void ask(Rank rank, Runnable choice) {
        asked.computeIfAbsent(rank, key -> new ArrayList<>()).add(choice);
    }

    /** Lets all choose whose rank comes no later than this one. Who chooses may ask for a later rank. */
    void run(Rank last) {
        for (Rank rank : Rank.values()) {
            if (rank.compareTo(last) <= 0) {
                asked.getOrDefault(rank, List.of()).forEach(Runnable::run);
            }
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

    /**
     * Takes the place of a sign: where it belongs if that is free, else beside it, with a line to its place.
     *
     * @param width of the sign, points
     * @param height of the sign, points
     * @param middleDown from the place to the middle of the sign, points
     * @return by how much it has moved; empty if its place is not on the map
     */
    Optional<Spot> sign(Layer layer, double xMetres, double yMetres, double width, double height, double middleDown) {
        double x = to.view.x(xMetres);
        double y = to.view.y(yMetres);
        if (!to.shows(layer) || !to.space.holds(x, y)) {
            return Optional.empty();
        }
        LabelBox here = new LabelBox(x, y + middleDown, width, height, 0);
        Spot spot = to.space.isFree(here) ? Spot.HERE : elsewhere(here);
        to.space.takeForSign(layer, new LabelBox(here.x() + spot.right(), here.y() + spot.down(), width, height, 0));
        if (Math.hypot(spot.right(), spot.down()) > least(here)) {
            leaders.add(
                    new Leader(layer, xMetres, yMetres, Symbols.line(0, 0, spot.right(), spot.down() + middleDown)));
            LabelBox end = LabelBox.square(x, y, 5);
            if (to.space.isFree(end)) {
                to.fill(Role.LEADER_END, layer, Frame.at(xMetres, yMetres), Symbols.disc(1.8));
                to.space.takeForSign(layer, end);
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
            for (double[] side : AROUND) {
                double length = Math.hypot(side[0], side[1]);
                Spot spot = new Spot(far * side[0] / length, far * side[1] / length);
                LabelBox box =
                        new LabelBox(here.x() + spot.right(), here.y() + spot.down(), here.width(), here.height(), 0);
                // What has moved away altogether leaves room for the line to its place to be seen.
                boolean away = far > least(here);
                if (to.space.isFree(away ? box.grown(LEADER_ROOM_POINTS) : box)) {
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
            to.stroke(
                    Role.LEADER,
                    leader.layer,
                    Frame.at(leader.xMetres, leader.yMetres),
                    masked.about(leader.xMetres, leader.yMetres, leader.line));
        }
    }

    /**
     * Writes the name of a sign about it, in the order of {@link #AROUND}, near it if there is room, else farther off
     * with a line to it.
     *
     * @param spot where the sign stands against the place
     * @param halfWidth of the sign, points
     * @param halfHeight of the sign, points
     * @return whether there was room
     */
    boolean name(
            Composition.Label label,
            double xMetres,
            double yMetres,
            Spot spot,
            double halfWidth,
            double halfHeight,
            int[] order) {
        return name(label, xMetres, yMetres, spot, halfWidth, halfHeight, order, box -> true);
    }

    /** As the other, in such boxes alone. */
    boolean name(
            Composition.Label label,
            double xMetres,
            double yMetres,
            Spot spot,
            double halfWidth,
            double halfHeight,
            int[] order,
            Predicate<LabelBox> suits) {
        LabelBox size = to.box(label, xMetres, yMetres, 0, 0, 0);
        for (double off = 0; off <= FARTHEST_POINTS; off += STEP_POINTS) {
            for (int turn : order) {
                double[] side = AROUND[turn];
                double right = spot.right() + side[0] * (halfWidth + off + size.width() / 2);
                double down = spot.down() + side[1] * (halfHeight + off + size.height() / 2);
                if (suits.test(to.box(label, xMetres, yMetres, right, down, 0))
                        && to.place(label, xMetres, yMetres, right, down, 0)) {
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
}

package pegbed.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.linearref.LengthIndexedLine;
import pegbed.model.BankPoint;

/**
 * One bank as a line through the water, with the distance of any place from it.
 *
 * <p>A bank that is a function of x is smoothed by a Gaussian of {@value #SMOOTHING_METRES} m (the points were paced or
 * sighted, not surveyed), continued straight at both ends, and the distance is (y − y_b)/√(1 + y_b'²): exact for a
 * straight bank. Any other bank, such as one that turns back, runs straight out, goes round a bay or behind the seat,
 * or is the shore of the island or jetty on which the seat stands, is taken as drawn, and the distance is that to its
 * polyline.
 *
 * <p>Immutable and thread-safe.
 */
public final class BankLine {
    /** Standard deviation of the smoothing along x, metres (empirical). */
    public static final double SMOOTHING_METRES = 0.5;

    private static final double STEP = 0.1;

    /** As far as anybody would look, metres. */
    private static final double FAR_METRES = 300;

    /** How far along the bank, to both sides of the seat, it tells which way the seat faces, metres. */
    private static final double AT_SEAT_METRES = 2;

    /** Steps back along x of up to this much are taken for scatter of the points, not for a bend. */
    private static final double SCATTER_METRES = 0.3;

    /** A bank that runs straight out or back for more than this is no function of x, as along a jetty, metres. */
    private static final double STEP_METRES = 2;

    /** How steep, in metres out for one along, counts as straight out. */
    private static final double STRAIGHT_OUT = 3;

    private final double xFirst;
    private final double[] heights;
    private final List<Coordinate> drawn;
    private final Optional<DrawnBank> shape;

    private BankLine(double xFirst, double[] heights, List<Coordinate> drawn, Optional<DrawnBank> shape) {
        this.xFirst = xFirst;
        this.heights = heights;
        this.drawn = drawn;
        this.shape = shape;
    }

    /**
     * The line through points given in order along the near bank, either way; beyond it is the side on which the water
     * lies in front of the seat.
     *
     * @param points two at least
     * @param halfWidthMetres how far to each side of the seat the line is wanted; it is continued that far
     * @throws IllegalArgumentException if there are fewer points, or the bank has no two sides because it winds round
     *     its own end
     */
    public static BankLine through(List<BankPoint> points, double halfWidthMetres) {
        return line(points, halfWidthMetres, BankLine::seatFacesLeft);
    }

    /**
     * The same for the far bank: beyond it is the side on which the near bank does not lie.
     *
     * @param near the near bank
     */
    static BankLine opposite(BankLine near, List<BankPoint> points, double halfWidthMetres) {
        Coordinate atSeat = near.atSeat();
        return line(points, halfWidthMetres, bank -> bank.leftOf(atSeat.x, atSeat.y) <= 0);
    }

    private static BankLine line(List<BankPoint> points, double halfWidthMetres, Predicate<DrawnBank> leftIsBeyond) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("A bank needs two points at least, not " + points.size() + ".");
        }
        List<Coordinate> line = fromLeft(points);
        if (runsAlongX(line)) {
            return smoothed(line, halfWidthMetres);
        }
        DrawnBank bank = DrawnBank.of(line, halfWidthMetres)
                .orElseThrow(() -> new IllegalArgumentException("The bank winds round its own end."));
        DrawnBank right = leftIsBeyond.test(bank) ? bank : bank.reversed();
        return new BankLine(0, new double[0], right.line(), Optional.of(right));
    }

    /** Whether a bank through these points is a function of x, but for some scatter, and will be smoothed. */
    static boolean isFunctionOfX(List<BankPoint> points) {
        return runsAlongX(fromLeft(points));
    }

    /** The points' places, no two neighbours equal, the further left of the ends first. */
    private static List<Coordinate> fromLeft(List<BankPoint> points) {
        List<Coordinate> line = new ArrayList<>();
        for (BankPoint point : points) {
            Coordinate next = Shapes.coordinate(point.place());
            if (line.isEmpty() || next.distance(line.get(line.size() - 1)) > 1e-6) {
                line.add(next);
            }
        }
        if (line.get(0).x > line.get(line.size() - 1).x) {
            Collections.reverse(line);
        }
        return line;
    }

    /**
     * Whether the water in front of the seat lies to the left: where the bank passes the seat from left to right, or,
     * where it runs straight out there, most of the places straight out do.
     */
    private static boolean seatFacesLeft(DrawnBank bank) {
        LengthIndexedLine along = new LengthIndexedLine(bank.toGeometry());
        double length = along.getEndIndex();
        double seat = along.project(new Coordinate(0, 0));
        double before = seat - AT_SEAT_METRES;
        double after = seat + AT_SEAT_METRES;
        if (bank.isRing()) {
            before = (before + length) % length;
            after = after % length;
        }
        double right = along.extractPoint(Math.min(after, length)).x - along.extractPoint(Math.max(before, 0)).x;
        if (Math.abs(right) > SCATTER_METRES) {
            return right > 0;
        }
        return bank.leftOf(0, 0.5) + bank.leftOf(0, 1) + bank.leftOf(0, 2) >= 0;
    }

    /** The place of the line nearest to the seat. */
    Coordinate atSeat() {
        LengthIndexedLine along = new LengthIndexedLine(toGeometry());
        return along.extractPoint(along.project(new Coordinate(0, 0)));
    }

    private static boolean runsAlongX(List<Coordinate> line) {
        double furthest = line.get(0).x;
        double straightOut = 0;
        for (int i = 1; i < line.size(); i++) {
            double dx = line.get(i).x - line.get(i - 1).x;
            double dy = line.get(i).y - line.get(i - 1).y;
            straightOut = Math.abs(dy) > STRAIGHT_OUT * Math.abs(dx) ? straightOut + Math.abs(dy) : 0;
            if (line.get(i).x < furthest - SCATTER_METRES || straightOut > STEP_METRES + 1e-9) {
                return false;
            }
            furthest = Math.max(furthest, line.get(i).x);
        }
        return furthest - line.get(0).x > 0.5;
    }

    private static BankLine smoothed(List<Coordinate> given, double halfWidth) {
        List<Coordinate> line = new ArrayList<>(given);
        // Stable: points at one x, a step in the bank, keep the order in which they were given.
        line.sort(Comparator.comparingDouble(c -> c.x));
        // Places symmetric about the seat, so that a mirrored peg gives mirrored lines.
        int half = (int) Math.ceil((halfWidth + 4 * SMOOTHING_METRES) / STEP);
        int count = 2 * half + 1;
        double[] raw = new double[count];
        for (int i = 0; i < count; i++) {
            raw[i] = straight(line, (i - half) * STEP);
        }
        int window = (int) Math.round(4 * SMOOTHING_METRES / STEP);
        double[] weights = new double[window + 1];
        double sum = 0;
        for (int k = 0; k <= window; k++) {
            double z = k * STEP / SMOOTHING_METRES;
            weights[k] = Math.exp(-z * z / 2);
            sum += k == 0 ? weights[k] : 2 * weights[k];
        }
        int inner = (int) Math.ceil(halfWidth / STEP);
        double[] heights = new double[2 * inner + 1];
        for (int i = 0; i < heights.length; i++) {
            int centre = i - inner + half;
            double total = weights[0] * raw[centre];
            for (int k = 1; k <= window; k++) {
                total += weights[k] * (raw[centre - k] + raw[centre + k]);
            }
            heights[i] = total / sum;
        }
        List<Coordinate> drawn = new ArrayList<>();
        for (int i = 0; i < heights.length; i += 2) {
            drawn.add(new Coordinate((i - inner) * STEP, heights[i]));
        }
        return new BankLine(-inner * STEP, heights, List.copyOf(drawn), Optional.empty());
    }

    /** Height of the polyline at x, continued beyond its ends with the mean slope of the last two metres. */
    private static double straight(List<Coordinate> line, double x) {
        Coordinate first = line.get(0);
        Coordinate last = line.get(line.size() - 1);
        if (x < first.x) {
            return first.y + (x - first.x) * endSlope(line, first, first.x + 2);
        }
        if (x > last.x) {
            return last.y + (x - last.x) * endSlope(line, last, last.x - 2);
        }
        return inside(line, x);
    }

    private static double endSlope(List<Coordinate> line, Coordinate end, double xInside) {
        double xOther = Math.max(line.get(0).x, Math.min(line.get(line.size() - 1).x, xInside));
        return Math.abs(xOther - end.x) < 0.25 ? 0 : (inside(line, xOther) - end.y) / (xOther - end.x);
    }

    private static double inside(List<Coordinate> line, double x) {
        List<Coordinate> step =
                line.stream().filter(c -> Math.abs(c.x - x) < 1e-9).toList();
        if (step.size() > 1) {
            // The middle of a step, so that a mirrored bank is mirrored.
            return (step.get(0).y + step.get(step.size() - 1).y) / 2;
        }
        for (int i = 1; i < line.size(); i++) {
            Coordinate a = line.get(i - 1);
            Coordinate b = line.get(i);
            if (x <= b.x) {
                return a.y + (x - a.x) / (b.x - a.x) * (b.y - a.y);
            }
        }
        return line.get(line.size() - 1).y;
    }

    /** Whether the bank is a function of x, so that it was smoothed. */
    public boolean isFunctionOfX() {
        return shape.isEmpty();
    }

    /** The line as it is drawn, with what lies beyond it on the left. */
    public List<Coordinate> drawn() {
        return drawn;
    }

    /** y of a bank that is a function of x, metres; continued straight beyond its ends. */
    public double heightAt(double xMetres) {
        double place = (xMetres - xFirst) / STEP;
        int i = (int) Math.max(0, Math.min(heights.length - 2, Math.floor(place)));
        return heights[i] + (place - i) * (heights[i + 1] - heights[i]);
    }

    /**
     * Signed distance, metres, positive beyond the line: for the near bank in the water, for the far bank on the land
     * behind it.
     */
    public double beyond(double xMetres, double yMetres) {
        if (shape.isEmpty()) {
            double slope = (heightAt(xMetres + STEP) - heightAt(xMetres - STEP)) / (2 * STEP);
            return (yMetres - heightAt(xMetres)) / Math.sqrt(1 + slope * slope);
        }
        return shape.orElseThrow().leftOf(xMetres, yMetres);
    }

    /** The line with both ends continued as far as anybody would look. */
    public List<Coordinate> endless() {
        if (shape.isPresent()) {
            return shape.get().endless();
        }
        List<Coordinate> longer = new ArrayList<>(drawn);
        longer.add(0, new Coordinate(-FAR_METRES, longer.get(0).y));
        longer.add(new Coordinate(FAR_METRES, longer.get(longer.size() - 1).y));
        return longer;
    }

    /** All that lies beyond the line, as far as anybody would look. */
    public Geometry areaBeyond() {
        return shape.map(DrawnBank::left).orElseGet(() -> {
            List<Coordinate> ring = new ArrayList<>(endless());
            ring.add(new Coordinate(FAR_METRES, FAR_METRES));
            ring.add(new Coordinate(-FAR_METRES, FAR_METRES));
            return GeometryFixer.fix(Shapes.polygon(ring));
        });
    }

    /** The line as a geometry. */
    public LineString toGeometry() {
        return Shapes.line(drawn);
    }
}

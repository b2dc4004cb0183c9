package pegbed.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.index.strtree.STRtree;
import pegbed.model.BankPoint;

/**
 * One bank as a line through the water, with the distance of any place from it.
 *
 * <p>A bank that is a function of x is smoothed by a Gaussian of {@value #SMOOTHING_METRES} m (the points were paced or
 * sighted, not surveyed), continued straight at both ends, and the distance is (y − y_b)/√(1 + y_b'²): exact for a
 * straight bank. A bank that doubles back is taken as drawn, and the distance is that to its polyline.
 *
 * <p>Immutable and thread-safe.
 */
public final class BankLine {
    /** Standard deviation of the smoothing along x, metres (empirical). */
    public static final double SMOOTHING_METRES = 0.5;

    private static final double STEP = 0.1;

    private final boolean functionOfX;
    private final double xFirst;
    private final double[] heights;
    private final List<Coordinate> drawn;
    private final STRtree segments;

    private BankLine(boolean functionOfX, double xFirst, double[] heights, List<Coordinate> drawn, STRtree segments) {
        this.functionOfX = functionOfX;
        this.xFirst = xFirst;
        this.heights = heights;
        this.drawn = drawn;
        this.segments = segments;
    }

    /**
     * The line through points given in order along the bank, either way.
     *
     * @param points two at least
     * @param halfWidthMetres how far to each side of the seat the line is wanted; it is continued straight that far
     */
    public static BankLine through(List<BankPoint> points, double halfWidthMetres) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("A bank needs two points at least, not " + points.size() + ".");
        }
        List<Coordinate> line = new ArrayList<>();
        for (BankPoint point : points) {
            Coordinate next =
                    new Coordinate(point.place().xMetres(), point.place().yMetres());
            if (line.isEmpty() || next.distance(line.get(line.size() - 1)) > 1e-6) {
                line.add(next);
            }
        }
        if (line.get(0).x > line.get(line.size() - 1).x) {
            java.util.Collections.reverse(line);
        }
        return isFunctionOfX(line) ? smoothed(line, halfWidthMetres) : asDrawn(line);
    }

    /** Steps back along x of up to this much are taken for scatter of the points, not for a bend. */
    private static final double SCATTER_METRES = 0.3;

    private static boolean isFunctionOfX(List<Coordinate> line) {
        double furthest = Double.NEGATIVE_INFINITY;
        for (Coordinate c : line) {
            if (c.x < furthest - SCATTER_METRES) {
                return false;
            }
            furthest = Math.max(furthest, c.x);
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
        return new BankLine(true, -inner * STEP, heights, List.copyOf(drawn), null);
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

    private static BankLine asDrawn(List<Coordinate> line) {
        STRtree tree = new STRtree();
        for (int i = 1; i < line.size(); i++) {
            tree.insert(new Envelope(line.get(i - 1), line.get(i)), i);
        }
        tree.build();
        return new BankLine(false, 0, new double[0], List.copyOf(line), tree);
    }

    /** Whether the bank is a function of x, so that it was smoothed. */
    public boolean isFunctionOfX() {
        return functionOfX;
    }

    /** The line as it is drawn, from left to right. */
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
     * Signed distance, metres: positive on the side of larger y for a bank that runs from left to right, that is beyond
     * the line as seen from the seat.
     */
    public double beyond(double xMetres, double yMetres) {
        if (functionOfX) {
            double slope = (heightAt(xMetres + STEP) - heightAt(xMetres - STEP)) / (2 * STEP);
            return (yMetres - heightAt(xMetres)) / Math.sqrt(1 + slope * slope);
        }
        Coordinate place = new Coordinate(xMetres, yMetres);
        int segment = nearestSegment(place);
        Coordinate a = drawn.get(segment - 1);
        Coordinate b = drawn.get(segment);
        double distance = org.locationtech.jts.algorithm.Distance.pointToSegment(place, a, b);
        return side(place, segment) * distance;
    }

    private int nearestSegment(Coordinate place) {
        Object nearest = segments.nearestNeighbour(new Envelope(place), -1, (one, other) -> {
            int i = (Integer) (one.getItem().equals(-1) ? other.getItem() : one.getItem());
            return org.locationtech.jts.algorithm.Distance.pointToSegment(place, drawn.get(i - 1), drawn.get(i));
        });
        return (Integer) nearest;
    }

    /** At a corner the side is that of the segment whose line lies further away, as a corner's two sides may differ. */
    private int side(Coordinate place, int segment) {
        int best = orientation(segment, place);
        double furthest = lineDistance(segment, place);
        for (int other : new int[] {segment - 1, segment + 1}) {
            if (other >= 1 && other < drawn.size() && touches(other, segment, place)) {
                double d = lineDistance(other, place);
                if (d > furthest) {
                    furthest = d;
                    best = orientation(other, place);
                }
            }
        }
        return best;
    }

    private boolean touches(int other, int segment, Coordinate place) {
        double here = org.locationtech.jts.algorithm.Distance.pointToSegment(
                place, drawn.get(segment - 1), drawn.get(segment));
        double there =
                org.locationtech.jts.algorithm.Distance.pointToSegment(place, drawn.get(other - 1), drawn.get(other));
        return Math.abs(here - there) < 1e-9;
    }

    private int orientation(int segment, Coordinate place) {
        return Orientation.index(drawn.get(segment - 1), drawn.get(segment), place) >= 0 ? 1 : -1;
    }

    private double lineDistance(int segment, Coordinate place) {
        return org.locationtech.jts.algorithm.Distance.pointToLinePerpendicular(
                place, drawn.get(segment - 1), drawn.get(segment));
    }

    /** The line as a geometry. */
    public LineString toGeometry() {
        return Shapes.FACTORY.createLineString(drawn.toArray(new Coordinate[0]));
    }
}

package pegbed.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbed.model.Place;
import pegbed.surface.FittedBottom;
import pegbed.surface.posterior.Prediction;

/**
 * The bottom along a straight line.
 *
 * @param points every 10 cm from start to end; none on land
 * @param slopes the slopes met on the way, in order
 */
public record DepthProfile(List<Point> points, List<Slope> slopes) {
    private static final double STEP_METRES = 0.10;

    /** Ground at least this steep, 1 in 3, is a slope with a lip and a foot (common practice). */
    public static final double MIN_SLOPE = 0.33;

    /**
     * One point of the profile.
     *
     * @param place where
     * @param alongMetres from the start, metres
     * @param depthMetres expected depth, metres
     * @param sdMetres standard deviation, metres
     * @param fall change of depth per metre along the line; positive where it gets deeper
     */
    public record Point(Place place, double alongMetres, double depthMetres, double sdMetres, double fall) {}

    /**
     * One slope.
     *
     * @param lip its shallow end
     * @param foot its deep end
     * @param steepest greatest change of depth per metre, without sign
     */
    public record Slope(Point lip, Point foot, double steepest) {}

    /** The profile from the seat in a direction, out to the reach or the far bank. */
    public static DepthProfile towards(PegMap map, double angleDegrees) {
        return between(map, new Place(0, 0), Place.polar(map.water().reachMetres(), angleDegrees));
    }

    /** The profile along a line; places that are not in the water are left out. */
    public static DepthProfile between(PegMap map, Place from, Place to) {
        FittedBottom bottom = map.bottom();
        double length = from.distanceTo(to);
        int steps = Math.max(1, (int) Math.ceil(length / STEP_METRES));
        double ex = length > 0 ? (to.xMetres() - from.xMetres()) / length : 0;
        double ey = length > 0 ? (to.yMetres() - from.yMetres()) / length : 0;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double along = length * i / steps;
            Place place = new Place(from.xMetres() + ex * along, from.yMetres() + ey * along);
            if (map.water().isWater(place.xMetres(), place.yMetres())) {
                Prediction p = bottom.at(place.xMetres(), place.yMetres());
                points.add(new Point(place, along, p.depthMetres(), p.sdMetres(), p.slopeX() * ex + p.slopeY() * ey));
            }
        }
        return new DepthProfile(List.copyOf(points), slopes(points));
    }

    private static List<Slope> slopes(List<Point> points) {
        List<Slope> found = new ArrayList<>();
        int start = -1;
        for (int i = 0; i <= points.size(); i++) {
            boolean steep = i < points.size() && Math.abs(points.get(i).fall()) >= MIN_SLOPE;
            boolean same = steep
                    && start >= 0
                    && points.get(i).fall() * points.get(start).fall() > 0;
            if (start >= 0 && !same) {
                slope(points.subList(start, i)).ifPresent(found::add);
                start = -1;
            }
            if (steep && start < 0) {
                start = i;
            }
        }
        return List.copyOf(found);
    }

    private static Optional<Slope> slope(List<Point> run) {
        if (run.size() < 2) {
            return Optional.empty();
        }
        Point first = run.get(0);
        Point last = run.get(run.size() - 1);
        double steepest =
                run.stream().mapToDouble(p -> Math.abs(p.fall())).max().orElse(0);
        return Optional.of(
                first.depthMetres() < last.depthMetres()
                        ? new Slope(first, last, steepest)
                        : new Slope(last, first, steepest));
    }
}

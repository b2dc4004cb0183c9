package pegbed.guidance;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;

/**
 * The places where a reading may be taken: every half metre, at the pole's own joints where one is near, every 10°, on
 * the line to a mark where one is near; within 60° of straight out, and at 80° to 7 m. Where the shore bends away from
 * the seat, or the seat stands on a jetty or an island, also further along it and at 100° and 120°: wherever the place
 * is as far off the near bank as one at 60° is off a straight bank. A pole goes over an island (common practice), so
 * that what lies behind one counts like any other water. None on land or within 0.3 m of it, none beyond reach or the
 * limits, none on a hazard.
 *
 * <p>Immutable.
 */
final class Candidates {
    /** Nearer to dry land than this the banks themselves are too rough a guide, metres. */
    static final double SHORE_METRES = 0.3;

    private static final double STEP_METRES = 0.5;
    private static final double MIN_METRES = 1.0;
    private static final double TURN_DEGREES = 10;
    private static final double WIDEST_DEGREES = 60;
    private static final double SIDE_DEGREES = 80;
    private static final double SIDE_REACH_METRES = 7;
    private static final double[] BACK_DEGREES = {100, 120};

    /** Nearer than this the seat itself is in the way, metres. */
    private static final double BACK_METRES = 2;

    /** A step this near to a joint gives way to it, metres. */
    private static final double JOINT_METRES = 0.25;

    /** A direction this near to a mark's gives way to it, degrees. */
    private static final double MARK_DEGREES = 4;

    /** What a joint and a mark are known to (design of the notation: common practice). */
    private static final double JOINT_SD_METRES = 0.10;

    private static final double MARK_SD_DEGREES = 1.5;

    /** How near a reading counts as the same place. */
    private static final double SAME_METRES = 0.26;

    private static final double SAME_DEGREES = 5;
    private static final int MAX_AT_ONE_PLACE = 2;

    private final Peg peg;
    private final PegWater water;
    private final IndexedPointInAreaLocator fishable;
    private final List<Candidate> all;

    private Candidates(Peg peg, PegWater water) {
        this.peg = peg;
        this.water = water;
        fishable = new IndexedPointInAreaLocator(water.fishable());
        List<Candidate> found = new ArrayList<>();
        for (Ray ray : rays()) {
            for (Step step : steps()) {
                Place place = Place.polar(step.metres, ray.degrees);
                if ((isUsual(ray, step) || (step.metres >= BACK_METRES && isOffTheBank(place))) && allows(place)) {
                    found.add(new Candidate(step.metres, ray.degrees, new Precision(step.sdMetres, ray.sdDegrees)));
                }
            }
        }
        all = List.copyOf(found);
    }

    /** Whether a straight bank, too, has such places. */
    private static boolean isUsual(Ray ray, Step step) {
        double degrees = Math.abs(ray.degrees);
        return degrees < (WIDEST_DEGREES + SIDE_DEGREES) / 2
                || (degrees < (SIDE_DEGREES + BACK_DEGREES[0]) / 2 && step.metres <= SIDE_REACH_METRES + 1e-9);
    }

    /** Whether a place is as far off the near bank as the widest direction is off a straight one. */
    private boolean isOffTheBank(Place place) {
        return water.fromNear(place.xMetres(), place.yMetres())
                >= place.distanceMetres() * Math.cos(Math.toRadians(WIDEST_DEGREES));
    }

    static Candidates of(Peg peg, PegWater water) {
        return new Candidates(peg, water);
    }

    /** All places, whatever has been read there. */
    List<Candidate> all() {
        return all;
    }

    /** The places at which no more than one reading has been taken so far. */
    List<Candidate> open() {
        List<Reading> readings = peg.readings();
        return all.stream()
                .filter(candidate -> readings.stream()
                                .filter(reading -> same(candidate, reading.place()))
                                .count()
                        < MAX_AT_ONE_PLACE)
                .toList();
    }

    private static boolean same(Candidate candidate, Place place) {
        return Math.abs(candidate.distanceMetres() - place.distanceMetres()) < SAME_METRES
                && Math.abs(candidate.angleDegrees() - place.angleDegrees()) < SAME_DEGREES;
    }

    /** Whether a reading may be taken at a place. */
    boolean allows(Place place) {
        double x = place.xMetres();
        double y = place.yMetres();
        if (fishable.locate(new Coordinate(x, y)) == Location.EXTERIOR
                || water.fromNear(x, y) < SHORE_METRES
                || water.fromFar(x, y) < SHORE_METRES) {
            return false;
        }
        for (Polygon island : water.islands()) {
            if (island.distance(Shapes.FACTORY.createPoint(new Coordinate(x, y))) < SHORE_METRES) {
                return false;
            }
        }
        return true;
    }

    private record Step(double metres, double sdMetres) {}

    private record Ray(double degrees, double sdDegrees) {}

    private List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        List<Double> joints = peg.pole().jointMetres();
        int last = (int) Math.floor(peg.pole().reachMetres() / STEP_METRES + 1e-9);
        for (int i = (int) Math.round(MIN_METRES / STEP_METRES); i <= last; i++) {
            double metres = i * STEP_METRES;
            if (joints.stream().noneMatch(joint -> Math.abs(joint - metres) < JOINT_METRES - 1e-9)) {
                steps.add(new Step(metres, Precision.PLAIN.sdDistanceMetres()));
            }
        }
        for (double joint : joints) {
            if (joint >= MIN_METRES) {
                steps.add(new Step(joint, JOINT_SD_METRES));
            }
        }
        steps.sort(java.util.Comparator.comparingDouble(Step::metres));
        return steps;
    }

    /** Directions, from straight out to both sides in turn. */
    private List<Ray> rays() {
        List<Ray> rays = new ArrayList<>();
        for (double degrees = 0; degrees <= WIDEST_DEGREES; degrees += TURN_DEGREES) {
            rays.add(ray(degrees));
            if (degrees > 0) {
                rays.add(ray(-degrees));
            }
        }
        rays.add(ray(SIDE_DEGREES));
        rays.add(ray(-SIDE_DEGREES));
        for (double degrees : BACK_DEGREES) {
            rays.add(ray(degrees));
            rays.add(ray(-degrees));
        }
        return rays;
    }

    /** The direction, or that of the mark nearest to it. */
    private Ray ray(double degrees) {
        Ray best = new Ray(degrees, Precision.PLAIN.sdAngleDegrees());
        double nearest = MARK_DEGREES;
        for (Mark mark : peg.marks()) {
            double off = Math.abs(mark.place().angleDegrees() - degrees);
            if (off < nearest) {
                nearest = off;
                best = new Ray(mark.place().angleDegrees(), MARK_SD_DEGREES);
            }
        }
        return best;
    }
}

package pegbed.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.operation.valid.IsValidOp;
import pegbed.model.BankPoint;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.Peg;

/**
 * The water in front of a seat: its banks as lines, the coordinates that follow them, and its outlines.
 *
 * <p>Immutable and thread-safe.
 */
public final class PegWater implements BankCoordinates {
    /** Width below which the stretch across is not pulled further (empirical), metres. */
    private static final double NARROWEST_METRES = 2;

    /** How far beyond the reach the banks still matter, metres. */
    private static final double BEYOND_REACH_METRES = 4;

    /** Places along a bank at which a water's width is measured. */
    private static final int WIDTHS = 240;

    private final BankLine near;
    private final Optional<BankLine> far;
    private final List<Polygon> islands;
    private final double width;
    private final double reach;
    private final Geometry water;
    private final Geometry fishable;
    private final IndexedPointInAreaLocator waterLocator;

    private PegWater(
            BankLine near,
            Optional<BankLine> far,
            List<Polygon> islands,
            double reach,
            Geometry water,
            Geometry fishable) {
        this.near = near;
        this.far = far;
        this.islands = islands;
        this.reach = reach;
        this.width = far.map(line -> medianWidth(near, line, reach)).orElse(Double.POSITIVE_INFINITY);
        this.water = water;
        this.fishable = fishable;
        this.waterLocator = new IndexedPointInAreaLocator(water);
    }

    /**
     * The water of a peg.
     *
     * @throws InputException if the banks can't be the banks of a water: too few points, crossing each other or
     *     themselves, or no water left within reach
     */
    public static PegWater of(Peg peg) throws InputException {
        double reach = peg.pole().reachMetres();
        double halfWidth = reach + BEYOND_REACH_METRES;
        BankLine near = line(peg.banks().near(), "near", points -> BankLine.through(points, halfWidth));
        Optional<BankLine> far = peg.banks().far().isEmpty()
                ? Optional.empty()
                : Optional.of(line(peg.banks().far(), "far", points -> BankLine.opposite(near, points, halfWidth)));
        List<Polygon> islands = islands(peg);
        // Drawn round the reach, not in it, so that the longest pole's own end is water.
        Geometry within = Overlay.intersection(
                WaterOutline.between(peg, near, far), Shapes.disc(0, 0, reach / Math.cos(Math.PI / 128)));
        Geometry water = Shapes.areas(Overlay.intersection(Shapes.areas(within), WaterOutline.limits(peg)));
        water = Overlay.difference(water, islands);
        if (water.isEmpty() || water.getDimension() < 2) {
            throw new InputException(
                    "There is no water within reach between these banks; the near bank must lie at the seat"
                            + " and the far bank beyond it, but the near bank " + BankChecks.nearestToSeat(peg.banks())
                            + ".");
        }
        if (water.getEnvelopeInternal().getMaxY() <= 0) {
            throw new InputException("All the water between these banks lies behind the seat; y counts from the seat"
                    + " straight out, so that the far bank has y above 0, such as 13.");
        }
        Geometry fishable = Overlay.difference(
                water, peg.hazards().stream().map(PegWater::around).toList());
        return new PegWater(near, far, islands, reach, water, fishable);
    }

    private static BankLine line(List<BankPoint> points, String name, Function<List<BankPoint>, BankLine> through)
            throws InputException {
        long distinct = points.stream().map(BankPoint::place).distinct().count();
        if (distinct < 2) {
            throw new InputException("The " + name + " bank has "
                    + (distinct == 0 ? "no points" : "only one point")
                    + "; give two or more along it, in order, such as one on each side of the seat.");
        }
        if (!BankLine.isFunctionOfX(points)) {
            Optional<String> crossing = BankChecks.crossesItself(points, false);
            if (crossing.isPresent()) {
                throw new InputException(
                        "The " + name + " bank " + crossing.get() + "; give its points in order along the bank.");
            }
        }
        try {
            return through.apply(points);
        } catch (IllegalArgumentException e) {
            throw new InputException(
                    "The " + name + " bank winds round its own end: neither "
                            + BankChecks.point(points, 0) + " nor " + BankChecks.point(points, points.size() - 1)
                            + ", its ends, can go on without crossing it; leave out the points at its ends that lie inside the bend.");
        }
    }

    private static List<Polygon> islands(Peg peg) throws InputException {
        List<Polygon> found = new ArrayList<>();
        for (int i = 0; i < peg.banks().islands().size(); i++) {
            List<BankPoint> ring = peg.banks().islands().get(i);
            String name = "Island " + (i + 1);
            List<Coordinate> corners = new ArrayList<>(ring.stream()
                    .map(p -> Shapes.coordinate(p.place()))
                    .distinct()
                    .toList());
            if (corners.size() < 3) {
                throw new InputException(name + " has only " + corners.size()
                        + " different points; give three or more, in order around it.");
            }
            Polygon island = Shapes.polygon(corners);
            if (!new IsValidOp(island).isValid()) {
                throw new InputException(name + " "
                        + BankChecks.crossesItself(ring, true).orElse("has no area")
                        + "; give its points in order around it.");
            }
            found.add(island);
        }
        return List.copyOf(found);
    }

    /** The ground to keep away from because of a hazard. */
    public static Geometry around(Hazard hazard) {
        List<Coordinate> corners =
                hazard.outline().stream().map(Shapes::coordinate).toList();
        Geometry core = corners.size() == 1
                ? Shapes.FACTORY.createPoint(corners.get(0))
                : Shapes.FACTORY.createPolygon(Shapes.polygon(corners).getCoordinates());
        return core.isValid()
                ? core.buffer(hazard.radiusMetres(), 16)
                : core.convexHull().buffer(hazard.radiusMetres(), 16);
    }

    private static double medianWidth(BankLine near, BankLine far, double reach) {
        double[] widths = near.isFunctionOfX() && far.isFunctionOfX()
                ? IntStream.rangeClosed(-60, 60)
                        .mapToDouble(i -> far.heightAt(i * 0.1) - near.heightAt(i * 0.1))
                        .toArray()
                : widthsAlong(near, far, reach);
        Arrays.sort(widths);
        return widths[widths.length / 2];
    }

    /** Distances between the banks from places along the far one: those that matter to the seat, or else all. */
    private static double[] widthsAlong(BankLine near, BankLine far, double reach) {
        LengthIndexedLine line = new LengthIndexedLine(far.toGeometry());
        List<Coordinate> all = new ArrayList<>();
        for (int i = 0; i <= WIDTHS; i++) {
            all.add(line.extractPoint(line.getEndIndex() * i / WIDTHS));
        }
        List<Coordinate> close = all.stream()
                .filter(place -> Math.hypot(place.x, place.y) <= reach + BEYOND_REACH_METRES)
                .toList();
        return (close.isEmpty() ? all : close)
                .stream()
                        .mapToDouble(place -> Math.abs(near.beyond(place.x, place.y)))
                        .toArray();
    }

    @Override
    public double along(double xMetres, double yMetres) {
        return xMetres;
    }

    @Override
    public double acrossAt(double fromNearMetres, double fromFarMetres) {
        if (far.isEmpty()) {
            return fromNearMetres;
        }
        return width * fromNearMetres / Math.max(fromNearMetres + fromFarMetres, NARROWEST_METRES);
    }

    @Override
    public double fromNear(double xMetres, double yMetres) {
        return near.beyond(xMetres, yMetres);
    }

    @Override
    public double fromFar(double xMetres, double yMetres) {
        return far.isPresent() ? -far.get().beyond(xMetres, yMetres) : Double.POSITIVE_INFINITY;
    }

    @Override
    public double fromIsland(double xMetres, double yMetres) {
        Coordinate place = new Coordinate(xMetres, yMetres);
        double nearest = Double.POSITIVE_INFINITY;
        for (Polygon island : islands) {
            Coordinate[] ring = island.getExteriorRing().getCoordinates();
            if (PointLocation.isInRing(place, ring)) {
                return 0;
            }
            nearest = Math.min(nearest, Distance.pointToSegmentString(place, ring));
        }
        return nearest;
    }

    @Override
    public boolean hasFarBank() {
        return far.isPresent();
    }

    /** The near bank's line. */
    public BankLine near() {
        return near;
    }

    /** The far bank's line, if there is one. */
    public Optional<BankLine> far() {
        return far;
    }

    /** Dry ground in the water. */
    public List<Polygon> islands() {
        return islands;
    }

    /** The longest pole, metres. */
    public double reachMetres() {
        return reach;
    }

    /**
     * Median width for |x| below 6 m, where a bank turns back along the far bank about the reach, metres; infinite
     * without a far bank.
     */
    public double widthMetres() {
        return width;
    }

    /** The water within reach and limits, without islands; hazards lie in it. */
    public Geometry water() {
        return water;
    }

    /** The water in which a rig may be fished: {@link #water()} without what the hazards keep. */
    public Geometry fishable() {
        return fishable;
    }

    /** Whether a place is in the water within reach and limits. */
    public boolean isWater(double xMetres, double yMetres) {
        return Math.sqrt(xMetres * xMetres + yMetres * yMetres) <= reach + 1e-9
                && waterLocator.locate(new Coordinate(xMetres, yMetres)) != Location.EXTERIOR;
    }

    /** Whether a place is on dry ground, whatever the reach. */
    public boolean isLand(double xMetres, double yMetres) {
        if (fromNear(xMetres, yMetres) < 0 || fromFar(xMetres, yMetres) < 0) {
            return true;
        }
        Geometry point = Shapes.FACTORY.createPoint(new Coordinate(xMetres, yMetres));
        return islands.stream().anyMatch(island -> island.contains(point));
    }
}

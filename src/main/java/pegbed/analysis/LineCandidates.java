package pegbed.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import pegbed.model.LineCounts;
import pegbed.model.Place;
import pegbed.surface.BottomGrid;
import pegbed.surface.Disc;
import pegbed.surface.GridFrame;

/**
 * The places out of which lines are chosen: at most {@value #MOST} for each zone, a metre apart, best first.
 *
 * <ul>
 *   <li>Track: worth 1 at the deepest usable place, less by the depth that others lack of it, 0 at 30 cm; the feet of
 *       slopes are among them.
 *   <li>Across and margins: worth by the odds of being flat at the target, or nearly so; a place that is flat at another
 *       depth is worth less by exp(−Δ²/2·(0.15 m)²).
 *   <li>Short: worth by the odds of being flat at its own depth, a little more where it is deep.
 * </ul>
 *
 * Empirical, as is the small preference for what is near. A place with odds below {@link Confidence#WORTH_A_READING} is
 * none, the deepest apart.
 */
final class LineCandidates {
    static final int MOST = 8;

    private static final double APART_METRES = 1;
    private static final double SHORTFALL_METRES = 0.30;
    private static final double OTHER_DEPTH_METRES = 0.15;
    private static final double OTHER_DEPTH_SHARE = 0.9;
    private static final double NEGLIGIBLE = 0.05;
    private static final double STEEPEST_MEAN = 0.45;
    private static final double DISTANCE_COST = 0.002;

    private final PegMap map;
    private final BottomGrid grid;
    private final GridFrame frame;
    private final double target;
    private final List<LineCandidate> found = new ArrayList<>();
    private double deepestScore = Double.NaN;

    private LineCandidates(Findings findings) {
        map = findings.map();
        grid = map.grid();
        frame = grid.frame();
        target = findings.targetMetres();
    }

    /** The candidates of every zone of which lines are wanted. */
    static List<LineCandidate> of(Findings findings, LineCounts counts) {
        LineCandidates search = new LineCandidates(findings);
        if (counts.track() > 0) {
            search.track();
        }
        for (Zone zone : FlatSearch.SOUGHT) {
            if (number(counts, zone) > 0) {
                search.flats(zone);
            }
        }
        if (counts.shortLines() > 0) {
            search.shortOnes();
        }
        return List.copyOf(search.found);
    }

    /** How many lines a zone may have. */
    static int number(LineCounts counts, Zone zone) {
        return switch (zone) {
            case TRACK -> counts.track();
            case ACROSS -> counts.across();
            case LEFT_MARGIN -> counts.leftMargin();
            case RIGHT_MARGIN -> counts.rightMargin();
            case SHORT -> counts.shortLines();
        };
    }

    /** A line where the person wants one; the place must be in the fishable water. */
    static LineCandidate fixed(Findings findings, Place place) {
        PegMap map = findings.map();
        Disc disc = map.bottom().disc(place.xMetres(), place.yMetres());
        Optional<Zone> zone = zoneOf(map, place, disc.depthMetres());
        boolean sought = zone.isPresent() && FlatSearch.SOUGHT.contains(zone.get());
        double atTarget = sought ? FlatOdds.USUAL.flat(disc, findings.targetMetres()) : 0;
        boolean named = atTarget >= Confidence.WORTH_A_READING.least();
        double flatAt = named ? findings.targetMetres() : disc.depthMetres();
        double p = named
                ? atTarget
                : zone.equals(Optional.of(Zone.TRACK))
                        ? FlatOdds.USUAL.gentle(disc)
                        : FlatOdds.USUAL.flat(disc, disc.depthMetres());
        Spot spot = new Spot(place, disc.depthMetres(), disc.sdMetres(), disc.slope(), p);
        return new LineCandidate(zone, LineCandidate.Origin.FIXED, spot, flatAt, 0, Math.max(p, NEGLIGIBLE));
    }

    /**
     * The zone of a place. Margins go first; then the track, which takes all water nearly as deep as the deepest; then
     * across and short.
     */
    private static Optional<Zone> zoneOf(PegMap map, Place place, double depthMetres) {
        int node = map.nodeAt(place.xMetres(), place.yMetres());
        List<Zone> order = List.of(Zone.LEFT_MARGIN, Zone.RIGHT_MARGIN, Zone.TRACK, Zone.ACROSS, Zone.SHORT);
        boolean deep = depthMetres >= map.deepest().spot().depthMetres() - SHORTFALL_METRES;
        return order.stream()
                .filter(zone -> node >= 0 && map.zones().contains(zone, node) || deep && zone == Zone.TRACK)
                .findFirst();
    }

    /**
     * A node in the running.
     *
     * @param index its place in the grid
     * @param worth what it is worth
     * @param origin where it comes from
     */
    private record Node(int index, double worth, LineCandidate.Origin origin) {}

    private void track() {
        Spot deepest = map.deepest().spot();
        deepestScore = DeepestSearch.score(deepest.depthMetres(), deepest.pFlat());
        boolean hasTrack = map.water().hasFarBank();
        List<Node> nodes = new ArrayList<>();
        nodes.add(new Node(
                map.nodeAt(deepest.place().xMetres(), deepest.place().yMetres()), 1, LineCandidate.Origin.DEEPEST));
        List<Integer> feet = SlopeFeet.of(map);
        for (int i = 0; i < frame.size(); i++) {
            boolean foot = feet.contains(i);
            if (hasTrack && !foot
                    ? map.zones().contains(Zone.TRACK, i)
                    : map.zones().isFishable(i)) {
                Disc disc = grid.disc(i);
                if (worthOfDepth(disc.depthMetres()) > NEGLIGIBLE) {
                    double gentle = FlatOdds.USUAL.gentle(disc);
                    double worth = worthOfDepth(DeepestSearch.score(disc.depthMetres(), gentle)) - near(i);
                    if (gentle >= Confidence.WORTH_A_READING.least() && worth > NEGLIGIBLE) {
                        nodes.add(new Node(
                                i, worth, foot ? LineCandidate.Origin.FOOT_OF_SLOPE : LineCandidate.Origin.DEEPEST));
                    }
                }
            }
        }
        for (Node node : apart(nodes)) {
            Disc disc = grid.disc(node.index());
            double depth = disc.depthMetres();
            IntPredicate like = i -> Math.abs(grid.disc(i).depthMetres() - depth) <= DeepestSearch.AREA_METRES
                    && grid.disc(i).slope() <= FlatOdds.USUAL.slopeLimit();
            add(Zone.TRACK, node, FlatOdds.USUAL.gentle(disc), depth, map.zones()::isFishable, like);
        }
    }

    private double worthOfDepth(double score) {
        return 1 - (deepestScore - score) / SHORTFALL_METRES;
    }

    private double near(int index) {
        return DISTANCE_COST * place(index).distanceMetres();
    }

    private void flats(Zone zone) {
        double[] odds = new double[frame.size()];
        List<Node> nodes = new ArrayList<>();
        double band = FlatOdds.USUAL.bandMetres();
        double least = Confidence.WORTH_A_READING.least();
        for (int i = 0; i < frame.size(); i++) {
            if (!map.zones().contains(zone, i)) {
                continue;
            }
            Disc disc = grid.disc(i);
            odds[i] = FlatOdds.USUAL.flat(disc, target);
            if (odds[i] >= least) {
                double worth = (odds[i] + FlatSearch.WIDE.flat(disc, target)) / 2 - near(i);
                nodes.add(new Node(i, worth, LineCandidate.Origin.FLAT));
                continue;
            }
            double off = Math.max(0, Math.abs(disc.depthMetres() - target) - band) / OTHER_DEPTH_METRES;
            double closeness = OTHER_DEPTH_SHARE * Math.exp(-off * off / 2);
            if (closeness > NEGLIGIBLE && disc.slope() < STEEPEST_MEAN) {
                double p = FlatOdds.USUAL.flat(disc, disc.depthMetres());
                if (p >= least && closeness * p > NEGLIGIBLE) {
                    nodes.add(new Node(i, closeness * p - near(i), LineCandidate.Origin.NEAREST_FLAT));
                }
            }
        }
        IntPredicate inZone = i -> map.zones().contains(zone, i);
        for (Node node : apart(nodes)) {
            Disc disc = grid.disc(node.index());
            if (node.origin() == LineCandidate.Origin.FLAT) {
                add(zone, node, odds[node.index()], target, inZone, i -> odds[i] >= Confidence.LIKELY.least());
            } else {
                double depth = disc.depthMetres();
                add(zone, node, FlatOdds.USUAL.flat(disc, depth), depth, inZone, flatAbout(depth));
            }
        }
    }

    private void shortOnes() {
        double deepest = map.deepest().spot().depthMetres();
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < frame.size(); i++) {
            if (map.zones().contains(Zone.SHORT, i) && grid.disc(i).slope() < STEEPEST_MEAN) {
                Disc disc = grid.disc(i);
                double p = FlatOdds.USUAL.flat(disc, disc.depthMetres());
                if (p >= Confidence.WORTH_A_READING.least()) {
                    double worth = p * (0.7 + 0.3 * Math.min(1, disc.depthMetres() / deepest));
                    nodes.add(new Node(i, worth - near(i), LineCandidate.Origin.SHORT));
                }
            }
        }
        for (Node node : apart(nodes)) {
            Disc disc = grid.disc(node.index());
            double depth = disc.depthMetres();
            IntPredicate inZone = i -> map.zones().contains(Zone.SHORT, i);
            add(Zone.SHORT, node, FlatOdds.USUAL.flat(disc, depth), depth, inZone, flatAbout(depth));
        }
    }

    private IntPredicate flatAbout(double depth) {
        return i -> Math.abs(grid.disc(i).depthMetres() - depth) <= FlatOdds.USUAL.bandMetres()
                && grid.disc(i).slope() <= FlatOdds.USUAL.slopeLimit();
    }

    /** The best nodes, a metre from each other. */
    private List<Node> apart(List<Node> nodes) {
        List<Node> ranked = nodes.stream()
                .sorted(Comparator.comparingDouble((Node node) -> -node.worth()))
                .toList();
        List<Node> picked = new ArrayList<>();
        for (Node node : ranked) {
            Place place = place(node.index());
            if (picked.size() < MOST
                    && node.worth() > 0
                    && picked.stream().noneMatch(other -> place(other.index()).distanceTo(place) < APART_METRES)) {
                picked.add(node);
            }
        }
        return picked;
    }

    private void add(Zone zone, Node node, double p, double flatAt, IntPredicate within, IntPredicate like) {
        int index = node.index();
        IntPredicate part = i -> within.test(i) && like.test(i);
        double cell = frame.cellMetres() * frame.cellMetres();
        double area =
                part.test(index) ? cell * Connected.from(frame, index, part).size() : 0;
        Disc disc = grid.disc(index);
        Spot spot = new Spot(place(index), disc.depthMetres(), disc.sdMetres(), disc.slope(), p);
        found.add(new LineCandidate(Optional.of(zone), node.origin(), spot, flatAt, area, node.worth()));
    }

    private Place place(int index) {
        return new Place(frame.x(index % frame.columns()), frame.y(index / frame.columns()));
    }
}

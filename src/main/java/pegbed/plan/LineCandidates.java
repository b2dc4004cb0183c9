package pegbed.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import pegbed.findings.Confidence;
import pegbed.findings.ConnectedAreas;
import pegbed.findings.DeepestSearch;
import pegbed.findings.Findings;
import pegbed.findings.FlatProbability;
import pegbed.findings.FlatSearch;
import pegbed.findings.PegMap;
import pegbed.findings.Spot;
import pegbed.findings.Zone;
import pegbed.model.LineCounts;
import pegbed.model.Place;
import pegbed.surface.BottomGrid;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;

/**
 * The places out of which lines are chosen: at most {@value #MAX_PER_ZONE} for each zone, a metre apart, best first.
 *
 * <ul>
 *   <li>Track: worth 1 at the deepest usable place, others less by the depth that they lack, down to 0 at 30 cm; the
 *       feet of slopes are among them.
 *   <li>Across and margins: worth by the odds of being flat at the target, or nearly so; a place that is flat at
 *       another depth is worth less by exp(−Δ²/(2·(0.25 m)²)).
 *   <li>Short: worth by the odds of being flat at its own depth, a little more where it is deep.
 * </ul>
 *
 * Empirical, as is the small preference for what is near, in front, and at a joint of the pole. A place with odds below
 * {@link Confidence#WORTH_A_READING} is none, the deepest apart.
 */
public final class LineCandidates {
    static final int MAX_PER_ZONE = 8;

    private static final double SHORTFALL_METRES = 0.30;
    /** Shortfalls below this are within what a reading settles: 1 in, metres. */
    public static final double EQUAL_METRES = 0.025;

    private static final double OTHER_DEPTH_METRES = 0.25;
    private static final double OTHER_DEPTH_SHARE = 0.9;
    private static final double NEGLIGIBLE = 0.05;
    private static final double MIN_PROBABILITY = Confidence.WORTH_A_READING.minProbability();
    private static final double DISTANCE_COST = 0.002;
    private static final double DEGREE_COST = 0.001;
    private static final double JOINT_WORTH = 0.02;
    private static final double JOINT_METRES = 0.13;

    private final PegMap map;
    private final BottomGrid grid;
    private final GridFrame frame;
    private final double target;
    private final List<LineCandidate> found = new ArrayList<>();

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
    public static int number(LineCounts counts, Zone zone) {
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
        double atTarget = sought ? FlatProbability.USUAL.flat(disc, findings.targetMetres()) : 0;
        boolean named = atTarget >= Confidence.WORTH_A_READING.minProbability();
        double flatAt = named ? findings.targetMetres() : disc.depthMetres();
        double p = named ? atTarget : FlatProbability.USUAL.flat(disc, disc.depthMetres());
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
                .filter(zone -> (node >= 0 && map.zones().contains(zone, node)) || (deep && zone == Zone.TRACK))
                .findFirst();
    }

    private void track() {
        Spot deepest = map.deepest().spot();
        double best = DeepestSearch.score(deepest.depthMetres(), deepest.pFlat());
        int bottom = map.nodeAt(deepest.place().xMetres(), deepest.place().yMetres());
        Set<Integer> feet = SlopeFeet.of(map);
        LineRanking ranking = new LineRanking(frame);
        for (int i = 0; i < frame.size(); i++) {
            boolean anywhere = !map.water().hasFarBank() || feet.contains(i) || i == bottom;
            if (anywhere ? map.zones().isFishable(i) : map.zones().contains(Zone.TRACK, i)) {
                double bound = worthOfDepth(best, grid.discDepth(i)) - trouble(i);
                if (bound > NEGLIGIBLE) {
                    ranking.consider(i, bound);
                }
            }
        }
        List<LineRanking.Rated> picked = ranking.best(MAX_PER_ZONE, i -> {
            Disc disc = grid.disc(i);
            double gentle = FlatProbability.USUAL.gentle(disc);
            double score = DeepestSearch.score(disc.depthMetres(), gentle);
            LineCandidate.Origin origin =
                    feet.contains(i) ? LineCandidate.Origin.FOOT_OF_SLOPE : LineCandidate.Origin.DEEPEST;
            LineRanking.Rated rated = new LineRanking.Rated(i, worthOfDepth(best, score) - trouble(i), origin);
            return i == bottom || gentle >= MIN_PROBABILITY ? positive(rated) : Optional.empty();
        });
        for (LineRanking.Rated rated : picked) {
            double depth = grid.discDepth(rated.index());
            add(
                    Zone.TRACK,
                    rated,
                    i -> map.zones().isFishable(i)
                            && Math.abs(grid.discDepth(i) - depth) <= DeepestSearch.AREA_METRES
                            && grid.discSlope(i) <= FlatProbability.USUAL.slopeLimit());
        }
    }

    private static double worthOfDepth(double bestScore, double score) {
        return 1 - Math.max(0, bestScore - score - EQUAL_METRES) / SHORTFALL_METRES;
    }

    private static Optional<LineRanking.Rated> positive(LineRanking.Rated rated) {
        return rated.worth() > NEGLIGIBLE ? Optional.of(rated) : Optional.empty();
    }

    /** What it costs that a place is far, to the side, or at no joint of the pole. */
    private double trouble(int index) {
        Place place = LineRanking.place(frame, index);
        double distance = place.distanceMetres();
        boolean joint =
                map.peg().pole().jointMetres().stream().anyMatch(metres -> Math.abs(metres - distance) <= JOINT_METRES);
        return DISTANCE_COST * distance + DEGREE_COST * Math.abs(place.angleDegrees()) - (joint ? JOINT_WORTH : 0);
    }

    private void flats(Zone zone) {
        LineRanking ranking = new LineRanking(frame);
        for (int i = 0; i < frame.size(); i++) {
            if (map.zones().contains(zone, i)) {
                Disc disc = grid.disc(i);
                double at = (FlatProbability.USUAL.near(disc, target) + FlatSearch.WIDE.near(disc, target)) / 2;
                double own = closeness(disc) * FlatProbability.USUAL.near(disc, disc.depthMetres());
                double bound = Math.max(at, own) - trouble(i);
                if (bound > NEGLIGIBLE) {
                    ranking.consider(i, bound);
                }
            }
        }
        Map<Integer, Double> odds = new HashMap<>();
        IntToDoubleFunction atTarget =
                i -> odds.computeIfAbsent(i, node -> FlatProbability.USUAL.flat(grid.disc(node), target));
        for (LineRanking.Rated rated : ranking.best(MAX_PER_ZONE, i -> flat(i, atTarget.applyAsDouble(i)))) {
            IntPredicate like = rated.origin() == LineCandidate.Origin.FLAT
                    ? i -> atTarget.applyAsDouble(i) >= Confidence.LIKELY.minProbability()
                    : flatAbout(grid.discDepth(rated.index()));
            add(zone, rated, i -> map.zones().contains(zone, i) && like.test(i));
        }
    }

    /** A node as flat at the target or, away from it, at its own depth, whichever is worth more. */
    private Optional<LineRanking.Rated> flat(int i, double atTarget) {
        Disc disc = grid.disc(i);
        double depth = disc.depthMetres();
        Optional<LineRanking.Rated> best = Optional.empty();
        if (atTarget >= MIN_PROBABILITY) {
            double worth = (atTarget + FlatSearch.WIDE.flat(disc, target)) / 2 - trouble(i);
            best = positive(new LineRanking.Rated(i, worth, LineCandidate.Origin.FLAT));
        }
        if (off(disc) > 0) {
            double p = FlatProbability.USUAL.flat(disc, depth);
            double worth = closeness(disc) * p - trouble(i);
            if (p >= MIN_PROBABILITY && best.stream().allMatch(at -> worth > at.worth())) {
                best = positive(new LineRanking.Rated(i, worth, LineCandidate.Origin.NEAREST_FLAT));
            }
        }
        return best;
    }

    /** How far a disc is beyond the band about the target, metres. */
    private double off(Disc disc) {
        return Math.max(0, Math.abs(disc.depthMetres() - target) - FlatProbability.USUAL.bandMetres());
    }

    /** What a flat is worth at the disc's own depth. */
    private double closeness(Disc disc) {
        double off = off(disc) / OTHER_DEPTH_METRES;
        return OTHER_DEPTH_SHARE * Math.exp(-off * off / 2);
    }

    private void shortOnes() {
        double deepest = map.deepest().spot().depthMetres();
        LineRanking ranking = new LineRanking(frame);
        for (int i = 0; i < frame.size(); i++) {
            if (map.zones().contains(Zone.SHORT, i)) {
                Disc disc = grid.disc(i);
                double depth = disc.depthMetres();
                ranking.consider(i, FlatProbability.USUAL.near(disc, depth) * shortShare(depth, deepest) - trouble(i));
            }
        }
        List<LineRanking.Rated> picked = ranking.best(MAX_PER_ZONE, i -> {
            Disc disc = grid.disc(i);
            double depth = disc.depthMetres();
            double p = FlatProbability.USUAL.flat(disc, depth);
            double worth = p * shortShare(depth, deepest) - trouble(i);
            return p >= MIN_PROBABILITY
                    ? positive(new LineRanking.Rated(i, worth, LineCandidate.Origin.SHORT))
                    : Optional.empty();
        });
        for (LineRanking.Rated rated : picked) {
            IntPredicate like = flatAbout(grid.discDepth(rated.index()));
            add(Zone.SHORT, rated, i -> map.zones().contains(Zone.SHORT, i) && like.test(i));
        }
    }

    private static double shortShare(double depth, double deepest) {
        return 0.7 + 0.3 * Math.min(1, depth / deepest);
    }

    private IntPredicate flatAbout(double depth) {
        return i -> Math.abs(grid.discDepth(i) - depth) <= FlatProbability.USUAL.bandMetres()
                && grid.discSlope(i) <= FlatProbability.USUAL.slopeLimit();
    }

    private void add(Zone zone, LineRanking.Rated rated, IntPredicate area) {
        int index = rated.index();
        double cell = frame.cellMetres() * frame.cellMetres();
        double metres2 = area.test(index)
                ? cell * ConnectedAreas.from(frame, index, area).size()
                : 0;
        LineCandidate atNode = candidate(
                zone, rated.origin(), LineRanking.place(frame, index), grid.disc(index), metres2, rated.worth());
        found.add(atJoint(atNode)
                .filter(moved -> moved.confidence() == atNode.confidence())
                .orElse(atNode));
    }

    /** The candidate at the pole's joint beside it, if there is one: nobody can miss a joint. */
    private Optional<LineCandidate> atJoint(LineCandidate line) {
        double distance = line.place().distanceMetres();
        return map.peg().pole().jointMetres().stream()
                .filter(joint -> Math.abs(joint - distance) <= JOINT_METRES)
                .map(joint -> Place.polar(joint, line.place().angleDegrees()))
                .filter(place -> {
                    int node = map.nodeAt(place.xMetres(), place.yMetres());
                    return node >= 0 && map.zones().isFishable(node);
                })
                .findFirst()
                .map(place -> candidate(
                        line.zone().orElseThrow(),
                        line.origin(),
                        place,
                        map.bottom().disc(place.xMetres(), place.yMetres()),
                        line.areaMetres2(),
                        line.worth()));
    }

    private LineCandidate candidate(
            Zone zone, LineCandidate.Origin origin, Place place, Disc disc, double areaMetres2, double worth) {
        double flatAt = origin == LineCandidate.Origin.FLAT ? target : disc.depthMetres();
        double p = FlatProbability.USUAL.flat(disc, flatAt);
        Spot spot = new Spot(place, disc.depthMetres(), disc.sdMetres(), disc.slope(), p);
        return new LineCandidate(Optional.of(zone), origin, spot, flatAt, areaMetres2, worth);
    }
}

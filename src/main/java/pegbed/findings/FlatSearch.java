package pegbed.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import pegbed.model.Place;
import pegbed.surface.BottomGrid;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;

/**
 * The best flat spot of each zone at a target depth: where P, and with it the odds of being within 4 in (10 cm) and no
 * steeper than 0.30, are greatest. P alone is too small everywhere far from readings to choose by.
 */
public final class FlatSearch {
    /** Zones in which flat spots at the target are sought. */
    public static final List<Zone> SOUGHT = List.of(Zone.ACROSS, Zone.LEFT_MARGIN, Zone.RIGHT_MARGIN);

    /** How much of P the room about the middle of a flat is worth (empirical). */
    private static final double MIDDLE_COST = 0.10;

    /** How exactly the room about the middle is found, metres: a fifth of a cell. */
    private static final double CIRCLE_METRES = 0.05;

    private static final double MIN_PROBABILITY = Confidence.LIKELY.minProbability();

    /** Within 4 in (10 cm), and no steeper than 0.30. */
    public static final FlatProbability WIDE = new FlatProbability(0.10, 0.30);

    private final PegMap map;
    private final double target;
    private final BottomGrid grid;
    private final GridFrame frame;
    /** P at the target by node; 0 outside the zones sought. */
    private final double[] odds;

    private FlatSearch(PegMap map, double target) {
        this.map = map;
        this.target = target;
        grid = map.grid();
        frame = grid.frame();
        odds = new double[frame.size()];
    }

    static List<FlatSpot> of(PegMap map, double targetMetres) {
        FlatSearch search = new FlatSearch(map, targetMetres);
        List<FlatSpot> found = new ArrayList<>();
        for (Zone zone : SOUGHT) {
            search.best(zone).ifPresent(found::add);
        }
        return found;
    }

    private Optional<FlatSpot> best(Zone zone) {
        int[] nodes = map.zones().nodes(zone);
        if (nodes.length == 0) {
            return Optional.empty();
        }
        int best = best(nodes);
        Confidence confidence = Confidence.of(odds[best]);
        Optional<Area> area = odds[best] >= MIN_PROBABILITY ? Optional.of(area(zone, best)) : Optional.empty();
        Optional<FlatSpot.Circle> circle = area.map(FlatSearch::circle);
        if (circle.isPresent()) {
            best = nearerMiddle(best, circle.get());
        }
        Disc disc = grid.disc(best);
        Spot spot = new Spot(place(best), disc.depthMetres(), disc.sdMetres(), disc.slope(), odds[best]);
        return Optional.of(new FlatSpot(
                zone,
                target,
                spot,
                confidence,
                area,
                circle,
                confidence == Confidence.NONE ? nearest(nodes) : OptionalDouble.empty()));
    }

    /** The node with the best score, the first of equals; all that may be part of a flat have their odds then. */
    private int best(int[] nodes) {
        int best = -1;
        double bestScore = 0;
        for (boolean within : new boolean[] {true, false}) {
            for (int i : nodes) {
                // Those within the band come first: beside them few others are worth asking.
                if (within != FlatProbability.USUAL.isWithin(grid.discDepth(i), target)
                        || (!within && maxScore(i) < bestScore)) {
                    continue;
                }
                odds[i] = odds(FlatProbability.USUAL, i);
                if (odds[i] + 1 < bestScore) {
                    continue;
                }
                double score = odds[i] + odds(WIDE, i);
                if (score > bestScore || (score == bestScore && score > 0 && i < best)) {
                    best = i;
                    bestScore = score;
                }
            }
        }
        return best >= 0 ? best : nearestDepth(nodes);
    }

    /** The node whose depth is nearest to the target, the first of equals. */
    private int nearestDepth(int[] nodes) {
        int best = nodes[0];
        for (int i : nodes) {
            if (Math.abs(grid.discDepth(i) - target) < Math.abs(grid.discDepth(best) - target)) {
                best = i;
            }
        }
        return best;
    }

    private Area area(Zone zone, int start) {
        return ConnectedAreas.area(
                grid,
                ConnectedAreas.from(
                        frame,
                        start,
                        i -> odds[i] >= MIN_PROBABILITY && map.zones().contains(zone, i)));
    }

    /** The middle of the flat, if it is as good in words and nearly as good in odds: there is room about it. */
    private int nearerMiddle(int best, FlatSpot.Circle circle) {
        int column = (int) Math.round((circle.xMetres() - frame.xMinMetres()) / frame.cellMetres());
        int row = (int) Math.round((circle.yMetres() - frame.yMinMetres()) / frame.cellMetres());
        int middle = frame.index(column, row);
        boolean good =
                odds[middle] >= odds[best] - MIDDLE_COST && Confidence.of(odds[middle]) == Confidence.of(odds[best]);
        return good ? middle : best;
    }

    /** Upper bound of what a node outside the band can be worth. */
    private double maxScore(int i) {
        double sum = 0;
        for (int s = 0; s < grid.structures(); s++) {
            double depth = grid.discDepth(s, i);
            double sd = grid.discSdUpper(s, i);
            sum += grid.weight(s)
                    * (FlatProbability.USUAL.upperBound(depth, sd, target) + WIDE.upperBound(depth, sd, target));
        }
        return sum;
    }

    /** Most discs are so far from the target that they need not be known. */
    private double odds(FlatProbability wanted, int i) {
        boolean far = true;
        for (int s = 0; s < grid.structures(); s++) {
            far &= wanted.isFar(grid.discDepth(s, i), grid.discSdUpper(s, i), target);
        }
        return far ? 0 : wanted.flat(grid.disc(i), target);
    }

    /** The depth nearest to the target at which some disc of the zone is likely flat. */
    private OptionalDouble nearest(int[] nodes) {
        double minProbability = Confidence.LIKELY.minProbability();
        // The odds of the slope as well are the lesser ones, and dear: only the nearest depths are asked for them.
        return Arrays.stream(nodes)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> Math.abs(grid.discDepth(i) - target)))
                .map(grid::disc)
                .filter(disc -> FlatProbability.USUAL.near(disc, disc.depthMetres()) >= minProbability)
                .filter(disc -> FlatProbability.USUAL.flat(disc, disc.depthMetres()) >= minProbability)
                .mapToDouble(Disc::depthMetres)
                .findFirst();
    }

    private static FlatSpot.Circle circle(Area area) {
        MaximumInscribedCircle circle = new MaximumInscribedCircle(area.shape(), CIRCLE_METRES);
        return new FlatSpot.Circle(
                circle.getCenter().getX(),
                circle.getCenter().getY(),
                circle.getRadiusLine().getLength());
    }

    private Place place(int i) {
        return new Place(frame.x(i % frame.columns()), frame.y(i / frame.columns()));
    }
}

package pegbed.guidance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbed.findings.FlatSearch;
import pegbed.findings.PegMap;
import pegbed.findings.Zone;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;

/** The decisions that a peg's readings serve: the deepest place, and the flat spot of each zone at the target. */
final class Decisions {
    /** How many nodes a decision looks at, and every which of them. */
    private static final int FLAT_NODES = 70;

    private static final int FLAT_STRIDE = 2;
    private static final int DEEP_NODES = 120;
    private static final int DEEP_STRIDE = 3;

    /** Nodes further above the deepest than this won't turn out to be deeper, metres. */
    private static final double DEEP_METRES = 0.5;

    /** Share of a standard deviation by which an unsure node is looked at more kindly. */
    private static final double KINDNESS = 1;

    /** Nearer to the target than this a zone's own best depth is no other target, metres. */
    private static final double OTHER_METRES = 0.08;

    private final PegMap map;
    private final GridFrame frame;
    private final GuidanceWeights blend;

    private Decisions(PegMap map, GuidanceWeights blend) {
        this.map = map;
        this.blend = blend;
        frame = map.grid().frame();
    }

    static List<Decision> of(PegMap map, double targetMetres, GuidanceWeights blend) {
        Decisions choices = new Decisions(map, blend);
        List<Decision> found = new ArrayList<>();
        found.add(choices.deepest(1));
        for (Zone zone : FlatSearch.SOUGHT) {
            choices.flat(zone, targetMetres, 1).ifPresent(found::add);
            if (blend.ownDepthWeight() > 0) {
                double other = choices.ownDepth(zone, targetMetres);
                if (Math.abs(other - targetMetres) > OTHER_METRES) {
                    choices.flat(zone, other, blend.ownDepthWeight()).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    /** The choice of the deepest place, with a view to the readings that follow the next. */
    static Decision deepest(PegMap map, GuidanceWeights blend) {
        return new Decisions(map, blend).deepest(blend.followed());
    }

    private record Node(int index, Disc disc, double worth, double hope) {}

    private Decision deepest(double followed) {
        DeepWorth worth = new DeepWorth();
        double floor = map.deepest().spot().depthMetres() - DEEP_METRES;
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < frame.size(); i++) {
            if (map.zones().isInFront(i) && onStride(i, DEEP_STRIDE)) {
                Disc disc = map.grid().disc(i);
                double hope = disc.depthMetres() + KINDNESS * disc.sdMetres();
                if (hope > floor) {
                    nodes.add(new Node(i, disc, worth.now(disc), hope));
                }
            }
        }
        nodes.sort(order());
        return choice(Optional.empty(), Double.NaN, blend.deepestWeight(), followed, nodes, DEEP_NODES);
    }

    private Optional<Decision> flat(Zone zone, double target, double weight) {
        FlatWorth worth = new FlatWorth(target);
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < frame.size(); i++) {
            if (map.zones().contains(zone, i) && onStride(i, FLAT_STRIDE)) {
                Disc disc = map.grid().disc(i);
                double now = worth.now(disc);
                double miss = Math.max(0, Math.abs(disc.depthMetres() - target) - KINDNESS * disc.sdMetres());
                double steep =
                        Math.max(0, disc.slope() - KINDNESS * Math.sqrt(Math.max(0, disc.varX() + disc.varY()) / 2));
                nodes.add(new Node(i, disc, now, now - miss / 0.10 - steep / 0.30));
            }
        }
        nodes.sort(order());
        return nodes.isEmpty()
                ? Optional.empty()
                : Optional.of(choice(Optional.of(zone), target, weight, 1, nodes, FLAT_NODES));
    }

    /** The depth, about the target, at which a zone is most likely flat. */
    private double ownDepth(Zone zone, double target) {
        double best = target;
        double bestScore = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < frame.size(); i++) {
            if (map.zones().contains(zone, i) && onStride(i, FLAT_STRIDE)) {
                Disc disc = map.grid().disc(i);
                double off = Math.abs(disc.depthMetres() - target);
                if (off < 0.5 && off / 0.5 < 1 - bestScore) {
                    double score = FlatSearch.WIDE.flat(disc, disc.depthMetres()) - off / 0.5;
                    if (score > bestScore) {
                        bestScore = score;
                        best = disc.depthMetres();
                    }
                }
            }
        }
        return best;
    }

    private static Decision choice(
            Optional<Zone> zone, double target, double weight, double followed, List<Node> nodes, int max) {
        List<Node> kept = nodes.subList(0, Math.min(max, nodes.size()));
        return new Decision(
                zone,
                target,
                weight,
                followed,
                kept.stream().mapToInt(Node::index).toArray(),
                kept.stream().map(Node::disc).toArray(Disc[]::new),
                kept.stream().mapToDouble(Node::worth).toArray());
    }

    /** Every so many nodes each way, the same on both sides of straight out. */
    private boolean onStride(int i, int stride) {
        long column = Math.round(frame.x(i % frame.columns()) / frame.cellMetres());
        long row = Math.round(frame.y(i / frame.columns()) / frame.cellMetres());
        return column % stride == 0 && row % stride == 0;
    }

    private Comparator<Node> order() {
        return Comparator.comparingDouble((Node node) -> -node.hope).thenComparingInt(Node::index);
    }
}

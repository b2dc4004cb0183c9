package pegbed.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.IntFunction;
import pegbed.model.Place;
import pegbed.surface.grid.GridFrame;

/**
 * Picks the best nodes of a grid that lie apart from each other, best first. A node is rated only when the bound on its
 * worth comes to the front and nothing picked is near it: the picks are those that rating every node would give.
 */
final class LineRanking {
    /** Picks lie at least so far from each other, metres. */
    static final double APART_METRES = 1;

    /**
     * A rated node.
     *
     * @param index its place in the grid
     * @param worth what it is worth, above 0
     * @param origin what makes it a candidate
     */
    record Rated(int index, double worth, LineCandidate.Origin origin) {}

    /** A node in the queue: rated, or with a bound on its worth. */
    private record Entry(int index, double worth, Optional<Rated> rated) {}

    private final GridFrame frame;
    private final PriorityQueue<Entry> queue = new PriorityQueue<>(
            Comparator.comparingDouble((Entry entry) -> -entry.worth()).thenComparingInt(Entry::index));

    LineRanking(GridFrame frame) {
        this.frame = frame;
    }

    /** Puts a node into the running whose worth is at most so much. */
    void consider(int index, double boundOnWorth) {
        queue.add(new Entry(index, boundOnWorth, Optional.empty()));
    }

    /**
     * The best nodes, best first.
     *
     * @param max how many at most
     * @param rate rates a node; empty where it is no candidate
     */
    List<Rated> best(int max, IntFunction<Optional<Rated>> rate) {
        List<Rated> picked = new ArrayList<>();
        while (picked.size() < max && !queue.isEmpty()) {
            Entry entry = queue.remove();
            Place place = place(frame, entry.index());
            if (picked.stream().anyMatch(other -> place(frame, other.index()).distanceTo(place) < APART_METRES)) {
                continue;
            }
            if (entry.rated().isPresent()) {
                picked.add(entry.rated().get());
            } else {
                rate.apply(entry.index())
                        .ifPresent(rated -> queue.add(new Entry(rated.index(), rated.worth(), Optional.of(rated))));
            }
        }
        return picked;
    }

    static Place place(GridFrame frame, int index) {
        return new Place(frame.x(index % frame.columns()), frame.y(index / frame.columns()));
    }
}

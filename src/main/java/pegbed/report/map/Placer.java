package pegbed.report.map;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Decides who chooses a place on the map first: all signs before all letters, and of each the weightier before the
 * lighter. Every sign and label of a map comes through here; each then takes the best place that is left to it.
 *
 * <p>The order, and the places that a name tries about its sign ({@link #AROUND}), follow the rules of Imhof, E.
 * (1975), "Positioning names on maps", The American Cartographer 2(2):128–144, and for soundings those of the
 * International Hydrographic Organization's S-4, B-412: a sounding's figure is its place, or stands beside it with a
 * line to it.
 */
final class Placer {
    /** Who comes first has the place. */
    enum Rank {
        SEAT,
        NEXT_SIGN,
        HAZARD_SIGN,
        LINE_SIGN,
        DEEPEST_SIGN,
        FLAT_SIGN,
        MARK_SIGN,
        DEEPEST_NAME,
        HAZARD_NAME,
        CHANGE_AMOUNT,
        CLOCK_FIGURE,
        MARK_NAME,
        DOUBTED_READING,
        READING,
        EARLIER_READING,
        RING_NAME,
        ZONE_NAME,
        CONTOUR_FIGURE
    }

    /**
     * Directions from a sign to its name, right and down, the best first: to the right and a little up, to the right,
     * to the right and down, the same to the left, above, below.
     */
    static final double[][] AROUND = {{1, -0.6}, {1, 0}, {1, 0.6}, {-1, -0.6}, {-1, 0}, {-1, 0.6}, {0, -1}, {0, 1}};

    private final Map<Rank, List<Runnable>> asked = new EnumMap<>(Rank.class);

    /** Asks to choose a place when the turn of a rank has come; of one rank in the order of asking. */
    void ask(Rank rank, Runnable choice) {
        asked.computeIfAbsent(rank, key -> new ArrayList<>()).add(choice);
    }

    /** Lets all choose whose rank comes no later than this one. */
    void run(Rank last) {
        asked.forEach((rank, choices) -> {
            if (rank.compareTo(last) <= 0) {
                choices.forEach(Runnable::run);
            }
        });
    }
}

package pegbed.report.map;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import pegbed.model.Place;
import pegbed.report.drawing.Layer;

/**
 * What of a map is drawn.
 *
 * @param layers those that are; the others are left out and take no room
 * @param joinedUp whether the bottom is drawn straight between the readings and the banks, instead of the model's; the
 *     answers, which are the model's, are left out then
 * @param next where to read next: signs and letters keep off it, so that a window can draw its sign there; empty where
 *     that is not shown
 */
public record MapOptions(Set<Layer> layers, boolean joinedUp, Optional<Place> next) {
    /** The sign of the next place reaches so far from it, points. */
    public static final double NEXT_POINTS = 13;

    /** Everything but the zones. */
    public static final MapOptions USUAL = new MapOptions(Layer.usual());

    /** The model's bottom. */
    public MapOptions(Set<Layer> layers) {
        this(layers, false, Optional.empty());
    }

    public MapOptions {
        layers = Set.copyOf(layers);
    }

    /** These with the bottom joined up, or the model's. */
    public MapOptions withJoinedUp(boolean instead) {
        return new MapOptions(layers, instead, next);
    }

    /** These with one layer on or off. */
    public MapOptions with(Layer layer, boolean shown) {
        Set<Layer> changed = EnumSet.noneOf(Layer.class);
        changed.addAll(layers);
        if (shown) {
            changed.add(layer);
        } else {
            changed.remove(layer);
        }
        return new MapOptions(changed, joinedUp, next);
    }
}

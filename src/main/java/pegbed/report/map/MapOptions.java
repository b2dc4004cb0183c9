package pegbed.report.map;

import java.util.EnumSet;
import java.util.Set;
import pegbed.report.drawing.Layer;

/**
 * What of a map is drawn.
 *
 * @param layers those that are; the others are left out and take no room
 * @param joinedUp whether the bottom is drawn straight between the readings and the banks, instead of the model's; the
 *     answers, which are the model's, are left out then
 */
public record MapOptions(Set<Layer> layers, boolean joinedUp) {
    /** Everything but the zones. */
    public static final MapOptions USUAL = new MapOptions(Layer.usual());

    /** The model's bottom. */
    public MapOptions(Set<Layer> layers) {
        this(layers, false);
    }

    public MapOptions {
        layers = Set.copyOf(layers);
    }

    /** These with the bottom joined up, or the model's. */
    public MapOptions withJoinedUp(boolean instead) {
        return new MapOptions(layers, instead);
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
        return new MapOptions(changed, joinedUp);
    }
}

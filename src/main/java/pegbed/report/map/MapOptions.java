package pegbed.report.map;

import java.util.EnumSet;
import java.util.Set;
import pegbed.report.drawing.Layer;

/**
 * What of a map is drawn.
 *
 * @param layers those that are; the others are left out and take no room
 */
public record MapOptions(Set<Layer> layers) {
    /** Everything but the zones. */
    public static final MapOptions USUAL = new MapOptions(Layer.usual());

    public MapOptions {
        layers = Set.copyOf(layers);
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
        return new MapOptions(changed);
    }
}

package pegbed.report.drawing;

import java.util.List;
import java.util.Set;

/**
 * A picture as items in drawing order: what comes later lies on top.
 *
 * <p>Texts and symbols were placed for one {@link View}. Painted with another, everything stays at its place on the
 * water, with letters of the same size, but labels may then touch each other.
 *
 * @param items in drawing order
 * @param view the view that labels were placed for
 */
public record Drawing(List<Item> items, View view) {
    public Drawing {
        items = List.copyOf(items);
    }

    /** The items of some layers alone, in the same order. */
    public Drawing only(Set<Layer> layers) {
        return new Drawing(
                items.stream().filter(item -> layers.contains(item.layer())).toList(), view);
    }

    /** The items that mean one thing, in drawing order. */
    public List<Item> of(Role role) {
        return items.stream().filter(item -> item.role() == role).toList();
    }
}

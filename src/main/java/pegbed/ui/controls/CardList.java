package pegbed.ui.controls;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import javafx.collections.ObservableList;
import javafx.scene.Node;

/** Lists of cards that show new words instead of being made anew, so that a list that changes costs no styling. */
public final class CardList {
    private CardList() {}

    /**
     * Shows things as cards; the list holds nothing else afterwards.
     *
     * @param nodes what is shown now
     * @param things one card each
     * @param kind of the cards that can show something else
     * @param fresh makes a card
     * @param show tells a card what it shows
     */
    public static <C extends Node, T> void show(
            ObservableList<Node> nodes, List<T> things, Class<C> kind, Supplier<C> fresh, BiConsumer<C, T> show) {
        nodes.removeIf(node -> !kind.isInstance(node));
        if (nodes.size() > things.size()) {
            nodes.remove(things.size(), nodes.size());
        }
        while (nodes.size() < things.size()) {
            nodes.add(fresh.get());
        }
        for (int i = 0; i < things.size(); i++) {
            show.accept(kind.cast(nodes.get(i)), things.get(i));
        }
    }
}

package pegbed.model;

import java.util.List;

/**
 * The lines where water meets bank, each as points in order along it.
 *
 * @param near the angler's own bank; two points at least before a bottom can be computed
 * @param far the bank opposite; empty on a pond or lake
 * @param islands rings of dry ground in the water; each needs three points at least, and closes by itself
 */
public record Banks(List<BankPoint> near, List<BankPoint> far, List<List<BankPoint>> islands) {
    public static final Banks NONE = new Banks(List.of(), List.of(), List.of());

    public Banks {
        near = List.copyOf(near);
        far = List.copyOf(far);
        islands = islands.stream().map(List::copyOf).toList();
    }
}

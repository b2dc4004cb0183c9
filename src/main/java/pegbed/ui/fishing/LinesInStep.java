package pegbed.ui.fishing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import pegbed.ui.fishing.FishingViewModel.FishingLine;

/**
 * What is shown of each line, kept in step with the lines as the minutes pass: as long as they are the same lines their
 * buttons stay where they are, so that no tap is lost.
 */
public final class LinesInStep {
    private record Shown(FishingLine line, Consumer<FishingLine> show) {
        boolean isOf(FishingLine other) {
            return line.place().equals(other.place()) && line.title().equals(other.title());
        }
    }

    private final List<Shown> shown = new ArrayList<>();

    /** Forgets all lines. */
    public void clear() {
        shown.clear();
    }

    /**
     * Adds a line after the others.
     *
     * @param line as it is now
     * @param show shows the same line as it is later
     */
    public void add(FishingLine line, Consumer<FishingLine> show) {
        shown.add(new Shown(line, show));
        show.accept(line);
    }

    /**
     * Shows the lines as they are now, if they are those that were added, in their order.
     *
     * @return whether they are; if not, or if there are none, nothing was shown and all is to be added afresh
     */
    public boolean show(List<FishingLine> now) {
        if (now.isEmpty() || now.size() != shown.size()) {
            return false;
        }
        for (int i = 0; i < now.size(); i++) {
            if (!shown.get(i).isOf(now.get(i))) {
                return false;
            }
        }
        for (int i = 0; i < now.size(); i++) {
            shown.get(i).show().accept(now.get(i));
        }
        return true;
    }
}

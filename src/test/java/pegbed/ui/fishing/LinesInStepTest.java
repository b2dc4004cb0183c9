package pegbed.ui.fishing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pegbed.model.Place;
import pegbed.ui.fishing.FishingViewModel.FishingLine;

class LinesInStepTest {
    private final LinesInStep lines = new LinesInStep();
    private final List<String> shown = new ArrayList<>();

    private static FishingLine line(int number, String state) {
        return new FishingLine(new Place(number, 9), "Line " + number, state, false);
    }

    private void add(FishingLine line) {
        lines.add(line, now -> shown.add(now.title() + " " + now.state()));
    }

    @Test
    void theSameLinesAreShownAsTheyAreNow() {
        add(line(1, "fed 2 min ago"));
        add(line(2, "rested"));
        shown.clear();
        assertTrue(lines.show(List.of(line(1, "fed 3 min ago"), line(2, "rested"))));
        assertEquals(List.of("Line 1 fed 3 min ago", "Line 2 rested"), shown);
    }

    @Test
    void otherLinesAreToBeAddedAfresh() {
        add(line(1, "a"));
        add(line(2, "b"));
        shown.clear();
        assertFalse(lines.show(List.of(line(1, "a"))));
        assertFalse(lines.show(List.of(line(2, "b"), line(1, "a"))));
        assertFalse(lines.show(List.of()));
        assertEquals(List.of(), shown);
        lines.clear();
        assertFalse(lines.show(List.of(line(1, "a"), line(2, "b"))));
    }
}

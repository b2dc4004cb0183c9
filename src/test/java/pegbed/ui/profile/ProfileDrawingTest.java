package pegbed.ui.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ProfileDrawingTest {
    @Test
    void aSlopesLabelKeepsOffTheSurface() {
        assertEquals(28, ProfileDrawing.labelMiddle(40, 60, 10, 80), "above its marks");
        assertEquals(42, ProfileDrawing.labelMiddle(20, 30, 10, 80), "below them where there is no room above");
        assertEquals(73, ProfileDrawing.labelMiddle(20, 78, 10, 80), "never below the drawing");
    }
}
